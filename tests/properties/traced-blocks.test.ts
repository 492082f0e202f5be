import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Block, CurvePoints, Pair, TracedBlock } from '../../src/block';
import type { Curve, Point } from '../../src/plane';
import type { Draft, Project } from '../../src/project';
import { anyBody } from './bodies';
import { anyDesign, projectOf } from './designs';
import { draftOrRefusal, farthestMove, netOutline } from './outlines';
import { between, chance, PATIENCE } from './seed';

/** Adding a place to every figure of a file and taking it away again costs the last digits. */
const ROUNDING = 1e-3;

type Place = (p: Point) => Pair;

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

const asDrafted: Place = ({ x, y }) => [x, y];

function broughtAlong(d: Draft, project: Project, front: Place, back: Place): Draft | undefined {
  const block = {
    source: 'traced' as const,
    front: tracingOf(d.blocks.front, front),
    back: tracingOf(d.blocks.back, back),
  };
  return draftOrRefusal({ ...project, block });
}

test(
  'a block brought along mirrored or moved gives the same draft',
  () => {
    let compared = 0;
    fc.assert(
      fc.property(anyBody, anyDesign, between(-900, 900), between(-900, 900), (body, design, dx, dy) => {
        const project = projectOf(body, design);
        const own = draftOrRefusal(project);
        if (!own) return;
        const plain = broughtAlong(own, project, asDrafted, asDrafted);
        const other = broughtAlong(
          own,
          project,
          ({ x, y }) => [dx - x, y + dy],
          ({ x, y }) => [dy - x, y + dx],
        );
        expect(other === undefined).toBe(plain === undefined);
        if (!plain || !other) return;
        compared += 1;
        expect(farthestMove(netOutline(plain), netOutline(other))).toBeLessThan(ROUNDING);
        expect(other.checks.map((c) => c.verdict)).toEqual(plain.checks.map((c) => c.verdict));
      }),
      chance('mirrored blocks', 40),
    );
    expect(compared).toBeGreaterThan(20);
  },
  PATIENCE,
);

test(
  'the leg never asks where a block came from: brought along as it was drafted it gives the same leg',
  () => {
    fc.assert(
      fc.property(anyBody, anyDesign, (body, design) => {
        // A crotch that is solved once more on the finished leg would differ by its tolerance.
        const { crotchLength: _, frontCrotchLength: __, ...plainBody } = body;
        const project = projectOf(plainBody, design);
        const own = draftOrRefusal(project);
        if (!own) return;
        const brought = broughtAlong(own, project, asDrafted, asDrafted);
        expect(brought).toBeDefined();
        if (brought) expect(farthestMove(netOutline(own), netOutline(brought))).toBeLessThan(ROUNDING);
      }),
      chance('own blocks', 40),
    );
  },
  PATIENCE,
);
