import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drawingInk, placedDrawings } from '../../src/drawing';
import { boxHolds, type Point } from '../../src/plane';
import { type Draft, type Project, sheetsOf, withFewestSheets } from '../../src/project';
import { MOST_MOVED, planParts, printedSheets, type Reprint, reprint, type SheetPlan } from '../../src/sheets';
import { benchProjects } from '../bench/bodies';
import { type Changes, draftOf, draftWith } from '../files/drafts';
import { chance, PATIENCE } from '../properties/seed';
import { change } from './changes';

const BASE: Changes = {};
/** Half a millimetre, and what points a millimetre apart may miss each other by. */
const FARTHEST = Math.hypot(MOST_MOVED, 0.5) + 0.06;
const printed = (draft: Draft) => printedSheets(sheetsOf(draft), placedDrawings(draft.printed, sheetsOf(draft).places));
/** What is kept travels as text in a file. */
const kept = (draft: Draft) => JSON.parse(JSON.stringify(printed(draft))) as ReturnType<typeof printed>;
const before = withFewestSheets(draftWith(BASE));
/** A plan whose figures are rounded to what no sum of them misses. */
const rounded = (plan: SheetPlan): unknown =>
  JSON.parse(JSON.stringify(plan), (_, value: unknown) =>
    typeof value === 'number' ? Math.round(value * 1e6) / 1e6 : value,
  );
const reprinted = (changes: Changes) => {
  const draft = draftWith(changes);
  const again = reprint(draft.printed, draft.project.paper, kept(before));
  if (!again) throw new Error('nothing could be kept');
  return { draft, again };
};

/** Points along every line of one meaning, a millimetre or less apart, with no help of what is tested. */
function pointsOf(draft: Draft, plan: SheetPlan, stroke: string): readonly Point[] {
  const { lines } = drawingInk(placedDrawings(draft.printed, plan.places));
  return lines
    .filter((line) => line.stroke === stroke)
    .flatMap(({ points }) =>
      points.slice(1).flatMap((b, i) => {
        const a = points[i] as Point;
        const steps = Math.max(1, Math.ceil(Math.hypot(b.x - a.x, b.y - a.y)));
        return Array.from({ length: steps + 1 }, (_, k) => ({
          x: a.x + ((b.x - a.x) * k) / steps,
          y: a.y + ((b.y - a.y) * k) / steps,
        }));
      }),
    );
}

/** Points by squares of a millimetre, so that near ones are found without looking at all. */
function squared(points: readonly Point[]): ReadonlyMap<string, readonly Point[]> {
  const squares = new Map<string, Point[]>();
  for (const p of points) {
    const key = `${Math.floor(p.x)} ${Math.floor(p.y)}`;
    squares.set(key, [...(squares.get(key) ?? []), p]);
  }
  return squares;
}

/** How far the nearest point lies; infinite where that is beyond a millimetre. */
function nearest(p: Point, squares: ReadonlyMap<string, readonly Point[]>): number {
  let least = Number.POSITIVE_INFINITY;
  for (const across of [-1, 0, 1])
    for (const down of [-1, 0, 1])
      for (const o of squares.get(`${Math.floor(p.x) + across} ${Math.floor(p.y) + down}`) ?? [])
        least = Math.min(least, Math.hypot(o.x - p.x, o.y - p.y));
  return least;
}

/** The farthest that a line lies off on the sheets that are kept, both ways; points are a millimetre apart, which adds half of one at most. */
function farthestOff(again: Reprint, now: Draft): number {
  const stays = planParts({ sheets: again.plan.sheets.filter(({ label }) => !again.anew.includes(label)) });
  let far = 0;
  for (const stroke of ['cut', 'stitching', 'fold', 'level', 'notch', 'waistEdge']) {
    const was = pointsOf(before, sheetsOf(before), stroke);
    const is = pointsOf(now, again.plan, stroke);
    for (const [here, there] of [
      [is, squared(was)],
      [was, squared(is)],
    ] as const) {
      const inSight = here.filter((p) => stays.some(({ window }) => boxHolds(window, p)));
      for (const p of inSight) far = Math.max(far, nearest(p, there));
    }
  }
  return far;
}

describe('a pattern that was printed', () => {
  test('needs no sheet again where nothing changed', () => {
    const { again } = reprinted(BASE);
    expect(again.anew).toEqual([]);
    expect(again.away).toEqual([]);
    // The grid is built from another corner, which rounds otherwise.
    expect(rounded(again.plan)).toEqual(rounded(sheetsOf(before)));
    expect(again.moved).toBeLessThan(0.01);
  });

  test('needs only the sheets round the hem again where the hem is a centimetre deeper', () => {
    const { draft, again } = reprinted({ ...BASE, hem: { depth: 40 } });
    expect(again.anew.length).toBeGreaterThan(0);
    expect(again.anew.length / again.plan.sheets.length).toBeLessThanOrEqual(0.3);
    expect(again.plan.sheets.length).toBe(sheetsOf(before).sheets.length);
    expect(farthestOff(again, draft)).toBeLessThan(FARTHEST);
  });

  test.each([0, 4, 9])(
    'lays what a deeper hem changes on the sheets that are printed anyway: bench body %i',
    (body) => {
      const project = benchProjects(10)[body] as Project;
      const old = withFewestSheets(draftOf(project));
      const deeper = draftOf({ ...project, hem: { ...project.hem, depth: project.hem.depth + 10 } });
      const again = reprint(deeper.printed, deeper.project.paper, kept(old)) as Reprint;
      // A new strip along the hem is cut out of them, and at most one sheet more.
      expect(again.plan.sheets.length).toBeLessThanOrEqual(sheetsOf(old).sheets.length + 1);
      const parts = planParts(again.plan);
      const lines = ['cut', 'stitching', 'fold'] as const;
      const points = lines.map((stroke) => pointsOf(old, sheetsOf(old), stroke));
      const now = lines.map((stroke) => pointsOf(deeper, again.plan, stroke));
      const changed = (label: string) => {
        const window = parts.find((part) => part.label === label)?.window;
        return lines.some((_, i) => {
          const squares = squared(points[i] ?? []);
          return (now[i] ?? []).some((p) => window && boxHolds(window, p) && nearest(p, squares) > FARTHEST);
        });
      };
      // No sheet is printed for a small piece alone that changed.
      expect(again.anew.filter((label) => !changed(label))).toEqual([]);
    },
  );

  test('needs them all where every line moves', () => {
    const { again } = reprinted({ ...BASE, body: { hipGirth: 1080 } });
    expect(again.anew).toEqual(again.plan.sheets.map(({ label }) => label));
    expect(again.away).toEqual(planParts(sheetsOf(before)).map(({ label }) => label));
  });

  test('is laid anew on another paper', () => {
    const draft = draftWith({ ...BASE, paper: { sheet: 'A3' } });
    expect(reprint(draft.printed, draft.project.paper, kept(before))).toBeUndefined();
    const smaller = draftWith({ ...BASE, paper: { scale: 0.5 } });
    expect(reprint(smaller.printed, smaller.project.paper, kept(before))).toBeUndefined();
  });

  test('says sheets above A by letters before it, and keeps the names of all others', () => {
    const { again } = reprinted({ ...BASE, waist: { elasticWidth: 80, rows: 2 } });
    const labels = again.plan.sheets.map(({ label }) => label);
    expect(labels.some((label) => label.startsWith('Z'))).toBe(true);
    for (const label of labels.filter((one) => !again.anew.includes(one)))
      expect(planParts(sheetsOf(before)).map((part) => part.label)).toContain(label);
  });

  test('prints a sheet anew whose words changed, though no line moved', () => {
    const { again } = reprinted({ ...BASE, name: 'Sunday' });
    expect(again.anew.length).toBeGreaterThan(0);
    expect(again.anew.length).toBeLessThan(4);
    expect(again.moved).toBeLessThan(0.01);
  });
});

test(
  'after any change old and new sheets joined are the new pattern',
  () => {
    fc.assert(
      fc.property(change, (changes) => {
        const { draft, again } = reprinted({ ...BASE, ...changes });
        expect(farthestOff(again, draft)).toBeLessThan(FARTHEST);
        // Every join bears the same marks on both sheets, and a sheet that stays bears no mark that it had not.
        const bearers = new Map<number, number>();
        for (const { marks } of planParts(again.plan))
          for (const { number } of marks) bearers.set(number, (bearers.get(number) ?? 0) + 1);
        expect([...bearers].filter(([, count]) => count !== 2)).toEqual([]);
        const had = new Map(planParts(sheetsOf(before)).map((part) => [part.label, part.marks]));
        const stays = again.plan.sheets.filter(({ label }) => !again.anew.includes(label));
        for (const { label, marks } of planParts({ sheets: stays }))
          expect(had.get(label)).toEqual(expect.arrayContaining([...marks]));
        // Everything that is drawn is in sight.
        const hidden = pointsOf(draft, again.plan, 'cut').filter(
          (p) => !planParts(again.plan).some(({ window }) => boxHolds(window, p)),
        );
        expect(hidden).toEqual([]);
      }),
      chance('reprints', 30),
    );
  },
  PATIENCE,
);
