import { expect, test } from 'vitest';
import { LAYERS, pieceDrawing } from '../../src/drawing';
import { cutCurves, pieceLine } from '../../src/edges';
import { distance, pathEnd, pathStart, point, straight } from '../../src/plane';
import { legPiece } from './leg-piece';

const drawing = pieceDrawing(legPiece);
const named = (name: string) => drawing.paths.filter((path) => path.name === name);

test('the cut line is drawn once, closed, exactly as it was made', () => {
  expect(named('cut line')).toHaveLength(1);
  expect(named('cut line')[0]).toMatchObject({ layer: 'cut', stroke: 'cut', closed: true });
  expect(named('cut line')[0]?.curves).toEqual(cutCurves(legPiece));
});

test('edges without allowance have no stitching line of their own, all others have', () => {
  const sewn = drawing.paths.filter((path) => path.stroke === 'stitching').map((path) => path.name);
  expect(sewn).not.toContain('waist');
  expect(sewn).not.toContain('hem');
  expect(sewn).toEqual(expect.arrayContaining(['inseamFront', 'crotchBack', 'centreBackTurning', 'casing stitching']));
});

test('one tick for one, two ticks for two, each as long as the allowance', () => {
  const ticks = drawing.paths.filter((path) => path.stroke === 'notch');
  expect(ticks.filter((tick) => tick.name === 'notch crotchFront')).toHaveLength(1);
  expect(ticks.filter((tick) => tick.name === 'notch crotchBack')).toHaveLength(2);
  for (const tick of ticks) expect(distance(pathStart(tick.curves), pathEnd(tick.curves))).toBeCloseTo(15, 9);
});

test('folds bear triangles and the grainline two arrowheads, as closed shapes', () => {
  const solids = drawing.paths.filter((path) => path.stroke === 'solid');
  expect(solids.filter((path) => path.name === 'grainline')).toHaveLength(2);
  expect(solids.filter((path) => path.name === 'hem fold').length).toBeGreaterThan(3);
  for (const solid of solids) expect(pathStart(solid.curves)).toEqual(pathEnd(solid.curves));
});

test('the layers come from the bottom up, so that the cut line lies over what it crosses', () => {
  const order = drawing.paths.map((path) => LAYERS.indexOf(path.layer));
  expect(order).toEqual([...order].sort((a, b) => a - b));
});

test('a shift moves lines and words alike', () => {
  const there = pieceDrawing(legPiece, point(1000, -50));
  const [a] = drawing.paths;
  const [b] = there.paths;
  expect(b?.curves[0]?.[0].x).toBeCloseTo((a?.curves[0]?.[0].x ?? 0) + 1000, 9);
  expect(there.texts[0]?.at.y).toBeCloseTo((drawing.texts[0]?.at.y ?? 0) - 50, 9);
});

test('a buttonhole has bars across its ends, so that it is seen on the side line', () => {
  const slitLine = pieceLine('cordOpening', [straight(point(0, 40), point(0, 50))]);
  const leg = { ...legPiece, lines: [slitLine] };
  const opening = pieceDrawing(leg).paths.filter((path) => path.name === 'cord opening');
  const [slit, ...bars] = opening.flatMap((path) => path.curves);
  expect(bars).toHaveLength(2);
  for (const [a, , , d] of bars) {
    expect(Math.abs(d.x - a.x)).toBeCloseTo(3, 6);
    expect([slit?.[0].y, slit?.[3].y]).toContain((a.y + d.y) / 2);
  }
});
