import { useBench } from '../store/bench';
import { useTable } from './table-state';

/** Whether the join is shown on its way: only where the leg is made. */
export function useJoining(): boolean {
  const at = useTable((state) => state.join !== undefined);
  return useBench((state) => state.station === 'leg') && at;
}
