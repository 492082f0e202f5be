import { type Mm, mm, say, share } from '../length';
import {
  curveMeetsLine,
  curvePoint,
  distance,
  type Edge,
  leftOf,
  moved,
  outlineEdge,
  type Point,
  pathEnd,
  pathStart,
  subtract,
  unit,
} from '../plane';
import type { Check, Subject } from './check';
import { fixStraightenTo, withFix } from './fixes';

const MOST = 3;
const MOST_SHARE = 0.01;

/** One turned part against the line on which it is stitched down. */
interface Turning {
  readonly name: string;
  readonly turned: Mm;
  readonly under: Mm;
}

/**
 * Turnings lie flat: laid over in its fold, the turned part is as long as the stitching line under it, within 1 % and
 * 3 mm. Folds are straight, so what holds for the whole holds for any part of it.
 */
export function checkTurnings(subject: Subject): Check {
  const { leg, casing, hem, finished } = subject;
  const turnings = [
    turningAt(
      'casing',
      finished.sewn.folds,
      'waist fold',
      casing.fold,
      subject,
      ['centreBackTurning', 'centreFrontTurning'],
      ['centreBack', 'centreFront'],
    ),
    turningAt(
      'hem',
      [{ name: 'hem fold', curves: leg.hem }],
      'hem fold',
      hem.depth,
      subject,
      ['inseamFrontTurning', 'inseamBackTurning'],
      ['inseamFront', 'inseamBack'],
    ),
  ];
  const off = (t: Turning) => Math.abs(t.turned - t.under);
  const worst = turnings.reduce((a, b) => (off(b) > off(a) ? b : a));
  const part = off(worst) / worst.under;
  const good = off(worst) <= MOST && part <= MOST_SHARE;
  return {
    id: 'turnings-flat',
    name: 'Turnings lie flat',
    verdict: good ? 'good' : 'mind',
    measured: off(worst),
    wanted: 0,
    tolerance: MOST,
    unit: 'mm',
    reason: say`Laid over, the ${worst.name} differs by ${mm(off(worst))} (${share(part)}) from the line it is stitched to.`,
    remedy: good ? [] : say`Straighten the seams at the ${worst.name}, or use a narrower turning.`,
    ...withFix(good || worst.name !== 'casing' || leg.straighten >= 1 ? undefined : fixStraightenTo(1)),
  };
}

/** Measures a turning at a distance from its fold, on the turned side and on the leg's side, between the printed seams. */
function turningAt(
  name: string,
  folds: readonly Edge[],
  foldName: string,
  height: Mm,
  { finished }: Subject,
  turnedEdges: readonly [string, string],
  underEdges: readonly [string, string],
): Turning {
  const fold = folds.find((edge) => edge.name === foldName)?.curves ?? [];
  const [a, b] = [pathStart(fold), pathEnd(fold)];
  const way = unit(subtract(b, a));
  const out = leftOf(way);
  const between = (edges: readonly [string, string], away: Mm): Mm => {
    const on = moved(a, out, away);
    const [from, to] = edges.map((edge) => meeting(outlineEdge(finished.sewn.stitchLine, edge), on, way)) as [
      Point,
      Point,
    ];
    return distance(from, to);
  };
  return { name, turned: between(turnedEdges, height), under: between(underEdges, -height) };
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
