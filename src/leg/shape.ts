import { STEEPEST_INSEAM } from '../block';
import type { Mm } from '../length';
import {
  type Curve,
  curveMap,
  curveMeetsLine,
  curvePoint,
  hollowLineWithin,
  outlineEdge,
  type Point,
  pathEnd,
  pathLength,
  pathStart,
  pathStartWay,
  point,
  slantExcess,
  solveBetween,
  straight,
  TOLERANCE,
} from '../plane';
import type { JoinedBlocks } from './join';

export type Shape = 'block' | 'pyjama' | 'straight';

/** Both inseams at ankle length, equally long, hung from the crotch points. */
export interface Inseams {
  readonly front: readonly Curve[];
  readonly back: readonly Curve[];
  readonly backCrotchDrop: Mm;
  /** Taken off each block inseam at the hem; negative where the leg is wider than the blocks. */
  readonly takenOffEachSide: Mm;
}

/** A pyjama leg narrows to this share of its width at the crotch (practice). */
const PYJAMA_TAPER = 0.7;
/** A hem is this much wider than the foot that must pass it (practice: twice what the check asks). */
const FOOT_ROOM = 40;

/**
 * The hem of a pyjama leg: 0.70 of the thigh line, but never so narrow that the foot doesn't pass (practice; that the hem
 * must pass heel and instep: *Measurements for Fitting Pants*, New Mexico State University Extension, C-209).
 *
 * @param thighLine the width at the crotch, from crotch point to crotch point
 * @param footEntry girth round heel and instep
 */
export const pyjamaHem = (thighLine: Mm, footEntry: Mm): Mm =>
  Math.max(PYJAMA_TAPER * thighLine, footEntry + FOOT_ROOM);

/** What a leg is drawn by at ankle length. */
export interface InseamChoices {
  /** `block`: the block's own lines; `straight`: upright below the knee; `pyjama`: one hollow line, upright at the hem. */
  readonly shape: Shape;
  /** Finished hem at the ankle, for `pyjama`. */
  readonly hemWidth: Mm;
  /** A chosen hem is kept, however steep the inseams must start for it; otherwise it is let out. */
  readonly hemChosen: boolean;
  /** The inseam at the ankle. */
  readonly length: Mm;
  /** How far both crotch points are lowered. */
  readonly lowerCrotch: Mm;
}

/**
 * The inseams of the chosen shape at ankle length. The back crotch point is dropped until both are equally long.
 *
 * None leaves the crotch steeper than a block's inseam may ({@link STEEPEST_INSEAM}): where it would, it is hollowed
 * less, then knee or hem are let out (practice). Only a chosen hem is kept.
 *
 * @param joined the joined and spread blocks
 * @param choices shape, hem, length and crotch
 */
export function inseamsOf(joined: JoinedBlocks, choices: InseamChoices): Inseams {
  const { shape, hemWidth, hemChosen, length, lowerCrotch } = choices;
  if (shape === 'block') return blockInseams(joined, lowerCrotch);
  const ends = blockEnds(joined);
  const frontTop = point(ends.frontCrotch.x, ends.frontCrotch.y + lowerCrotch);
  const backTop = (drop: Mm) => point(ends.backCrotch.x, frontTop.y + drop);
  const takenOff = shape === 'pyjama' ? (ends.frontHem.x - ends.backHem.x - hemWidth) / 2 : 0;
  const line = (top: Point, part: 'front' | 'back', hemLevel: Mm): readonly Curve[] => {
    const outwards = part === 'front' ? 1 : -1;
    const steepest = steepestOf(inseamOf(joined, part));
    const letOut = (at: Point) => point(at.x + outwards * slantExcess(top, at, 0, steepest), at.y);
    if (shape === 'pyjama') {
      const hem = point(part === 'front' ? ends.frontHem.x - takenOff : ends.backHem.x + takenOff, hemLevel);
      return [hollowLineWithin(top, hemChosen ? hem : letOut(hem), 0, steepest)];
    }
    const knee = letOut(pointAtLevel(inseamOf(joined, part), joined[part].kneeLevel));
    return [hollowLineWithin(top, knee, 0, steepest), straight(knee, point(knee.x, hemLevel))];
  };
  const frontLevel = (level: Mm) => pathLength(line(frontTop, 'front', level));
  const hemLevel = solveBetween(
    (y) => frontLevel(y) - length,
    frontTop.y + 0.6 * length,
    frontTop.y + length,
    TOLERANCE.solved,
  );
  const drop = solveBetween(
    (d) => pathLength(line(backTop(d), 'back', hemLevel)) - length,
    -0.3 * length,
    0.3 * length,
    TOLERANCE.solved,
  );
  return {
    front: line(frontTop, 'front', hemLevel),
    back: line(backTop(drop), 'back', hemLevel),
    backCrotchDrop: drop,
    takenOffEachSide: takenOff,
  };
}

/** The slant at which a leg's inseam may start: a traced block that leaves its crotch steeper was drawn so, and may. */
function steepestOf(own: readonly Curve[]): number {
  const way = pathStartWay(own);
  return way.y > 0 ? Math.max(STEEPEST_INSEAM, Math.abs(way.x) / way.y) : STEEPEST_INSEAM;
}

/**
 * The blocks' own inseams. A lowered crotch shortens them in every direction alike, up from the hem: they keep all their
 * angles, so that the crotch curves arrive as they did, and stay as long as each other.
 */
function blockInseams(joined: JoinedBlocks, lowerCrotch: Mm): Inseams {
  const [front, back] = [inseamOf(joined, 'front'), inseamOf(joined, 'back')];
  const shortened = 1 - lowerCrotch / (pathEnd(front).y - pathStart(front).y);
  const lowered = (inseam: readonly Curve[]): readonly Curve[] => {
    const [top, hem] = [pathStart(inseam), pathEnd(inseam)];
    const place = (p: Point) => point(top.x + shortened * (p.x - top.x), hem.y - shortened * (hem.y - p.y));
    return inseam.map((curve) => curveMap(curve, place));
  };
  const lines = lowerCrotch === 0 ? { front, back } : { front: lowered(front), back: lowered(back) };
  const wider = pathEnd(lines.front).x - pathEnd(front).x - (pathEnd(lines.back).x - pathEnd(back).x);
  return { ...lines, backCrotchDrop: pathStart(lines.back).y - pathStart(lines.front).y, takenOffEachSide: -wider / 2 };
}

/** The width from crotch point to crotch point. */
export function thighLineOf(joined: JoinedBlocks): Mm {
  const ends = blockEnds(joined);
  return ends.frontCrotch.x - ends.backCrotch.x;
}

const inseamOf = (joined: JoinedBlocks, part: 'front' | 'back') => outlineEdge(joined[part].edges, 'inseam').curves;

function blockEnds(joined: JoinedBlocks) {
  const [front, back] = [inseamOf(joined, 'front'), inseamOf(joined, 'back')];
  return {
    frontCrotch: pathStart(front),
    backCrotch: pathStart(back),
    frontHem: pathEnd(front),
    backHem: pathEnd(back),
  };
}

/** Where a line that runs downwards is at a level; its end where it stops above it. */
function pointAtLevel(path: readonly Curve[], level: Mm): Point {
  for (const curve of path) {
    const t = curveMeetsLine(curve, point(0, level), point(1, 0))[0];
    if (t !== undefined) return curvePoint(curve, t);
  }
  return pathEnd(path);
}
