import type { Mm } from '../length';
import {
  type Curve,
  curveMap,
  curveMeetsLine,
  curvePart,
  leftOf,
  mirrored,
  moved,
  type Point,
  pathEnd,
  pathReverse,
  pathStart,
  subtract,
  unit,
} from '../plane';
import { mm, type Problem, Refusal, say } from '../words';
import { CORD_ROOM, ELASTIC_LAP } from './casing';
import { sewnStretch } from './stretch';

export const HEM_FINISHES = [
  'turned',
  'elasticCasing',
  'drawstringCasing',
  'contrastBand',
  'ribCuff',
  'facedHem',
] as const;
export type HemFinish = (typeof HEM_FINISHES)[number];

/** How the hem is finished, as chosen. */
export interface HemChoices {
  readonly finish: HemFinish;
  /** Of a turned or faced hem. */
  readonly depth: Mm;
  readonly turnUnder: Mm;
  readonly elasticWidth: Mm;
  readonly cordWidth: Mm;
  /** How long to cut the cord of each hem; once round and two ends to tie where it is `auto`. */
  readonly cordLength: Mm | 'auto';
  /** A cord is bought, or sewn from the cloth. */
  readonly cord: 'bought' | 'ofCloth';
  /** Finished height of a contrast band or a rib cuff. */
  readonly bandHeight: Mm;
  /** Measured stretch of the rib, a fraction. */
  readonly ribStretch: number;
}

/** What a hem finish does to the leg. */
export interface HemPlan {
  readonly kind: 'folded' | 'faced' | 'seamed';
  /** From the fold to the stitching. */
  readonly depth: Mm;
  /** Of cloth beyond the stitching. */
  readonly beyond: Mm;
  /** Whether that is turned under; else its edge is overlocked. */
  readonly turnedUnder: boolean;
  /** What is sewn on below: the leg is cut shorter by it, for it counts in the finished length. */
  readonly added: Mm;
  /** What is drawn through the turning, and how wide it is. */
  readonly channel: { readonly holds: 'elastic' | 'cord'; readonly width: Mm } | undefined;
  /** The choice that makes the turning as deep as it is. */
  readonly chosen: { readonly key: 'depth' | 'elasticWidth' | 'cordWidth' | 'bandHeight'; readonly value: Mm };
}

/** Elastic is drawn through a channel of its width and 1.6 mm, half a turn of cloth. @source practice */
const ELASTIC_ROOM = 1.6;
/** An overlocked edge lies this far beyond a casing's stitching, which runs a whole channel from the fold. @source practice */
const OVERLOCKED_BEYOND = 6;

/** A woven edge frays and is turned under; a knit's doesn't, and turned twice it makes a ridge. @source practice */
export const usualTurnUnder = (cloth: 'woven' | 'knit'): Mm => (cloth === 'knit' ? 0 : 10);

/** @param hem what was chosen */
export function hemPlan(hem: HemChoices): HemPlan {
  const { finish, depth, turnUnder, elasticWidth, cordWidth, bandHeight } = hem;
  const turned = { beyond: turnUnder, turnedUnder: turnUnder > 0, added: 0 } as const;
  const casing = { kind: 'folded', ...turned, beyond: turnUnder > 0 ? turnUnder : OVERLOCKED_BEYOND } as const;
  switch (finish) {
    case 'elasticCasing':
      return {
        ...casing,
        depth: elasticWidth + ELASTIC_ROOM,
        channel: { holds: 'elastic', width: elasticWidth },
        chosen: { key: 'elasticWidth', value: elasticWidth },
      };
    case 'drawstringCasing':
      return {
        ...casing,
        depth: cordWidth + CORD_ROOM,
        channel: { holds: 'cord', width: cordWidth },
        chosen: { key: 'cordWidth', value: cordWidth },
      };
    case 'contrastBand':
    case 'ribCuff':
      return {
        kind: 'seamed',
        depth: 0,
        beyond: 0,
        turnedUnder: false,
        added: bandHeight,
        channel: undefined,
        chosen: { key: 'bandHeight', value: bandHeight },
      };
    case 'facedHem':
      return { kind: 'faced', ...turned, depth, channel: undefined, chosen: { key: 'depth', value: depth } };
    case 'turned':
      return { kind: 'folded', ...turned, depth, channel: undefined, chosen: { key: 'depth', value: depth } };
  }
}

/** What lies at the hem of one leg; lines from front to back. */
export interface HemTurning {
  /** Both from the fold down to the raw edge: the inseam above the fold, mirrored in it. Empty where nothing is turned. */
  readonly front: readonly Curve[];
  readonly back: readonly Curve[];
  /** Raw edge; the fold itself where nothing is turned. */
  readonly raw: readonly [Point, Point];
  readonly turnUnder: readonly [Point, Point];
  readonly stitching: readonly [Point, Point];
  /** The leg's inseams above the hem, as high as a turning or a facing reaches, downwards. */
  readonly above: { readonly front: readonly Curve[]; readonly back: readonly Curve[] };
}

/**
 * The turning of a hem: the leg above the fold, mirrored in the straight fold, so that it lies flat when turned up.
 *
 * @param frontInseam from the crotch point to the fold
 * @param backInseam the same, of the back
 * @param plan of the hem
 * @throws Refusal where the hem is deeper than the inseam leaves room for
 */
export function hemTurning(frontInseam: readonly Curve[], backInseam: readonly Curve[], plan: HemPlan): HemTurning {
  const { depth, beyond } = plan;
  const [front, back] = [pathEnd(frontInseam), pathEnd(backInseam)];
  const whole = depth + beyond;
  if (whole === 0) return bareHem(front, back);
  const way = unit(subtract(back, front));
  const up = { x: -leftOf(way).x, y: -leftOf(way).y };
  const mirror = (p: Point) => mirrored(p, front, back);
  const above = (inseam: readonly Curve[], height: Mm): readonly Curve[] => {
    const stretch = stretchAbove(inseam, moved(front, up, height), way);
    if (!stretch) throw new Refusal([tooDeep(plan)]);
    return stretch;
  };
  const stretches = { front: above(frontInseam, whole), back: above(backInseam, whole) };
  const turning = (stretch: readonly Curve[]) => pathReverse(stretch).map((curve) => curveMap(curve, mirror));
  const lineAt = (height: Mm): readonly [Point, Point] =>
    height === 0 ? [front, back] : [pathStart(above(frontInseam, height)), pathStart(above(backInseam, height))];
  const stitching = lineAt(depth);
  if (plan.kind === 'faced') return { ...bareHem(front, back), stitching, above: stretches };
  const [frontTurning, backTurning] = [turning(stretches.front), turning(stretches.back)];
  return {
    front: frontTurning,
    back: backTurning,
    raw: [pathEnd(frontTurning), pathEnd(backTurning)],
    turnUnder: [mirror(stitching[0]), mirror(stitching[1])],
    stitching,
    above: stretches,
  };
}

function bareHem(front: Point, back: Point): HemTurning {
  const line = [front, back] as const;
  return { front: [], back: [], raw: line, turnUnder: line, stitching: line, above: { front: [], back: [] } };
}

/** The last stretch of an inseam, from where it crosses a line parallel to the hem; undefined where it begins below that. */
function stretchAbove(inseam: readonly Curve[], on: Point, way: Point): readonly Curve[] | undefined {
  for (let i = inseam.length - 1; i >= 0; i -= 1) {
    const curve = inseam[i] as Curve;
    const t = curveMeetsLine(curve, on, way).at(-1);
    if (t !== undefined && t < 1) return [curvePart(curve, t, 1), ...inseam.slice(i + 1)];
  }
  return undefined;
}

function tooDeep({ depth, beyond, chosen }: HemPlan): Problem {
  const phrase = say`its turning of ${mm(depth + beyond)} is longer than this leg’s inseam; a longer leg or a narrower hem would do.`;
  return { field: `hem.${chosen.key}`, value: chosen.value, phrase };
}

/** Hem elastic and rib cuffs hold the leg without pressing: this much wider. @source practice */
export const LIMB_ROOM = 10;

/**
 * How long to cut the elastic for one hem: the leg there with a little room, and the lap; never longer than the hem.
 *
 * @param limbGirth the body's leg where the hem lies
 * @param hemGirth the finished hem
 */
export const hemElasticLength = (limbGirth: Mm, hemGirth: Mm): Mm =>
  Math.min(limbGirth + LIMB_ROOM + ELASTIC_LAP, hemGirth);

/**
 * The finished girth of a rib cuff: it holds the leg, and what it passes on its way up passes its stretch.
 *
 * @param limbGirth the body's leg where the cuff lies
 * @param passes the fullest of what goes through: the foot, or a calf
 * @param ribStretch measured stretch of the rib
 * @source practice
 */
export const ribCuffGirth = (limbGirth: Mm, passes: Mm, ribStretch: number): Mm =>
  Math.max(limbGirth + LIMB_ROOM, passes / sewnStretch(ribStretch));
