import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  curveMap,
  distance,
  edgeLength,
  flattenCurves,
  insetOutline,
  type Outline,
  outlineArea,
  outlineCurves,
  parallelOutline,
  pathEnd,
  pathFoot,
  pathReverse,
  pathStart,
  pathThrough,
  point,
} from '../../src/plane';
import { draft, exampleProject } from '../../src/project';
import { BLOCK_EDGES } from '../../src/trace';
import { between, chance } from '../properties/seed';

const drafted = draft(exampleProject);
if (!drafted.ok) throw new Error('refused');
const { front } = drafted.value.blocks;

/** Two outlines edge by edge: how far the ends of the first lie apart from the other's. */
const apart = (a: Outline, b: Outline) =>
  Math.max(
    ...a.flatMap(({ curves }, i) => {
      const other = flattenCurves(b[i]?.curves ?? []);
      return flattenCurves(curves).map((p) => pathFoot(other, p).distance);
    }),
  );

describe('allowances taken off', () => {
  test('a rectangle is smaller by each edge’s own, whichever way round it runs', () => {
    const [a, b, c, d] = [point(0, 0), point(100, 0), point(100, 60), point(0, 60)];
    const box = [
      { name: 'top', curves: pathThrough(a, b) },
      { name: 'right', curves: pathThrough(b, c) },
      { name: 'bottom', curves: pathThrough(c, d) },
      { name: 'left', curves: pathThrough(d, a) },
    ];
    const away: Record<string, number> = { top: 10, right: 5, bottom: 0, left: 15 };
    const round = [...box].reverse().map(({ name, curves }) => ({ name, curves: pathReverse(curves) }));
    for (const outline of [box, round]) {
      const net = insetOutline(outline, (name) => away[name] ?? 0);
      expect(Math.abs(outlineArea(outlineCurves(net ?? [])))).toBeCloseTo(80 * 50, 6);
    }
    expect(insetOutline(box, () => 31)).toBeUndefined();
  });

  test('a block that was drawn with allowances is what it was before them', () => {
    fc.assert(
      fc.property(between(3, 20), between(0, 20), between(0, 40), (seam, waist, hem) => {
        const away = (name: string) => (name === 'waist' ? waist : name === 'hem' ? hem : seam);
        const cut = parallelOutline(front.edges, away as never);
        const net = insetOutline(cut, away);
        expect(net && apart(front.edges, net)).toBeLessThan(0.15);
        expect(net && apart(net, front.edges)).toBeLessThan(0.15);
        BLOCK_EDGES.forEach((name, i) => {
          const [own, back] = [front.edges[i], net?.[i]];
          expect(own && back && Math.abs(edgeLength(own) - edgeLength(back)), name).toBeLessThan(0.6);
          const next = net?.[(i + 1) % BLOCK_EDGES.length];
          expect(back && next && distance(pathEnd(back.curves), pathStart(next.curves))).toBeLessThan(0.02);
        });
      }),
      chance('allowances taken off', 60),
    );
  });

  test('a mirrored block likewise', () => {
    const flip = (outline: Outline) =>
      outline.map(({ name, curves }) => ({ name, curves: curves.map((c) => curveMap(c, (p) => point(-p.x, p.y))) }));
    const cut = flip(parallelOutline(front.edges, () => 12));
    const net = insetOutline(cut, () => 12);
    expect(net && apart(flip(front.edges), net)).toBeLessThan(0.15);
  });
});
