import { type Mm, say } from '../../length';
import { between, type Point } from '../../plane';
import { lengthOf } from '../facts';
import { type Garment, pieceNamed } from '../garment';
import { hemStitchingAt } from '../hem-turning';
import { type Draw, drawing, onePanel } from './draw';
import { hemFold, hemmedLeg, hemStrip, tubeOf } from './leg-views';
import type { Face, PictureItem, StepPicture } from './picture';
import { boundsOf, cutOff, polyline } from './polygon';
import type { HemStage } from './scene';

const GAP = 30;

/** The lower end of a leg: flat before its inseam, or the sewn tube with its inseam up. */
export function hemPicture(g: Garment, stage: HemStage): StepPicture {
  if (stage === 'flat') return flatHem(g);
  if (stage === 'corded') return cordedHem(g);
  const tube = tubeOf(g);
  const level = tube.inseam[1].y;
  const face: Face = stage === 'stripOn' ? 'right' : 'wrong';
  const near = tube.near.map((part) => below(part, level));
  const [left, right] = widthAt(tube.near.slice(0, 2), level - 1);
  const d = drawing(1.3 * (right - left));
  const u = d.unit;
  const shown = Math.min(0.75 * (right - left), Math.max(level - tube.inseam[0].y - 4 * u, 30 * u));
  const top = level - shown;
  const middle = tube.inseam[1].x;
  return onePanel(
    { left: left - 12 * u, right: right + 12 * u, top, bottom: level + 9 * u },
    [
      ...near.map((part) => d.area(face, part)),
      ...[...tube.folds, tube.crotch].map((run) => d.line('edge', ...run)),
      d.line('stitch', { x: middle, y: tube.inseam[0].y }, { x: middle, y: level }),
      d.line('edge', { x: left, y: level }, { x: right, y: level }),
      ...(stage === 'stripOn'
        ? stripItems(g, d, [left, right], level)
        : turnedItems(g, stage, d, near, [left, right], level)),
      d.word(
        { x: middle, y: top + 5 * u },
        face === 'wrong' ? 'leg, wrong side out, inseam up' : 'leg, right side out, inseam up',
        'middle',
      ),
    ],
    SAYS[stage],
  );
}

const below = (points: readonly Point[], level: Mm): readonly Point[] =>
  cutOff(points, { x: 0, y: level }, { x: -1, y: 0 });
const above = (points: readonly Point[], level: Mm): readonly Point[] =>
  cutOff(points, { x: 0, y: level }, { x: 1, y: 0 });

/** How far parts reach to the left and right at a level. */
function widthAt(parts: readonly (readonly Point[])[], y: Mm): readonly [Mm, Mm] {
  const xs = parts.flatMap((part) =>
    part.flatMap((p, i) => {
      const next = part[(i + 1) % part.length] as Point;
      return p.y < y === next.y < y ? [] : [p.x + ((y - p.y) / (next.y - p.y)) * (next.x - p.x)];
    }),
  );
  return [Math.min(...xs), Math.max(...xs)];
}

function turnedItems(
  g: Garment,
  stage: HemStage,
  d: Draw,
  near: readonly (readonly Point[])[],
  [left, right]: readonly [Mm, Mm],
  level: Mm,
): readonly PictureItem[] {
  const u = d.unit;
  const { depth } = g.finished.hemPlan;
  const stitch = level - hemStitchingAt(g);
  const middle = (left + right) / 2;
  const beyond = g.finished.hemPlan.channel ? 2 : 0;
  const edge = level - depth - beyond;
  const gap = g.hem.finish === 'elasticCasing' ? GAP / 2 : 0;
  const drawn = stage === 'threaded';
  const look = drawn ? 'stitch' : 'lit';
  const w = g.hem.elasticWidth;
  const tail = [
    { x: middle - w / 2, y: stitch },
    { x: middle + w / 2, y: stitch },
    { x: middle + w / 2 - 6 * u, y: stitch - 18 * u },
    { x: middle - w / 2 - 6 * u, y: stitch - 18 * u },
  ];
  return [
    ...near.map((part) => d.area('right', above(part, edge))),
    d.line('edge', { x: left, y: edge }, { x: right, y: edge }),
    d.line('edge', { x: left, y: edge }, { x: left, y: level }, { x: right, y: level }, { x: right, y: edge }),
    d.line(look, { x: left, y: stitch }, { x: middle - gap, y: stitch }),
    d.line(look, { x: middle + gap, y: stitch }, { x: right, y: stitch }),
    ...(drawn
      ? [
          ...[0.15, 0.85].map((share) =>
            d.line('hidden', { x: left, y: level - share * depth }, { x: right, y: level - share * depth }),
          ),
          d.area('elastic', tail),
          d.line('edge', ...tail, tail[0] as Point),
          ...d.pin(between(tail[2] as Point, tail[3] as Point, 0.5), { x: 0.3, y: 1 }),
          ...d.note({ x: middle + 22 * u, y: stitch - 14 * u }, 'elastic', {
            x: middle + w / 2 - 4 * u,
            y: stitch - 12 * u,
          }),
        ]
      : []),
    ...(gap > 0 && !drawn
      ? d.note({ x: middle + 16 * u, y: stitch - 9 * u }, 'left open', { x: middle, y: stitch })
      : []),
    d.word({ x: middle, y: level + 4 * u }, 'fold', 'middle'),
    ...(drawn ? [] : d.note({ x: left + 20 * u, y: stitch - 9 * u }, 'stitch', { x: left + 8 * u, y: stitch })),
  ];
}

/** A ring on the leg, raw edges together at the lower edge, its fold above. */
function stripItems(g: Garment, d: Draw, [left, right]: readonly [Mm, Mm], level: Mm): readonly PictureItem[] {
  const u = d.unit;
  const name = g.hem.finish === 'ribCuff' ? 'cuff' : 'hem band';
  const half = lengthOf(pieceNamed(g, name), ['upper']) / 2;
  const middle = (left + right) / 2;
  const [l, r] = [middle - half / 2, middle + half / 2];
  const top = level - g.hem.bandHeight;
  const ring = [
    { x: l, y: top },
    { x: r, y: top },
    { x: r, y: level },
    { x: l, y: level },
  ];
  const narrow = half < right - left - 6;
  return [
    ...d.cloth('right', ring),
    d.line('fold', { x: l, y: top }, { x: r, y: top }),
    d.line('stitch', { x: middle, y: top }, { x: middle, y: level }),
    d.line('lit', { x: l, y: level - 2 }, { x: r, y: level - 2 }),
    ...[l, middle, r].flatMap((x) => d.pin({ x, y: level - 2 }, { x: 1, y: 0 })),
    ...(narrow
      ? [
          ...d.arrow({ x: l, y: level - 0.4 * g.hem.bandHeight }, { x: left, y: level - 0.4 * g.hem.bandHeight }),
          ...d.arrow({ x: r, y: level - 0.4 * g.hem.bandHeight }, { x: right, y: level - 0.4 * g.hem.bandHeight }),
        ]
      : []),
    d.word({ x: l + 2 * u, y: top + 5 * u }, narrow ? `${name}, stretched to the leg` : name),
    d.word({ x: middle, y: level + 6.5 * u }, 'raw edges together', 'middle'),
    ...d.note({ x: right - 4 * u, y: top - 4 * u }, 'fold', { x: r - 4 * u, y: top }),
  ];
}

function flatHem(g: Garment): StepPicture {
  const { hem, sewn } = g.finished;
  const fold = hemFold(g);
  const share = hemStitchingAt(g) / g.finished.hemPlan.depth;
  const stitch = fold.map((p, i) => between(p, hem.stitching[i as 0 | 1], share)) as unknown as readonly [Point, Point];
  const box = boundsOf([...fold]);
  const d = drawing(1.25 * (box.right - box.left));
  const u = d.unit;
  const body = hemmedLeg(g);
  const elastic = g.hem.finish === 'elasticCasing';
  const reach = 12;
  return onePanel(
    { left: box.left - 20 * u, right: box.right + 20 * u, top: box.top - 55 * u, bottom: box.bottom + 8 * u },
    [
      ...d.cloth('wrong', body),
      ...sewn.lines
        .filter((line) => line.kind === 'side')
        .map((line) => d.line('fold', ...polyline(line.curves).filter((p) => p.y < box.top))),
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
            d.word({ x: box.right, y: box.bottom + 5 * u }, 'dotted: elastic, held at both ends', 'right'),
          ]
        : [d.word({ x: (box.left + box.right) / 2, y: box.bottom + 5 * u }, 'fold', 'middle')]),
      ...d.pin(between(...stitch, 0.3), { x: 1, y: 0 }),
      ...d.pin(between(...stitch, 0.7), { x: 1, y: 0 }),
      d.word({ x: (box.left + box.right) / 2, y: box.top - 30 * u }, 'leg, flat, wrong side up', 'middle'),
    ],
    SAYS.flat,
  );
}

/** From the side: the opening, and the cord's two ends. */
function cordedHem(g: Garment): StepPicture {
  const tube = tubeOf(g);
  const level = tube.inseam[1].y;
  const far = below(tube.far, level);
  const [left, right] = widthAt([far], level - 1);
  const d = drawing(1.3 * (right - left));
  const u = d.unit;
  const opening = polyline(g.finished.sewn.lines.find((line) => line.name === 'hem cord opening')?.curves ?? []);
  const at = between(opening[0] as Point, opening.at(-1) as Point, 0.5);
  const stitch = level - hemStitchingAt(g);
  const end = (way: 1 | -1) => [
    at,
    { x: at.x + way * 3 * u, y: at.y - 8 * u },
    { x: at.x + way * 9 * u, y: at.y - 12 * u },
    { x: at.x + way * 12 * u, y: at.y - 20 * u },
  ];
  return onePanel(
    { left: left - 6 * u, right: right + 6 * u, top: level - 0.75 * (right - left), bottom: level + 9 * u },
    [
      ...d.cloth('right', far),
      d.line('fold', { x: 0, y: level - 900 }, { x: 0, y: stitch }),
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
      ...d.note({ x: at.x + 22 * u, y: at.y - 8 * u }, 'cord', { x: at.x + 9 * u, y: at.y - 12 * u }),
      d.word({ x: at.x, y: level + 5 * u }, 'opening at the side', 'middle'),
      d.word(
        { x: at.x, y: level - 0.75 * (right - left) + 6 * u },
        'leg, right side out, seen from the side',
        'middle',
      ),
    ],
    SAYS.corded,
  );
}

const SAYS: Readonly<Record<HemStage, StepPicture['says']>> = {
  flat: say`The lower end of the flat leg, wrong side up, its hem turned up and its stitching lit.`,
  stitched: say`The lower end of the leg, wrong side out, its hem turned up and its stitching lit all round.`,
  threaded: say`The lower end of the leg, wrong side out, elastic going into the hem casing at the inseam.`,
  corded: say`The lower end of the leg from the side, right side out, the cord’s ends coming out at the opening.`,
  stripOn: say`The lower end of the leg, right side out, a folded ring slipped over it, raw edges together, the seam lit.`,
  faced: say`The lower end of the leg, wrong side out, the facing turned in and its stitching lit.`,
};
