import { words } from '../../../words';
import { isStale } from '../../store/asked';
import { useBench } from '../../store/bench';

/** Why there is nothing to take away just now, where that is so. */
export function AskedFirst() {
  const stale = useBench(isStale);
  return stale && <p className="field-help">{words`Fix the marked fields first; then files can be made.`}</p>;
}
