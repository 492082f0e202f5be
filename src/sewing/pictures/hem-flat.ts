import { between, mapTuple, type Point, pointsBounds } from '../../plane';
import { type Phrase, say } from '../../words';
import type { Garment } from '../garment';
import { hemStitchingAt } from '../hem-turning';
import { captioned, drawing } from './draw';
import { upTo, widthAt } from './hem-levels';
import { hemFold, hemmedLeg, hemStrip, tubeOf } from './leg-views';
import type { StepPicture } from './picture';
import { polyline } from './polygon';

/** The lower end of a leg that is hemmed flat, before its inseam. */
export function flatHem(g: Garment, says: Phrase): StepPicture {
  const { hem, sewn } = g.finished;
  const fold = hemFold(g);
  const share = hemStitchingAt(g) / g.finished.hemPlan.depth;
  const stitch = mapTuple(fold, (p, i) => between(p, hem.stitching[i as 0 | 1], share));
  const box = pointsBounds([...fold]);
  const d = drawing(1.25 * (box.right - box.left));
  const u = d.unit;
  const body = hemmedLeg(g);
  const elastic = g.hem.finish === 'elasticCasing';
  const reach = 12;
  return captioned(
    { left: box.left - 20 * u, right: box.right + 20 * u, top: box.top - 45 * u, bottom: box.bottom + 7 * u },
    [
      ...d.cloth('wrong', body),
      ...sewn.lines
        .filter((line) => line.kind === 'side')
        .map((line) => d.line('side', ...polyline(line.curves).filter((p) => p.y < box.top))),
      ...d.cloth('right', hemStrip(g)),
      d.line('lit', ...stitch),
      ...(elastic
        ? [
            d.line('hidden', { x: box.left - reach, y: box.top - 3 }, { x: box.right + reach, y: box.top - 3 }),
            d.line(
              'hidden',
              { x: box.left - reach, y: box.top - 3 - g.hem.elasticWidth * 0.8 },
              { x: box.right + reach, y: box.top - 3 - g.hem.elasticWidth * 0.8 },
            ),
            d.word({ x: box.right, y: box.bottom + 5 * u }, say`dotted: elastic, held at both ends`, 'right'),
          ]
        : [d.word({ x: (box.left + box.right) / 2, y: box.bottom + 5 * u }, say`fold`, 'middle')]),
      ...d.pin(between(...stitch, 0.3), { x: 1, y: 0 }),
      ...d.pin(between(...stitch, 0.7), { x: 1, y: 0 }),
    ],
    say`leg, flat, wrong side up`,
    says,
    d,
  );
}

/** From the side: the opening, and the cord's two ends. */
export function cordedHem(g: Garment, says: Phrase): StepPicture {
  const tube = tubeOf(g);
  const level = tube.inseam[1].y;
  const far = upTo(tube.far, level);
  const stitch = level - hemStitchingAt(g);
  // A hem that isn't level has its whole width above its lower corner only.
  const lowest = Math.min(level, pointsBounds([...far]).bottom);
  const [left, right] = widthAt([far], lowest - hemStitchingAt(g));
  const d = drawing(1.3 * (right - left));
  const u = d.unit;
  const opening = polyline(g.finished.sewn.lines.find((line) => line.name === 'hemCordOpening')?.curves ?? []);
  const at = between(opening[0] as Point, opening.at(-1) as Point, 0.5);
  const end = (way: 1 | -1) => [
    at,
    { x: at.x + way * 3 * u, y: at.y - 8 * u },
    { x: at.x + way * 9 * u, y: at.y - 12 * u },
    { x: at.x + way * 12 * u, y: at.y - 20 * u },
  ];
  return captioned(
    { left: left - 6 * u, right: right + 6 * u, top: level - 0.7 * (right - left), bottom: level + 7 * u },
    [
      ...d.cloth('right', far),
      d.line('side', { x: 0, y: level - 900 }, { x: 0, y: stitch }),
      d.line('stitch', { x: left, y: stitch }, { x: right, y: stitch }),
      ...[0.25, 0.75].map((share) =>
        d.line(
          'hidden',
          { x: left, y: level - share * g.finished.hemPlan.depth },
          { x: right, y: level - share * g.finished.hemPlan.depth },
        ),
      ),
      d.line('mark', ...opening),
      d.line('cord', ...end(1)),
      d.line('cord', ...end(-1)),
      d.dot(end(1)[3] as Point),
      d.dot(end(-1)[3] as Point),
      ...d.note({ x: at.x + 22 * u, y: at.y - 8 * u }, say`cord`, { x: at.x + 9 * u, y: at.y - 12 * u }),
      d.word({ x: at.x, y: level + 5 * u }, say`opening at the side`, 'middle'),
    ],
    say`leg, right side out, seen from the side`,
    says,
    d,
  );
}
