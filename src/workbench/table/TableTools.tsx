import { useRef } from 'react';
import { MM_PER_INCH, plain } from '../../length';
import { say, words } from '../../words';
import { Switch } from '../fields/Switch';
import { Shortened } from '../look/Shortened';
import { useBench } from '../store/bench';
import type { ViewControl } from '../view/use-view';
import { NEARER } from '../view/view-keys';
import { useRun } from '../working/run';
import { ONE_ROW, useTable } from './table-state';
import { useHeight } from './use-height';

/** A screen's pixel is defined as 1/96 in; real screens only come near it. */
const PIXELS_PER_MM = 96 / MM_PER_INCH;

const TURNINGS = [
  { key: 'folded', name: say`folded over` },
  { key: 'flat', name: say`laid flat` },
];

const tellHeight = (height: number): void => useTable.setState({ toolsHeight: Math.max(ONE_ROW, height) });

/** The few tools that lie on the table: the working, how turnings are shown, and the zoom. */
export function TableTools({ control }: { readonly control: ViewControl }) {
  const station = useBench((state) => state.station);
  const folded = useBench((state) => state.folded);
  const workingShown = useBench((state) => state.workingShown);
  const { fold, showWorking } = useBench.getState();
  const { playJoin } = useTable.getState();
  const percent = plain((control.view.scale / PIXELS_PER_MM) * 100, 0);
  const element = useRef<HTMLDivElement>(null);
  useHeight(element, tellHeight);
  return (
    <div className="tools" ref={element}>
      <button
        type="button"
        className="tool"
        aria-expanded={workingShown}
        aria-controls={workingShown ? 'working' : undefined}
        onClick={() => {
          showWorking(!workingShown);
          // A run that nobody sees would leave the drawing pale at every station.
          if (workingShown) useRun.getState().end();
        }}
      >
        {words`Working`}
      </button>
      {station === 'leg' && (
        <button type="button" className="tool tool-join" onClick={() => playJoin(true)}>
          <span aria-hidden="true">▷</span> <Shortened short={words`Play`} whole={words`Play the join`} />
        </button>
      )}
      {station === 'edges' && (
        <Switch
          quiet
          label={words`Casing and hem`}
          choices={TURNINGS}
          chosen={folded ? 'folded' : 'flat'}
          onPick={(key) => fold(key === 'folded')}
        />
      )}
      <span className="tools-zoom">
        <button
          type="button"
          className="tool tool-round"
          aria-label={words`Zoom out`}
          onClick={() => control.zoom(1 / NEARER)}
        >
          −
        </button>
        <span className="tools-scale">{percent} %</span>
        <button
          type="button"
          className="tool tool-round"
          aria-label={words`Zoom in`}
          onClick={() => control.zoom(NEARER)}
        >
          +
        </button>
        <button type="button" className="tool" onClick={control.showAll}>
          {words`Fit`}
        </button>
      </span>
    </div>
  );
}
