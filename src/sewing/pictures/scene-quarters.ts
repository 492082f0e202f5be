import type { Mm } from '../../length';
import { distance, type Point } from '../../plane';
import { say } from '../../words';
import type { Garment } from '../garment';
import { drawing, onePanel } from './draw';
import type { StepPicture } from './picture';
import { rectangle } from './polygon';

/** What is seen of the legs below their waist, in hundredths of the picture. */
const DEEP = 26;
/** The picture is as wide as the page’s column, so that its words need more of it. */
const LETTER = 4.2;

/** The waist laid out flat, both legs side by side, and above it the elastic or band with its quarters. */
export function quartersPicture(g: Garment, holds: 'elastic' | 'band'): StepPicture {
  const { casing, heights } = g.finished;
  const line = holds === 'elastic' ? casing.raw : casing.waistEdge;
  const whole = distance(...line);
  const d = drawing(2.15 * whole, LETTER);
  const u = d.unit;
  const length = holds === 'elastic' ? (g.notions.elasticLength ?? 0) : (g.notions.bandLength ?? 0);
  const height = holds === 'elastic' ? g.waist.elasticWidth : heights.height / 2;
  const top = -18 * u - height;
  const start = whole - length / 2;
  const strip = [
    { x: start, y: top },
    { x: start + length, y: top },
    { x: start + length, y: top + height },
    { x: start, y: top + height },
  ];
  const marks = [0, 0.25, 0.5, 0.75, 1];
  const side = (whole * line[0].x) / (line[0].x - line[1].x);
  // Seams stand upright here: laid flat, the waist's upper part is drawn straight on both sides of them.
  const leg = (from: Mm) => rectangle(from, 0, from + whole, DEEP * u);
  return onePanel(
    { left: -7 * u, right: 2 * whole + 7 * u, top: top - 6 * u, bottom: DEEP * u },
    [
      ...[0, whole].map((from) => d.area(holds === 'elastic' ? 'wrong' : 'right', leg(from))),
      d.line('edge', { x: 0, y: DEEP * u }, { x: 0, y: 0 }, { x: 2 * whole, y: 0 }, { x: 2 * whole, y: DEEP * u }),
      d.line('stitch', { x: whole, y: 0 }, { x: whole, y: DEEP * u }),
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
          ? say`elastic in quarters, shown cut open at centre back`
          : say`band in quarters, shown cut open at centre back`,
        'middle',
      ),
      d.word({ x: u, y: 17 * u }, say`centre back`),
      d.word({ x: 2 * whole - u, y: 17 * u }, say`centre back`, 'right'),
      d.word({ x: whole + u, y: 23 * u }, say`centre front`),
      d.word({ x: whole / 2 - 2 * u, y: -3 * u }, say`quarter`, 'right'),
      d.word({ x: 1.5 * whole + 2 * u, y: -3 * u }, say`quarter`),
      ...[side, 2 * whole - side].flatMap((x) => [
        d.line('side', { x, y: 0 }, { x, y: 7 * u }),
        d.word({ x, y: 11.5 * u }, say`side`, 'middle'),
      ]),
    ],
    holds === 'elastic'
      ? say`The waist laid out flat, both legs side by side, with the elastic above it: its quarters go to the centre seams and the quarter marks, which lie apart from the sides.`
      : say`The waist laid out flat, both legs side by side, with the band above it: its quarters go to the centre seams and the quarter marks, which lie apart from the sides.`,
  );
}
