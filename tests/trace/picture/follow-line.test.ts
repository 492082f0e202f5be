import { expect, test } from 'vitest';
import { FAINT, followLine } from '../../../src/trace';
import { chance } from './chance';
import { lensOverFloor } from './lens-over-floor';
import { type Place, photographed } from './photographed-floor';

const along = (from: Place, to: Place, count: number, bulge: number): readonly Place[] =>
  Array.from({ length: count + 1 }, (_, i) => {
    const t = i / count;
    const off = 4 * bulge * t * (1 - t);
    const [dx, dy] = [to.x - from.x, to.y - from.y];
    const length = Math.hypot(dx, dy);
    return { x: from.x + t * dx + (off * dy) / length, y: from.y + t * dy - (off * dx) / length };
  });

const offLine = (p: Place, points: readonly Place[]): number =>
  Math.min(
    ...points.slice(1).map((b, i) => {
      const a = points[i] as Place;
      const [dx, dy] = [b.x - a.x, b.y - a.y];
      const t = Math.max(0, Math.min(1, ((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy)));
      return Math.hypot(p.x - a.x - t * dx, p.y - a.y - t * dy);
    }),
  );

/** A sheet of brown paper with a curve on it, and a floor of another grey: edges by their own names. */
const CASES = [
  { name: 'a soft pencil line of 0.7 mm, straight', width: 0.7, ink: 0.45, bulge: 0 },
  { name: 'a pencil line of 0.5 mm, hollow like a crotch', width: 0.5, ink: 0.5, bulge: 70 },
  { name: 'a pen line of 1 mm, a long shallow curve', width: 1, ink: 0.8, bulge: 25 },
] as const;

test.each(CASES)('$name is followed to half a millimetre', ({ width: wide, ink, bulge }) => {
  const random = chance(90 + bulge);
  const lens = lensOverFloor({
    width: 1200,
    height: 900,
    middle: { x: 200, y: 150 },
    away: 400,
    tilt: 0.35,
    azimuth: 0.7,
    roll: 0.2,
    bend: -0.06,
  });
  const [from, to] = [
    { x: 90, y: 90 },
    { x: 330, y: 220 },
  ];
  const points = along(from, to, 160, bulge);
  // Lines of the block that end there, and one that crosses: a block has those.
  const others = [
    along(from, { x: 60, y: 260 }, 20, 0),
    along(to, { x: 380, y: 60 }, 20, 0),
    along({ x: 150, y: 20 }, { x: 240, y: 290 }, 20, 0),
  ];
  const picture = photographed(
    {
      width: 1200,
      height: 900,
      sheets: [],
      lines: [points, ...others].map((one) => ({ points: one, width: wide, ink })),
      toFloor: lens.toFloor,
      blur: 1,
      noise: 3,
      shade: 0.4,
      quality: 80,
    },
    random,
  );
  const [a, b] = [lens.toPicture(from), lens.toPicture(to)];
  const pixels = Math.hypot(a.x - b.x, a.y - b.y) / Math.hypot(from.x - to.x, from.y - to.y);
  const shaky = ({ x, y }: Place) => ({ x: x + 2 * random() - 1, y: y + 2 * random() - 1 });
  const followed = followLine(picture, [shaky(a), shaky(b)], Math.max(1, pixels * wide));
  const off = followed.points.map((p) => offLine(lens.toFloor(p), points));
  const rms = Math.sqrt(off.reduce((sum, one) => sum + one * one, 0) / off.length);
  console.log(
    `${wide} mm: ${followed.points.length} points, off by ${rms.toFixed(2)} mm rms, ${Math.max(...off).toFixed(2)} at the most; shown ${followed.shown.toFixed(2)}`,
  );
  expect(rms).toBeLessThan(0.5);
  expect(Math.max(...off)).toBeLessThan(1.5);
  expect(followed.shown).toBeGreaterThan(FAINT);
});

test('where there is no line, little of it is said to show', () => {
  const random = chance(5);
  const picture = photographed(
    { width: 900, height: 700, sheets: [], lines: [], toFloor: (p) => p, blur: 1, noise: 3, shade: 0.3, quality: 80 },
    random,
  );
  expect(
    followLine(
      picture,
      [
        { x: 100, y: 120 },
        { x: 780, y: 560 },
      ],
      2,
    ).shown,
  ).toBeLessThan(FAINT);
});
