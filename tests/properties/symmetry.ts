import { expect } from 'vitest';
import type { Block, Blocks } from '../../src/block';
import type { Curve, Point } from '../../src/plane';
import type { Project } from '../../src/project';
import type { CurvePoints, Pair, TracedBlock } from '../../src/trace';
import { netLeg } from './net';
import { farthestMove } from './outlines';

/** Adding a place to every figure of a file and taking it away again costs the last digits. */
const ROUNDING = 1e-3;

/** Where a point of a block lies on somebody's paper. */
type Place = (p: Point) => Pair;

export const asDrafted: Place = ({ x, y }) => [x, y];

/** A drafted block as somebody would bring it along: its curves as figures in a file. */
function tracingOf(block: Block, place: Place): TracedBlock {
  const curves = (edge: readonly Curve[]) => edge.map((curve) => curve.map(place) as unknown as CurvePoints);
  return {
    edges: Object.fromEntries(
      block.edges.map((edge) => [edge.name, curves(edge.curves)]),
    ) as unknown as TracedBlock['edges'],
    grainline: [place(block.grainline[0]), place(block.grainline[1])],
    hipLevel: place({ x: 0, y: block.hipLevel })[1],
    kneeLevel: place({ x: 0, y: block.kneeLevel })[1],
  };
}

/** The same project, its blocks brought along from paper, lying as `front` and `back` say. */
export function broughtAlong(
  blocks: Pick<Blocks, 'front' | 'back'>,
  project: Project,
  front: Place,
  back: Place,
): Project {
  return {
    ...project,
    block: { source: 'drawn' as const, front: tracingOf(blocks.front, front), back: tracingOf(blocks.back, back) },
  };
}

/** Blocks brought along mirrored and moved give the leg that they give as they were drafted. */
export function mirroredBlocksGiveTheSame(project: Project, dx: number, dy: number): boolean {
  const own = netLeg(project);
  if (!own) return false;
  const plain = netLeg(broughtAlong(own.drafted.blocks, project, asDrafted, asDrafted));
  const other = netLeg(
    broughtAlong(
      own.drafted.blocks,
      project,
      ({ x, y }) => [dx - x, y + dy],
      ({ x, y }) => [dy - x, y + dx],
    ),
  );
  expect(other === undefined).toBe(plain === undefined);
  if (!plain || !other) return false;
  expect(farthestMove(plain.outline, other.outline)).toBeLessThan(ROUNDING);
  return true;
}

/** The leg never asks where a block came from: brought along as it was drafted it gives the same leg. */
export function broughtBlocksGiveTheSame(project: Project): boolean {
  const own = netLeg(project);
  if (!own) return false;
  const brought = netLeg(broughtAlong(own.drafted.blocks, project, asDrafted, asDrafted));
  expect(brought).toBeDefined();
  if (brought) expect(farthestMove(own.outline, brought.outline)).toBeLessThan(ROUNDING);
  return true;
}
