import type { Mm } from '../../length';
import { type Curve, curveIsStraight, distance, dot, type Point, subtract, unit } from '../../plane';
import type { DrawnRun } from './drawn';
import { namesSay } from './names';

/** A straight line within a block. */
export interface InnerLine {
  readonly ends: readonly [Point, Point];
  readonly names: readonly string[];
  /** At how many of its ends there is an arrowhead. */
  readonly heads: number;
}

/** Strokes of an arrowhead are no longer than this share of their line. @source practice */
const HEAD = 0.35;
/** They begin within this of the line’s end, millimetres. @source tolerance */
const AT_END: Mm = 3;
/** They lean back by so much from the line, radians, at least and at most. @source practice */
const [SLIMMEST, BLUNTEST] = [0.1, 1.1];
/** What is shorter, millimetres, is a mark, not a line. @source practice */
const SHORTEST: Mm = 40;

/** The straight lines within a block, the longest first. */
export function innerLines(lines: readonly DrawnRun[]): readonly InnerLine[] {
  const strokes = lines.flatMap(({ curves, names }) =>
    curves.filter(curveIsStraight).map((curve) => ({ curve, names })),
  );
  const short = lines.flatMap(({ curves }) => curves);
  return strokes
    .filter(({ curve }) => chord(curve) >= SHORTEST)
    .map(({ curve, names }): InnerLine => {
      const [a, b] = [curve[0], curve[3]];
      return { ends: [a, b], names, heads: Number(hasHead(a, b, short)) + Number(hasHead(b, a, short)) };
    })
    .sort((one, other) => distance(...other.ends) - distance(...one.ends));
}

const chord = (curve: Curve): Mm => distance(curve[0], curve[3]);

/** Whether strokes lean back from the end of a line on either side, or on one. */
function hasHead(end: Point, other: Point, strokes: readonly Curve[]): boolean {
  const along = subtract(other, end);
  const length = distance(end, other);
  return strokes.some((stroke) => {
    if (chord(stroke) > HEAD * length) return false;
    return [stroke, [...stroke].reverse()].some((way) => {
      const [from, to] = [way[0] as Point, way[3] as Point];
      if (distance(from, end) > AT_END) return false;
      const lean = Math.acos(Math.min(1, Math.max(-1, dot(unit(subtract(to, from)), unit(along)))));
      return lean > SLIMMEST && lean < BLUNTEST;
    });
  });
}

/** A grainline leans no more than this from the way that the block lies, radians. @source practice */
const LEAN = 0.35;
/** A line without arrowheads is taken for the grainline only if it is so long, millimetres. @source practice */
const LONG: Mm = 80;
/** It is sure to be the grainline where the next one is shorter by this share: the legs of a dart run along, too. @source practice */
const SHORTER = 0.6;

/**
 * The line of a block that is its grainline: by its name, by its arrowheads, else the longest that runs along the leg.
 *
 * @param up the way that the block lies
 * @returns undefined where there is none; `sure` is false where nothing but its length and direction speaks for it
 */
export function grainlineAmong(
  lines: readonly InnerLine[],
  up: Point,
): { readonly line: InnerLine; readonly sure: boolean } | undefined {
  const along = lines.filter(({ ends: [a, b] }) => Math.abs(dot(unit(subtract(b, a)), up)) > Math.cos(LEAN));
  const named = along.find(({ names }) => namesSay(names, 'grain', 'grainline'));
  if (named) return { line: named, sure: true };
  const headed = along.filter(({ heads }) => heads > 0).sort((a, b) => b.heads - a.heads)[0];
  if (headed) return { line: headed, sure: true };
  const long = along.filter(({ ends }) => distance(...ends) >= LONG);
  const [first, next] = long;
  return first && { line: first, sure: !next || distance(...next.ends) < SHORTER * distance(...first.ends) };
}
