import { describe, expect, it } from 'vitest';
import { plateBodies } from '../../.house/plate-bodies';
import { HEM_FINISHES, WAIST_FINISHES } from '../../src/edges';
import type { Point } from '../../src/plane';
import { draft, exampleProject, garmentOf, type Project } from '../../src/project';
import { type PictureItem, type StepPicture, sewingSteps, stepPicture } from '../../src/sewing';
import { garmentWith } from './garments';

const itemsOf = (picture: StepPicture) => picture.panels.flatMap(({ items }) => items);
const areasOf = (picture: StepPicture) =>
  itemsOf(picture).filter((item): item is Extract<PictureItem, { kind: 'area' }> => item.kind === 'area');
const topAt = (areas: readonly { readonly points: readonly Point[] }[], x: number) =>
  Math.min(...areas.flatMap(({ points }) => points.filter((p) => Math.abs(p.x - x) < 1)).map(({ y }) => y));

/** The example on very different people. */
const people = plateBodies.flat().flatMap(({ name, body, rest }) => {
  const result = draft({ ...exampleProject, ...rest, body: { label: name, ...body } } as Project);
  return result.ok ? [{ name, garment: garmentOf(result.value) }] : [];
});

describe('the waist in the pictures', () => {
  it('rises from the sides to centre back, its highest point, as the draft does', () => {
    for (const { name, garment } of people) {
      const [back, front] = garment.finished.casing.waistEdge;
      const side = back.y + (-back.x / (front.x - back.x)) * (front.y - back.y);
      const areas = areasOf(stepPicture(garment, { view: 'waist', stage: 'closed' }));
      const half = Math.max(...areas.flatMap(({ points }) => points.map(({ x }) => x)));
      const rise =
        Math.min(...areas.flatMap(({ points }) => points.filter((p) => p.x > 0.5 * half)).map(({ y }) => y)) -
        topAt(areas, 0);
      expect(Math.sign(Math.round(rise)), name).toBe(Math.sign(Math.round(side - back.y)));
      expect(rise, name).toBeCloseTo(side - back.y, -0.5);
    }
  });

  it('shows the inside of the back above the finished front', () => {
    for (const { name, garment } of people) {
      const [inside, turned, ...fronts] = areasOf(stepPicture(garment, { view: 'finished' }));
      expect(inside?.face, name).toBe('wrong');
      expect(turned?.face, name).toBe('right');
      expect(topAt([inside as { points: readonly Point[] }], 0), name).toBeLessThan(topAt(fronts, 0));
    }
  });

  it('has the one seam of a band or a casing at centre back, and none in front', () => {
    const faults: string[] = [];
    for (const finish of WAIST_FINISHES)
      for (const hem of HEM_FINISHES) {
        const garment = garmentWith({ waist: { finish }, hem: { finish: hem } });
        const { heights } = garment.finished;
        if (heights.kind !== 'seamed') continue;
        for (const { id, scene } of sewingSteps(garment)) {
          const fromFront =
            scene.view === 'finished' || (scene.view === 'waist' && ['stripOn', 'bandUp'].includes(scene.stage));
          if (!fromFront) continue;
          // A strip across the centre is one area: its outline has no upright there.
          const picture = stepPicture(garment, scene);
          const strips = areasOf(picture).filter(
            ({ points }) => points.some(({ x }) => x < -1) && points.some(({ x }) => x > 1),
          );
          if (strips.length === 0) faults.push(`${finish} ${id}: no strip goes across the centre`);
          const band =
            strips
              .at(-1)
              ?.points.filter(({ x }) => Math.abs(x) < 1)
              .map(({ y }) => y) ?? [];
          const [upper, lower] = [Math.min(...band) + 1, Math.max(...band) - 1];
          for (const item of itemsOf(picture))
            if (item.kind === 'line' && ['edge', 'stitch', 'lit'].includes(item.line))
              item.points.slice(1).forEach((b, i) => {
                const a = item.points[i] as Point;
                const upright = Math.abs(a.x) < 1 && Math.abs(b.x) < 1;
                if (
                  upright &&
                  Math.min(a.y, b.y) < lower &&
                  Math.max(a.y, b.y) > upper &&
                  itemsOf(picture).indexOf(item) > itemsOf(picture).indexOf(strips.at(-1) as PictureItem)
                )
                  faults.push(`${finish} ${id}: a seam at centre front`);
              });
        }
      }
    expect([...new Set(faults)]).toEqual([]);
  });
});

describe('the signs in the pictures', () => {
  it('mean one thing each: strokes one way the wrong side, crossed ones elastic, and nothing on a right side or on paper', () => {
    const ways = new Map<string, Set<string>>();
    for (const finish of WAIST_FINISHES)
      for (const hem of HEM_FINISHES) {
        const garment = garmentWith({ waist: { finish }, hem: { finish: hem } });
        for (const { scene } of sewingSteps(garment))
          for (const { face, hatch } of areasOf(stepPicture(garment, scene))) {
            const seen = ways.get(face) ?? new Set();
            ways.set(face, seen);
            for (const [a, b] of hatch)
              if (Math.hypot(b.x - a.x, b.y - a.y) > 2) seen.add((b.y - a.y) * (b.x - a.x) < 0 ? 'rising' : 'falling');
          }
      }
    expect([...(ways.get('right') ?? [])]).toEqual([]);
    expect([...(ways.get('wrong') ?? [])]).toEqual(['rising']);
    expect([...(ways.get('elastic') ?? [])].sort()).toEqual(['falling', 'rising']);
  });
});
