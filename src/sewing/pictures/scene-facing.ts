import { cutCurves, type PieceKind, pieceName, seamParts } from '../../edges';
import { between, leftOf, type Point, pointsBounds, subtract, unit } from '../../plane';
import { mm, say } from '../../words';
import { type Garment, pieceOfKind } from '../garment';
import { hemStitchingAt } from '../hem-turning';
import { captioned, drawing, onePanel } from './draw';
import { cutLeg, runOf } from './leg-views';
import type { StepPicture } from './picture';
import { laidOn, type Move, polygon, polyline, shifted } from './polygon';

/** A facing: its pieces joined to a ring, or laid on the leg, right sides together. */
export function facingPicture(g: Garment, kind: PieceKind, stage: 'ring' | 'on'): StepPicture {
  const piece = pieceOfKind(g, kind);
  const points = polygon(cutCurves(piece));
  const box = pointsBounds(points);
  const d = drawing(1.2 * (box.right - box.left));
  const u = d.unit;
  const waist = kind === 'waistFacing';
  if (stage === 'on') {
    const { sewn } = g.finished;
    const edge = waist ? 'waist' : 'hem';
    const run = polyline(piece.stitchLine.filter((one) => one.name === edge).flatMap((one) => one.curves));
    const window = waist
      ? { top: box.top - 6 * u, bottom: box.bottom + 22 * u }
      : { top: box.top - 22 * u, bottom: box.bottom + 6 * u };
    return captioned(
      { left: box.left - 3 * u, right: box.right + 3 * u, ...window },
      [
        ...d.cloth('right', cutLeg(g)),
        ...sewn.lines.filter((line) => line.kind === 'side').map((line) => d.line('side', ...polyline(line.curves))),
        ...d.cloth('wrong', points),
        d.line('lit', ...run),
        ...[0.15, 0.5, 0.85].flatMap((share) =>
          d.pin(between(run[0] as Point, run.at(-1) as Point, share), { x: 1, y: 0 }),
        ),
        ...(waist
          ? [d.word({ x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 + u }, pieceName(piece), 'middle')]
          : []),
      ],
      say`leg, right side up; facing, wrong side up`,
      waist
        ? say`The facing, wrong side up, on the right side of the leg, the seam at the upper edge lit.`
        : say`The facing, wrong side up, on the right side of the leg, the seam at the lower edge lit.`,
      d,
    );
  }
  const [seam] = seamParts([piece], waist ? 'waistRing' : 'hemRing');
  const lit = (seam?.edges ?? []).map((edge) => polyline(runOf(piece.stitchLine, edge)));
  if (waist) {
    return onePanel(
      { left: box.left - 4 * u, right: box.right + 4 * u, top: box.top - 8 * u, bottom: box.bottom + 10 * u },
      [
        ...d.cloth('right', points.map(shifted(0, 1.5 * u))),
        ...d.cloth('wrong', points),
        ...lit.map((run) => d.line('lit', ...run)),
        d.word({ x: box.left, y: box.top - 3 * u }, say`centre back`),
        d.word({ x: box.right, y: box.top - 3 * u }, say`centre front`, 'right'),
        d.word(
          { x: (box.left + box.right) / 2, y: box.bottom + 7 * u },
          say`two facings, right sides together`,
          'middle',
        ),
      ],
      say`The two waist facings, right sides together, with both centre seams lit.`,
    );
  }
  return foldedFacing(g, points, drawing(0.8 * (box.right - box.left)));
}

/** The hem facing folded, inseam on inseam. */
function foldedFacing(g: Garment, points: readonly Point[], d: ReturnType<typeof drawing>): StepPicture {
  const piece = pieceOfKind(g, 'hemFacing');
  const front = polyline(runOf(piece.stitchLine, 'inseamFront'));
  const back = polyline(runOf(piece.stitchLine, 'inseamBack'));
  const [a, b] = [front[0] as Point, front.at(-1) as Point];
  const [c, e] = [back.at(-1) as Point, back[0] as Point];
  const over: Move = laidOn(c, e, a, subtract(b, a), true);
  const half = (p: Point): Point => between(p, over(p), 0.5);
  const fold = [half(c), half(e)] as const;
  const way = unit(subtract(fold[1], fold[0]));
  const out = leftOf(way);
  const near = points.filter((p) => (p.x - fold[0].x) * out.x + (p.y - fold[0].y) * out.y >= -1);
  const box = pointsBounds([...near, ...fold]);
  const shape = [...near, ...fold];
  const u = d.unit;
  const middle = shape.reduce((sum, p) => ({ x: sum.x + p.x / shape.length, y: sum.y + p.y / shape.length }), {
    x: 0,
    y: 0,
  });
  const ring = [...shape].sort(
    (p, q) => Math.atan2(p.y - middle.y, p.x - middle.x) - Math.atan2(q.y - middle.y, q.x - middle.x),
  );
  return onePanel(
    { left: box.left - 14 * u, right: box.right + 16 * u, top: box.top - 8 * u, bottom: box.bottom + 8 * u },
    [
      ...d.cloth('right', ring.map(shifted(1.2 * u, 1.2 * u))),
      ...d.cloth('wrong', ring),
      d.line('lit', ...front),
      ...d.note({ x: box.right + 4 * u, y: box.top - 3 * u }, say`inseam`, a),
      ...d.note({ x: box.left - 2 * u, y: box.top - 3 * u }, say`fold`, fold[0]),
    ],
    say`The hem facing folded right sides together, its inseam, ${mm(hemStitchingAt(g))} high, lit.`,
  );
}
