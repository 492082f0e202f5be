import {
  add,
  type Curve,
  curveIsStraight,
  curvePoint,
  flattenCurves,
  type Point,
  pointsHold,
  straight,
  subtract,
} from '../../plane';
import type { Drawing, DrawnOutline, DrawnRun } from './drawn';
import { fewerCurves } from './fewer';
import { type Net, netOf, type Strand } from './net';
import { outerLoops } from './walk';

/** What is smaller than this share of the largest outline is no piece: an arrowhead, a dart, a letter. @source practice */
const SMALLEST = 0.01;
/** Curves lie this much nearer to what they were cut into than the widest gap that is closed. @source tolerance */
const NEAR = 0.04;

/**
 * The closed outlines of a drawing, whatever lines they were drawn in: joined where their ends meet within `within`, with
 * the lines and words inside each. A frame round several pieces is none of them.
 *
 * @param within the widest gap that is closed, in the drawing’s units
 * @returns the largest first
 */
export function outlinesOf({ runs, words }: Drawing, within: number): readonly DrawnOutline[] {
  const net = netOf(runs, within);
  const loops = outerLoops(net)
    .map((loop) => {
      const curves = fewerCurves(closedUp(loop.curves), within * NEAR, true);
      const points = flattenCurves(curves, within);
      return { ...loop, curves, points, area: area(points) };
    })
    .filter((loop) => loop.area > 0)
    .sort((a, b) => b.area - a.area);
  const framed = loops.filter((loop) => !isFrame(loop, loops));
  const pieces = framed.filter((loop) => loop.area >= SMALLEST * (framed[0]?.area ?? 0));
  const inPiece = (p: Point) => pieces.findLast(({ points }) => pointsHold(points, p));
  const used = new Set([...pieces, ...loops.filter((one) => !framed.includes(one))].flatMap(({ strands }) => strands));
  const lines = linesOf(net, used, within).map((line) => ({ line, round: inPiece(middle(line.curves)) }));
  const told = words.map(({ text, at }) => ({ text, round: inPiece(at) }));
  return pieces.map((piece) => ({
    curves: piece.curves,
    names: [...new Set(piece.strands.flatMap((i) => net.strands[i]?.names ?? []))].slice(0, MOST_NAMES),
    lines: lines.flatMap(({ line, round }) => (round === piece ? [line] : [])),
    words: told.flatMap(({ text, round }) => (round === piece ? [text] : [])),
    gap: piece.gap,
  }));
}

/** An outline has a few names; a file may give each of its curves some. @source practice */
const MOST_NAMES = 40;

/** Every curve starts where the one before it ended. */
const closedUp = (curves: readonly Curve[]): readonly Curve[] =>
  curves.map((curve, i): Curve => {
    const start = (curves.at(i - 1) as Curve)[3];
    const [a, b, c, d] = curve;
    // A straight line whose end is moved stays straight.
    return curveIsStraight(curve) ? straight(start, d) : [start, add(b, subtract(start, a)), c, d];
  });

/** The area within a closed polyline, positive where it runs clockwise on the paper. */
function area(points: readonly Point[]): number {
  let sum = 0;
  let a = points.at(-1) as Point;
  for (const b of points) {
    sum += a.x * b.y - b.x * a.y;
    a = b;
  }
  return sum / 2;
}

interface Measured {
  readonly curves: readonly Curve[];
  readonly points: readonly Point[];
  readonly area: number;
}

/** A rectangle in which several others lie is the page, not a piece. */
function isFrame({ curves, points, area: own }: Measured, all: readonly Measured[]): boolean {
  if (curves.length !== 4 || !curves.every(curveIsStraight)) return false;
  const inside = all.filter(
    (other) => other.curves !== curves && other.area >= SMALLEST * own && pointsHold(points, other.points[0] as Point),
  );
  return inside.length > 1;
}

/** A point on a run, about halfway. */
const middle = (curves: readonly Curve[]): Point => curvePoint(curves[Math.floor(curves.length / 2)] as Curve, 0.5);

/** The strands that no outline uses, those that run on into each other as one. */
function linesOf({ strands, at }: Net, used: ReadonlySet<number>, within: number): readonly DrawnRun[] {
  const left = new Set([...strands.keys()].filter((i) => !used.has(i)));
  const free = at.map((there) => there.filter((i) => left.has(i)));
  const runs: DrawnRun[] = [];
  const goOn = (from: number, first: number): readonly Curve[] => {
    const curves: Curve[] = [];
    let [place, next]: [number, number | undefined] = [from, first];
    while (next !== undefined && left.delete(next)) {
      const { curve, from: a, to: b } = strands[next] as Strand;
      curves.push(a === place ? curve : [curve[3], curve[2], curve[1], curve[0]]);
      place = a === place ? b : a;
      const there: readonly number[] = free[place] ?? [];
      next = there.length === 2 ? there.find((i) => left.has(i)) : undefined;
    }
    return curves;
  };
  const starts = [...left].sort((a, b) => Number(isEnd(free, strands[b])) - Number(isEnd(free, strands[a])));
  for (const i of starts) {
    if (!left.has(i)) continue;
    const { names, from, to } = strands[i] as Strand;
    const start = (free[from]?.length ?? 0) === 2 && (free[to]?.length ?? 0) !== 2 ? to : from;
    const curves = goOn(start, i);
    if (curves.length > 0) runs.push({ names, curves: fewerCurves(curves, within * NEAR) });
  }
  return runs;
}

const isEnd = (free: readonly (readonly number[])[], strand: Strand | undefined): boolean =>
  strand !== undefined && [strand.from, strand.to].some((end) => free[end]?.length !== 2);
