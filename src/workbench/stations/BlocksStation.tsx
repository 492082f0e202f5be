import { mm, say } from '../../length';
import { AutoField } from '../fields/AutoField';
import { QuantityField } from '../fields/QuantityField';
import { useBench } from '../store/bench';
import { length } from '../store/quantity';

/** The fitted block, drafted from the body: how much room it leaves and how it is balanced. */
export function BlocksStation() {
  const riseEase = useBench((state) => state.draft.blocks.riseEase);
  return (
    <>
      <QuantityField
        path="block.hipEase"
        quantity={length}
        help={say`Room round the fullest part, before the leg is spread.`}
      />
      <QuantityField
        path="block.waistEase"
        quantity={length}
        help={say`Room round the waist of the block; darts take up the rest.`}
      />
      <AutoField
        path="block.riseEase"
        quantity={length}
        automatic={riseEase}
        help={say`How far the crotch line lies below the seat; now ${mm(riseEase)}.`}
      />
      <QuantityField
        path="block.balance"
        quantity={length}
        help={say`How much wider each back is than the middle, and each front narrower.`}
      />
    </>
  );
}
