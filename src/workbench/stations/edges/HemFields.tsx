import { HEM_FINISH_NAMES } from '../../../edges';
import { hemOf } from '../../../project';
import { mm, say, words } from '../../../words';
import { AutoField } from '../../fields/AutoField';
import { Fold } from '../../fields/Fold';
import { PickField } from '../../fields/PickField';
import { QuantityField } from '../../fields/QuantityField';
import { useBench } from '../../store/bench';
import { length, percentage } from '../../store/quantity';
import { CordField } from './CordField';

const FINISHES = Object.entries(HEM_FINISH_NAMES).map(([key, name]) => ({ key, name }));

/** How the hem is finished, and what that finish asks: first how deep or wide it is, the rest folded away. */
export function HemFields() {
  const { finish } = useBench((state) => state.project.hem);
  const { hemGirthFinished } = useBench((state) => state.draft.measures);
  const { hemElasticLength } = useBench((state) => state.draft.notions);
  const choose = useBench((state) => state.choose);
  const band = finish === 'contrastBand' || finish === 'ribCuff';
  const deep = finish === 'turned' || finish === 'facedHem';
  return (
    <>
      <PickField
        path="hem.finish"
        choices={FINISHES}
        chosen={finish}
        help={say`The leg ends ${mm(hemGirthFinished)} round.`}
        onPick={(key) => choose('hem.finish', key)}
      />
      {deep && <QuantityField path="hem.depth" quantity={length} help={say`How deep it lies inside the leg.`} />}
      {finish === 'elasticCasing' && (
        <QuantityField
          path="hem.elasticWidth"
          quantity={length}
          help={say`Cut it ${mm(hemElasticLength ?? 0)} long for each hem.`}
        />
      )}
      {finish === 'drawstringCasing' && (
        <QuantityField path="hem.cordWidth" quantity={length} help={say`It comes out at the side.`} />
      )}
      {band && (
        <QuantityField
          path="hem.bandHeight"
          quantity={length}
          help={say`When it is folded; the leg ends that much higher.`}
        />
      )}
      {finish === 'ribCuff' && (
        <QuantityField
          path="hem.ribStretch"
          quantity={percentage}
          help={say`Measured: how much longer the rib gets.`}
        />
      )}
      {!band && (
        <Fold
          name={words`More at the hem`}
          paths={['hem.turnUnder', ...(finish === 'drawstringCasing' ? ['hem.cordLength', 'hem.cord'] : [])]}
        >
          <TurnUnder />
          {finish === 'drawstringCasing' && <Cord />}
        </Fold>
      )}
    </>
  );
}

function TurnUnder() {
  const turnUnder = useBench((state) => hemOf(state.draft.project).turnUnder);
  return (
    <AutoField
      path="hem.turnUnder"
      quantity={length}
      automatic={turnUnder}
      help={
        turnUnder > 0
          ? say`Its raw edge, ${mm(turnUnder)} tucked in.`
          : say`Nothing is tucked in: its edge is overlocked or zigzagged.`
      }
    />
  );
}

function Cord() {
  const { hemCordLength } = useBench((state) => state.draft.notions);
  return (
    <>
      <AutoField
        path="hem.cordLength"
        quantity={length}
        automatic={hemCordLength ?? 0}
        help={say`Cut it ${mm(hemCordLength ?? 0)} long for each hem.`}
      />
      <CordField path="hem.cord" />
    </>
  );
}
