import { mm, say } from '../../words';
import { QuantityField } from '../fields/QuantityField';
import { SwitchField } from '../fields/SwitchField';
import { useBench } from '../store/bench';
import { percentage } from '../store/quantity';

const KINDS = [
  { key: 'woven', name: say`woven` },
  { key: 'knit', name: say`knit` },
];

/** The cloth, asked together with the body: what goes round it has to pass over it. */
export function BodyCloth() {
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
      <Washing />
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

const WASHED = [
  { key: 'first', name: say`washed first` },
  { key: 'later', name: say`not washed` },
];

/** Cloth that shrinks after it is sewn is cut larger. */
function Washing() {
  const { washFirst } = useBench((state) => state.project.cloth);
  const choose = useBench((state) => state.choose);
  return (
    <SwitchField
      path="cloth.washFirst"
      choices={WASHED}
      chosen={washFirst ? 'first' : 'later'}
      help={
        washFirst
          ? say`Wash and dry it as you will the trousers, before it is cut.`
          : say`The leg is drawn larger by what the cloth will lose, and says so; how much that is stands at Cloth.`
      }
      onPick={(key) => choose('cloth.washFirst', key === 'first')}
    />
  );
}
