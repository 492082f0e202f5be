import { expect } from 'vitest';
import {
  type Curve,
  curvePoint,
  distance,
  type Edge,
  flattenCurves,
  type Outline,
  outlineCurves,
  type Point,
  pathAt,
  pathEnd,
  pathLength,
} from '../../src/plane';
import { type Draft, draft, type Project } from '../../src/project';
import { crossingsAt } from '../outside/reference-geometry';
import { expectPlainRefusal } from './net';

/** The draft of a project; undefined where it is refused, after looking whether the refusal says where and why. */
export function draftOrRefusal(project: Project): Draft | undefined {
  const result = draft(project);
  if (result.ok) return result.value;
  expectPlainRefusal(result.problems);
  return undefined;
}

/** The net outline of the leg, turnings included. */
export const netOutline = (d: Draft): Outline => d.pieces[0]?.stitchLine ?? [];

/** How wide the net leg is at a level, from the drawn polyline; both legs. */
export function girthAt(outline: Outline, level: number): number {
  const points = flattenCurves(outlineCurves(outline), 0.005).map(({ x, y }) => [x, y] as const);
  const xs = crossingsAt(points, level);
  return 2 * (Math.max(...xs) - Math.min(...xs));
}

/** From crotch point to crotch point, straight across the drawing. */
export function thighLine(outline: Outline): number {
  const end = (name: string): Point => pathEnd(outline.find((edge) => edge.name === name)?.curves ?? []);
  return end('crotchFront').x - end('inseamBack').x;
}

const SHARES = 8;

/** The farthest that any place of an outline moved, edge by edge. */
export function farthestMove(before: Outline, after: Outline): number {
  expect(after.map((edge) => edge.name)).toEqual(before.map((edge) => edge.name));
  return Math.max(...before.map((edge, i) => edgeMove(edge, after[i] as Edge)));
}

/** Place by place: along each curve alike where there are as many, else at equal shares of the edges' lengths. */
function edgeMove({ curves: before }: Edge, { curves: after }: Edge): number {
  if (before.length === after.length) return Math.max(...before.map((curve, i) => curveMove(curve, after[i] as Curve)));
  const [a, b] = [pathLength(before), pathLength(after)];
  const moves = Array.from({ length: SHARES + 1 }, (_, k) =>
    distance(pathAt(before, (a * k) / SHARES).at, pathAt(after, (b * k) / SHARES).at),
  );
  return Math.max(...moves);
}

function curveMove(before: Curve, after: Curve): number {
  let most = 0;
  for (let k = 0; k <= SHARES; k += 1)
    most = Math.max(most, distance(curvePoint(before, k / SHARES), curvePoint(after, k / SHARES)));
  return most;
}
