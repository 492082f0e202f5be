import { type Measurement, measurements } from '../../body';
import { mm, say } from '../../length';
import { QuantityField } from '../fields/QuantityField';
import { SwitchField } from '../fields/SwitchField';
import { useBench } from '../store/bench';
import { length, percentage, years } from '../store/quantity';

const needed = measurements.filter((one) => one.required);
const others = measurements.filter((one) => !one.required);

/** The tape: four measurements that the draft needs, those that make it fit better, and the cloth that goes round. */
export function BodyStation() {
  return (
    <>
      {needed.map((one) => (
        <MeasurementField key={one.key} measurement={one} />
      ))}
      <OtherMeasurements />
      <Cloth />
    </>
  );
}

function OtherMeasurements() {
  const body = useBench((state) => state.project.body);
  const count = others.filter((one) => body[one.key] !== undefined).length;
  return (
    <details className="more">
      <summary>
        More measurements <span className="quiet">{count} taken; others are estimated or left out</span>
      </summary>
      {others.map((one) => (
        <MeasurementField key={one.key} measurement={one} />
      ))}
    </details>
  );
}

function MeasurementField({ measurement }: { readonly measurement: Measurement }) {
  const { key, required, unit, definition, where } = measurement;
  const estimate = useBench((state) => state.draft.body.estimates.find((one) => one.key === key)?.value);
  return (
    <QuantityField
      path={`body.${key}`}
      quantity={unit === 'years' ? years : length}
      optional={!required}
      instead={required ? undefined : estimate}
      help={say`${definition}`}
      heard={where}
    />
  );
}

const KINDS = [
  { key: 'woven', name: 'woven' },
  { key: 'knit', name: 'knit' },
];

function Cloth() {
  const { kind, stretch } = useBench((state) => state.project.cloth);
  const choose = useBench((state) => state.choose);
  return (
    <>
      <SwitchField
        path="cloth.kind"
        choices={KINDS}
        chosen={kind}
        help={
          kind === 'woven'
            ? say`A woven gives nothing: the opening itself has to pass over the hip.`
            : say`A knit stretches over the hip: it needs less ease, or none.`
        }
        onPick={(key) => choose('cloth.kind', key)}
      />
      {(kind === 'knit' || stretch > 0) && (
        <QuantityField
          path="cloth.stretch"
          quantity={percentage}
          help={say`How much longer ${mm(100)} of it, across the grain, can be pulled without force.`}
        />
      )}
    </>
  );
}
