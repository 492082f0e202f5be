import { useMemo } from 'react';
import { type BroughtBlocks, broughtTrued, isBrought, type TruedPair } from '../../../trace';
import { Refusal } from '../../../words';
import { useBench } from '../../store/bench';
import { OnPaper } from './OnPaper';
import { PairTrued } from './PairTrued';

/** What is done to blocks of somebody’s own, by whatever road they came: allowances come off, the pair is trued. */
export function Brought() {
  const block = useBench((state) => state.project.block);
  const trued = useMemo(() => (isBrought(block) ? truedOrNone(block) : undefined), [block]);
  return (
    <>
      <OnPaper />
      {trued && <PairTrued trued={trued} />}
    </>
  );
}

/** Undefined where the lines, the numbers or what is to be taken off are refused: that is told at their fields. */
function truedOrNone(block: BroughtBlocks): TruedPair | undefined {
  try {
    return broughtTrued(block);
  } catch (error) {
    if (error instanceof Refusal) return undefined;
    throw error;
  }
}
