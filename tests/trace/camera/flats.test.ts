import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, distance, mapTuple, type Point, point, turned } from '../../../src/plane';
import {
  exactnessOf,
  type FloorShot,
  flatsOf,
  floorBox,
  marksOfSheet,
  takenForOne,
  viewToPlane,
} from '../../../src/trace';
import { type Camera, cameraOver, PICTURE, stands } from '../../plane/camera';
import { between, chance } from '../../properties/seed';

const corners = (across: number, along: number): readonly Point[] => [
  point(0, 0),
  point(across, 0),
  point(across, along),
  point(0, along),
];
/** A front and a back block side by side. */
const SCENE = corners(900, 1150);
const MIDDLE = point(450, 575);

const shotBy = (seen: readonly Point[], across: number, along: number): FloorShot => ({
  ...PICTURE,
  rectangle: { corners: [seen[0], seen[1], seen[2], seen[3]] as [Point, Point, Point, Point], across, along },
  joins: {},
  found: [],
});

describe('how far off a place may be on a photograph with four marks', () => {
  // Evenly scattered: the chance that looks for faults would rather click at the very edge.
  const clicks = fc.noBias(fc.array(between(-1, 1), { minLength: 10, maxLength: 10 }));

  /** Share of cases in which the far corner of the scene lies nearer to its true place than was told, and what was told. */
  function shareWithin([across, along]: readonly [number, number], from: Point) {
    const told: number[] = [];
    let within = 0;
    fc.assert(
      fc.property(fc.noBias(stands), clicks, (stand, off) => {
        const camera = cameraOver(SCENE, MIDDLE, stand);
        const mark = (p: Point, i: number) => add(camera(add(p, from)), point(off[2 * i] ?? 0, off[2 * i + 1] ?? 0));
        const flats = flatsOf([shotBy(corners(across, along).map(mark), across, along)]);
        const far = point(900 - from.x, 1150 - from.y);
        const at = mark(far, 4);
        const found = flats[0] && viewToPlane(flats[0].view, at);
        const by = exactnessOf(flats, [{ shot: 0, at }], undefined)?.off ?? Number.POSITIVE_INFINITY;
        if (found && distance(found, far) <= by) within += 1;
        told.push(by);
      }),
      chance(`a rectangle of ${across} by ${along}`, 200),
    );
    return { share: within / told.length, typical: told.toSorted((a, b) => a - b)[told.length >> 1] ?? 0 };
  }

  test('is more than it is, in at least 95 of 100 cases, and less the larger the rectangle', () => {
    const large = shareWithin([900, 1150], point(0, 0));
    const half = shareWithin([500, 1000], point(0, 0));
    const sheet = shareWithin([180, 240], point(300, 400));
    for (const { share } of [large, half, sheet]) expect(share).toBeGreaterThanOrEqual(0.95);
    expect(large.typical).toBeLessThan(2);
    expect(half.typical).toBeLessThan(4);
    expect(sheet.typical).toBeGreaterThan(5 * large.typical);
  });
});

describe('photographs of one floor', () => {
  const cameras = [0, 1].map((i) =>
    cameraOver(SCENE, point(450, 300 + 400 * i), { tilt: 15 + 10 * i, azimuth: 50 * i, roll: 0 }),
  ) as [Camera, Camera];
  const first = shotBy(
    corners(500, 600).map((p) => cameras[0](p)),
    500,
    600,
  );
  const crosses = [point(100, 700), point(800, 650), point(820, 100), point(120, 150)];
  const joined = (camera: Camera) => Object.fromEntries(crosses.map((p, i) => [String(i + 1), camera(p)]));
  const shots = [
    { ...first, joins: joined(cameras[0]) },
    { ...PICTURE, rectangle: undefined, joins: joined(cameras[1]), found: [] },
  ];

  test('lie on one plane where they show the same places', () => {
    const flats = flatsOf(shots);
    const far = point(700, 1000);
    const found = flats[1] && viewToPlane(flats[1].view, cameras[1](far));
    expect(found && distance(found, far)).toBeLessThan(1e-3);
    expect(flats[0]?.joined).toBe(flats[1]?.joined);
    const ends = [cameras[0](point(0, 0)), cameras[0](point(500, 0))] as const;
    const told = exactnessOf(
      flats,
      [
        { shot: 0, at: ends[0] },
        { shot: 1, at: cameras[1](far) },
      ],
      { shot: 0, ends, length: 490 },
    );
    expect(told?.check?.found).toBeCloseTo(500, 3);
    expect(told?.check?.difference).toBeCloseTo(10, 3);
    expect(told?.off).toBe(Math.max(told?.byMarks ?? 0, told?.check?.across ?? 0));
    expect(told?.agreed).toBe(true);
  });

  test('stay apart where they don’t, and one that is marked wrongly keeps none of the others', () => {
    const apart = flatsOf([
      first,
      shotBy(
        corners(300, 400).map((p) => cameras[1](p)),
        300,
        400,
      ),
    ]);
    expect(apart.map((flat) => flat !== undefined)).toEqual([true, true]);
    expect(apart[0]?.joined).not.toBe(apart[1]?.joined);
    const sights = [0, 1].map((shot) => ({ shot, at: point(2000, 1500) }));
    expect(exactnessOf(apart, sights, undefined)).toBeUndefined();
    const crossed = shotBy(
      [0, 2, 1, 3].map((i) => cameras[1](corners(500, 600)[i] as Point)),
      500,
      600,
    );
    expect(flatsOf([first, crossed, ...shots.slice(1)]).map((flat) => flat !== undefined)).toEqual([
      true,
      false,
      false,
    ]);
  });

  test('show the floor round their marks, and not what lies far off', () => {
    const [flat] = flatsOf([first]);
    const box = flat && floorBox(flat);
    expect(box?.left).toBeGreaterThanOrEqual(-0.12 * 600 - 0.001);
    expect(box?.bottom).toBeLessThanOrEqual(600 * 1.12 + 0.001);
    expect(box && box.right - box.left).toBeGreaterThan(500);
  });
});

describe('photographs with printed marks', () => {
  /** Sheets at the corners of the scene, lying any way round: sheet, where, radians. */
  const LAID = [
    [1, point(-200, 0), 0.3],
    [2, point(1100, 100), 2],
    [3, point(1000, 1200), -1],
    [7, point(-60, 1000), 3],
  ] as const;
  const found = (camera: Camera, sheets: readonly number[]) =>
    LAID.filter(([sheet]) => sheets.includes(sheet)).flatMap(([sheet, at, turn]) =>
      marksOfSheet(sheet).map(({ number, corners }) => ({
        number,
        corners: mapTuple(corners, (p) => camera(add(at, turned(p, point(0, 0), turn)))),
      })),
    );
  const stand = { tilt: 25, azimuth: 40, roll: 10 };
  const camera = cameraOver([...SCENE, point(-250, 0), point(1200, 1300)], MIDDLE, stand);
  const shot = (sheets: readonly number[], by = camera): FloorShot => ({
    ...PICTURE,
    rectangle: undefined,
    joins: {},
    found: found(by, sheets),
  });

  test('are flattened by them alone, nothing between the sheets measured, and down stays down', () => {
    const [flat] = flatsOf([shot([1, 2, 3, 7])]);
    const [a, b] = [point(0, 0), point(900, 1150)].map((p) => flat && viewToPlane(flat.view, camera(p)));
    expect(a && b && distance(a, b)).toBeCloseTo(Math.hypot(900, 1150), 3);
    const [middle, below] = [1500, 1800].map((y) => flat && viewToPlane(flat.view, point(2000, y)));
    expect(middle && below && Math.abs(below.x - middle.x)).toBeLessThan(1);
    expect(middle && below && below.y > middle.y).toBe(true);
  });

  test('are one floor where they show one sheet, and two where they show none in common, however alike', () => {
    const other = cameraOver(SCENE, point(450, 900), { tilt: 10, azimuth: 80, roll: 0 });
    const joined = flatsOf([shot([1, 2, 3]), shot([3, 7], other)]);
    expect(joined[0]?.joined).toBe(joined[1]?.joined);
    const far = point(500, 1000);
    const [one, two] = [camera, other].map((by, i) => joined[i] && viewToPlane(joined[i].view, by(far)));
    expect(one && two && distance(one, two)).toBeLessThan(0.01);
    const apart = flatsOf([shot([1, 2]), shot([3, 7], other)]);
    expect(apart[0]?.joined).not.toBe(apart[1]?.joined);
  });

  test('leave out a mark that was moved, and say which', () => {
    const all = shot([1, 2, 3, 7]);
    const moved = all.found.map((mark) =>
      mark.number === 7 ? { ...mark, corners: mapTuple(mark.corners, (p) => add(p, point(30, 10))) } : mark,
    );
    const [flat] = flatsOf([{ ...all, found: moved }]);
    expect(flat?.joined.wrong.map(({ at }) => moved.find(({ corners }) => corners === at)?.number)).toEqual([7]);
  });

  test('take equal rectangles with nothing else in common for one, and it is told which', () => {
    const card = shotBy(corners(500, 600).map(camera), 500, 600);
    expect(takenForOne([card, card], 1)).toBe(0);
    expect(takenForOne([card, shotBy(corners(500, 600).map(camera), 500, 601)], 1)).toBeUndefined();
    const held = { ...card, found: found(camera, [1]) };
    expect(takenForOne([held, held], 1)).toBeUndefined();
  });
});

describe('a scan', () => {
  const dots = 300;
  const scan = (joins: FloorShot['joins'] = {}): FloorShot => ({
    width: 2550,
    height: 3510,
    rectangle: undefined,
    dots,
    joins,
    found: [],
  });
  const inch = 25.4;

  test('says its own size, with nothing marked on it and nothing asked of a lens', () => {
    const flats = flatsOf([scan()]);
    const ends = [point(300, 300), point(2100, 2700)] as const;
    const [a, b] = mapTuple(ends, (at) => flats[0] && viewToPlane(flats[0].view, at));
    expect(a && b && distance(a, b)).toBeCloseTo(10 * inch, 6);
    const exact = exactnessOf(
      flats,
      ends.map((at) => ({ shot: 0, at })),
      undefined,
    );
    expect(exact?.lensKnown).toBe(true);
    // A thousandth of its length, or thereabouts, is what a scanner may be off.
    expect(exact?.off).toBeGreaterThan(0.05);
    expect(exact?.off).toBeLessThan(1);
    expect(flats[0] && floorBox(flats[0]).right).toBeGreaterThan(8 * inch);
  });

  test('in pieces is joined by places that two of them show', () => {
    // The second piece lies 8 in farther to the right, a little down, and turned by 2°.
    const turn = (2 * Math.PI) / 180;
    const onSecond = (p: Point): Point => turned(add(p, point(-2400, -60)), point(0, 0), -turn);
    const shared = [point(2450, 300), point(2500, 1700), point(2460, 3200)];
    const joins = (map: (p: Point) => Point) => Object.fromEntries(shared.map((p, i) => [i + 1, map(p)]));
    const flats = flatsOf([scan(joins((p) => p)), scan(joins(onSecond))]);
    const [first, second] = flats;
    if (!first || !second) throw new Error('not joined');
    expect(second.joined).toBe(first.joined);
    const far = point(4200, 2400);
    const [a, b] = [viewToPlane(first.view, point(300, 300)), viewToPlane(second.view, onSecond(far))];
    expect(a && b && distance(a, b)).toBeCloseTo((Math.hypot(3900, 2100) / dots) * inch, 3);
  });
});
