import { useEffect } from 'react';
import { STATION_NAMES } from '../../project';
import { words } from '../../words';
import { useBench } from '../store/bench';
import { sayAloud, useAloud } from './say-aloud';

/** Says what was done, and which station was opened where that was not its own button’s doing. */
export function Aloud() {
  const said = useAloud((state) => state.said);
  useEffect(
    () =>
      useBench.subscribe(({ station }, before) => {
        if (station === before.station || document.activeElement?.closest('.stop-name')) return;
        sayAloud(words`The station ${STATION_NAMES[station]} is open.`);
      }),
    [],
  );
  return (
    <p className="unseen" role="status">
      {said}
    </p>
  );
}
