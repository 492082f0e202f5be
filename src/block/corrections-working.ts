import { mm, type Phrase, say } from '../length';
import { type Edge, outlineEdge, type WorkingStep } from '../plane';
import type { Corrections } from './corrections';
import type { BlockEdge, Blocks } from './types';

/** What is seen on the body, and what is moved for it. */
const SEEN: Readonly<Record<keyof Corrections, (amount: number) => Phrase>> = {
  flatSeat: (amount) =>
    say`Folds under the seat show a flat seat: the back extension and the back rise are ${mm(amount)} shorter.`,
  fullThigh: (amount) => say`Lines towards the crotch show full thighs: both extensions are ${mm(amount)} longer.`,
  swayBack: (amount) =>
    say`Cloth that pools above the seat shows a hollow back: the centre back waist is ${mm(amount)} lower.`,
  sittingPull: (amount) => say`It pulls down when sitting: the back rise is ${mm(amount)} longer.`,
  knockKnees: (amount) =>
    say`Drags at the knee: both inseams are let ${amount > 0 ? 'out' : 'in'} there by ${mm(Math.abs(amount))}.`,
};

/**
 * What was corrected after wearing, a step each, with the lines before and after.
 *
 * @param before the blocks as drafted or traced
 * @param after the corrected blocks
 * @param corrections what was seen, in mm
 */
export function correctionsWorking(before: Blocks, after: Blocks, corrections: Corrections): readonly WorkingStep[] {
  const lines = (blocks: Blocks, when: string): readonly Edge[] =>
    (['front', 'back'] as const).flatMap((part) =>
      (['waist', 'centre', 'crotch', 'inseam'] as const satisfies readonly BlockEdge[]).map((name) => ({
        name: `${part} ${name}, ${when}`,
        curves: outlineEdge(blocks[part].edges, name).curves,
      })),
    );
  return (Object.keys(SEEN) as (keyof Corrections)[])
    .filter((seen) => corrections[seen] !== 0)
    .map((seen) => ({
      id: `check.worn.${seen}`,
      station: 'check',
      sentence: SEEN[seen](corrections[seen]),
      formula: [],
      lines: [...lines(before, 'before'), ...lines(after, 'corrected')],
    }));
}
