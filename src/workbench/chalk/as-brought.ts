import { useMemo } from 'react';
import type { Block } from '../../block';
import { blockMoved } from '../../leg';
import { add, subtract } from '../../plane';
import type { Draft } from '../../project';
import { blocksBrought, isBrought } from '../../trace';
import { Refusal } from '../../words';
import { useBench } from '../store/bench';

/** The present draft with its blocks as somebody brought them, untrued and with their allowances; undefined where nothing was done to them. */
export function useAsBrought(): Draft | undefined {
  const draft = useBench((state) => state.draft);
  return useMemo(() => asBrought(draft), [draft]);
}

function asBrought(draft: Draft): Draft | undefined {
  const { block } = draft.project;
  if (!isBrought(block)) return undefined;
  const { allowances = {}, trued = [], ...lines } = block;
  if (trued.length === 0 && Object.values(allowances).every((width) => !width)) return undefined;
  try {
    const blocks = blocksBrought(lines, draft.body.bodyRise);
    const { uncorrected: now } = draft.origin.drafted;
    const [front, back] = [laidOn(blocks.front, now.front), laidOn(blocks.back, now.back)];
    return { ...draft, blocks: { ...blocks, front, back } };
  } catch (error) {
    if (error instanceof Refusal) return undefined;
    throw error;
  }
}

/** A block on its grainline’s place in another one: that is the same, whatever was taken off or trued. */
function laidOn(block: Block, other: Block): Block {
  const by = subtract(other.grainline[0], block.grainline[0]);
  return blockMoved(block, (p) => add(p, by));
}
