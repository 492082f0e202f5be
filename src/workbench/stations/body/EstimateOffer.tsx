import { ASKED_KEYS, estimateRange, type Measurement } from '../../../body';
import { inside, mm, printPhrase, say, words } from '../../../words';
import { focusOn } from '../../aloud/focus-on';
import { isWaiting } from '../../store/asked';
import { useBench } from '../../store/bench';
import { fieldId } from '../../store/field-id';
import { useEstimates } from './measured';

/** What stands under a field that waits for what nobody knows by heart: its estimate, to be taken by one press. */
export function EstimateOffer({ measurement }: { readonly measurement: Measurement }) {
  const { name } = measurement;
  const key = ASKED_KEYS.find((one) => one === measurement.key);
  const waits = useBench((state) => isWaiting(state, `body.${measurement.key}`));
  const estimate = useEstimates()(measurement.key);
  const units = useBench((state) => state.project.units);
  if (key === undefined || !waits) return null;
  if (!estimate) {
    return <p className="field-help">{words`Once waist and hip are in, ${inside(name)} can be estimated.`}</p>;
  }
  const [least, most] = estimateRange(estimate);
  const ask = () => {
    useBench.getState().estimate([key]);
    focusOn(`#${fieldId(`body.${key}`)}`);
  };
  return (
    <p className="estimate-offer">
      <button type="button" className="button" onClick={ask}>
        {printPhrase(say`Estimate ${inside(name)}: about ${mm(estimate.value)}`, units)}
      </button>
      <span className="field-help">
        {printPhrase(say`Nine in ten bodies like this one have ${mm(least)} to ${mm(most)}.`, units)}
      </span>
    </p>
  );
}
