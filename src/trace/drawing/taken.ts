import type { Mm } from '../../length';
import { dot, subtract, unit } from '../../plane';
import { mm, number, own, type Phrase, type Problem, Refusal, type Result, say } from '../../words';
import type { TracedPair } from '../marks';
import { blockFromReading, frontOfTwo } from './block';
import type { BlockReading } from './block-reading';
import type { Drawing } from './drawn';
import { outlinesOf } from './outlines';
import { outlineScaled, readingOf } from './reading';
import { isBlockSize, outlineReach, widestGap } from './size';
import { pointRound } from './way-round';

/** Two blocks that a drawing shows by its shapes alone, and what a person should know of how they were read. */
export interface BlocksTaken {
  readonly pair: TracedPair;
  readonly told: readonly Phrase[];
}

/** A gap that is closed is told from this on, millimetres. @source tolerance */
const TOLD_GAP: Mm = 0.05;

/**
 * The blocks of a drawing that holds just two closed outlines, each with its grainline, whose corners can only be meant in
 * one way. Nothing is taken that could as well be otherwise, but a hip line that isn’t drawn: that is told.
 *
 * @returns the blocks, or a sentence for each thing that isn’t plain
 */
export function blocksTaken(drawing: Drawing): Result<BlocksTaken> {
  const refused = (field: string, value: unknown, phrase: Phrase): Problem => ({ field, value, phrase });
  const { unit: size } = drawing;
  if (size === undefined)
    return {
      ok: false,
      problems: [
        refused(
          'file',
          undefined,
          say`doesn’t tell in which unit it is drawn: save it with its unit, or as SVG with a width in mm, cm or in.`,
        ),
      ],
    };
  const outlines = outlinesOf(drawing, widestGap(drawing)).map((outline) => outlineScaled(outline, size));
  const [one, other] = outlines;
  if (!one || !other || outlines.length > 2)
    return {
      ok: false,
      problems: [
        refused(
          'file',
          outlines.length,
          say`has ${number(outlines.length, 0)} closed outlines, where a front and a back are wanted: leave these two alone in it, or call their lines front-waist, front-centre and so on.`,
        ),
      ],
    };
  const reach = Math.max(outlineReach(one), outlineReach(other));
  if (!isBlockSize(reach))
    return {
      ok: false,
      problems: [
        refused('file', reach, say`would have blocks of ${mm(reach)}: is its unit the one that it is drawn in?`),
      ],
    };
  const readings = [readingOf(one), readingOf(other)] as const;
  const { front, sure } = frontOfTwo([one, other], readings);
  const pick = { front: readings[front], back: readings[front === 0 ? 1 : 0] };
  const problems = [
    ...(sure
      ? []
      : [
          refused(
            'file',
            undefined,
            say`doesn’t show which outline is the front: write “front” in the one and “back” in the other.`,
          ),
        ]),
    ...(['front', 'back'] as const).flatMap((part) => doubtsOf(part, pick[part])),
  ];
  if (problems.length > 0) return { ok: false, problems };
  try {
    const pair = { front: blockFromReading('front', pick.front), back: blockFromReading('back', pick.back) };
    return { ok: true, value: { pair, told: toldOf(drawing, Math.max(one.gap, other.gap), pick) } };
  } catch (error) {
    if (error instanceof Refusal) return { ok: false, problems: error.problems };
    throw error;
  }
}

/** What keeps a reading from being taken unseen. */
function doubtsOf(part: 'front' | 'back', { doubts, grain }: BlockReading): readonly Problem[] {
  const problem = (phrase: Phrase): readonly Problem[] => [{ field: part, value: undefined, phrase }];
  const corners = [...doubts].some((one) => one !== 'grain' && one !== 'hip');
  if (corners)
    return problem(
      say`has corners that can be taken for those of a block in more than one way, or in none: call its lines ${own(`${part}-waist, ${part}-centre`)} and so on.`,
    );
  if (!grain) return problem(say`has no grainline: draw it as a straight line within the block.`);
  return doubts.has('grain')
    ? problem(say`has more than one line that may be its grainline: give it arrowheads, or call it “grainline”.`)
    : [];
}

function toldOf(
  { unread }: Drawing,
  gap: Mm,
  pick: Readonly<Record<'front' | 'back', BlockReading>>,
): readonly Phrase[] {
  const hips = (['front', 'back'] as const).flatMap((part) => {
    const reading = pick[part];
    const depth = hipDepth(reading);
    if (depth === undefined || !reading.doubts.has('hip')) return [];
    return part === 'front'
      ? [say`The front has no plain hip line; it is taken to lie ${mm(depth)} below the waist at the side.`]
      : [say`The back has no plain hip line; it is taken to lie ${mm(depth)} below the waist at the side.`];
  });
  return [
    say`Front and back, their corners and edges were found by their shapes.`,
    ...hips,
    ...(gap >= TOLD_GAP ? [say`Gaps of up to ${mm(gap)} between the lines were closed.`] : []),
    ...unreadTold(unread),
  ];
}

/** That lines were passed over, where some were. */
export const unreadTold = (unread: number): readonly Phrase[] =>
  unread === 0
    ? []
    : unread === 1
      ? [say`One line was passed over, because it can’t be told where it lies.`]
      : [say`${number(unread, 0)} lines were passed over, because it can’t be told where they lie.`];

/** How far below the waist at the side the hip lies, along the grain. */
function hipDepth({ way, places, grain, hip }: BlockReading): Mm | undefined {
  if (!grain || !hip || places.waistSide === undefined) return undefined;
  return dot(subtract(hip, pointRound(way, places.waistSide)), unit(subtract(grain[1], grain[0])));
}
