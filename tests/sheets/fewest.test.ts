import { describe, expect, test } from 'vitest';
import { drawingInk, placedDrawings, placer } from '../../src/drawing';
import { cutCurves } from '../../src/edges';
import { reportPiece } from '../../src/files/report/report';
import { type Box, boxesMeet, flattenCurves, outlineArea, type Point, point, straight } from '../../src/plane';
import { type Draft, draft, type Project, sheetsOf, withFewestSheets } from '../../src/project';
import { planParts, type SheetPlan, tipBox } from '../../src/sheets';
import { type Stretch, shareIn, sharesOutside } from '../../src/sheets/stretch';
import { projectDrawn } from '../fuzz/projects';
import { plainCount } from '../outside/paper/plain-grid';

// What the search for the fewest sheets must keep to, on projects drawn at random.

const COUNT = 12;
/** A sheet that carries less of the pattern is not worth its paper. */
const LEAST_CARRIED = 0.03;
/** A leg's paper: its window within margins of 10 mm. */
const A4 = { sheet: 'A4', margin: 10, overlap: 10, scale: 1, correctX: 1, correctY: 1, orientation: 'auto' } as const;
const WINDOW = { width: 190, height: 277 };
const AREA = WINDOW.width * WINDOW.height;
/** Lengths in millimetres that are less are the rounding of sums. */
const SAME = 1e-6;

function drawnOnA4(): readonly (readonly [number, Draft])[] {
  const found: (readonly [number, Draft])[] = [];
  for (let seed = 1901; found.length < COUNT; seed += 1) {
    const raw = projectDrawn(seed) as unknown as Project;
    const result = draft({ ...raw, paper: { ...raw.paper, ...A4 } });
    if (result.ok) found.push([seed, withFewestSheets(result.value)]);
  }
  return found;
}

const drawn = drawnOnA4();

describe.each(drawn)('the sheets of project %i', (_seed, of) => {
  const plan = sheetsOf(of);
  const parts = planParts(plan);

  test('are no more than those of the plain grid', () => {
    expect(plan.sheets.length).toBeLessThanOrEqual(plainCount(of.printed.map(reportPiece), { ...WINDOW, overlap: 10 }));
  });

  test('carry some of the pattern each, of other sheets’ places or of their own', () => {
    const cuts = outlines(of, plan);
    const carried = plan.sheets.map(({ label, window, tips }) => {
      const share = [window, ...tips.map((tip) => tip.window)].reduce(
        (sum, box) => sum + cuts.reduce((area, cut) => area + areaWithin(cut, box), 0),
        0,
      );
      return { label, share: share / AREA };
    });
    expect(carried.filter(({ share }) => share < LEAST_CARRIED)).toEqual([]);
  });

  test('lack nothing but stretches of level lines, and none of them holds nothing else', () => {
    expect(lackingOf(of).filter(({ stroke }) => stroke !== 'level')).toEqual([]);
    const stretches = stretchesOf(of);
    for (const tip of plan.sheets.flatMap(({ tips }) => tips)) {
      const others = parts.filter((part) => part !== tip).map(({ window }) => window);
      const alone = stretches.filter(({ at }) => {
        const share = shareIn(at, tip.window);
        return share !== undefined && sharesOutside(at, share, others).length > 0;
      });
      if (alone.length > 0)
        expect(
          alone.some(({ stroke }) => stroke !== 'level'),
          tip.label,
        ).toBe(true);
    }
  });

  test('are not opened for a small piece while a quarter of another one is empty', () => {
    const cuts = outlines(of, plan);
    const boxes = cuts.map(boxOf);
    const alone = plan.sheets.filter(({ window, tips }) => {
      const here = boxes.flatMap((box, i) => (boxesMeet(box, window) ? [i] : []));
      return tips.length === 0 && here.length > 0 && here.every((i) => fitsQuarter(boxes[i] as Box));
    });
    const held = (quarter: Box) =>
      cuts.some((cut) => areaWithin(cut, quarter) > 0) ||
      plan.sheets.some(({ tips }) => tips.some((tip) => boxesMeet(tipBox(tip), quarter)));
    const empty = plan.sheets
      .filter((sheet) => !alone.includes(sheet))
      .flatMap(({ label, window }) => quarters(window).flatMap((quarter) => (held(quarter) ? [] : [label])));
    if (alone.length > 0) expect(empty, `${alone.map(({ label }) => label)} bear a small piece alone`).toEqual([]);
  });
});

test('some of these projects lack a stretch, many have tips, and some small pieces', () => {
  const plans = drawn.map(([, of]) => sheetsOf(of));
  expect(drawn.some(([, of]) => lackingOf(of).length > 0)).toBe(true);
  expect(plans.reduce((sum, { sheets }) => sum + sheets.flatMap(({ tips }) => tips).length, 0)).toBeGreaterThan(COUNT);
  expect(
    drawn.some(([, of], i) =>
      outlines(of, plans[i] as SheetPlan)
        .map(boxOf)
        .some(fitsQuarter),
    ),
  ).toBe(true);
});

/** Every straight stretch of every line, where it lies. */
function stretchesOf(of: Draft): readonly { readonly stroke: string; readonly at: Stretch }[] {
  const { lines } = drawingInk(placedDrawings(of.printed, sheetsOf(of).places));
  return lines.flatMap(({ points, stroke }) =>
    points.slice(1).map((b, i): { readonly stroke: string; readonly at: Stretch } => {
      const a = points[i] as Point;
      return { stroke, at: [a.x, a.y, b.x, b.y] };
    }),
  );
}

/** Those of which no part shows all. */
function lackingOf(of: Draft) {
  const windows = planParts(sheetsOf(of)).map(({ window }) => window);
  return stretchesOf(of).filter(({ at }) =>
    sharesOutside(at, [0, 1], windows).some(([from, to]) => (to - from) * lengthOf(at) > SAME),
  );
}

/** The cut lines as they lie on the sheets. */
const outlines = ({ printed }: Draft, { places }: SheetPlan): readonly (readonly Point[])[] =>
  printed.map((piece, i) =>
    flattenCurves(cutCurves(piece), 0.1).map(placer(places[i] ?? { turn: 0, shift: point(0, 0) })),
  );

const lengthOf = ([ax, ay, bx, by]: Stretch): number => Math.hypot(bx - ax, by - ay);

function boxOf(points: readonly Point[]): Box {
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

/** Whether a piece, turned or not, lies within a quarter of a window with room for marks and scissors. */
function fitsQuarter({ left, right, top, bottom }: Box): boolean {
  const [long, short] = [Math.max(right - left, bottom - top), Math.min(right - left, bottom - top)];
  return long < WINDOW.height / 2 - 30 && short < WINDOW.width / 2 - 30;
}

function quarters({ left, right, top, bottom }: Box): readonly Box[] {
  const [x, y] = [(left + right) / 2, (top + bottom) / 2];
  return [
    { left, right: x, top, bottom: y },
    { left: x, right, top, bottom: y },
    { left, right: x, top: y, bottom },
    { left: x, right, top: y, bottom },
  ];
}

/** How much of a closed outline lies in a box: cut off along each of its sides in turn. */
function areaWithin(outline: readonly Point[], { left, right, top, bottom }: Box): number {
  const sides: readonly ((p: Point) => number)[] = [
    ({ x }) => x - left,
    ({ x }) => right - x,
    ({ y }) => y - top,
    ({ y }) => bottom - y,
  ];
  const kept = sides.reduce<readonly Point[]>(
    (points, inside) =>
      points.flatMap((b, i) => {
        const a = points[(i + points.length - 1) % points.length] as Point;
        const [before, here] = [inside(a), inside(b)];
        const t = before / (before - here);
        const crossing = before * here < 0 ? [point(a.x + t * (b.x - a.x), a.y + t * (b.y - a.y))] : [];
        return here >= 0 ? [...crossing, b] : crossing;
      }),
    outline,
  );
  return kept.length < 3
    ? 0
    : Math.abs(outlineArea(kept.map((p, i) => straight(p, kept[(i + 1) % kept.length] as Point))));
}
