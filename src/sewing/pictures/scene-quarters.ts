import { distance, type Point } from '../../plane';
import { say } from '../../words';
import type { Garment } from '../garment';
import { drawing, onePanel } from './draw';
import { cutLeg } from './leg-views';
import type { StepPicture } from './picture';
import { flipped, laidOn, type Move } from './polygon';

/** The waist laid out flat, both legs side by side, and above it the elastic or band with its quarters. */
export function quartersPicture(g: Garment, holds: 'elastic' | 'band'): StepPicture {
  const { casing, heights } = g.finished;
  const line = holds === 'elastic' ? casing.raw : casing.waistEdge;
  const whole = distance(...line);
  const down = { x: 1, y: 0 };
  const first = laidOn(line[0], line[1], { x: 0, y: 0 }, down, false);
  const second: Move = (p) => flipped(whole)(first(p));
  const d = drawing(2.15 * whole);
  const u = d.unit;
  const leg = cutLeg(g);
  const length = holds === 'elastic' ? (g.notions.elasticLength ?? 0) : (g.notions.bandLength ?? 0);
  const height = holds === 'elastic' ? g.waist.elasticWidth : heights.height / 2;
  const top = -16 * u - height;
  const start = whole - length / 2;
  const strip = [
    { x: start, y: top },
    { x: start + length, y: top },
    { x: start + length, y: top + height },
    { x: start, y: top + height },
  ];
  const marks = [0, 0.25, 0.5, 0.75, 1];
  const side = first({ x: 0, y: line[0].y }).x;
  return onePanel(
    { left: -7 * u, right: 2 * whole + 7 * u, top: top - 6 * u, bottom: 18 * u },
    [
      ...d.cloth(holds === 'elastic' ? 'wrong' : 'right', leg.map(first)),
      ...d.cloth(holds === 'elastic' ? 'wrong' : 'right', leg.map(second)),
      d.area(holds === 'elastic' ? 'elastic' : 'right', strip),
      d.line('edge', ...strip, strip[0] as Point),
      ...marks.flatMap((share) => {
        const from = { x: start + share * length, y: top + height };
        const to = { x: share * 2 * whole, y: 0 };
        return [
          d.line('mark', { x: from.x, y: top }, from),
          ...d.arrow(from, { x: to.x, y: to.y - 1 * u }),
          d.line('notch', { x: to.x, y: 0 }, { x: to.x, y: 4 * u }),
        ];
      }),
      d.word(
        { x: whole, y: top - 2 * u },
        holds === 'elastic'
          ? say`elastic in quarters, its ring shown cut open at centre back`
          : say`band in quarters, its ring shown cut open at centre back`,
        'middle',
      ),
      d.word({ x: 0, y: 7.5 * u }, say`centre back`),
      d.word({ x: 2 * whole, y: 7.5 * u }, say`centre back`, 'right'),
      d.word({ x: whole, y: 7.5 * u }, say`centre front`, 'middle'),
      d.word({ x: whole / 2, y: 11.5 * u }, say`quarter`, 'middle'),
      d.word({ x: 1.5 * whole, y: 11.5 * u }, say`quarter`, 'middle'),
      ...[side, 2 * whole - side].flatMap((x) => [
        d.line('side', { x, y: 0 }, { x, y: 13 * u }),
        d.word({ x, y: 16 * u }, say`side`, 'middle'),
      ]),
    ],
    holds === 'elastic'
      ? say`The waist laid out flat, both legs side by side, with the elastic above it: its quarters go to the centre seams and the quarter marks, which lie apart from the sides.`
      : say`The waist laid out flat, both legs side by side, with the band above it: its quarters go to the centre seams and the quarter marks, which lie apart from the sides.`,
  );
}
