import type { Mm } from '../length';
import { curveMeetsLine, curvePart, curvePoint } from './curve';
import type { ParallelRun } from './parallel';
import { pathEnd, pathReverse } from './path';
import { distance } from './point';
import type { Curve, Point } from './types';

/** Sides of which the end was cut off: where, and the runs that are left of each, from the corner on; undefined of one that is gone. */
export interface CutSides {
  readonly at: Point;
  readonly runs: readonly (readonly ParallelRun[] | undefined)[];
}

interface HasRuns {
  readonly runs: readonly ParallelRun[];
}

/**
 * The sides that arrive at a corner, without what lies beyond a straight line.
 *
 * @param sides of one edge, the last first
 * @param on a point of the line
 * @param way its direction
 * @param reach how far from their end it is looked for, mm
 * @returns undefined where the line isn't met within reach
 */
export function endsCut(sides: readonly HasRuns[], on: Point, way: Point, reach: Mm): CutSides | undefined {
  const corner = sides[0]?.runs.at(-1)?.curves;
  if (!corner) return undefined;
  const end = pathEnd(corner);
  const gone: undefined[] = [];
  for (const { runs } of sides) {
    const last = runs.at(-1);
    if (!last) return undefined;
    const cut = runCut(last.curves, on, way);
    if (cut) {
      if (distance(cut.at, end) > reach) return undefined;
      // A stretch left out at the end, in a hollow tighter than the distance, lies beyond the line with the rest.
      return { at: cut.at, runs: [...gone, [...runs.slice(0, -1), { ...last, to: 1, curves: cut.curves }]] };
    }
    if (last.from !== 0 || last.to !== 1) return undefined;
    gone.push(undefined);
  }
  return undefined;
}

/** The same of the sides that leave a corner, the first first. */
export function startsCut(sides: readonly HasRuns[], on: Point, way: Point, reach: Mm): CutSides | undefined {
  const cut = endsCut(
    sides.map(({ runs }) => ({ runs: runsTurned(runs) })),
    on,
    way,
    reach,
  );
  return cut && { at: cut.at, runs: cut.runs.map((runs) => runs && runsTurned(runs)) };
}

const runsTurned = (runs: readonly ParallelRun[]): readonly ParallelRun[] =>
  runs.map(({ from, to, curves }) => ({ from: 1 - to, to: 1 - from, curves: pathReverse(curves) })).reverse();

/** A run up to its last crossing of a straight line. */
function runCut(
  run: readonly Curve[],
  on: Point,
  way: Point,
): { readonly at: Point; readonly curves: readonly Curve[] } | undefined {
  for (let i = run.length - 1; i >= 0; i -= 1) {
    const curve = run[i] as Curve;
    const t = curveMeetsLine(curve, on, way).at(-1);
    if (t === undefined) continue;
    return { at: curvePoint(curve, t), curves: [...run.slice(0, i), ...(t > 0 ? [curvePart(curve, 0, t)] : [])] };
  }
  return undefined;
}
