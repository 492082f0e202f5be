import { type ComponentType, type RefObject, Suspense, useEffect, useRef } from 'react';
import { checksOf, STATION_NAMES, type Station } from '../../project';
import { printPhrase, said, say, words } from '../../words';
import { Guarded } from '../faults/Guarded';
import { late } from '../faults/late';
import { RESULTS } from '../finished/results';
import { useManner } from '../look/manner';
import { NARROW, STOPS_ONLY } from '../look/widths';
import { EdgesStation } from '../stations/EdgesStation';
import { onlyWaiting, stationAsks } from '../store/asked';
import { useBench } from '../store/bench';
import type { Bench } from '../store/state';
import { useTable } from '../table/table-state';

/** The stations; what isn't wanted at once is loaded when it is. */
const INSIDE: Readonly<Record<Station, ComponentType>> = {
  body: late(() => import('../stations/BodyStation'), { what: say`The measurements`, place: 'inside' }),
  blocks: late(() => import('../stations/BlocksStation'), { what: say`The blocks`, place: 'inside' }),
  leg: late(() => import('../stations/LegStation'), { what: say`The leg`, place: 'inside' }),
  edges: EdgesStation,
  check: late(() => import('../stations/CheckStation'), { what: say`What was checked`, place: 'inside' }),
  cloth: late(() => import('../stations/ClothStation'), { what: say`The cloth`, place: 'inside' }),
  paper: late(() => import('../stations/PaperStation'), { what: say`The paper`, place: 'inside' }),
  sew: late(() => import('../stations/SewStation'), { what: say`The sewing`, place: 'inside' }),
};

/** One station on the thread. */
export function Stop({ station }: { readonly station: Station }) {
  const open = useBench((state) => state.station === station);
  const wants = useBench((state) => lookWanted(state, station));
  const goTo = useBench((state) => state.goTo);
  // Where the path is only its stops, the open one folds its inputs away and back.
  const onPress = () => {
    const { inputsAway, foldInputs } = useManner.getState();
    foldInputs(open && !inputsAway && matchMedia(STOPS_ONLY).matches);
    goTo(station);
  };
  const Inside = INSIDE[station];
  const inside = `station-${station}`;
  const item = useRef<HTMLLIElement>(null);
  const atFirst = useRef(open);
  useEffect(() => {
    if (!open) atFirst.current = false;
  }, [open]);
  return (
    <li ref={item} className="stop" data-open={open || undefined} data-wants={wants ? true : undefined}>
      <h2 className="stop-name">
        <button type="button" aria-expanded={open} aria-controls={open ? inside : undefined} onClick={onPress}>
          <span className="stop-knot" aria-hidden="true" />
          {said(STATION_NAMES[station])}
        </button>
      </h2>
      {wants && <p className="stop-wants">{wants}</p>}
      {open ? (
        <div className="stop-inside" id={inside}>
          <Suspense>
            <Guarded what={words`The station ${STATION_NAMES[station]}`} place="inside">
              <Inside />
            </Guarded>
            {!atFirst.current && <IntoSight item={item} />}
          </Suspense>
        </div>
      ) : (
        <p className="stop-result">
          <Guarded what={words`What the station ${STATION_NAMES[station]} came to`} place="bit">
            <Result station={station} />
          </Guarded>
        </p>
      )}
    </li>
  );
}

/** Scrolls a station that was opened into sight, once what it holds is there. */
function IntoSight({ item }: { readonly item: RefObject<HTMLElement | null> }) {
  useEffect(() => {
    // A station taller than the path begins at its name, not at its end.
    // On a narrow screen it is the page that scrolls, under the table: there every station begins at its name.
    const { offsetHeight = 0 } = item.current ?? {};
    const tall =
      offsetHeight > (item.current?.closest('.path')?.clientHeight ?? 0) || window.matchMedia?.(NARROW).matches;
    item.current?.scrollIntoView?.({ block: tall ? 'start' : 'nearest' });
  }, [item]);
  return null;
}

/** What the station came to. While something on the drawing is held it waits: some results are dear to find. */
function Result({ station }: { readonly station: Station }): string {
  const held = useTable((state) => state.held !== undefined);
  const last = useRef('');
  const result = useBench((state) =>
    held ? last.current : printPhrase(RESULTS[station](state.draft), state.project.units),
  );
  last.current = result;
  return result;
}

/** Why a closed station wants a look, in a few words; undefined where it does not. */
function lookWanted(state: Bench, station: Station): string | undefined {
  if (state.station === station) return undefined;
  if (stationAsks(state, station))
    return onlyWaiting(state).length > 0 ? words`still to be measured` : words`wants a look`;
  if (station !== 'check') return undefined;
  return checksOf(state.draft).some((check) => check.verdict === 'wrong') ? words`something is wrong` : undefined;
}
