import type { Mm } from '../../length';
import { between, mapTuple, type Point } from '../../plane';
import { say } from '../../words';
import type { Garment } from '../garment';
import { hemStitchingAt, turnedDepth } from '../hem-turning';
import { captioned, type Draw, drawing } from './draw';
import { cordedHem, flatHem } from './hem-flat';
import { downFrom, drawnIn, upTo, widthAt } from './hem-levels';
import { gatheredShare, gatherItems, ringItems } from './hem-ring';
import { tubeOf } from './leg-views';
import type { Face, PictureItem, StepPicture } from './picture';
import type { HemStage } from './scene';

const GAP = 30;

/** Right side out; the others wrong side out. */
const RIGHT_OUT: readonly HemStage[] = ['stripOn', 'gathered'];

/** The lower end of a leg: flat before its inseam, or the sewn tube with its inseam up. */
export function hemPicture(g: Garment, stage: HemStage): StepPicture {
  if (stage === 'flat') return flatHem(g, SAYS.flat);
  if (stage === 'corded') return cordedHem(g, SAYS.corded);
  const tube = tubeOf(g);
  const level = tube.inseam[1].y;
  const face: Face = RIGHT_OUT.includes(stage) ? 'right' : 'wrong';
  const whole = widthAt(tube.near.slice(0, 2), level - 1);
  const middle = tube.inseam[1].x;
  const d = drawing(1.3 * (whole[1] - whole[0]));
  const u = d.unit;
  const factor = stage === 'stripOn' ? gatheredShare(g) : 1;
  const from = level - 1.5 * g.hem.bandHeight - 20 * u;
  const drawn = (points: readonly Point[]) => drawnIn(points, middle, from, level, factor);
  const near = tube.near.map((part) => drawn(upTo(part, level)));
  const edges = mapTuple(whole, (x) => middle + factor * (x - middle));
  const [left, right] = edges;
  const shown = Math.min(0.45 * (whole[1] - whole[0]), Math.max(level - tube.inseam[0].y - 4 * u, 30 * u));
  return captioned(
    { left: whole[0] - 12 * u, right: whole[1] + 12 * u, top: level - shown, bottom: level + 6 * u },
    [
      ...near.map((part) => d.area(face, part)),
      ...tube.folds.map((run) => d.line('edge', ...drawn(run))),
      d.line('edge', ...tube.crotch),
      d.line('stitch', { x: middle, y: tube.inseam[0].y }, { x: middle, y: level }),
      d.line('edge', { x: left, y: level }, { x: right, y: level }),
      ...(stage === 'stripOn' ? ringItems(g, d, edges, level) : []),
      ...(stage === 'gathered' ? gatherItems(d, edges, level) : []),
      ...(face === 'wrong' ? turnedItems(g, stage, d, near, edges, level) : []),
    ],
    face === 'wrong' ? say`leg, wrong side out, inseam up` : say`leg, right side out, inseam up`,
    SAYS[stage],
    d,
  );
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
  const edge = level - turnedDepth(g);
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
    ...near.map((part) => d.area('right', downFrom(part, edge))),
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
          ...d.note({ x: middle + 22 * u, y: stitch - 14 * u }, say`elastic, safety pin`, {
            x: middle + w / 2 - 4 * u,
            y: stitch - 12 * u,
          }),
        ]
      : []),
    ...(gap > 0 && !drawn
      ? d.note({ x: middle + 16 * u, y: stitch - 9 * u }, say`left open`, { x: middle, y: stitch })
      : []),
    d.word({ x: middle, y: level + 4 * u }, say`fold`, 'middle'),
    ...(drawn ? [] : d.note({ x: left + 20 * u, y: stitch - 9 * u }, say`stitch`, { x: left + 8 * u, y: stitch })),
  ];
}

const SAYS: Readonly<Record<HemStage, StepPicture['says']>> = {
  flat: say`The lower end of the flat leg, wrong side up, its hem turned up and its stitching lit.`,
  stitched: say`The lower end of the leg, wrong side out, its hem turned up and its stitching lit all round.`,
  threaded: say`The lower end of the leg, wrong side out, elastic going into the hem casing at the inseam.`,
  corded: say`The lower end of the leg from the side, right side out, the cord’s ends coming out at the opening.`,
  gathered: say`The lower end of the leg, right side out, two rows of long stitches lit, their threads hanging out.`,
  stripOn: say`The lower end of the leg, right side out, a folded ring slipped over it, raw edges together, the seam lit.`,
  faced: say`The lower end of the leg, wrong side out, the facing turned in and its stitching lit.`,
};
