import { type CutEdge, type EdgeName, edgeName, legPieces, type Piece } from '../edges';
import type { Mm } from '../length';
import {
  type Curve,
  curvePoint,
  curveTangent,
  dot,
  type Edge,
  flattenCurves,
  leftOf,
  moved,
  outlineCurves,
  TOLERANCE as PLANE,
  type Point,
  pathEnd,
  pathEndWay,
  pathFoot,
  pathStart,
  pathStartWay,
  pointsHold,
  subtract,
  turnBetween,
} from '../plane';
import { mm, say, UNSAID } from '../words';
import type { Check, Subject } from './check';

/** The cut line may be this far off its allowance: a tenth of a cutter's line. */
const TOLERANCE = 0.05;
/** Sampled finer than this tolerance, so that the sampling doesn't decide. */
const FINE = PLANE.chord / 4;
/** Places of each stitched curve whose full allowance must lie within the cut line. */
const PLACES = 12;

/** How far something is off its allowance, and at which edge. */
interface Off {
  readonly off: Mm;
  readonly edge: EdgeName;
}

/**
 * Every allowance has one width along its whole edge and is nowhere short of it, corners included: the cut line keeps
 * its distance from the stitching line, beyond an end from that line carried on straight; and straight across from every
 * stitch there is the whole allowance, but where the next edge, carried on straight, cuts the corner off.
 */
export function checkAllowances({ finished }: Subject): Check {
  const all = legPieces(finished).flatMap((piece) => [
    ...piece.cutLine.map((cut) => widthOff(piece, cut)),
    ...shortfalls(piece),
  ]);
  const worst = all.reduce((a, b) => (b.off > a.off ? b : a));
  const good = worst.off <= TOLERANCE;
  return {
    id: 'allowances-uniform',
    name: say`Allowances even`,
    verdict: good ? 'good' : 'wrong',
    measured: worst.off,
    wanted: 0,
    tolerance: TOLERANCE,
    unit: 'mm',
    reason: good
      ? say`Every cut line keeps its allowance within ${mm(TOLERANCE)}.`
      : say`At the ${edgeName(worst.edge)} the cut line is ${mm(worst.off)} off its allowance.`,
    remedy: good ? UNSAID : say`Use a narrower allowance there.`,
  };
}

/** How far the cut line of an edge is off its distance. */
function widthOff(piece: Piece, cut: CutEdge): Off {
  const net = piece.stitchLine.find((edge) => edge.name === cut.name);
  if (!net) return { off: 0, edge: cut.name };
  const line = flattenCurves(net.curves, FINE);
  // A raw edge carries its neighbours' allowance on at its ends, as its line carried on; an edge that came to nothing is one point.
  const drawn = flattenCurves(
    cut.curves.filter(([a, , , d]) => a.x !== d.x || a.y !== d.y),
    0.2,
  );
  const off = drawn.map((p) => {
    const foot = pathFoot(line, p);
    return Math.abs((foot.atEnd ? besideEnd(net, p) : foot.distance) - cut.allowance);
  });
  return { off: Math.max(0, ...off), edge: cut.name };
}

/** How far a point beyond an edge's end lies beside the edge carried on straight. */
function besideEnd({ curves }: Edge, p: Point): Mm {
  const [start, end] = [pathStart(curves), pathEnd(curves)];
  const atStart = Math.hypot(p.x - start.x, p.y - start.y) < Math.hypot(p.x - end.x, p.y - end.y);
  return atStart
    ? dot(subtract(p, start), leftOf(pathStartWay(curves)))
    : dot(subtract(p, end), leftOf(pathEndWay(curves)));
}

/** A corner of the stitching line, and the allowances on both sides of it. */
interface Corner {
  readonly at: Point;
  readonly arrives: Point;
  readonly leaves: Point;
  readonly before: Mm;
  readonly after: Mm;
}

/** How far from a corner, in allowances, the next edge may cut off what lies beyond it. */
const NEAR_CORNER = 4;

/** Where, straight across from a stitch, the cut line comes before the whole allowance. */
function shortfalls({ stitchLine, cutLine }: Piece): readonly Off[] {
  const cut = flattenCurves(outlineCurves(cutLine), FINE);
  const allowances = stitchLine.map(({ name }) => cutLine.find((one) => one.name === name)?.allowance ?? 0);
  const corners = stitchLine.map(({ curves }, i): Corner => {
    const next = (i + 1) % stitchLine.length;
    const after = stitchLine[next]?.curves ?? curves;
    const [here, there] = [allowances[i] ?? 0, allowances[next] ?? 0];
    return {
      at: pathEnd(curves),
      arrives: pathEndWay(curves),
      leaves: pathStartWay(after),
      before: here,
      after: there,
    };
  });
  return stitchLine.map(({ name, curves }, i) => {
    const away = allowances[i] ?? 0;
    const ends = [corners.at(i - 1), corners[i]].filter((corner) => corner !== undefined);
    const short = curves
      .flatMap((curve) => (away > 0 ? across(curve, away) : []))
      .filter((p) => !ends.some((corner) => cornered(p, corner)) && !pointsHold(cut, p))
      .map((p) => pathFoot(cut, p).distance);
    return { off: Math.max(0, ...short), edge: name };
  });
}

/** The ends of the whole allowance, straight across from places of a stitched curve. */
const across = (curve: Curve, away: Mm): readonly Point[] =>
  Array.from({ length: PLACES + 1 }, (_, i) => i / PLACES).map((t) =>
    moved(curvePoint(curve, t), leftOf(curveTangent(curve, t)), away),
  );

/** Whether a point near an outer corner lies beyond the line of the edge on the other side of it, carried on straight. */
function cornered(p: Point, corner: Corner): boolean {
  const { at, leaves, arrives, before, after } = corner;
  if (turnBetween(arrives, leaves) < PLANE.smoothTurn) return false;
  const from = subtract(p, at);
  if (Math.hypot(from.x, from.y) > NEAR_CORNER * Math.max(before, after)) return false;
  return (
    (dot(from, arrives) > 0 && dot(from, leftOf(arrives)) > before) ||
    (dot(from, leaves) < 0 && dot(from, leftOf(leaves)) > after)
  );
}
