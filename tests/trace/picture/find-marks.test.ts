import { expect, test } from 'vitest';
import { findMarks, greyPicture, marksOfSheet } from '../../../src/trace';
import { every } from '../../outside/every';
import { chance } from './chance';
import { lensOverFloor } from './lens-over-floor';
import { type LaidSheet, type Place, photographed } from './photographed-floor';

/** Four sheets round a block of 60 × 110 cm, as somebody lays them. */
function laidSheets(random: () => number): readonly LaidSheet[] {
  return [
    [-330, -60],
    [640, -80],
    [650, 850],
    [-340, 860],
  ].map(([x = 0, y = 0], i) => ({
    sheet: i + 1,
    x: x + 40 * random(),
    y: y + 40 * random(),
    turn: 0.4 * (random() - 0.5),
  }));
}

const onFloor = ({ x, y, turn }: LaidSheet, own: Place): Place => ({
  x: x + own.x * Math.cos(turn) - own.y * Math.sin(turn),
  y: y + own.x * Math.sin(turn) + own.y * Math.cos(turn),
});

const VIEWS = every ? 100 : 2;
/** Smaller marks, in pixels a side, are not promised. */
const PROMISED = 24;

test(`in ${VIEWS} random photographs marks are found, none by a wrong number, corners within a third of a pixel`, () => {
  const off: number[] = [];
  let [promised, missed] = [0, 0];
  const wrong: string[] = [];
  for (let view = 0; view < VIEWS; view += 1) {
    const random = chance(4200 + view);
    const sheets = laidSheets(random);
    const [width, height] = every ? [4000, 3000] : [1800, 1350];
    const standing = {
      width,
      height,
      middle: { x: 240 + 80 * random(), y: 480 + 80 * random() },
      tilt: (Math.PI / 4) * random(),
      azimuth: 2 * Math.PI * random(),
      roll: Math.PI / 2 + 0.6 * (random() - 0.5),
      bend: -0.15 + 0.2 * random(),
    };
    const places = sheets.flatMap((sheet) =>
      marksOfSheet(sheet.sheet).map(({ number, corners }) => ({
        number,
        corners: corners.map((c) => onFloor(sheet, c)),
      })),
    );
    let away = 1200;
    const inside = (distance: number) => {
      const lens = lensOverFloor({ ...standing, away: distance });
      return places.every(({ corners }) =>
        corners.every((corner) => {
          const { x, y } = lens.toPicture(corner);
          return x > 40 && y > 40 && x < width - 40 && y < height - 40;
        }),
      );
    };
    while (!inside(away) && away < 6000) away *= 1.04;
    const lens = lensOverFloor({ ...standing, away });
    const picture = photographed(
      {
        width,
        height,
        sheets,
        lines: [],
        toFloor: lens.toFloor,
        blur: 0.7 + 0.8 * random(),
        noise: 1 + 3 * random(),
        shade: 0.5 * random(),
        quality: 80,
      },
      random,
    );
    const found = findMarks(picture);
    for (const { number, corners } of places) {
      const wanted = corners.map(lens.toPicture);
      const sides = wanted.map((p, i) =>
        Math.hypot(p.x - (wanted[(i + 1) % 4]?.x ?? 0), p.y - (wanted[(i + 1) % 4]?.y ?? 0)),
      );
      const mark = found.find((one) => one.number === number);
      if (Math.min(...sides) >= PROMISED) {
        promised += 1;
        if (!mark) missed += 1;
      }
      if (!mark) continue;
      const away = mark.corners.map((corner, i) =>
        Math.hypot(corner.x - (wanted[i]?.x ?? 0), corner.y - (wanted[i]?.y ?? 0)),
      );
      if (Math.max(...away) > 3) wrong.push(`view ${view}: ${number}`);
      else off.push(...away);
    }
    wrong.push(
      ...found
        .filter(({ number }) => !places.some((one) => one.number === number))
        .map(({ number }) => `view ${view}: ${number} isn’t there`),
    );
  }
  const rms = Math.sqrt(off.reduce((sum, one) => sum + one * one, 0) / off.length);
  const sorted = off.toSorted((a, b) => a - b);
  console.log(
    `${promised} marks of ${PROMISED} pixels and more, ${missed} missed; corners off by ${rms.toFixed(3)} pixels rms, 95 % within ${sorted[Math.floor(0.95 * sorted.length)]?.toFixed(2)}`,
  );
  expect(wrong).toEqual([]);
  expect(missed / promised).toBeLessThanOrEqual(0.02);
  expect(rms).toBeLessThan(0.3);
});

test('a picture without marks has none', () => {
  const random = chance(7);
  const data = Uint8Array.from({ length: 4 * 300 * 200 }, () => 255 * random());
  expect(findMarks(greyPicture(300, 200, data))).toEqual([]);
  expect(findMarks(greyPicture(300, 200, new Uint8Array(4 * 300 * 200)))).toEqual([]);
});
