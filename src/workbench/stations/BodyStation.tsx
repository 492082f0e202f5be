import { useShallow } from 'zustand/react/shallow';
import { type MeasurementKey, measurements } from '../../body';
import { valueAt } from '../../project';
import { number, type Phrase, said, say, words } from '../../words';
import { Group } from '../fields/Group';
import { SwitchField } from '../fields/SwitchField';
import { useBench } from '../store/bench';
import { BodyCloth } from './BodyCloth';
import { BodyStart } from './BodyStart';
import { EstimateRest } from './body/EstimateRest';
import { MeasurementField } from './body/MeasurementField';
import { measuresAsking, remarksOn } from './body/measured';
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
      <EstimateRest />
      <OtherMeasurements />
      <BodyCloth />
    </>
  );
}

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
