import { describe, expect, test } from 'vitest';
import {
  add,
  distance,
  type FourSeen,
  homographyPoint,
  homographyThrough,
  type Point,
  point,
} from '../../../src/plane';
import {
  exactMap,
  exactnessAt,
  glassOf,
  HAND_OFF,
  type Joined,
  joinShots,
  lengthFound,
  type Sheet,
  type Sightings,
  viewToPicture,
  viewToPlane,
} from '../../../src/trace';
import { rowsOf } from '../../../src/trace/camera/rows';
import { standpointOf } from '../../../src/trace/camera/standpoint';
import { type Camera, cameraOver, PICTURE } from '../../plane/camera';
import { LENSES } from './lenses';
import { type Chances, cameraOf, dice, floorOf, marksOf, onSheet, SHEET } from './scene';

const CHANCES: Chances = {
  stand: { tilt: 30, azimuth: 40, roll: 10 },
  share: -0.1,
  lens: 'division',
  focal: 3000,
  part: 'back',
  sheets: 5,
  seed: 7,
};
const shot = { ...PICTURE, flat: false };
const none = { marks: [], ties: [], edges: [], lengths: [] };

/** A rectangle whose four corners were measured, as a sheet of four single places. */
const rectangle = (width: number, height: number): Sheet => ({
  marks: [point(0, 0), point(width, 0), point(width, height), point(0, height)].map((p) => [p]),
});
const seenBy = (camera: Camera, sheet: Sheet, index = 0, moved = point(0, 0), off = HAND_OFF) =>
  sheet.marks.map((mark, i) => ({ shot: index, sheet: 0, mark: i, at: mark.map((p) => camera(add(p, moved))), off }));

function joined(sightings: Sightings): Joined {
  const result = joinShots(sightings);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
}

describe('one picture with four measured corners', () => {
  const sheet = rectangle(900, 1150);
  const camera = cameraOver(sheet.marks.flat(), point(450, 575), CHANCES.stand);
  // Marked a little beside their places, all four: there is nothing to even that out.
  const marks = seenBy(camera, sheet).map((mark, i) => ({
    ...mark,
    at: mark.at.map((p) => add(p, point(i - 1, 2 - i))),
  }));

  test('is flattened by the homography through them, and its lens is told to be unknown', () => {
    const { views, lensKnown, spread } = joined({ ...none, shots: [shot], sheets: [sheet], marks });
    const seen = marks.map(({ at }, i) => ({ from: at[0], to: sheet.marks[i]?.[0] })) as unknown as FourSeen;
    const flat = homographyThrough(seen);
    for (const pixel of [point(500, 700), point(3500, 2500), point(2000, 1500)]) {
      const [ours, plain] = [views[0] && viewToPlane(views[0], pixel), flat && homographyPoint(flat, pixel)];
      expect(ours && plain && distance(ours, plain)).toBeLessThan(1e-6);
    }
    expect([lensKnown, spread]).toEqual([[false], 1]);
  });

  test('is refused where they cross over', () => {
    const [a, b, c, d] = marks.map(({ at }) => at);
    const crossed = [a, c, b, d].map((at, mark) => ({
      shot: 0,
      sheet: 0,
      mark,
      at: at as readonly Point[],
      off: HAND_OFF,
    }));
    const result = joinShots({ ...none, shots: [shot], sheets: [sheet], marks: crossed });
    expect(!result.ok && result.problems.map(({ field }) => field)).toEqual(['photograph-1']);
  });

  test('learns its lens from straight edges on the floor', () => {
    const barrel = cameraOver(sheet.marks.flat(), point(450, 575), CHANCES.stand, {
      focal: 3000,
      bend: (LENSES.division as (typeof LENSES)[string])(-0.08),
    });
    const floor = [
      [point(0, 300), point(900, 300)],
      [point(0, 900), point(900, 900)],
      [point(150, 0), point(150, 1150)],
      [point(800, 0), point(700, 1150)],
    ].map(([from, to]) => [0, 0.25, 0.5, 0.75, 1].map((t) => ({ x: at(from, to, t, 'x'), y: at(from, to, t, 'y') })));
    const seen = { ...none, shots: [shot], sheets: [sheet], marks: seenBy(barrel, sheet) };
    const edges = floor.map((points) => ({ shot: 0, points: points.map((p) => barrel(p)), off: 0.3 }));
    const off = (one: Joined) => {
      const found = one.views[0] && viewToPlane(one.views[0], barrel(point(450, 250)));
      return found ? distance(found, point(450, 250)) : Number.NaN;
    };
    const [without, by] = [joined(seen), joined({ ...seen, edges })];
    expect(by.lensKnown).toEqual([true]);
    expect(off(without)).toBeGreaterThan(4);
    expect(off(by)).toBeLessThan(1);
  });
});

const at = (from: Point | undefined, to: Point | undefined, t: number, axis: 'x' | 'y') =>
  (from?.[axis] ?? 0) + t * ((to?.[axis] ?? 0) - (from?.[axis] ?? 0));

describe('pictures with printed sheets', () => {
  const floor = floorOf(CHANCES, 0);
  const camera = cameraOf(CHANCES, floor);
  const seen = marksOf(floor, [camera], dice(3), 0.2);

  test('find where each sheet lies from the first', () => {
    const { sheets } = joined(seen);
    const [first, third] = [floor.laid[0], floor.laid[2]];
    if (!first || !third) throw new Error('no sheets');
    // From corner to corner of two sheets: it doesn't matter how the first lies on the floor.
    const corner = SHEET.marks[0]?.[0] as Point;
    const truly = distance(onSheet(first, corner), onSheet(third, corner));
    const found = sheets[2] && distance(corner, sheets[2].at);
    expect(Math.abs((found ?? 0) - truly)).toBeLessThan(0.5);
  });

  test('have the derivatives of every equation right', () => {
    const { sightings, unknowns } = joined({
      ...seen,
      edges: [{ shot: 0, points: [point(300, 400), point(1800, 700), point(3000, 900)], off: 0.5 }],
      lengths: [
        {
          ends: [
            { shot: 0, at: point(900, 900) },
            { shot: 0, at: point(2500, 2000) },
          ],
          length: 800,
          off: 1,
        },
      ],
    });
    const { values, free } = unknowns;
    const rows = rowsOf(sightings, unknowns, values) ?? [];
    for (const [i, open] of free.entries()) {
      if (!open) continue;
      const step = 1e-6 * Math.max(1, Math.abs(values[i] as number));
      const [less, more] = [-step, step].map((by) =>
        rowsOf(sightings, unknowns, values.with(i, (values[i] as number) + by)),
      );
      rows.forEach(({ at: of, by }, k) => {
        const slope = ((more?.[k]?.off ?? 0) - (less?.[k]?.off ?? 0)) / (2 * step);
        const told = of.reduce((sum, unknown, j) => sum + (unknown === i ? (by[j] as number) : 0), 0);
        expect(Math.abs(slope - told), `row ${k}, unknown ${i}`).toBeLessThan(1e-3 * Math.max(1, Math.abs(told)));
      });
    }
  });

  test('leave out the one mark that is wrong, and say which', () => {
    const wrong = seen.marks[7];
    if (!wrong) throw new Error('no mark');
    const pushed = { ...wrong, at: wrong.at.map((p) => add(p, point(9, -7))) };
    const told = joined({ ...seen, marks: seen.marks.with(7, pushed) });
    expect(told.wrong).toEqual([pushed]);
    expect(joined(seen).wrong).toEqual([]);
    expect(told.spread).toBeLessThan(1.5);
  });

  test('say which picture shares nothing with the others', () => {
    const alone = { ...seen, shots: [shot, shot] };
    const result = joinShots(alone);
    expect(!result.ok && result.problems.map(({ field }) => field)).toEqual(['photograph-2']);
  });

  test('are less exact far from the sheets, and everywhere with a less steady hand', () => {
    const told = joined({ ...seen, marks: seen.marks.filter(({ sheet }) => sheet < 2) });
    const [first, far] = [onSheet(floor.laid[0] as (typeof floor.laid)[number], point(95, 130)), floor.outline];
    const sight = (p: Point) => ({ shot: 0, at: camera(p) });
    const places = [sight(first), ...far.filter((_, i) => i % 20 === 0).map(sight)];
    const [steady, loose] = [exactnessAt(told, places), exactnessAt(told, places, 2)];
    expect(Math.max(...(steady as number[]))).toBeGreaterThan(1.5 * (steady[0] ?? 9));
    for (const [i, by] of steady.entries()) expect(loose[i]).toBeGreaterThan(by ?? 9);
    expect(exactnessAt(told, [{ shot: 5, at: point(0, 0) }])).toEqual([undefined]);
  });

  test('have a map over the block, with the worst on each edge', () => {
    const told = joined(seen);
    const view = told.views[0];
    if (!view) throw new Error('no view');
    const marked = floor.outline.map((p) => viewToPlane(view, camera(p)) as Point);
    const half = Math.floor(marked.length / 2);
    const map = exactMap(told, { one: marked.slice(0, half), other: marked.slice(half) }, [
      { place: point(0, 0), shot: 0 },
    ]);
    const inner = map?.values.filter((value) => value !== undefined) ?? [];
    expect(inner.length).toBeGreaterThan(40);
    expect(map?.worst).toBe(Math.max(map?.edges.one ?? 0, map?.edges.other ?? 0, ...inner));
    expect(map?.worst).toBeLessThan(3);
    expect((map?.values.length ?? 0) % (map?.columns ?? 0)).toBe(0);
  });

  test('tell where the camera stood', () => {
    const level = cameraOver(floor.outline, floor.middle, { tilt: 35, azimuth: 0, roll: 0 });
    const told = joined(marksOf(floor, [level], dice(4), 0.1));
    const { foot, height } = standpointOf(told.views[0] as Joined['views'][number]);
    // 35° off the plumb line it looks at the middle: so far from there is its foot, as the height times the tangent.
    const middle = viewToPlane(told.views[0] as Joined['views'][number], level(floor.middle)) as Point;
    expect(distance(foot, middle) / height).toBeCloseTo(Math.tan((35 * Math.PI) / 180), 1);
  });
});

describe('pictures joined by what two of them show', () => {
  const sheet = rectangle(400, 500);
  const [left, right] = [cameraOver, cameraOver].map((over, i) =>
    over([point(0, 0), point(1200, 600)], point(500 + 200 * i, 300), { tilt: 10 + 8 * i, azimuth: 60 * i, roll: 0 }),
  ) as [Camera, Camera];
  const crosses = [point(450, 50), point(1000, 80), point(950, 480), point(480, 450), point(700, 250)];
  const seen: Sightings = {
    ...none,
    shots: [shot, shot],
    sheets: [sheet],
    marks: seenBy(left, sheet),
    ties: crosses.map((p) => ({ seen: [left, right].map((camera, i) => ({ shot: i, at: camera(p) })), off: HAND_OFF })),
  };

  test('need no sheet of their own', () => {
    const { views } = joined(seen);
    const found = views[1] && viewToPlane(views[1], right(point(1100, 300)));
    expect(found && distance(found, point(1100, 300))).toBeLessThan(1e-4);
    const back = views[1] && viewToPicture(views[1], point(1100, 300));
    expect(back && distance(back, right(point(1100, 300)))).toBeLessThan(1e-3);
  });

  test('are checked by a measured length, or held by it', () => {
    const ends = [point(20, 250), point(1100, 250)].map((p, i) => ({
      shot: i,
      at: add([left, right][i]?.(p) as Point, point(0, 0)),
    }));
    const both = ends as unknown as readonly [(typeof ends)[number], (typeof ends)[number]];
    const found = lengthFound(joined(seen), both, 1084);
    expect(found?.found).toBeCloseTo(1080, 3);
    expect(found?.difference).toBeCloseTo(-4, 3);
    const loose = { ...seen, marks: seen.marks.map((mark) => ({ ...mark, off: 10 })) };
    const held = joined({ ...loose, lengths: [{ ends: both, length: 1084, off: 0.1 }] });
    expect(Math.abs(lengthFound(held, both, 1084)?.difference ?? 9)).toBeLessThan(0.5);
  });
});

test('a scan in pieces is joined by crosses, each piece as large as its glass', () => {
  const dots = 300;
  const glass = { width: 2480, height: 3508, flat: true };
  const pixels = (p: Point, moved: Point, turn: number): Point => {
    const [x, y] = [p.x - moved.x, p.y - moved.y];
    const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
    return point(((x * cos - y * sin) * dots) / 25.4, ((x * sin + y * cos) * dots) / 25.4);
  };
  const pieces = [
    { moved: point(0, 0), turn: 0 },
    { moved: point(170, 8), turn: 0.03 },
  ];
  const crosses = [point(185, 40), point(200, 150), point(190, 260)];
  const glasses = pieces.map((_, i) => glassOf(glass, { shot: i, sheet: i }, dots));
  const told = joined({
    ...none,
    shots: [glass, glass],
    sheets: glasses.map(({ sheet }) => sheet),
    marks: glasses.flatMap(({ marks }) => marks),
    ties: crosses.map((p) => ({
      seen: pieces.map(({ moved, turn }, i) => ({ shot: i, at: pixels(p, moved, turn) })),
      off: HAND_OFF,
    })),
  });
  const [a, b] = [point(30, 50), point(350, 250)];
  const ends = [
    { shot: 0, at: pixels(a, point(0, 0), 0) },
    { shot: 1, at: pixels(b, point(170, 8), 0.03) },
  ] as const;
  expect(lengthFound(told, ends, distance(a, b))?.difference).toBeCloseTo(0, 3);
  expect(told.lensKnown).toEqual([false, false]);
  // Joined by points that lie near together, it is turned by a little more than a click.
  const [exact] = exactnessAt(told, [...ends]);
  expect(exact).toBeGreaterThan(0.1);
  expect(exact).toBeLessThan(1.5);
});
