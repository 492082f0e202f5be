import { useShallow } from 'zustand/react/shallow';
import { ASKED_KEYS, measurementName } from '../../../body';
import { all, inside, say, words } from '../../../words';
import { focusOn } from '../../aloud/focus-on';
import { isWaiting } from '../../store/asked';
import { useBench } from '../../store/bench';
import { useEstimates } from './measured';

/** All at once, where more than one is still to be measured that nobody knows by heart. */
export function EstimateRest() {
  const estimateOf = useEstimates();
  const waiting = useBench(useShallow((state) => ASKED_KEYS.filter((key) => isWaiting(state, `body.${key}`))));
  const keys = waiting.filter((key) => estimateOf(key));
  if (keys.length < 2) return null;
  const ask = () => {
    useBench.getState().estimate(keys);
    focusOn('.stop[data-open] .stop-name button');
  };
  return (
    <button type="button" className="button" onClick={ask}>
      {words`Estimate ${all(keys.map((key) => say`${inside(measurementName(key))}`))}`}
    </button>
  );
}
