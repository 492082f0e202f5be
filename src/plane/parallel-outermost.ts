import type { Mm } from '../length';
import { boxesApart, type ControlBox, controlBox } from './control-box';
import { curveCrossings } from './crossings';
import { curveBounds, curveIsStraight, curvePart, curvePoint, curveTangent, straight } from './curve';
import { turnBetween } from './parallel';
import type { Strand } from './parallel-corners';
import { distance, dot, leftOf, moved, size, subtract } from './point';
import { TOLERANCE } from './tolerances';
import type { Curve, Point } from './types';
import { windings } from './winding';

/** A curve on the way round, and the number of the edge that it is drawn for. */
export interface WayPart {
  readonly edge: number;
  readonly curve: Curve;
}

/** Parameters nearer than this are one place of a curve. */
const SAME_T = 1e-9;

/**
 * How far beside a line it is asked what lies there, millimetres. The first is right but where two lines run along each
 * other more closely still; then the next decides.
 */
const BESIDE = [2e-4, 2e-6, 2e-3] as const;

/**
 * The outer border of all that the strands go round.
 *
 * The strands are cut wherever they meet. A part is on the border where nothing lies on its left and something on its
 * right, counted by how often the strands go round both places; loops and spurs are not. The parts on the border are
 * then followed from the topmost one.
 *
 * @param strands closed, clockwise, in order, the outside on their left
 * @returns the parts of the border, closed, the lowest edge first
 */
export function outermostWay(strands: readonly Strand[]): readonly WayPart[] {
  const whole = strands.flatMap(({ edge, curves }) => curves.map((curve): WayPart => ({ edge, curve })));
  const parts = cutWhereTheyMeet(whole);
  const windingAt = windings(whole.map(({ curve }) => curve));
  for (const beside of BESIDE) {
    const way = followed(parts.filter(({ curve }) => isBorder(windingAt, curve, beside)));
    if (way) return bridged(startingLow(way));
  }
  // Nobody has seen this; the checks of the cut line would say what is wrong with it.
  return bridged(startingLow(whole));
}

/** The parts cut at each of their meetings with others. */
function cutWhereTheyMeet(whole: readonly WayPart[]): readonly WayPart[] {
  const cuts = whole.map((): number[] => []);
  const boxes = whole.map(({ curve }) => controlBox(curve));
  for (let i = 0; i < whole.length; i += 1)
    for (let j = i + 1; j < whole.length; j += 1) {
      if (boxesApart(boxes[i] as ControlBox, boxes[j] as ControlBox, TOLERANCE.samePoint)) continue;
      const [first, second] = [(whole[i] as WayPart).curve, (whole[j] as WayPart).curve];
      for (const { t, u } of curveCrossings(first, second)) {
        cuts[i]?.push(t);
        cuts[j]?.push(u);
      }
      cuts[i]?.push(...endsOn(first, second));
      cuts[j]?.push(...endsOn(second, first));
    }
  return whole.flatMap(({ edge, curve }, i) => pieces(curve, cuts[i] ?? []).map((piece) => ({ edge, curve: piece })));
}

/** Where on a straight line another that lies along it ends; its crossings with such a line are no single points. */
function endsOn(line: Curve, other: Curve): readonly number[] {
  if (!curveIsStraight(line) || !curveIsStraight(other)) return [];
  const chord = subtract(line[3], line[0]);
  const length = size(chord);
  return [other[0], other[3]]
    .map((end) => ({ end, t: dot(subtract(end, line[0]), chord) / (length * length) }))
    .filter(({ end, t }) => t > 0 && t < 1 && distance(end, curvePoint(line, t)) < TOLERANCE.samePoint)
    .map(({ t }) => t);
}

/** A curve in pieces. */
function pieces(curve: Curve, cuts: readonly number[]): readonly Curve[] {
  const at = [0, ...[...cuts].sort((a, b) => a - b), 1];
  const own = at.filter((t, i) => i === 0 || t - (at[i - 1] as number) > SAME_T);
  return own
    .slice(1)
    .map((t, i) => curvePart(curve, own[i] as number, t))
    .filter(([a, , , d]) => distance(a, d) > TOLERANCE.samePoint);
}

/** Whether all lies to the right of a curve, and nothing to its left. */
function isBorder(windingAt: (p: Point) => number, curve: Curve, beside: number): boolean {
  const middle = curvePoint(curve, 0.5);
  const left = leftOf(curveTangent(curve, 0.5));
  // Beside a part shorter than that others would be met.
  const reach = Math.min(beside, distance(curve[0], curve[3]) / 8);
  return windingAt(moved(middle, left, reach)) <= 0 && windingAt(moved(middle, left, -reach)) > 0;
}

/** The closed way along the parts of a border, from its topmost; undefined where it does not come back. */
function followed(parts: readonly WayPart[]): readonly WayPart[] | undefined {
  if (parts.length === 0) return undefined;
  const start = parts.reduce((best, part, i) => (top(part) < top(parts[best] as WayPart) ? i : best), 0);
  const left = new Set(parts.keys());
  const way: WayPart[] = [];
  let here = start;
  while (left.delete(here)) {
    const part = parts[here] as WayPart;
    way.push(part);
    const next = goingOn(parts, left, here, start);
    if (next === start) return way;
    if (next === undefined) return undefined;
    here = next;
  }
  return undefined;
}

const top = ({ curve }: WayPart): number => curveBounds(curve).top;

/**
 * The part that starts where one ends: of several, the one that keeps farthest to the left. Where none starts just there,
 * because a hair of the border between them could not be told, the nearest.
 */
function goingOn(
  parts: readonly WayPart[],
  left: ReadonlySet<number>,
  here: number,
  start: number,
): number | undefined {
  const { curve } = parts[here] as WayPart;
  const from = (i: number) => (parts[i] as WayPart).curve;
  const turn = (i: number) => turnBetween(curveTangent(curve, 1), curveTangent(from(i), 0));
  const near: { readonly i: number; readonly gap: Mm }[] = [];
  for (const i of [...left, start]) {
    const gap = distance(curve[3], from(i)[0]);
    if (i !== here && gap < TOLERANCE.parallel) near.push({ i, gap });
  }
  near.sort((a, b) => a.gap - b.gap);
  const met = near.filter(({ gap }) => gap < 2 * TOLERANCE.samePoint).sort((a, b) => turn(a.i) - turn(b.i));
  return (met[0] ?? near[0])?.i;
}

/** The same way, from where it comes round to the first edges again. */
function startingLow(way: readonly WayPart[]): readonly WayPart[] {
  const drop = (i: number) => ((way[i - 1] ?? way.at(-1)) as WayPart).edge - (way[i] as WayPart).edge;
  const low = way.reduce((best, _, i) => (drop(i) > drop(best) ? i : best), 0);
  return [...way.slice(low), ...way.slice(0, low)];
}

/** Hair's breadths between the parts are closed; what is wider, by a line, which the checks will find. */
function bridged(way: readonly WayPart[]): readonly WayPart[] {
  return way.flatMap((part, i) => {
    const { curve: before } = (way[i - 1] ?? way.at(-1)) as WayPart;
    const gap = distance(before[3], part.curve[0]);
    if (gap > TOLERANCE.chord) return [{ edge: part.edge, curve: straight(before[3], part.curve[0]) }, part];
    return [{ ...part, curve: startingAt(part.curve, before[3]) }];
  });
}

function startingAt(curve: Curve, start: Point): Curve {
  const [, b, c, d] = curve;
  return curveIsStraight(curve) ? straight(start, d) : [start, b, c, d];
}
