import { describe, expect, it } from 'vitest';
import { homographyAfter, homographyInverse, homographyPoint, homographyThrough } from '../../src/plane';
import {
  fitView,
  inWindow,
  outOfWindow,
  panView,
  standingAt,
  windowMap,
  zoomView,
} from '../../src/workbench/view/view';

const box = { left: -400, right: 400, top: -60, bottom: 1040 };
const size = { width: 900, height: 700 };
const room = { left: 100, top: 50, right: 60, bottom: 70 };

describe('the fitted view', () => {
  const view = fitView(box, size, room);
  const x = (mm: number) => mm * view.scale + view.left;
  const y = (mm: number) => mm * view.scale + view.top;

  it('shows the whole drawing within the room', () => {
    expect(x(box.left)).toBeGreaterThanOrEqual(room.left - 1e-9);
    expect(x(box.right)).toBeLessThanOrEqual(size.width - room.right + 1e-9);
    expect(y(box.top)).toBeGreaterThanOrEqual(room.top - 1e-9);
    expect(y(box.bottom)).toBeLessThanOrEqual(size.height - room.bottom + 1e-9);
  });

  it('is as large as the room allows', () => {
    expect(y(box.bottom) - y(box.top)).toBeCloseTo(size.height - room.top - room.bottom, 6);
  });

  it('stays usable in a window smaller than its room', () => {
    expect(fitView(box, { width: 50, height: 40 }, room).scale).toBeGreaterThan(0);
  });
});

describe('zooming', () => {
  const view = { scale: 0.6, left: 300, top: 80 };

  it('keeps the point under the pointer', () => {
    const about = { x: 420, y: 333 };
    const near = zoomView(view, 1.7, about);
    const mm = (v: typeof view) => ({ x: (about.x - v.left) / v.scale, y: (about.y - v.top) / v.scale });
    expect(mm(near).x).toBeCloseTo(mm(view).x, 9);
    expect(mm(near).y).toBeCloseTo(mm(view).y, 9);
    expect(near.scale).toBeCloseTo(1.02, 9);
  });

  it('stops before the drawing is lost', () => {
    expect(zoomView(view, 1e9, { x: 0, y: 0 }).scale).toBeLessThanOrEqual(20);
    expect(zoomView(view, 1e-9, { x: 0, y: 0 }).scale).toBeGreaterThanOrEqual(0.03);
  });
});

it('pans by pixels', () => {
  expect(panView({ scale: 2, left: 10, top: 20 }, 5, -7)).toEqual({ scale: 2, left: 15, top: 13 });
});

describe('the way between a window and what is seen in it', () => {
  const view = { scale: 0.5, left: 300, top: -80 };
  const seen = { x: 320, y: 40 };

  it('leads there and back', () => {
    expect(inWindow({ x: 40, y: 240 }, view)).toEqual(seen);
    expect(outOfWindow(seen, view)).toEqual({ x: 40, y: 240 });
    expect(standingAt({ x: 40, y: 240 }, view)).toEqual({ transform: 'translate(320px, 40px)' });
  });

  it('is the same as a map of the plane', () => {
    const there = homographyPoint(windowMap(view), seen);
    expect(there?.x).toBeCloseTo(40, 9);
    expect(there?.y).toBeCloseTo(240, 9);
  });

  it('goes on to the picture that is flattened in it', () => {
    const corner = (x: number, y: number, u: number, v: number) => ({ from: { x, y }, to: { x: u, y: v } });
    const toPaper = homographyThrough([
      corner(100, 120, 0, 0),
      corner(900, 80, 600, 0),
      corner(980, 700, 600, 1100),
      corner(60, 640, 0, 1100),
    ]);
    if (!toPaper) throw new Error('can be flattened');
    const toPicture = homographyAfter(homographyInverse(toPaper), windowMap(view));
    const there = homographyPoint(toPicture, inWindow({ x: 600, y: 1100 }, view));
    expect(there?.x).toBeCloseTo(980, 6);
    expect(there?.y).toBeCloseTo(700, 6);
  });
});
