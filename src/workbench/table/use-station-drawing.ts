import { useEffect, useState } from 'react';
import { withLate } from '../faults/late';
import { useSewingShown } from '../stations/sew/sewing-shown';
import type { Station } from '../store/stations';
import { STATION_DRAWINGS, type StationDrawing } from './station-drawings';

/** The sewing, once somebody went there: it is a third of what there is to load, and wanted last. */
let sewing: StationDrawing | undefined;

/**
 * What the table shows at a station, and a name by which another picture is known. While a late one is loaded, the
 * checked leg stays on the table.
 */
export function useStationDrawing(station: Station): readonly [name: string, drawing: StationDrawing] {
  const step = useSewingShown((state) => state.shown);
  const [loaded, setLoaded] = useState(sewing);
  const wanted = station === 'sew' && !loaded;
  useEffect(() => {
    if (!wanted) return;
    let gone = false;
    withLate(
      'The pictures of the sewing',
      () => import('./drawings/sewing'),
      ({ SEWING }) => {
        sewing = SEWING;
        if (!gone) setLoaded(SEWING);
      },
    );
    return () => {
      gone = true;
    };
  }, [wanted]);
  if (station !== 'sew') return [station, STATION_DRAWINGS[station]];
  return loaded ? [`sew ${step}`, loaded] : ['check', STATION_DRAWINGS.check];
}
