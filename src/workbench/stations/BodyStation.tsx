import { useShallow } from 'zustand/react/shallow';
import {
  type BodyInput,
  bodyRemarks,
  crotchLengthExpected,
  type Measurement,
  type MeasurementKey,
  measurementName,
  measurements,
} from '../../body';
import { hemEnds, valueAt } from '../../project';
import { either, inside, mm, number, type Phrase, said, say, words } from '../../words';
import { Group } from '../fields/Group';
import { QuantityField } from '../fields/QuantityField';
import { SwitchField } from '../fields/SwitchField';
import { isStale, isWaiting, problemAt } from '../store/asked';
import { useBench } from '../store/bench';
import { length, years } from '../store/quantity';
import type { Bench } from '../store/state';
import { BodyCloth } from './BodyCloth';
import { BodyStart } from './BodyStart';
import { Sleeping } from './Sleeping';
import { Wearer } from './Wearer';

/** What may be measured in another’s place, by its key, stands beside that one. */
const IN_PLACE = new Set(measurements.map(({ inPlace }) => inPlace));
const needed = measurements.filter((one) => one.required || IN_PLACE.has(one.key));

/** The measurements that are not needed, by what they are for. */
const OTHERS: readonly { readonly name: Phrase; readonly keys: readonly MeasurementKey[] }[] = [
  { name: say`For the fit of the seat`, keys: ['hipDepth', 'crotchLength', 'frontCrotchLength', 'highHipGirth'] },
  { name: say`Round the leg`, keys: ['thighGirth', 'kneeGirth', 'calfGirth', 'ankleGirth', 'footEntryGirth'] },
  { name: say`For the knee line and cross-checks`, keys: ['waistToKnee', 'outsideLeg'] },
  { name: say`For the estimates`, keys: ['height', 'ageYears'] },
];

/** What it is for and whose, and the tape: the measurements that the draft needs, those that make it fit better, and the cloth that goes round. */
export default function BodyStation() {
  return (
    <>
      <Sleeping />
      <Wearer />
      <BodyStart />
      {needed.map((one) => (
        <MeasurementField key={one.key} measurement={one} />
      ))}
      <OtherMeasurements />
      <BodyCloth />
    </>
  );
}

/** The measurements whose fields wait to be filled, or hold what can't be drawn. */
const measuresAsking = (state: Bench): readonly MeasurementKey[] =>
  measurements.map(({ key }) => key).filter((key) => problemAt(state, `body.${key}`));

/** What is worth a second look; nothing is held against a number that nobody has given yet, or that is refused anyway. */
const remarksOn = (body: BodyInput, asking: readonly MeasurementKey[]) =>
  bodyRemarks(body).filter(({ keys }) => !keys.some((key) => asking.includes(key)));

function OtherMeasurements() {
  const body = useBench((state) => state.project.body);
  const keys = OTHERS.flatMap((group) => group.keys);
  const taken = keys.filter((key) => body[key] !== undefined).length;
  const asking = useBench(useShallow(measuresAsking));
  const doubtful = remarksOn(body, asking).filter(({ keys: [first] }) => first && keys.includes(first)).length;
  return (
    <details className="more">
      <summary>
        {words`More measurements`}{' '}
        <span className="quiet">{words`${number(taken, 0)} taken; others are estimated or left out`}</span>
        {doubtful > 0 && <span className="doubt-count">{words`${number(doubtful, 0)} doubtful`}</span>}
      </summary>
      {OTHERS.map((group) => (
        <Group key={group.name.template} name={said(group.name)}>
          {measurements
            .filter(({ key }) => group.keys.includes(key))
            .map((one) => (
              <MeasurementField key={one.key} measurement={one} />
            ))}
          {group.keys.includes('ageYears') && <Nappy />}
        </Group>
      ))}
    </details>
  );
}

function MeasurementField({ measurement }: { readonly measurement: Measurement }) {
  const { key, required, unit, where, inPlace } = measurement;
  const estimate = useBench((state) => state.draft.body.estimates.find((one) => one.key === key)?.value);
  const body = useBench((state) => state.project.body);
  const typed = useBench((state) => state.field === `body.${key}`);
  const asking = useBench(useShallow(measuresAsking));
  const optional = !required || (inPlace !== undefined && body[inPlace] !== undefined);
  // A remark stands by the likeliest of its measurements, and by the one that is being typed.
  const doubt = remarksOn(body, asking).find(({ keys }) => keys[0] === key || (typed && keys.includes(key)))?.phrase;
  return (
    <QuantityField
      path={`body.${key}`}
      quantity={unit === 'years' ? years : length}
      optional={optional}
      instead={optional ? estimate : undefined}
      help={useHelp(measurement)}
      heard={said(where)}
      doubt={doubt}
    />
  );
}

const named = (key: MeasurementKey): Phrase => say`${inside(measurementName(key))}`;
const LEG_KEYS: readonly MeasurementKey[] = ['insideLeg', 'trouserInseam'];

/** What is measured, and where nobody measured it what an empty field comes to. */
function useHelp({ key, definition }: Measurement): Phrase {
  const draft = useBench((state) => state.draft);
  const stale = useBench(isStale);
  const waits = useBench((state) => isWaiting(state, 'body.insideLeg'));
  const { body, project } = draft;
  if (LEG_KEYS.includes(key) && waits)
    return say`${definition} One of the two is enough: ${either(LEG_KEYS.map(named))}.`;
  // Whichever of the two was measured says what it makes the hem do.
  if (LEG_KEYS.includes(key) && project.body[key] !== undefined && !stale)
    return say`${definition} The hem ${hemEnds(draft)}.`;
  if (project.body[key] !== undefined) return say`${definition}`;
  const inferred = body.estimates.find((one) => one.key === key && one.basis === 'inference');
  if (inferred)
    return say`${definition} Nobody measured it on children: by adults’ proportions two in three lie within ${mm(inferred.spread)} of the estimate.`;
  const expected = key === 'crotchLength' ? crotchLengthExpected(body) : undefined;
  if (!expected || body.child) return say`${definition}`;
  return say`${definition} With the waist at the navel two bodies in three like this one lie within ${mm(expected.spread)} of ${mm(expected.value)}; the drawing doesn’t use it.`;
}

/** Up to this age a nappy is asked about, years. */
const NAPPY_AGE = 5;

const NAPPY = [
  { key: 'no', name: say`without` },
  { key: 'yes', name: say`with a nappy` },
];

function Nappy() {
  const age = useBench((state) => state.project.body.ageYears);
  const worn = useBench((state) => valueAt(state.project, 'body.nappy') === true);
  const choose = useBench((state) => state.choose);
  if (!worn && (age === undefined || age >= NAPPY_AGE)) return null;
  return (
    <SwitchField
      path="body.nappy"
      choices={NAPPY}
      chosen={worn ? 'yes' : 'no'}
      help={say`A nappy gets more room in the rise.`}
      onPick={(key) => choose('body.nappy', key === 'yes' ? true : undefined)}
    />
  );
}
