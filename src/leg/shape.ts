import { SMALL_HIP, STEEPEST_INSEAM, USUAL_SPREAD } from '../block';
import type { Mm } from '../length';
import {
  type Curve,
  chordSlant,
  curveMeetsLine,
  curvePoint,
  type Hollow,
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
import { mm, number, type Phrase, part, rounding, say } from '../words';
import { inseamStretched } from './inseams';
import type { JoinedBlocks } from './join';

export type Shape = 'block' | 'pyjama' | 'straight';

/** Both inseams at ankle length, equally long, hung from the crotch points. */
export interface Inseams {
  readonly front: readonly Curve[];
  readonly back: readonly Curve[];
  readonly backCrotchDrop: Mm;
}

/**
 * A hem lies over foot and knee: 0.45 of the way round heel and instep and half the knee, and so much more; and the foot
 * must pass with so much to spare.
 *
 * @source practice: twice what the check asks, tried on the survey (435 to 512 mm on nine adults of ten, 1 mm for 5 mm of
 *   hip); that the hem must pass heel and instep: *Measurements for Fitting Pants*, New Mexico State University
 *   Extension, C-209
 */
const HEM = { ofFoot: 0.45, ofKnee: 0.5, more: 130, footRoom: 40 } as const;
/** A hem takes no more than this share of the ankle inseam off the thigh line, or the inseams would start too steeply on a large body. @source geometry */
const MOST_NARROWING = 0.56;

/** What of a body decides its hem. */
export interface HemBody {
  readonly footEntryGirth: Mm;
  readonly kneeGirth: Mm;
  readonly hipGirth: Mm;
}

/** What decides a pyjama leg's hem. */
export interface PyjamaHem {
  readonly width: Mm;
  /** `limb`: foot and knee; `foot`: that it must pass; `thigh`: that the inseams may not slant more. */
  readonly by: 'limb' | 'foot' | 'thigh';
}

/**
 * The hem that a pyjama leg narrows to.
 *
 * @param body foot, knee, and the hip, with which fixed figures shrink on small bodies
 * @param thighLine from crotch point to crotch point, at the usual spread: a wider spread is wanted in the thigh
 * @param ankleInseam before the crotch is lowered
 */
export function pyjamaHem(body: HemBody, thighLine: Mm, ankleInseam: Mm): PyjamaHem {
  const limb = HEM.ofFoot * body.footEntryGirth + HEM.ofKnee * body.kneeGirth + hemRoom(body);
  const [foot, thigh] = [body.footEntryGirth + HEM.footRoom, thighLine - MOST_NARROWING * ankleInseam];
  const width = Math.max(limb, foot, thigh);
  return { width, by: width === limb ? 'limb' : width === foot ? 'foot' : 'thigh' };
}

const hemRoom = ({ hipGirth }: HemBody): Mm => HEM.more * Math.min(1, hipGirth / SMALL_HIP);

/** Why a pyjama leg's hem is as wide as it is. */
export function pyjamaHemTold(body: HemBody, { width, by }: PyjamaHem): Phrase {
  const { footEntryGirth: foot, kneeGirth: knee } = body;
  if (by === 'limb')
    return say`to ${number(HEM.ofFoot)} × foot ${part(foot)} + ${number(HEM.ofKnee)} × knee ${part(knee)} + ${part(hemRoom(body))}${rounding(width, { mm: foot, times: HEM.ofFoot }, { mm: knee, times: HEM.ofKnee }, hemRoom(body))} = ${part(width)}`;
  if (by === 'foot')
    return say`to what the foot passes with room to spare, ${part(foot)} + ${part(HEM.footRoom)}${rounding(width, foot, HEM.footRoom)} = ${part(width)}`;
  return say`to ${mm(width)}, and no further: on a shorter way to the ankle the inseams would start too steeply`;
}

/**
 * Of what a pyjama leg narrows between crotch and ankle, the front's share: 0.44, and evenly on a leg that narrows much
 * for its length, so that both inseams slant alike.
 *
 * @source practice, tried on the survey: within 3°
 */
const FRONT_SHARE = { usual: 0.44, more: 0.06, from: 0.35, over: 0.15 } as const;
/** Its inseam: the bend sits at mid-thigh, and from below the knee it runs straight. @source practice */
const PYJAMA_HOLLOW: Hollow = { excess: 0.4, startHandle: 0.28, endHandle: 0.28 };
/** It ends with this share of its chord's slant, and at most 4° off the upright. @source practice: so a straight hem fold turns up flat */
const HEM_SLANT = { ofChord: 0.3, most: Math.tan((4 * Math.PI) / 180) } as const;
/** It leaves the crotch no steeper than this where its hollow can be less: the check's limit is 20°. @source practice */
const STEEPEST_PYJAMA = Math.tan((19.7 * Math.PI) / 180);

/** What a leg's inseams are drawn by. */
export interface InseamChoices {
  /** `block`: the block's own lines; `straight`: upright below the knee; `pyjama`: one hollow line. */
  readonly shape: Shape;
  /** Finished hem at the ankle, for `pyjama`. */
  readonly hemWidth: Mm;
  /** The inseam at the ankle, before the crotch is lowered. */
  readonly ankleInseam: Mm;
  /** How far both crotch points are lowered. */
  readonly lowerCrotch: Mm;
}

/**
 * The inseams of the chosen shape at ankle length. The back crotch point is dropped until both are equally long.
 *
 * @param joined the joined and spread blocks
 * @param choices shape, hem, length and crotch
 */
export function inseamsOf(joined: JoinedBlocks, choices: InseamChoices): Inseams {
  const { shape, ankleInseam, lowerCrotch } = choices;
  if (shape === 'block') return blockInseams(joined, lowerCrotch);
  const [frontCrotch, backCrotch] = [pathStart(inseamOf(joined, 'front')), pathStart(inseamOf(joined, 'back'))];
  const frontTop = point(frontCrotch.x, frontCrotch.y + lowerCrotch);
  const backTop = (drop: Mm) => point(backCrotch.x, frontTop.y + drop);
  const line = shape === 'pyjama' ? pyjamaLines(joined, choices) : straightLines(joined);
  const length = ankleInseam - lowerCrotch;
  const hemLevel = solveBetween(
    (y) => pathLength(line(frontTop, 'front', y)) - length,
    frontTop.y + 0.6 * length,
    frontTop.y + length,
    TOLERANCE.solved,
  );
  const backCrotchDrop = solveBetween(
    (d) => pathLength(line(backTop(d), 'back', hemLevel)) - length,
    -0.3 * length,
    0.3 * length,
    TOLERANCE.solved,
  );
  return {
    front: line(frontTop, 'front', hemLevel),
    back: line(backTop(backCrotchDrop), 'back', hemLevel),
    backCrotchDrop,
  };
}

/** One part's inseam from its crotch point to a hem level. */
type InseamLine = (top: Point, part: 'front' | 'back', hemLevel: Mm) => readonly Curve[];

/**
 * The pyjama leg narrows from the plumb lines under its crotch points to its hem. A flare goes half to each side, and
 * straight down.
 */
function pyjamaLines(joined: JoinedBlocks, { hemWidth, ankleInseam }: InseamChoices): InseamLine {
  const narrowing = thighLineOf(joined) - hemWidth;
  const frontShare = narrowing > 0 ? frontShareOf(narrowing / ankleInseam) : 0.5;
  const inwards = { front: -frontShare * narrowing, back: (1 - frontShare) * narrowing };
  return (top, part, hemLevel) => {
    const hem = point(top.x + inwards[part], hemLevel);
    if (narrowing <= 0) return [straight(top, hem)];
    const chord = chordSlant(top, hem);
    const end = Math.sign(chord) * Math.min(HEM_SLANT.ofChord * Math.abs(chord), HEM_SLANT.most);
    return [hollowLineWithin(top, hem, end, steepestOf(inseamOf(joined, part), STEEPEST_PYJAMA), PYJAMA_HOLLOW)];
  };
}

const frontShareOf = (narrowing: number): number =>
  FRONT_SHARE.usual + FRONT_SHARE.more * Math.min(1, Math.max(0, (narrowing - FRONT_SHARE.from) / FRONT_SHARE.over));

/**
 * The straight leg falls upright from the block's own knee, which is let out where the block's crotch, wherever it is
 * lowered to, would be left steeper than a block's may ({@link STEEPEST_INSEAM}).
 *
 * @source practice
 */
function straightLines(joined: JoinedBlocks): InseamLine {
  return (top, part, hemLevel) => {
    const own = inseamOf(joined, part);
    const steepest = steepestOf(own, STEEPEST_INSEAM);
    const slim = pointAtLevel(own, joined[part].kneeLevel);
    const letOut = slantExcess(pathStart(own), slim, 0, steepest);
    const knee = point(slim.x + (part === 'front' ? 1 : -1) * letOut, slim.y);
    return [hollowLineWithin(top, knee, 0, steepest), straight(knee, point(knee.x, hemLevel))];
  };
}

/** The slant at which a leg's inseam may start: a traced block that leaves its crotch steeper was drawn so, and may. */
function steepestOf(own: readonly Curve[], usual: number): number {
  const way = pathStartWay(own);
  return way.y > 0 ? Math.max(usual, Math.abs(way.x) / way.y) : usual;
}

/**
 * The blocks' own inseams. A lowered crotch shortens them up from the hem, which stays where it is and as wide; the
 * back crotch point is dropped until they differ by no more than they did.
 */
function blockInseams(joined: JoinedBlocks, lowerCrotch: Mm): Inseams {
  const [front, back] = [inseamOf(joined, 'front'), inseamOf(joined, 'back')];
  const drop = pathStart(back).y - pathStart(front).y;
  if (lowerCrotch === 0) return { front, back, backCrotchDrop: drop };
  const loweredFront = shortened(front, lowerCrotch);
  const length = pathLength(loweredFront) + pathLength(back) - pathLength(front);
  const backLowered = solveBetween(
    (by) => pathLength(shortened(back, by)) - length,
    0,
    2 * lowerCrotch,
    TOLERANCE.solved,
  );
  return {
    front: loweredFront,
    back: shortened(back, backLowered),
    backCrotchDrop: drop + backLowered - lowerCrotch,
  };
}

/** An inseam whose upper end lies lower: shortened upwards from the hem, every width kept. */
function shortened(inseam: readonly Curve[], by: Mm): readonly Curve[] {
  const hem = pathEnd(inseam).y;
  const share = 1 - by / (hem - pathStart(inseam).y);
  return inseamStretched(inseam, hem, share);
}

/** The width from crotch point to crotch point. */
export const thighLineOf = (joined: JoinedBlocks): Mm =>
  pathStart(inseamOf(joined, 'front')).x - pathStart(inseamOf(joined, 'back')).x;

/** The same width as it would be at the usual spread. */
export const usualThighLine = (joined: JoinedBlocks, spread: Mm): Mm => thighLineOf(joined) - spread + USUAL_SPREAD;

const inseamOf = (joined: JoinedBlocks, part: 'front' | 'back') => outlineEdge(joined[part].edges, 'inseam').curves;

/** Where a line that runs downwards is at a level; its end where it stops above it. */
export function pointAtLevel(path: readonly Curve[], level: Mm): Point {
  for (const curve of path) {
    const t = curveMeetsLine(curve, point(0, level), point(1, 0))[0];
    if (t !== undefined) return curvePoint(curve, t);
  }
  return pathEnd(path);
}
