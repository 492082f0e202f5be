import type { Mm } from '../length';
import { type Edge, outlineEdge, type WorkingStep } from '../plane';
import { inTurn, mm, type Phrase, say, UNSAID } from '../words';
import type { CorrectedBy, Corrections } from './corrections';
import type { BlockEdge, Blocks } from './types';

/** What is seen on the body, and what was moved for it. */
const SEEN: Readonly<Record<keyof Corrections, (by: CorrectedBy, amount: Mm) => Phrase>> = {
  flatSeat: (_, amount) =>
    say`Folds under the seat show a flat seat: the back extension and the back rise are ${mm(amount)} shorter.`,
  fullSeat: ({ backUp, backOut }) =>
    say`Drags from the seat show a full seat: centre back is ${mm(backUp)} higher, the back extension ${mm(backOut)} longer.`,
  fullThigh: (_, amount) => say`Lines towards the crotch show full thighs: both extensions are ${mm(amount)} longer.`,
  swayBack: (_, amount) =>
    say`Cloth that pools above the seat shows a hollow back: the centre back waist is ${mm(amount)} lower.`,
  prominentAbdomen: (_, amount) =>
    say`A waist that dips in front shows a prominent abdomen: the centre front waist is ${mm(amount)} higher.`,
  sittingPull: ({ backUp, backOut }) =>
    backOut === 0
      ? say`It pulls down when sitting: centre back is ${mm(backUp)} higher. Centre front stays.`
      : say`It pulls down when sitting: centre back is ${mm(backUp)} higher, and since the waist edge may tilt no further, the back extension is ${mm(backOut)} longer. Centre front stays.`,
  seated: ({ frontUp, backUp, backOut, longer }) => {
    const moved = [
      ...(frontUp === 0 ? [] : [say`centre front is ${mm(-frontUp)} lower`]),
      ...(backUp === 0 ? [] : [say`centre back ${mm(backUp)} higher`]),
      ...(backOut === 0
        ? []
        : [say`since the waist edge may tilt no further, the back extension is ${mm(backOut)} longer`]),
      say`the leg is ${mm(longer)} longer`,
    ];
    return say`It is worn sitting: ${inTurn(moved, ', ')}.`;
  },
  knockKnees: (_, amount) =>
    amount > 0
      ? say`Drags at the knee: both inseams are let out there by ${mm(amount)}.`
      : say`Drags at the knee: both inseams are let in there by ${mm(-amount)}.`,
};

/**
 * What was corrected after wearing, a step each, with the lines before and after.
 *
 * @param before the blocks as drafted or traced
 * @param after the corrected blocks
 * @param corrections what was seen, in mm
 * @param moves what each of them moved
 */
export function correctionsWorking(
  before: Blocks,
  after: Blocks,
  corrections: Corrections,
  moves: Readonly<Record<keyof Corrections, CorrectedBy>>,
): readonly WorkingStep[] {
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
      sentence: SEEN[seen](moves[seen], corrections[seen]),
      formula: UNSAID,
      lines: [...lines(before, 'before'), ...lines(after, 'corrected')],
    }));
}
