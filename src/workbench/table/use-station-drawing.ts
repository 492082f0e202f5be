import { useEffect, useState } from 'react';
import type { Station } from '../../project';
import { type Phrase, said, say } from '../../words';
import { withLate } from '../faults/late';
import { useSewingShown } from '../working/sewing-shown';
import { type LateStation, STATION_DRAWINGS, type StationDrawing } from './station-drawings';

/** What there is to load of a station that somebody went to: a good part of all, and not seen first. */
const LATE: Readonly<Record<LateStation, { readonly what: Phrase; readonly load: () => Promise<StationDrawing> }>> = {
  body: { what: say`The figure`, load: () => import('./drawings/figure').then(({ FIGURE }) => FIGURE) },
  cloth: { what: say`The lay`, load: () => import('./drawings/lay').then(({ LAY }) => LAY) },
  paper: { what: say`The drawing of the sheets`, load: () => import('./drawings/sheets').then(({ SHEETS }) => SHEETS) },
  sew: { what: say`The pictures of the sewing`, load: () => import('./drawings/sewing').then(({ SEWING }) => SEWING) },
};

const loaded: { [S in LateStation]?: StationDrawing } = {};

const isLate = (station: Station): station is LateStation => station in LATE;

/**
 * What the table shows at a station, and a name by which another picture is known. While a late one is loaded, the
 * checked leg stays on the table.
 */
export function useStationDrawing(station: Station): readonly [name: string, drawing: StationDrawing] {
  const step = useSewingShown((state) => state.shown);
  const [, setArrived] = useState(0);
  const wanted = isLate(station) && !loaded[station] ? station : undefined;
  useEffect(() => {
    if (!wanted) return;
    let gone = false;
    withLate(said(LATE[wanted].what), LATE[wanted].load, (drawing) => {
      loaded[wanted] = drawing;
      if (!gone) setArrived((count) => count + 1);
    });
    return () => {
      gone = true;
    };
  }, [wanted]);
  if (!isLate(station)) return [station, STATION_DRAWINGS[station]];
  const drawing = loaded[station];
  return drawing ? [station === 'sew' ? `sew ${step}` : station, drawing] : ['check', STATION_DRAWINGS.check];
}
