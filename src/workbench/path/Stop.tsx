import { type ComponentType, type CSSProperties, type RefObject, Suspense, useEffect, useRef } from 'react';
import { checksOf, STATION_NAMES, STATIONS, type Station } from '../../project';
import { printPhrase, said, say, words } from '../../words';
import { focusOn } from '../aloud/focus-on';
import { Guarded } from '../faults/Guarded';
import { late } from '../faults/late';
import { RESULTS } from '../finished/results';
import { useManner } from '../look/manner';
import { usePrinting } from '../look/use-printing';
import { STOPS_ONLY } from '../look/widths';
import { isUnmeasured, onlyWaiting, stationAsks } from '../store/asked';
import { useBench } from '../store/bench';
import type { Bench } from '../store/state';
import { useTable } from '../table/table-state';

/** The stations; what isn't wanted at once is loaded when it is. */
const INSIDE: Readonly<Record<Station, ComponentType>> = {
  body: late(() => import('../stations/BodyStation'), { what: say`The measurements`, place: 'inside' }),
  blocks: late(() => import('../stations/BlocksStation'), { what: say`The blocks`, place: 'inside' }),
  leg: late(() => import('../stations/LegStation'), { what: say`The leg`, place: 'inside' }),
  edges: late(() => import('../stations/EdgesStation'), { what: say`The edges`, place: 'inside' }),
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
  const printing = usePrinting();
  const Inside = INSIDE[station];
  const id = `station-${station}`;
  const inside = useRef<HTMLDivElement>(null);
  const atFirst = useRef(open);
  useEffect(() => {
    if (!open) atFirst.current = false;
  }, [open]);
  return (
    <li
      className="stop"
      style={{ '--stop': STATIONS.indexOf(station) + 1 } as CSSProperties}
      data-station={station}
      data-open={open || undefined}
      data-wants={wants ? true : undefined}
    >
      <h2 className="stop-name">
        <button type="button" aria-expanded={open} aria-controls={open ? id : undefined} onClick={onPress}>
          <span className="stop-knot" aria-hidden="true" />
          {said(STATION_NAMES[station])}
        </button>
      </h2>
      {wants && <p className="stop-wants">{wants}</p>}
      {open ? (
        <div className="stop-inside" id={id} ref={inside}>
          <Suspense>
            <Guarded what={words`The station ${STATION_NAMES[station]}`} place="inside">
              <Inside />
            </Guarded>
            <NextStation station={station} />
            {!atFirst.current && <IntoSight inside={inside} />}
          </Suspense>
        </div>
      ) : null}
      {(!open || printing) && (
        <p className="stop-result">
          <Guarded what={words`Result of the station ${STATION_NAMES[station]}`} place="bit">
            <Result station={station} />
          </Guarded>
        </p>
      )}
    </li>
  );
}

/** On to the station after this one, where this one ends. */
function NextStation({ station }: { readonly station: Station }) {
  const next = STATIONS[STATIONS.indexOf(station) + 1];
  if (!next) return null;
  const goOn = () => {
    useBench.getState().goTo(next);
    focusOn('.stop[data-open] .stop-name button');
  };
  return (
    <button type="button" className="button stop-next" onClick={goOn}>
      {words`Next: ${STATION_NAMES[next]}`}
    </button>
  );
}

/** Begins what a station holds at its beginning, once it is there: on a narrow screen it is the page that scrolls. */
function IntoSight({ inside }: { readonly inside: RefObject<HTMLElement | null> }) {
  useEffect(() => {
    inside.current?.scrollIntoView?.({ block: 'start' });
  }, [inside]);
  return null;
}

/** What the station came to; nothing before there are measurements. While something on the drawing is held it waits: some results are dear to find. */
function Result({ station }: { readonly station: Station }): string {
  const held = useTable((state) => state.held !== undefined);
  const last = useRef('');
  const result = useBench((state) =>
    isUnmeasured(state) ? '' : held ? last.current : printPhrase(RESULTS[station](state.draft), state.project.units),
  );
  last.current = result;
  return result;
}

/** Why a closed station wants a look, in a few words; undefined where it does not. */
function lookWanted(state: Bench, station: Station): string | undefined {
  if (state.station === station) return undefined;
  if (stationAsks(state, station))
    return onlyWaiting(state).length > 0 ? words`still to be measured` : words`something is doubtful`;
  if (station !== 'check' || isUnmeasured(state)) return undefined;
  return checksOf(state.draft).some((check) => check.verdict === 'wrong') ? words`something is wrong` : undefined;
}
