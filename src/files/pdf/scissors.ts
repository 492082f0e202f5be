import { INK, type LineStyle } from '../../drawing';
import type { Mm } from '../../length';
import { type Curve, type Point, pathThrough, point } from '../../plane';
import type { Pen } from '../pen/pen';

const LOOP: LineStyle = { width: 0.35, colour: INK.sign, dash: [] };
/** Control points of a quarter circle, in parts of its radius. */
const QUARTER = 0.5523;

/** Half a pair of scissors, its blade towards the left, in parts of the whole length from tip to loops. */
const BLADE = [point(-0.6, 0.1), point(0.02, -0.05), point(0.12, -0.06), point(0.1, 0.02)] as const;
const EYE = { at: point(0.28, -0.15), radius: 0.115 } as const;

/**
 * A pair of scissors that cuts along a line.
 *
 * @param at where the blades cross, on the page
 * @param turn degrees, clockwise as seen: at 0 the blades point to the left
 * @param long from the tips to the loops
 */
export function drawScissors(pen: Pen, at: Point, turn: number, long: Mm): void {
  const [cos, sin] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
  for (const mirror of [1, -1]) {
    const map = ({ x, y }: Point) => {
      const [along, across] = [x * long, y * mirror * long];
      return point(at.x + along * cos - across * sin, at.y + along * sin + across * cos);
    };
    pen.fill(pathThrough(...BLADE, BLADE[0]), map, INK.sign);
    pen.stroke(circle(EYE.at, EYE.radius), map, LOOP, { closed: true });
  }
}

function circle({ x, y }: Point, r: number): readonly Curve[] {
  const k = QUARTER * r;
  return [
    [point(x + r, y), point(x + r, y + k), point(x + k, y + r), point(x, y + r)],
    [point(x, y + r), point(x - k, y + r), point(x - r, y + k), point(x - r, y)],
    [point(x - r, y), point(x - r, y - k), point(x - k, y - r), point(x, y - r)],
    [point(x, y - r), point(x + k, y - r), point(x + r, y - k), point(x + r, y)],
  ];
}
