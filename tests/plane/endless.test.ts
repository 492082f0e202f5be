import { describe, expect, it } from 'vitest';
import { type Curve, curveLength, curveReaimed, point, solveBetween } from '../../src/plane';

describe('curves without end', () => {
  it('have no length, and are told so at once', () => {
    const lost: Curve = [point(0, 0), point(Number.NaN, 10), point(20, 20), point(30, 0)];
    expect(curveLength(lost)).toBeNaN();
    const endless: Curve = [point(0, 0), point(Number.POSITIVE_INFINITY, 10), point(20, 20), point(30, 0)];
    expect(curveLength(endless)).toBeNaN();
  });

  it('are measured as closely as numbers go where they are a thousand kilometres long', () => {
    const far: Curve = [point(0, 0), point(1e9, 3e8), point(-1e9, 5e8), point(0, 1e9)];
    let evaluations = 0;
    const counted = far.map((p) => ({
      get x() {
        evaluations += 1;
        return p.x;
      },
      y: p.y,
    })) as unknown as Curve;
    const length = curveLength(counted);
    expect(length).toBeGreaterThan(1e9);
    // Asked for 1e-7 mm of a length that rounding blurs by more, it would halve to the bottom: 250,000 looks.
    expect(evaluations).toBeLessThan(100_000);
  });
});

describe('a search', () => {
  it('ends where its function has no value', () => {
    let asked = 0;
    const found = solveBetween(
      (x) => {
        asked += 1;
        return x > 0.4 && x < 0.6 ? Number.NaN : x - 0.5;
      },
      0,
      1,
      1e-9,
    );
    expect(found).toBeNaN();
    expect(asked).toBeLessThan(10);
    expect(solveBetween(() => Number.NaN, 0, 1, 1e-9)).toBeNaN();
  });
});

describe('a bend between new ends', () => {
  it('never gets handles that loop, however little its directions differ', () => {
    const bend: Curve = [point(0, 0), point(0, 200), point(20, 330), point(90, 400)];
    for (const degrees of [9, 10, 12, 20]) {
      const turn = (degrees * Math.PI) / 180;
      // The lower way meets the upper far beyond the ends.
      const end = { at: point(40, 100), way: { x: Math.sin(-turn), y: Math.cos(turn) } };
      const [a, b, c, d] = curveReaimed(bend, { at: point(0, 0), way: { x: 0, y: 1 } }, end);
      const chord = Math.hypot(d.x - a.x, d.y - a.y);
      expect(Math.hypot(b.x - a.x, b.y - a.y)).toBeLessThan(1.25 * chord);
      expect(Math.hypot(d.x - c.x, d.y - c.y)).toBeLessThan(1.25 * chord);
    }
  });
});
