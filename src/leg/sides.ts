import type { Mm } from '../length';
import {
  between,
  type Curve,
  curveMap,
  type Point,
  pathEnd,
  pathLength,
  pathReaimed,
  pathStart,
  pathStartWay,
  point,
  solveBetween,
  straight,
  TOLERANCE,
} from '../plane';
import { type Phrase, say } from '../words';
import { arrivalAt, inseamStretched } from './inseams';
import { blockCurves, blockMoved, type JoinedBlocks } from './join';
import { type LegChoices, legFrom } from './leg';
import { overSide } from './over-side';
import type { Leg, LegHalf } from './types';

/** A leg as it is worn. */
export type Side = 'left' | 'right';

/** What people call a side. */
export const SIDE_NAMES: Readonly<Record<Side, Phrase>> = { left: say`left`, right: say`right` };

/** What one side of a body has more than the measurements say, mm, each 0 or more. */
export interface SideDifferences {
  /** Its hip is fuller: the leg is so much wider, half in front, half behind. */
  readonly fullerHip: Mm;
  /** Its seat is fuller: so much wider behind. */
  readonly fullerSeat: Mm;
  /** Its hip is higher: the waist edge lies so much higher over the side. */
  readonly higherHip: Mm;
  /** Its leg is longer: both inseams are. */
  readonly longerLeg: Mm;
}

/** What one side of a body has more than the other; what is left out is alike. */
export type Sides = { readonly [S in Side]?: Partial<SideDifferences> };

/** A side that is as the measurements say. @source geometry */
export const NO_DIFFERENCES: SideDifferences = { fullerHip: 0, fullerSeat: 0, higherHip: 0, longerLeg: 0 };

/**
 * The leg of one side of a body whose sides differ, made of the leg that fits both.
 *
 * What is sewn to the other leg stays as long as it was: the centre lines are moved as they are, and the crotch curves,
 * which meet wider-slanting inseams, are brought back to their length by their handles. So any two legs of one body can
 * be sewn to each other, front to front and back to back, and their notches meet.
 *
 * @param leg the leg that both sides would have
 * @param joined the joined and spread blocks it was drawn from
 * @param choices all that was chosen about it
 * @param more what this side has more
 * @throws Refusal where the chosen hem can't be reached on a leg so much wider
 * @source practice; a fitted garment would be shaped at the side seam, which this one doesn't have
 */
export function legOfSide(leg: Leg, joined: JoinedBlocks, choices: LegChoices, more: SideDifferences): Leg {
  const { inFront, behind } = widerBy(more);
  const wider = joinedOfSide(joined, more);
  const spread = choices.spread + inFront + behind;
  const wide = inFront + behind === 0 ? leg : legFrom(wider, { ...choices, spread });
  const front = halfOfSide(leg.front, wide.front, inFront, more.longerLeg);
  const back = halfOfSide(leg.back, wide.back, -behind, more.longerLeg);
  return {
    ...wide,
    // What is chosen is the spread of both legs.
    spread: leg.spread,
    front,
    back,
    waistEdge: overSide([back.waistPoint, front.waistPoint], more.higherHip),
    waistTurned: leg.waistTurned,
    waistLifted: leg.waistLifted,
    higherSide: more.higherHip,
    hem: [straight(pathEnd(front.inseam), pathEnd(back.inseam))],
    kneeLevel: leg.kneeLevel === undefined ? undefined : kneeOf(leg, wide.front, front),
    backCrotchDrop: back.crotchPoint.y - front.crotchPoint.y,
    crotchChange: leg.crotchChange,
    joined: { front: blockCurves(wider.front), back: blockCurves(wider.back) },
  };
}

/** How much wider a side is, in front and behind. */
const widerBy = ({ fullerHip, fullerSeat }: SideDifferences): { readonly inFront: Mm; readonly behind: Mm } => ({
  inFront: fullerHip / 2,
  behind: fullerHip / 2 + fullerSeat,
});

/**
 * The blocks as they lie for one side of a body whose sides differ.
 *
 * @param joined the joined and spread blocks
 * @param more what this side has more
 */
export function joinedOfSide(joined: JoinedBlocks, more: SideDifferences): JoinedBlocks {
  const { inFront, behind } = widerBy(more);
  return {
    ...joined,
    front: blockMoved(joined.front, (p) => point(p.x + inFront, p.y)),
    back: blockMoved(joined.back, (p) => point(p.x - behind, p.y)),
  };
}

/** The knee goes down with the inseam, by its share of what that grew. */
function kneeOf({ kneeLevel = 0 }: Leg, before: LegHalf, after: LegHalf): Mm {
  const [crotch, hem] = [before.crotchPoint.y, pathEnd(before.inseam).y];
  return kneeLevel + ((kneeLevel - crotch) / (hem - crotch)) * (pathEnd(after.inseam).y - hem);
}

/** A half whose centre is the other leg's, moved, and whose inseam is its own. */
function halfOfSide(half: LegHalf, wide: LegHalf, moved: Mm, longer: Mm): LegHalf {
  if (moved === 0 && longer === 0 && half === wide) return half;
  const inseam = inseamLonger(wide.inseam, longer);
  const place = ({ x, y }: Point): Point => point(x + moved, y);
  const curve = half.crotch.map((part) => curveMap(part, place));
  const reaimed = pathReaimed(
    curve,
    { at: pathStart(curve), way: pathStartWay(curve) },
    arrivalAt(wide.crotch, wide.inseam, inseam),
  );
  return {
    ...half,
    waistPoint: place(half.waistPoint),
    hipPoint: place(half.hipPoint),
    curveEnd: place(half.curveEnd),
    crotchPoint: pathStart(inseam),
    crotch: curveAtLength(reaimed, pathLength(half.crotch)),
    inseam,
  };
}

/** An inseam so much longer: stretched along the grain from its crotch point down, so that no width changes. */
function inseamLonger(inseam: readonly Curve[], longer: Mm): readonly Curve[] {
  if (longer === 0) return inseam;
  const top = pathStart(inseam).y;
  const length = pathLength(inseam);
  const at = (stretch: number): readonly Curve[] => inseamStretched(inseam, top, stretch);
  // Seldom much steeper than upright: twice the share is more than any leg asks for.
  const most = 1 + (2 * longer) / length;
  return at(solveBetween((stretch) => pathLength(at(stretch)) - length - longer, 1, most, TOLERANCE.solved));
}

/** How far the outer handles of a crotch curve are drawn in or out to keep its length, at most. @source tolerance */
const HANDLES = [0.5, 1.7] as const;

/** A path brought to a length by the handles at its two ends: places and directions there stay. */
function curveAtLength(path: readonly Curve[], length: Mm): readonly Curve[] {
  const at = (share: number): readonly Curve[] =>
    path.map(
      ([a, b, c, d], i): Curve => [
        a,
        i === 0 ? between(a, b, share) : b,
        i === path.length - 1 ? between(d, c, share) : c,
        d,
      ],
    );
  return at(solveBetween((share) => pathLength(at(share)) - length, ...HANDLES, TOLERANCE.solved));
}
