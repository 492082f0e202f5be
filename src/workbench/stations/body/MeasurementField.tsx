import { useShallow } from 'zustand/react/shallow';
import { ESTIMATED, type Measurement, type MeasurementKey, measurementName } from '../../../body';
import { hemEnds } from '../../../project';
import { either, inside, inTurn, type Phrase, said, say, UNSAID } from '../../../words';
import { QuantityField } from '../../fields/QuantityField';
import { isStale, isWaiting } from '../../store/asked';
import { useBench } from '../../store/bench';
import { length, years } from '../../store/quantity';
import { EstimateOffer } from './EstimateOffer';
import { HowToMeasure } from './HowToMeasure';
import { measurementHelp } from './help';
import { measuresAsking, remarksOn, useEstimates } from './measured';

/** One measurement: its number or what it is estimated at, how it is measured, and what is worth a second look. */
export function MeasurementField({ measurement }: { readonly measurement: Measurement }) {
  const { key, required, unit, where, inPlace } = measurement;
  const body = useBench((state) => state.project.body);
  const estimate = useEstimates()(key);
  const typed = useBench((state) => state.field === `body.${key}`);
  const asking = useBench(useShallow(measuresAsking));
  const asked = body[key] === ESTIMATED;
  const optional =
    !required || asked || estimate?.basis === 'block' || (inPlace !== undefined && body[inPlace] !== undefined);
  const hem = useHemTold(key);
  const taken = body[key] !== undefined && !asked && !asking.includes(key);
  // A remark stands by the likeliest of its measurements, and by the one that is being typed.
  const doubt = remarksOn(body, asking).find(({ keys }) => keys[0] === key || (typed && keys.includes(key)))?.phrase;
  return (
    <>
      <QuantityField
        path={`body.${key}`}
        quantity={unit === 'years' ? years : length}
        optional={optional}
        instead={optional ? estimate?.value : undefined}
        help={inTurn([measurementHelp(measurement, taken || !optional ? undefined : estimate), hem])}
        heard={said(where)}
        doubt={doubt}
        how={<HowToMeasure measurement={measurement} />}
      />
      <EstimateOffer measurement={measurement} />
    </>
  );
}

const named = (key: MeasurementKey): Phrase => say`${inside(measurementName(key))}`;
const LEG_KEYS: readonly MeasurementKey[] = ['insideLeg', 'trouserInseam'];

/** Whichever of the two was measured says what it makes the hem do. */
function useHemTold(key: MeasurementKey): Phrase {
  const draft = useBench((state) => state.draft);
  const stale = useBench(isStale);
  const waits = useBench((state) => isWaiting(state, 'body.insideLeg'));
  if (LEG_KEYS.includes(key) && waits) return say`One of the two is enough: ${either(LEG_KEYS.map(named))}.`;
  const told = LEG_KEYS.includes(key) && typeof draft.project.body[key] === 'number' && !stale;
  return told ? say`The hem ${hemEnds(draft)}.` : UNSAID;
}
