import { describe, expect, it } from 'vitest';
import { HEM_FINISHES, WAIST_FINISHES } from '../../src/edges';
import type { Point } from '../../src/plane';
import { type Garment, type PictureItem, type StepPicture, sewingSteps, stepPicture } from '../../src/sewing';
import { printPhrase } from '../../src/words';
import { CHILD, garmentWith, type Parts, POCKET } from './garments';

const pointsOf = (item: PictureItem): readonly Point[] => (item.kind === 'word' ? [item.at] : item.points);

/** What a reader of the picture would miss. */
function faultsOf({ box, panels, says }: StepPicture): readonly string[] {
  const items = panels.flatMap((panel) => panel.items);
  const faults: string[] = [];
  if (!(box.right > box.left && box.bottom > box.top)) faults.push('no room');
  if (printPhrase(says, 'inch') === '') faults.push('says nothing');
  if (items.some((item) => pointsOf(item).some((p) => !Number.isFinite(p.x) || !Number.isFinite(p.y))))
    faults.push('a point that is no number');
  if (!items.some((item) => item.kind === 'area' && item.points.length > 2)) faults.push('no cloth');
  for (const { window, items: shown } of panels) {
    faults.push(...collisions(shown));
    for (const item of shown) {
      if (item.kind !== 'word') continue;
      const reach = printPhrase(item.text, 'inch').length * item.size * 0.6;
      const left = item.at.x - (item.align === 'left' ? 0 : item.align === 'middle' ? reach / 2 : reach);
      if (left < window.left - 1 || left + reach > window.right + 1)
        faults.push(`“${printPhrase(item.text, 'inch')}” is cut off at the side`);
      if (item.at.y > window.bottom || item.at.y - 0.7 * item.size < window.top)
        faults.push(`“${printPhrase(item.text, 'inch')}” is cut off above or below`);
    }
  }
  return faults;
}

/** Words that lie on each other. */
function collisions(items: readonly PictureItem[]): readonly string[] {
  const boxes = items.flatMap((item) => {
    if (item.kind !== 'word') return [];
    const text = printPhrase(item.text, 'inch');
    const reach = text.length * item.size * 0.55;
    const left = item.at.x - (item.align === 'left' ? 0 : item.align === 'middle' ? reach / 2 : reach);
    return [{ text, left, right: left + reach, top: item.at.y - 0.7 * item.size, bottom: item.at.y + 0.1 * item.size }];
  });
  return boxes.flatMap((a, i) =>
    boxes
      .slice(0, i)
      .filter((b) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom)
      .map((b) => `“${a.text}” lies on “${b.text}”`),
  );
}

function* garments(): Generator<readonly [string, Garment]> {
  const bodies: Readonly<Record<string, Parts>> = {
    grown: {},
    short: { leg: { length: 'short' } },
    wide: { leg: { length: 'ankle', shape: { hemGirth: 900 } } },
    child: { body: CHILD, leg: { shape: { hemGirth: 290 } } },
  };
  for (const [name, body] of Object.entries(bodies))
    for (const [i, waist] of WAIST_FINISHES.entries())
      for (const [j, hem] of HEM_FINISHES.entries()) {
        if ((i + j) % 2 === 1 && name !== 'grown') continue;
        yield [
          `${name} ${waist} ${hem}`,
          garmentWith({
            ...body,
            cloth: { kind: j % 2 === 0 ? 'woven' : 'knit', stretch: j % 2 === 0 ? 0 : 0.4, washFirst: i % 2 === 0 },
            waist: {
              finish: waist,
              rows: j % 2 === 0 ? 1 : 2,
              elastic: j % 3 === 0 ? 'sewnOn' : 'threaded',
              rawEdge: i % 2 ? 'turnedUnder' : 'overlocked',
            },
            hem: { finish: hem, turnUnder: i % 2 === 0 ? 10 : 0, cord: i % 2 === 0 ? 'ofCloth' : 'bought' },
            pocket: j % 2 === 0 ? POCKET : null,
          }),
        ];
      }
}

describe('the pictures of the steps', () => {
  it('show cloth, whole words and true numbers for every waist with every hem on four legs', () => {
    const faults: string[] = [];
    let pictures = 0;
    for (const [name, garment] of garments()) {
      for (const step of sewingSteps(garment)) {
        pictures += 1;
        for (const fault of faultsOf(stepPicture(garment, step.scene))) faults.push(`${name}: ${step.id}: ${fault}`);
      }
    }
    console.log(`${pictures} pictures`);
    expect([...new Set(faults)].slice(0, 20)).toEqual([]);
  });

  it('show the fork’s tip on its leg, of adults and children, with and without an allowance', () => {
    const faults: string[] = [];
    for (const [body, parts] of Object.entries({ grown: {}, child: { body: CHILD } }))
      for (const piecedTip of [20, 50])
        for (const inseam of [0, 15, 40]) {
          const garment = garmentWith({
            ...parts,
            cloth: { piecedTip, washFirst: inseam === 15 },
            allowances: { inseam, crotch: 15 },
          });
          for (const { id, scene } of sewingSteps(garment))
            if (['cut', 'mark', 'fork-tip'].includes(id))
              for (const fault of faultsOf(stepPicture(garment, scene)))
                faults.push(`${body} ${piecedTip} ${inseam}: ${id}: ${fault}`);
        }
    expect(faults).toEqual([]);
  });

  it('light the seam that the step sews', () => {
    const garment = garmentWith({ pocket: POCKET, cloth: { piecedTip: 50 } });
    for (const step of sewingSteps(garment)) {
      if (step.sews.length === 0) continue;
      const lit = stepPicture(garment, step.scene).panels.some((panel) =>
        panel.items.some((item) => item.kind === 'line' && (item.line === 'lit' || item.line === 'overlock')),
      );
      expect(lit, step.id).toBe(true);
    }
  });

  it('lay the two inseams on each other: the fold leaves them equally far', () => {
    const garment = garmentWith();
    const { front, back } = garment.leg;
    const picture = stepPicture(garment, { view: 'inseams' });
    const areas = picture.panels[0]?.items.filter((item) => item.kind === 'area') ?? [];
    const [under, over] = areas as readonly Extract<PictureItem, { kind: 'area' }>[];
    const nearest = (points: readonly Point[], p: Point) =>
      Math.min(...points.map((q) => Math.hypot(q.x - p.x, q.y - p.y)));
    // The corner of the allowance beyond the crotch point is cut alike in front and behind; both lie in one place.
    const allowance = garment.allowances.inseam + garment.allowances.crotch;
    expect(nearest(under?.points ?? [], front.crotchPoint)).toBeLessThan(2 * allowance);
    expect(nearest(over?.points ?? [], front.crotchPoint)).toBeLessThan(2 * allowance);
    expect(nearest(under?.points ?? [], back.crotchPoint)).toBeGreaterThan(2 * allowance);
  });

  it('tell right sides from wrong ones by more than colour', () => {
    const garment = garmentWith();
    const picture = stepPicture(garment, { view: 'waist', stage: 'stitched' });
    const faces = picture.panels[0]?.items.filter((item) => item.kind === 'area') as Extract<
      PictureItem,
      { kind: 'area' }
    >[];
    expect(faces.filter((item) => item.face === 'wrong').every((item) => item.hatch.length > 10)).toBe(true);
    expect(faces.filter((item) => item.face === 'right').every((item) => item.hatch.length === 0)).toBe(true);
    expect(new Set(faces.map((item) => item.face)).size).toBe(2);
  });
});
