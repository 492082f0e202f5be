import { curveBounds, curveIsStraight, curvePart, curvePoint, curveTangent, straight } from './curve';
import { pathMeetings } from './meetings';
import { turnBetween } from './parallel';
import type { Strand } from './parallel-corners';
import { distance } from './point';
import { TOLERANCE } from './tolerances';
import type { Curve, Point } from './types';

/** A curve on the way round, and the number of the edge that it is drawn for. */
export interface WayPart {
  readonly edge: number;
  readonly curve: Curve;
}

/** Where a part of the way meets another: the parameters on both. */
interface Crossroad {
  readonly t: number;
  readonly other: number;
  readonly otherT: number;
}

/** A place on the way: a part, by number, and the parameter on it. */
interface Place {
  readonly part: number;
  readonly t: number;
}

/** Parameters nearer than this are one place of a curve. */
const SAME_T = 1e-7;

/**
 * The outermost way round: from the topmost place always along the strands, and wherever they meet on the one that
 * keeps farther to the left, the outside. Loops and spurs lie to the right of it and are left out.
 *
 * @param strands clockwise, in order, the outside on their left
 * @returns the parts of the way, closed, the lowest edge first
 */
export function outermostWay(strands: readonly Strand[]): readonly WayPart[] {
  const parts = strands.flatMap(({ edge, curves }) => curves.map((curve): WayPart => ({ edge, curve })));
  return bridged(startingLow(wayAlong(parts) ?? parts));
}

/** The way by the rule of the left; undefined where it doesn't come back to its start, which nobody has seen. */
function wayAlong(parts: readonly WayPart[]): readonly WayPart[] | undefined {
  const crossroads = crossroadsOf(parts);
  const start = topmost(parts);
  const way: WayPart[] = [];
  let place = start;
  for (let steps = 0; steps <= 4 * parts.length; steps += 1) {
    const { edge, curve } = parts[place.part] as WayPart;
    const exit = crossroads[place.part]?.find(
      (road) => road.t > place.t + SAME_T && turnsLeft(parts, place.part, road),
    );
    const end = exit?.t ?? 1;
    if (end > place.t) way.push({ edge, curve: curvePart(curve, place.t, end) });
    place = exit ? { part: exit.other, t: exit.otherT } : { part: (place.part + 1) % parts.length, t: 0 };
    if (place.part === start.part && place.t <= start.t + SAME_T) return [...way, ...lastPart(parts, place, start)];
  }
  return undefined;
}

/** From where the way came back to its first part, as far as the start. */
function lastPart(parts: readonly WayPart[], from: Place, start: Place): readonly WayPart[] {
  const { edge, curve } = parts[start.part] as WayPart;
  return start.t - from.t > SAME_T ? [{ edge, curve: curvePart(curve, from.t, start.t) }] : [];
}

/** All meetings of parts that don't just follow one another, for each part in the order of its travel. */
function crossroadsOf(parts: readonly WayPart[]): readonly (readonly Crossroad[])[] {
  const found = parts.map((): Crossroad[] => []);
  const boxes = parts.map(({ curve }) => curveBounds(curve));
  for (let i = 0; i < parts.length; i += 1)
    for (let j = i + 1; j < parts.length; j += 1) {
      const [a, b] = [boxes[i] as Box, boxes[j] as Box];
      if (a.right < b.left || b.right < a.left || a.bottom < b.top || b.bottom < a.top) continue;
      const [first, second] = [(parts[i] as WayPart).curve, (parts[j] as WayPart).curve];
      if (follows(first, second) || follows(second, first)) continue;
      for (const meeting of pathMeetings([first], [second])) {
        found[i]?.push({ t: meeting.first.t, other: j, otherT: meeting.second.t });
        found[j]?.push({ t: meeting.second.t, other: i, otherT: meeting.first.t });
      }
    }
  return found.map((list) => list.sort((a, b) => a.t - b.t));
}

type Box = ReturnType<typeof curveBounds>;

const follows = (a: Curve, b: Curve): boolean => distance(a[3], b[0]) < TOLERANCE.parallel;

function turnsLeft(parts: readonly WayPart[], here: number, { t, other, otherT }: Crossroad): boolean {
  return turnBetween(wayFrom(parts, { part: here, t }), wayFrom(parts, { part: other, t: otherT })) < 0;
}

/** In which direction the way goes on from a place. */
function wayFrom(parts: readonly WayPart[], { part, t }: Place): Point {
  const { curve } = parts[part] as WayPart;
  const next = (parts[(part + 1) % parts.length] as WayPart).curve;
  return t > 1 - SAME_T && follows(curve, next) ? curveTangent(next, 0) : curveTangent(curve, t);
}

const SAMPLES = 16;

/** A topmost place is on the border whatever else happens. */
function topmost(parts: readonly WayPart[]): Place {
  let best = { part: 0, t: 0, y: Infinity };
  parts.forEach(({ curve }, part) => {
    if (Math.min(...curve.map((p) => p.y)) >= best.y) return;
    for (let i = 0; i <= SAMPLES; i += 1) {
      const { y } = curvePoint(curve, i / SAMPLES);
      if (y < best.y) best = { part, t: i / SAMPLES, y };
    }
  });
  return best;
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
