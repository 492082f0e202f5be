import type { Block } from '../block';
import type { Mm } from '../length';
import {
  between,
  type Curve,
  distance,
  outlineEdge,
  pathEnd,
  pathLength,
  pathReaimed,
  solveBetween,
  straight,
  TOLERANCE,
} from '../plane';
import { mm, Refusal, say } from '../words';
import { type Centre, type Centres, centresOf } from './centres';
import { inseamCut } from './crop';
import { arrivalAt } from './inseams';
import { blockCurves, type JoinedBlocks } from './join';
import { inseamAtKnee } from './knees';
import { refuseSunkenWaist } from './lowest-waist';
import {
  type HemBody,
  type Inseams,
  inseamsOf,
  type PyjamaHem,
  pointAtLevel,
  pyjamaHem,
  type Shape,
  thighLineOf,
  usualThighLine,
} from './shape';
import type { Leg, LegHalf } from './types';

/** What is chosen about the leg, in numbers. */
export interface LegChoices {
  readonly spread: Mm;
  /** 0…1, already found where it was to be found automatically. */
  readonly straighten: number;
  readonly straightenAutomatic: boolean;
  readonly raiseWaist: Mm;
  readonly lowerCrotch: Mm;
  /** Finished inseam, and the inseam at the ankle before the crotch is lowered, at which the shape is drawn. */
  readonly inseam: Mm;
  readonly ankleInseam: Mm;
  readonly shape: Shape | { readonly hemGirth: Mm };
  readonly hemBody: HemBody;
  /** How far both inseams are let out at the knee. */
  readonly kneesOut: Mm;
}

/** A hem may be this much narrower or wider than the thigh line at the ankle before no leg can be drawn through it: bounds of a search. @source tolerance */
const HEM_SEARCH = [0.22, 1.6] as const;

/** A chosen hem is reached this closely, mm. @source tolerance */
const HEM_REACHED = 1e-4;

/**
 * The leg: joined and spread blocks, straightened, shaped and cut to length.
 *
 * @param joined the blocks as they lie, spread
 * @param choices what was chosen
 * @throws Refusal where a hem girth can't be reached at the chosen length, or the waist is lowered into the hip line
 */
export function legFrom(joined: JoinedBlocks, choices: LegChoices): Leg {
  refuseLeg(joined, choices);
  return legDrawn(joined, choices);
}

/**
 * @param joined the joined and spread blocks
 * @param choices what was chosen
 * @param sides the same as they lie for each side of a body whose sides differ: the chosen hem has to do for all of
 *   them
 * @throws Refusal where a hem girth can't be reached at the chosen length, or the waist is lowered into the hip line
 */
export function refuseLeg(joined: JoinedBlocks, choices: LegChoices, sides: readonly JoinedBlocks[] = []): void {
  refuseSunkenWaist(joined, choices.straighten, choices.raiseWaist);
  refuseHem([joined, ...sides], choices);
}

/**
 * The same, whatever becomes of the waist, and with the hem as near to the chosen one as can be: a leg on its way to
 * the one that is accepted or refused, which is looked at and never cut.
 */
export function legDrawn(joined: JoinedBlocks, choices: LegChoices): Leg {
  const inseams = kneesLetOut(shapedInseams(joined, choices), joined, choices.kneesOut);
  const cut = { front: inseamCut(inseams.front, choices.inseam), back: inseamCut(inseams.back, choices.inseam) };
  const centres = centresOf(joined, choices.straighten, choices.raiseWaist);
  const front = halfOf(joined.front, centres.front, cut.front);
  const asReaimed = halfOf(joined.back, centres.back, cut.back);
  const leaned = choices.straighten === 0 ? legCrotchLength(front, asReaimed) : asItLeaned(joined, choices, cut);
  const back = halfAtLength(asReaimed, leaned + MOST_CHANGE - halfLength(front));
  const kneeLevel = joined.front.kneeLevel;
  return {
    front,
    back,
    waistEdge: [straight(back.waistPoint, front.waistPoint)],
    waistTurned: centres.turned,
    waistLifted: centres.lifted,
    hem: [straight(pathEnd(front.inseam), pathEnd(back.inseam))],
    hipLevel: joined.front.hipLevel,
    crotchLevel: joined.front.crotchLevel + choices.lowerCrotch,
    kneeLevel: pathEnd(front.inseam).y > kneeLevel ? kneeLevel : undefined,
    spread: choices.spread,
    straighten: choices.straighten,
    straightenAutomatic: choices.straightenAutomatic,
    gapAtWaist: joined.gapAtWaist,
    gapAtKnee: joined.gapAtKnee,
    gapAtHem: joined.gapAtHem,
    backCrotchDrop: inseams.backCrotchDrop,
    crotchChange: legCrotchLength(front, back) - leaned,
    joined: { front: blockCurves(joined.front), back: blockCurves(joined.back) },
  };
}

/** Waist edge to waist edge through the crotch, along the finished lines. */
export function legCrotchLength(front: LegHalf, back: LegHalf): Mm {
  return halfLength(front) + halfLength(back);
}

/** From the waist edge along the centre and the crotch curve to the crotch point. */
export const halfLength = (half: LegHalf): Mm => distance(half.waistPoint, half.curveEnd) + pathLength(half.crotch);

/** Straightening may change the crotch length by this, mm. @source practice */
const MOST_CHANGE = 2;
/** The upper handle is shortened by this part of what the lower one is: the curve stays smooth at the centre line. @source practice */
const UPPER_PART = 0.2;
/** The back curve's handles may be shortened to this share of theirs; more would make it flat in the middle. @source practice */
const SHORTEST_HANDLES = 0.75;

/**
 * Straightening lengthens the crotch seam by some millimetres; the back curve, which has the room, is drawn that much
 * rounder, so that the seam stays as long as it was on the body. A traced curve of several parts is kept as
 * it was traced: it would get a kink.
 *
 * @param half the back, straightened
 * @param wanted its part of the crotch length
 * @source practice
 */
function halfAtLength(half: LegHalf, wanted: Mm): LegHalf {
  const [first, ...rest] = half.crotch;
  if (!first || rest.length > 0 || halfLength(half) <= wanted + TOLERANCE.arcLength) return half;
  const at = (share: number): LegHalf => ({
    ...half,
    crotch: [
      [
        first[0],
        between(first[0], first[1], 1 - UPPER_PART * (1 - share)),
        between(first[3], first[2], share),
        first[3],
      ],
      ...rest,
    ],
  });
  return at(solveBetween((share) => halfLength(at(share)) - wanted, SHORTEST_HANDLES, 1, TOLERANCE.solved));
}

function asItLeaned(
  joined: JoinedBlocks,
  choices: LegChoices,
  cut: { readonly front: readonly Curve[]; readonly back: readonly Curve[] },
): Mm {
  const centres: Centres = centresOf(joined, 0, choices.raiseWaist);
  return legCrotchLength(halfOf(joined.front, centres.front, cut.front), halfOf(joined.back, centres.back, cut.back));
}

/**
 * The block's crotch curve, re-aimed: it leaves the straightened centre line in its direction and meets the new inseam
 * at the angle at which it met the block's own (square, on a drafted block).
 */
function halfOf(block: Block, centre: Centre, inseam: readonly Curve[]): LegHalf {
  const drawn = outlineEdge(block.edges, 'crotch').curves;
  const arrival = arrivalAt(drawn, outlineEdge(block.edges, 'inseam').curves, inseam);
  const { waistPoint, curveEnd } = centre;
  const crotch = pathReaimed(drawn, { at: curveEnd, way: centre.way }, arrival);
  return {
    part: block.part,
    waistPoint,
    hipPoint: pointAtLevel([straight(waistPoint, curveEnd), ...crotch], block.hipLevel),
    curveEnd,
    crotchPoint: arrival.at,
    crotch,
    inseam,
    lean: centre.lean,
  };
}

function shapedInseams(joined: JoinedBlocks, choices: LegChoices): Inseams {
  const { shape, ankleInseam, lowerCrotch } = choices;
  if (typeof shape === 'string') {
    const hemWidth = pyjamaHemOf(joined, choices).width;
    return inseamsOf(joined, { shape, hemWidth, ankleInseam, lowerCrotch });
  }
  const { finished, at, narrowest, widest } = hemsOf(joined, choices);
  return at(solveBetween((hem) => finished(hem) - shape.hemGirth, narrowest, widest, HEM_REACHED));
}

/** The hem that these blocks narrow to in pyjama shape. */
export const pyjamaHemOf = (joined: JoinedBlocks, { hemBody, spread, ankleInseam }: LegChoices): PyjamaHem =>
  pyjamaHem(hemBody, usualThighLine(joined, spread), ankleInseam);

/** The inseams by the hem that is drawn at the ankle, and what hem they come to at the chosen length. */
function hemsOf(joined: JoinedBlocks, { ankleInseam, lowerCrotch, inseam }: LegChoices) {
  const thigh = thighLineOf(joined);
  const at = (hem: Mm) => inseamsOf(joined, { shape: 'pyjama', hemWidth: hem, ankleInseam, lowerCrotch });
  const finished = (hem: Mm): Mm => hemWidth(at(hem), inseam);
  return { at, finished, narrowest: HEM_SEARCH[0] * thigh, widest: HEM_SEARCH[1] * thigh };
}

function refuseHem(lying: readonly JoinedBlocks[], choices: LegChoices): void {
  const { shape } = choices;
  if (typeof shape === 'string') return;
  const hems = lying.map((joined) => hemsOf(joined, choices));
  const least = Math.max(...hems.map(({ finished, narrowest }) => finished(narrowest)));
  const most = Math.min(...hems.map(({ finished, widest }) => finished(widest)));
  if (!(shape.hemGirth < least || shape.hemGirth > most)) return;
  const phrase =
    least > most
      ? say`at this length no hem fits both legs; on a longer leg one would.`
      : say`at this length the hem of this leg can be ${mm(least)} to ${mm(most)} round.`;
  throw new Refusal([{ field: 'leg.shape.hemGirth', value: shape.hemGirth, phrase }]);
}

function kneesLetOut(inseams: Inseams, joined: JoinedBlocks, out: Mm): Inseams {
  if (out === 0) return inseams;
  return {
    ...inseams,
    front: inseamAtKnee(inseams.front, joined.front.kneeLevel, out),
    back: inseamAtKnee(inseams.back, joined.back.kneeLevel, -out),
  };
}

function hemWidth(inseams: Inseams, inseam: Mm): Mm {
  return distance(pathEnd(inseamCut(inseams.front, inseam)), pathEnd(inseamCut(inseams.back, inseam)));
}
