import { useMemo } from 'react';
import {
  type BlocksImplied,
  type BroughtBlocks,
  blocksBrought,
  blocksImplied,
  broughtTrued,
  isBrought,
  type TruedPair,
} from '../../../trace';
import { Refusal, words } from '../../../words';
import { useBench } from '../../store/bench';
import { Implied } from './Implied';
import { OnPaper } from './OnPaper';
import { PairTrued } from './PairTrued';

/** What is done to blocks of somebody’s own, by whatever road they came: allowances come off, the pair is trued; and what they say of their wearer. */
export function Brought() {
  const block = useBench((state) => state.project.block);
  const seen = useMemo(() => (isBrought(block) ? seenOrNone(block) : undefined), [block]);
  return (
    <>
      <p className="field-help">{words`These blocks were brought along. Nothing is done to them but what is chosen here, and that can be taken back.`}</p>
      <OnPaper />
      {seen && <PairTrued trued={seen.trued} />}
      {seen && <Implied implied={seen.implied} />}
    </>
  );
}

/** Undefined where the lines, the numbers or what is to be taken off are refused: that is told at their fields. */
function seenOrNone(block: BroughtBlocks): { trued: TruedPair; implied: BlocksImplied } | undefined {
  try {
    // Where the body's seat lies doesn't matter to what the blocks say of it.
    return { trued: broughtTrued(block), implied: blocksImplied(blocksBrought(block, 0), block) };
  } catch (error) {
    if (error instanceof Refusal) return undefined;
    throw error;
  }
}
