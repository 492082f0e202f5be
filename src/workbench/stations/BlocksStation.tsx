import { mm, say, words } from '../../words';
import { AutoField } from '../fields/AutoField';
import { QuantityField } from '../fields/QuantityField';
import { isStale } from '../store/asked';
import { useBench } from '../store/bench';
import { length } from '../store/quantity';
import { take } from '../take/taking';
import { Brought } from './blocks/Brought';
import { NumbersTable } from './blocks/NumbersTable';
import { SourceChoice } from './blocks/SourceChoice';

/** The fitted block: drafted from the body, or brought along. */
export default function BlocksStation() {
  const source = useBench((state) => state.project.block.source);
  return (
    <>
      <SourceChoice />
      {source === 'drafted' && <DraftedBlocks />}
      {source === 'numbers' && <NumbersTable />}
      {source !== 'drafted' && <Brought />}
      <SaveBlocks />
    </>
  );
}

/** How much room the drafted block leaves, and how it is balanced. */
function DraftedBlocks() {
  const riseEase = useBench((state) => state.draft.blocks.riseEase);
  // What a nappy and the fit of a measured crotch length add is added to a choice by hand as well.
  const chosen = useBench((state) => state.draft.proportions?.riseEaseChosen ?? riseEase);
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
        automatic={chosen}
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

/** The way out, for blocks that are corrected elsewhere. */
function SaveBlocks() {
  const stale = useBench(isStale);
  return (
    <div className="take">
      <button type="button" className="button" disabled={stale} onClick={() => take('blocks')}>
        <span className="take-name">{words`Save these blocks`}</span>
        <span className="take-what">{words`as a drawing at true size, to print, correct and bring back`}</span>
      </button>
    </div>
  );
}
