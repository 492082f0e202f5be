import { LENGTH_NAMES } from '../../leg';
import { hemEnds } from '../../project';
import { mm, part, rounding, say, words } from '../../words';
import { Fold } from '../fields/Fold';
import { PickField } from '../fields/PickField';
import { QuantityField } from '../fields/QuantityField';
import { useBench } from '../store/bench';
import { length, nearestStep } from '../store/quantity';
import { StraightenField } from './StraightenField';

/** Joining, spreading, straightening, shape and length: what makes a leg of two blocks. */
export default function LegStation() {
  const spread = useBench((state) => state.draft.measures.spread);
  return (
    <>
      <QuantityField
        path="leg.spread"
        quantity={length}
        help={say`Opens the join: each leg gets wider, the pair by 2 × ${part(spread)}${rounding(2 * spread, { mm: spread, times: 2 })} = ${part(2 * spread)}. Woven cloth needs it.`}
      />
      <StraightenField />
      <Shape />
      <Length />
      <Fold name={words`More of the leg`} paths={['leg.raiseWaist', 'leg.lowerCrotch']}>
        <QuantityField
          path="leg.raiseWaist"
          quantity={length}
          help={say`Puts the waist edge higher on the body; a minus value lowers it.`}
        />
        <QuantityField path="leg.lowerCrotch" quantity={length} help={say`More room to sit, and a looser look.`} />
      </Fold>
    </>
  );
}

const SHAPES = [
  { key: 'pyjama', name: say`pyjama, tapered` },
  { key: 'straight', name: say`straight` },
  { key: 'block', name: say`as the block` },
  { key: 'hemGirth', name: say`to a hem girth` },
];

function Shape() {
  const { shape } = useBench((state) => state.project.leg);
  const { hemGirthFinished } = useBench((state) => state.draft.measures);
  const foot = useBench((state) => state.draft.body.footEntryGirth);
  const units = useBench((state) => state.project.units);
  const choose = useBench((state) => state.choose);
  const byHand = typeof shape !== 'string';
  return (
    <>
      <PickField
        path="leg.shape"
        choices={SHAPES}
        chosen={byHand ? 'hemGirth' : shape}
        help={say`Hem ${mm(hemGirthFinished)} round; the foot needs ${mm(foot)}.`}
        onPick={(key) =>
          choose(
            'leg.shape',
            key === 'hemGirth' ? { hemGirth: nearestStep(hemGirthFinished, length.step(units)) } : key,
          )
        }
      />
      {byHand && <QuantityField path="leg.shape.hemGirth" quantity={length} help={say`Round the finished hem.`} />}
    </>
  );
}

const LENGTHS = [
  ...Object.entries(LENGTH_NAMES).map(([key, name]) => ({ key, name: say`${name}` })),
  { key: 'inseam', name: say`an inseam` },
];

function Length() {
  const chosen = useBench((state) => state.project.leg.length);
  const draft = useBench((state) => state.draft);
  const { inseamFront } = draft.measures;
  const units = useBench((state) => state.project.units);
  const choose = useBench((state) => state.choose);
  const byHand = typeof chosen !== 'string';
  return (
    <>
      <PickField
        path="leg.length"
        choices={LENGTHS}
        chosen={byHand ? 'inseam' : chosen}
        help={say`Finished inseam ${mm(inseamFront)}; the hem ${hemEnds(draft)}.`}
        onPick={(key) =>
          choose('leg.length', key === 'inseam' ? { inseam: nearestStep(inseamFront, length.step(units)) } : key)
        }
      />
      {byHand && (
        <QuantityField
          path="leg.length.inseam"
          quantity={length}
          help={say`From the crotch seam to the finished hem, along the inseam.`}
        />
      )}
    </>
  );
}
