import { ASCENT, DESCENT, type Ink, inkCrosses, mmOfPt, type WidthOf } from '../../drawing';
import type { Mm } from '../../length';
import { type Box, boxesMeet, type Point, point } from '../../plane';
import type { SheetPart, SheetPlan } from '../../sheets';
import { words } from '../../words';

/** A few words along a join that say what to do there. */
export interface JoinNote {
  readonly text: string;
  /** The middle of the baseline, on the drawing. */
  readonly at: Point;
  readonly turn: 0 | -90;
  readonly box: Box;
}

export const JOIN_NOTE_PT = 5.5;
/** Between the join and the words, on the paper. */
const AWAY: Mm = 0.8;
/** From one tried place to the next, and from the ends of the join to the first, on the paper. */
const STEP: Mm = 4;
const END: Mm = 8;

/**
 * The words along a sheet's joins: where its margin is cut off, and up to where the neighbour will cover it. A join
 * along which no place is free, or an overlap too narrow for words, has none: the first sheet says it all.
 */
export function placeJoinNotes(
  plan: SheetPlan,
  sheet: SheetPart,
  ink: Ink,
  taken: readonly Box[],
  widthOf: WidthOf,
): readonly JoinNote[] {
  const em = mmOfPt(JOIN_NOTE_PT);
  const height = em * (ASCENT + DESCENT);
  const covered = plan.overlap >= height + 2 * AWAY;
  const cut = words`cut along this line`;
  const lay = words`the next sheet starts at this line`;
  return sheet.joins.flatMap(({ side, at, from, to }) => {
    const turn = side === 'left' || side === 'right' ? -90 : 0;
    const trimmed = side === 'left' || side === 'top';
    const text = trimmed || plan.overlap === 0 ? cut : lay;
    if (text === lay && !covered) return [];
    const down = turn === -90;
    const across = down ? plan.scale.x : plan.scale.y;
    const along = down ? plan.scale.y : plan.scale.x;
    // Words lie on the lower and right side of their join, but where nothing is printed there.
    const ends = plan.overlap === 0 && !trimmed;
    const near = ends ? at - (AWAY + height) / across : at + AWAY / across;
    const far = near + height / across;
    const half = widthOf(text, JOIN_NOTE_PT) / 2 / along;
    for (let s = from + half + END / along; s <= to - half - END / along; s += STEP / along) {
      const box = down
        ? { left: near, right: far, top: s - half, bottom: s + half }
        : { left: s - half, right: s + half, top: near, bottom: far };
      if (inkCrosses(ink, box) || taken.some((other) => boxesMeet(other, box))) continue;
      const line = near + (ASCENT * em) / across;
      return [{ text, at: down ? point(line, s) : point(s, line), turn, box }];
    }
    return [];
  });
}
