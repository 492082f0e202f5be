import { type Curve, cross, curveBounds, curvePoint, curveReverse, dot, type Point, subtract } from '../../plane';
import type { Net, Strand } from './net';

/** A closed walk over strands of a net, by their numbers. */
export interface Loop {
  readonly curves: readonly Curve[];
  readonly strands: readonly number[];
  readonly gap: number;
}

/**
 * The outer closed lines of a net: of all that hangs together, the way round its outside. What hangs loose from it or
 * lies within it is no part of it.
 *
 * @returns each clockwise as seen on the paper, y down
 */
export function outerLoops(net: Net): readonly Loop[] {
  const kept = withoutLooseEnds(net);
  return groupsOf(net, kept).flatMap((group) => loopsRound(net, kept, group));
}

/** Which strands are left when those with a loose end are taken away, again and again. */
function withoutLooseEnds({ strands, at }: Net): ReadonlySet<number> {
  const kept = new Set(strands.keys());
  const degree = at.map((there) => there.length);
  const waiting = [...degree.keys()].filter((place) => degree[place] === 1);
  for (let place = waiting.pop(); place !== undefined; place = waiting.pop()) {
    if (degree[place] !== 1) continue;
    const last = at[place]?.find((i) => kept.has(i));
    if (last === undefined) continue;
    kept.delete(last);
    const { from, to } = strands[last] as Strand;
    for (const end of [from, to]) {
      degree[end] = (degree[end] as number) - 1;
      if (degree[end] === 1) waiting.push(end);
    }
  }
  return kept;
}

/** Strands that hang together. */
function groupsOf({ strands, at }: Net, kept: ReadonlySet<number>): readonly (readonly number[])[] {
  const left = new Set(kept);
  const groups: number[][] = [];
  for (const first of kept) {
    if (!left.delete(first)) continue;
    const group = [first];
    for (let next = 0; next < group.length; next += 1) {
      const { from, to } = strands[group[next] as number] as Strand;
      for (const end of [from, to]) for (const i of at[end] ?? []) if (left.delete(i)) group.push(i);
    }
    groups.push(group);
  }
  return groups;
}

/** A strand and the way in which it is walked. */
interface Step {
  readonly strand: number;
  readonly onward: boolean;
}

/** Round the outside of strands that hang together: from the leftmost of all, always the leftmost way on. */
function loopsRound(net: Net, kept: ReadonlySet<number>, group: readonly number[]): readonly Loop[] {
  const start = firstStep(net, group);
  const steps: Step[] = [];
  let step = start;
  do {
    steps.push(step);
    step = nextStep(net, kept, step);
    // A net that hostile figures have knotted is no outline.
    if (steps.length > 2 * group.length) return [];
  } while (step.strand !== start.strand || step.onward !== start.onward);
  return simpleLoops(net, steps);
}

/** The strand that reaches farthest to the left, walked upwards there: clockwise. */
function firstStep(net: Net, group: readonly number[]): Step {
  let [least, strand] = [Infinity, group[0] as number];
  for (const i of group) {
    const { left } = curveBounds((net.strands[i] as Strand).curve);
    if (left < least) [least, strand] = [left, i];
  }
  const { curve, from, to } = net.strands[strand] as Strand;
  const far = ({ x }: Point) => x <= least + OUTERMOST;
  if (!far(curve[0]) && !far(curve[3])) return { strand, onward: upward(curve) };
  // At a corner the way of one strand doesn’t tell which side of it is outside; the ways of all that leave it do.
  return uppermost(net, group, far(curve[0]) ? from : to) ?? { strand, onward: upward(curve) };
}

/** A point that lies no farther than this from the farthest is as far, in the drawing’s units. @source tolerance */
const OUTERMOST = 1e-9;

/** Whether a curve runs upwards where it is farthest to the left. */
function upward(curve: Curve): boolean {
  const steps = Array.from({ length: 65 }, (_, i) => curvePoint(curve, i / 64));
  const at = steps.reduce((best, p, i) => (p.x < (steps[best] as Point).x ? i : best), 0);
  const [before, after] = [steps[Math.max(0, at - 1)] as Point, steps[Math.min(64, at + 1)] as Point];
  return after.y < before.y;
}

/** Of the strands that leave the leftmost place, the one that runs up most steeply, away from it. */
function uppermost({ strands, at }: Net, group: readonly number[], place: number): Step | undefined {
  const members = new Set(group);
  let best: { step: Step; slope: number } | undefined;
  for (const i of at[place] ?? []) {
    if (!members.has(i)) continue;
    const { curve, from, to } = strands[i] as Strand;
    for (const onward of [true, false]) {
      if ((onward ? from : to) !== place) continue;
      const { x, y } = wayAway(onward ? curve : curveReverse(curve));
      const slope = Math.atan2(y, x);
      if (!best || slope < best.slope) best = { step: { strand: i, onward }, slope };
    }
  }
  return best?.step;
}

/** Ways that leave a place are compared a little away from it, where two that touch there have parted. @source tolerance */
const LOOK = 0.02;

/** At the end of a step the way on that keeps the outside on the left: the first one, turning from where it came, clockwise. */
function nextStep({ strands, at }: Net, kept: ReadonlySet<number>, { strand, onward }: Step): Step {
  const here = strands[strand] as Strand;
  const place = onward ? here.to : here.from;
  const back = wayAway(onward ? curveReverse(here.curve) : here.curve);
  let best: { step: Step; turn: number } | undefined;
  for (const i of new Set(at[place])) {
    if (!kept.has(i)) continue;
    const other = strands[i] as Strand;
    for (const ahead of [true, false]) {
      if ((ahead ? other.from : other.to) !== place) continue;
      if (i === strand && ahead !== onward) continue;
      const way = wayAway(ahead ? other.curve : curveReverse(other.curve));
      const turn = (Math.atan2(cross(back, way), dot(back, way)) + 2 * Math.PI) % (2 * Math.PI);
      if (!best || turn < best.turn) best = { step: { strand: i, onward: ahead }, turn };
    }
  }
  return best?.step ?? { strand, onward: !onward };
}

const wayAway = (curve: Curve): Point => subtract(curvePoint(curve, LOOK), curve[0]);

/** A walk that comes to one place twice is two loops that touch there. */
function simpleLoops({ strands, gaps }: Net, steps: readonly Step[]): readonly Loop[] {
  const loops: Loop[] = [];
  const walked: { step: Step; from: number }[] = [];
  const close = (cut: readonly { step: Step; from: number }[]) => {
    const ways = cut.map(({ step }) => step);
    loops.push({
      curves: ways.map(({ strand, onward }) => {
        const { curve } = strands[strand] as Strand;
        return onward ? curve : curveReverse(curve);
      }),
      strands: ways.map(({ strand }) => strand),
      gap: Math.max(0, ...cut.map(({ from }) => gaps[from] as number)),
    });
  };
  const seen = new Map<number, number>();
  for (const step of steps) {
    const { from, to } = strands[step.strand] as Strand;
    const start = step.onward ? from : to;
    const before = seen.get(start);
    if (before !== undefined) {
      for (const { from: gone } of walked.slice(before)) seen.delete(gone);
      close(walked.splice(before));
    }
    seen.set(start, walked.length);
    walked.push({ step, from: start });
  }
  if (walked.length > 0) close(walked);
  return loops;
}
