import type { EdgeName } from '../edges';
import type { Mm } from '../length';
import {
  type Curve,
  curveIsStraight,
  curveMeetsLine,
  curvePoint,
  distance,
  type Edge,
  leftOf,
  moved,
  outlineEdge,
  TOLERANCE as PLANE,
  type Point,
  pathAt,
  pathEnd,
  pathLength,
  pathStart,
  subtract,
  turnBetween,
  unit,
} from '../plane';
import { mm, type Phrase, say, share, UNSAID } from '../words';
import type { Check, Fix, Subject } from './check';
import { fixFacedCasing, fixStraightenTo, withFix } from './fixes';
import { drawnCurves } from './measuring';

const MOST = 3;
const MOST_SHARE = 0.01;

/** What is turned over; a casing whose fold bends is looked at where it bends most, too. */
type Turned = 'casing' | 'bentCasing' | 'hem';

const TURNED_NAMES: Readonly<Record<Turned, Phrase>> = {
  casing: say`casing`,
  bentCasing: say`casing over the higher hip`,
  hem: say`hem`,
};

/** One turned part against the line on which it is stitched down. */
interface Turning {
  readonly what: Turned;
  readonly turned: Mm;
  readonly under: Mm;
}

/**
 * Turnings lie flat: laid over in its fold, the turned part is as long as the stitching line under it, within 1 % and
 * 3 mm; on a straight fold what holds for the whole holds for any part of it, on a bent one any hand's breadth does.
 */
export function checkTurnings(subject: Subject): Check {
  const turnings = [...casingTurning(subject), ...hemTurning(subject)];
  if (turnings.length === 0) return NOTHING_TURNED;
  const off = (t: Turning) => Math.abs(t.turned - t.under);
  // Of two that are alike but for rounding, the upper is named.
  const worst = turnings.reduce((a, b) => (off(b) > off(a) + PLANE.parallel ? b : a));
  const part = off(worst) / worst.under;
  const good = off(worst) <= MOST && part <= MOST_SHARE;
  return {
    id: 'turnings-flat',
    name: say`Turnings lie flat`,
    verdict: good ? 'good' : 'doubtful',
    measured: off(worst),
    wanted: 0,
    tolerance: MOST,
    unit: 'mm',
    reason: say`Laid over, the ${TURNED_NAMES[worst.what]} differs by ${mm(off(worst))} (${share(part)}) from the line it is stitched to.`,
    remedy: good
      ? UNSAID
      : worst.what === 'bentCasing'
        ? say`Finish the waist with a facing of its own shape, which lies flat on any line.`
        : say`Straighten the seams at the ${TURNED_NAMES[worst.what]}, or use a narrower turning.`,
    ...withFix(good ? undefined : fixFor(worst, subject)),
  };
}

function fixFor({ what }: Turning, { leg }: Subject): Fix | undefined {
  if (what === 'bentCasing') return fixFacedCasing();
  return what !== 'casing' || leg.straighten >= 1 ? undefined : fixStraightenTo(1);
}

/** Bands, facings and cuffs are cut to the leg's own shape: there is nothing that could fail to lie flat. */
const NOTHING_TURNED: Check = {
  id: 'turnings-flat',
  name: say`Turnings lie flat`,
  verdict: 'good',
  measured: 0,
  wanted: 0,
  tolerance: MOST,
  unit: 'mm',
  reason: say`Nothing is turned over: waist and hem are finished with pieces of their own.`,
  remedy: UNSAID,
};

function casingTurning(subject: Subject): readonly Turning[] {
  const { heights, sewn } = subject.finished;
  if (heights.kind !== 'folded') return [];
  const [turned, under] = [
    ['centreBackTurning', 'centreFrontTurning'],
    ['centreBack', 'centreFront'],
  ] as const;
  const fold = drawnCurves(sewn, 'waistFold') ?? [];
  return [turningAt('casing', fold, heights.fold, subject, turned, under), ...foldBend(fold, heights.fold)];
}

/** Of a fold that bends, any stretch as long as this is looked at by itself. */
const STRETCH: Mm = 100;

/**
 * The stretch of a bent fold on which the turning lies worst: where the fold turns by an angle over a stretch, the
 * turned part is longer or shorter than the line below it by twice its depth times that angle. Nothing where the fold
 * is straight.
 */
function foldBend(fold: readonly Curve[], depth: Mm): readonly Turning[] {
  if (fold.every(curveIsStraight)) return [];
  const length = pathLength(fold);
  const steps = Math.max(1, Math.ceil(length / PLACES_APART));
  const ways = Array.from({ length: steps + 1 }, (_, i) => pathAt(fold, (i / steps) * length).way);
  const apart = Math.min(steps, Math.floor((STRETCH * steps) / length));
  const turns = ways.slice(apart).map((way, i) => Math.abs(turnBetween(ways[i] as Point, way)));
  const under = (apart * length) / steps;
  return [{ what: 'bentCasing', turned: under + 2 * depth * Math.max(...turns), under }];
}

/** Places of a fold at which its direction is looked at. @source tolerance */
const PLACES_APART: Mm = 5;

function hemTurning(subject: Subject): readonly Turning[] {
  const { hemPlan } = subject.finished;
  if (hemPlan.kind !== 'folded') return [];
  const [turned, under] = [
    ['inseamFrontTurning', 'inseamBackTurning'],
    ['inseamFront', 'inseamBack'],
  ] as const;
  return [turningAt('hem', subject.leg.hem, hemPlan.depth, subject, turned, under)];
}

/** Measures a turning at a distance from its fold, on the turned side and on the leg's side, between the printed seams. */
function turningAt(
  what: Turned,
  fold: readonly Curve[],
  height: Mm,
  { finished }: Subject,
  turnedEdges: readonly [EdgeName, EdgeName],
  underEdges: readonly [EdgeName, EdgeName],
): Turning {
  const [a, b] = [pathStart(fold), pathEnd(fold)];
  const way = unit(subtract(b, a));
  const out = leftOf(way);
  const between = ([first, second]: readonly [EdgeName, EdgeName], away: Mm): Mm => {
    const on = moved(a, out, away);
    const meets = (edge: EdgeName): Point => meeting(outlineEdge(finished.sewn.stitchLine, edge), on, way);
    return distance(meets(first), meets(second));
  };
  return { what, turned: between(turnedEdges, height), under: between(underEdges, -height) };
}

/** Where an edge meets a line; its nearer end where it stops short of it. */
function meeting(edge: Edge, on: Point, way: Point): Point {
  for (const curve of edge.curves) {
    const t = curveMeetsLine(curve, on, way)[0];
    if (t !== undefined) return curvePoint(curve, t);
  }
  const height = (p: Point) => Math.abs((p.x - on.x) * way.y - (p.y - on.y) * way.x);
  const [start, end] = [pathStart(edge.curves), pathEnd(edge.curves)];
  return height(start) < height(end) ? start : end;
}
