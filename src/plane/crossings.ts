import { boxesApart, type ControlBox, controlBox } from './control-box';
import { curveIsStraight, curvePoint, curveSplit, curveVelocity } from './curve';
import { add, cross, distance, dot, scale, size, subtract, unit } from './point';
import { TOLERANCE } from './tolerances';
import type { Curve, Point } from './types';

/** A point that two curves share, and the parameter of it on each. */
export interface Crossing {
  readonly at: Point;
  readonly t: number;
  readonly u: number;
}

/** A part of a curve with the parameters at its ends. */
interface Part {
  readonly curve: Curve;
  readonly box: ControlBox;
  readonly from: number;
  readonly to: number;
  readonly flat: boolean;
}

/** No honest pair of curves of a pattern needs more looks; only two that run along each other do. */
const MOST_LOOKS = 4000;

/**
 * All points in which two curves meet or cross.
 *
 * Both are halved where the boxes round their control points overlap (a cubic lies inside them) until each is straight
 * within a twentieth of {@link TOLERANCE.chord}; the crossing of the chords is then brought onto the curves by Newton's
 * method. Crossings closer together than that may count as one; curves that lie on each other give some of their shared
 * points, not all.
 */
export function curveCrossings(first: Curve, second: Curve): readonly Crossing[] {
  const joint = runOn(first, second);
  if (joint) return [joint];
  const found: Crossing[] = [];
  const open: (readonly [Part, Part])[] = [[part(first, 0, 1), part(second, 0, 1)]];
  for (let looks = 0; open.length > 0 && looks < MOST_LOOKS; looks += 1) {
    const [p, q] = open.pop() as readonly [Part, Part];
    if (boxesApart(p.box, q.box, TOLERANCE.samePoint)) continue;
    if (p.flat && q.flat) {
      const crossing = onCurves(first, second, p, q);
      if (crossing && found.every((other) => distance(other.at, crossing.at) > TOLERANCE.samePoint))
        found.push(crossing);
    } else if (q.flat || (!p.flat && p.to - p.from >= q.to - q.from)) {
      for (const half of halves(p)) open.push([half, q]);
    } else {
      for (const half of halves(q)) open.push([p, half]);
    }
  }
  return found.sort((a, b) => a.t - b.t);
}

/**
 * The only meeting of two curves that share an end and from there part for good: both keep travelling forwards along one
 * direction, the first to the shared end and the second from it. Most neighbours on an outline do.
 */
function runOn(first: Curve, second: Curve): Crossing | undefined {
  for (const t of [1, 0] as const)
    for (const u of [0, 1] as const) {
      const at = first[t === 1 ? 3 : 0];
      const other = second[u === 1 ? 3 : 0];
      if (at.x !== other.x || at.y !== other.y) continue;
      const coming = unit(subtract(at, first[t === 1 ? 0 : 3]));
      const going = unit(subtract(second[u === 1 ? 0 : 3], at));
      const way = add(coming, going);
      if (travels(first, way, t === 1 ? 1 : -1) && travels(second, way, u === 0 ? 1 : -1)) return { at, t, u };
    }
  return undefined;
}

/** Whether a curve never stops travelling along a direction, forwards (1) or backwards (−1): each leg of its control polygon does. */
function travels([a, b, c, d]: Curve, way: Point, sense: 1 | -1): boolean {
  const x = sense * way.x;
  const y = sense * way.y;
  const [first, second, third] = [
    (b.x - a.x) * x + (b.y - a.y) * y,
    (c.x - b.x) * x + (c.y - b.y) * y,
    (d.x - c.x) * x + (d.y - c.y) * y,
  ] as const;
  return first >= 0 && second >= 0 && third >= 0 && first + second + third > TOLERANCE.samePoint;
}

const part = (curve: Curve, from: number, to: number): Part => ({
  curve,
  box: controlBox(curve),
  from,
  to,
  flat: isFlat(curve),
});

function halves({ curve, from, to }: Part): readonly [Part, Part] {
  const middle = (from + to) / 2;
  const [a, b] = curveSplit(curve, 0.5);
  return [part(a, from, middle), part(b, middle, to)];
}

/** Straight, or so nearly that its chord, travelled evenly, leaves it by less than a twentieth of the chord tolerance. */
function isFlat(curve: Curve): boolean {
  if (curveIsStraight(curve)) return true;
  const [a, b, c, d] = curve;
  // ⅛·max|B″| bounds how far point and chord point of the same parameter lie apart (see flattenCurves).
  const bend = Math.max(
    size({ x: c.x - 2 * b.x + a.x, y: c.y - 2 * b.y + a.y }),
    size({ x: d.x - 2 * c.x + b.x, y: d.y - 2 * c.y + b.y }),
  );
  return 0.75 * bend < TOLERANCE.chord / 20;
}

/** The crossing of two nearly straight parts, on the curves themselves; undefined where they only pass near. */
function onCurves(first: Curve, second: Curve, p: Part, q: Part): Crossing | undefined {
  const chordP = subtract(p.curve[3], p.curve[0]);
  const chordQ = subtract(q.curve[3], q.curve[0]);
  const between = subtract(q.curve[0], p.curve[0]);
  const turn = cross(chordP, chordQ);
  const parallel = Math.abs(turn) < 1e-9 * size(chordP) * size(chordQ);
  const share = parallel ? 0.5 : clamped(cross(between, chordQ) / turn);
  const other = parallel ? 0.5 : clamped(cross(between, chordP) / turn);
  return (
    refined(first, second, p.from + share * (p.to - p.from), q.from + other * (q.to - q.from)) ??
    sharedEnd(first, second, p, q)
  );
}

const clamped = (t: number): number => Math.min(1, Math.max(0, t));

/** Newton's method from a guess; undefined where it does not end in a common point. */
function refined(first: Curve, second: Curve, guessT: number, guessU: number): Crossing | undefined {
  let [t, u] = [guessT, guessU];
  for (let i = 0; i < 12; i += 1) {
    const gap = subtract(curvePoint(second, u), curvePoint(first, t));
    if (size(gap) < TOLERANCE.samePoint / 1000) break;
    const v = curveVelocity(first, t);
    const w = curveVelocity(second, u);
    const turn = cross(v, w);
    if (Math.abs(turn) < 1e-12 * size(v) * size(w)) break;
    t = clamped(t + cross(gap, w) / turn);
    u = clamped(u + cross(gap, v) / turn);
  }
  const at = curvePoint(first, t);
  return distance(at, curvePoint(second, u)) < TOLERANCE.samePoint ? { at, t, u } : undefined;
}

/** Two parts that share an end, where a tangency keeps Newton's method from finding it. */
function sharedEnd(first: Curve, second: Curve, p: Part, q: Part): Crossing | undefined {
  for (const t of [p.from, p.to]) {
    for (const u of [q.from, q.to]) {
      const at = curvePoint(first, t);
      if (distance(at, curvePoint(second, u)) < TOLERANCE.samePoint) return { at, t, u };
    }
  }
  return undefined;
}

/**
 * The point in which one cubic crosses itself, if it has a loop: B(t) = B(s) divided by t − s is a pair of equations
 * in t + s and ts.
 */
export function curveLoop([a, b, c, d]: Curve): Point | undefined {
  const cubic = add(subtract(d, a), scale(subtract(b, c), 3));
  const square = scale(add(subtract(a, scale(b, 2)), c), 3);
  const linear = scale(subtract(b, a), 3);
  const turn = cross(square, cubic);
  const length = dot(cubic, cubic);
  if (Math.abs(turn) < 1e-12 || length < 1e-18) return undefined;
  const sum = -cross(linear, cubic) / turn;
  const product = sum * sum + (sum * dot(square, cubic) + dot(linear, cubic)) / length;
  const root = sum * sum - 4 * product;
  if (root <= 0) return undefined;
  const [t, s] = [(sum - Math.sqrt(root)) / 2, (sum + Math.sqrt(root)) / 2];
  return t >= 0 && s <= 1 ? curvePoint([a, b, c, d], t) : undefined;
}
