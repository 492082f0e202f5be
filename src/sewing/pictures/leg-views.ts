import { type EdgeName, isAlong } from '../../edges';
import {
  between,
  type Curve,
  cross,
  distance,
  type Edge,
  mirrored,
  type Point,
  pathEnd,
  subtract,
  unit,
} from '../../plane';
import { type LegFold, legFold } from '../folded-leg';
import type { Garment } from '../garment';
import { cutOff, laidOn, type Move, polygon, polyline } from './polygon';

/** The leg as it is cut, and as it is sewn; worn sizes, so that casing and hem lines fit. */
export const cutLeg = ({ finished }: Garment): readonly Point[] =>
  polygon(finished.sewn.cutLine.flatMap((edge) => edge.curves));

/** The cut leg, its hem turned up and out of sight. */
export const hemmedLeg = ({ finished }: Garment): readonly Point[] =>
  polygon(
    finished.sewn.cutLine
      .filter(({ name }) => name !== 'hem' && name !== 'inseamFrontTurning' && name !== 'inseamBackTurning')
      .flatMap((edge) => edge.curves),
  );

export const sewnLeg = ({ finished }: Garment): readonly Point[] =>
  polygon(finished.sewn.stitchLine.flatMap((edge) => edge.curves));

/** Edges of an outline with the turnings that go on from them, as one run. */
export const runOf = (outline: readonly Edge<EdgeName>[], ...edges: readonly EdgeName[]): readonly Curve[] =>
  outline.filter(({ name }) => isAlong(name, edges)).flatMap(({ curves }) => curves);

/** A leg folded right sides together, its front half up, and the back under it. */
export interface FoldedLeg {
  readonly fold: LegFold['fold'];
  readonly front: readonly Point[];
  readonly back: readonly Point[];
}

/**
 * What of an outline lies in front, and what lies behind and is laid on it. Front and back are one cloth at the fold, so a
 * point on it stays; how far the back slides along it to bring the inseams together grows from there to the inseam.
 */
export function foldedLeg(g: Garment, outline: readonly Point[]): FoldedLeg {
  const { fold, over } = legFold(g);
  const way = subtract(fold[1], fold[0]);
  const slid = subtract(over(fold[0]), fold[0]);
  const away = (p: Point) => Math.abs(cross(unit(way), subtract(p, fold[0])));
  const { back } = g.leg;
  const whole = Math.min(away(back.crotchPoint), away(pathEnd(back.inseam)));
  const laid: Move = (p) => {
    const [there, rest] = [over(p), 1 - Math.min(1, away(p) / whole)];
    return { x: there.x - rest * slid.x, y: there.y - rest * slid.y };
  };
  return {
    fold,
    front: cutOff(outline, fold[0], { x: -way.x, y: -way.y }),
    back: cutOff(outline, fold[0], way).map(laid),
  };
}

/**
 * A leg sewn to a tube and laid flat with its inseam up, in the middle: the right leg wrong side out, its front at the right.
 * Mirrored it is the right leg turned right side out, and just so the left one wrong side out.
 */
export interface Tube {
  /** The upper layer below the crotch: front, back, and what lies between their hollow inseams; then its upper parts. */
  readonly near: readonly (readonly Point[])[];
  /** The layer below it, with the side in its middle. */
  readonly far: readonly Point[];
  /** The inseam, from the crotch to the hem fold. */
  readonly inseam: readonly [Point, Point];
  /** The crotch edge from the waist in front to the waist behind: a U. */
  readonly crotch: readonly Point[];
  /** The waist edges of the upper layer, each from the fold to the centre. */
  readonly waists: readonly (readonly [Point, Point])[];
  /** The folds, each from the waist over the crotch level to the hem. */
  readonly folds: readonly (readonly [Point, Point, Point])[];
  /** Puts points of the front half, or of the back half, on the upper layer. */
  readonly front: Move;
  readonly back: Move;
}

/**
 * The sewn leg as a tube: its inseam straight and upright, front and back turned over to its sides. The folds are upright
 * above the crotch, and halve what the leg narrows below it.
 */
export function tubeOf(g: Garment): Tube {
  const { front, back } = g.leg;
  const outline = sewnLeg(g);
  const { stitchLine } = g.finished.sewn;
  const top: Point = { x: (pathEnd(front.inseam).x + pathEnd(back.inseam).x) / 2, y: front.crotchPoint.y };
  const bottom: Point = { x: top.x, y: top.y + distance(front.crotchPoint, pathEnd(front.inseam)) };
  const waist = polyline(runOf(stitchLine, 'waist'));
  const halfOf = (part: 'front' | 'back') => {
    const [crotch, hem] = [g.leg[part].crotchPoint, pathEnd(g.leg[part].inseam)];
    const below = laidOn(crotch, hem, top, { x: 0, y: 1 }, true);
    const fold = { x: (crotch.x + top.x) / 2, y: top.y };
    const move: Move = (p) => (p.y < crotch.y ? { x: 2 * fold.x - p.x, y: p.y - crotch.y + top.y } : below(p));
    const foot = { x: (hem.x + below(hem).x) / 2, y: (hem.y + below(hem).y) / 2 };
    const side = part === 'front' ? -1 : 1;
    const down = subtract(foot, fold);
    const outside = { x: side * down.x, y: side * down.y };
    const lower = cutOff(cutOff(outline, crotch, { x: 1, y: 0 }), fold, outside);
    const upper = cutOff(cutOff(outline, crotch, { x: -1, y: 0 }), fold, { x: 0, y: side });
    const ends = [waist[0] as Point, waist.at(-1) as Point] as const;
    const atFold = between(ends[0], ends[1], (fold.x - ends[0].x) / (ends[1].x - ends[0].x));
    const centre = part === 'front' ? ends[1] : ends[0];
    return {
      move,
      near: [lower.map(move), upper.map(move)] as const,
      inside: (points: readonly Point[]) =>
        cutOff(cutOff(points, fold, { x: 0, y: -side }), fold, { x: -outside.x, y: -outside.y }),
      waist: [atFold, move(centre)] as const,
      fold: [atFold, fold, foot] as const,
      run: (...names: readonly EdgeName[]) => polyline(runOf(stitchLine, ...names)).map(move),
    };
  };
  const [f, b] = [halfOf('front'), halfOf('back')];
  return {
    near: [f.near[0], b.near[0], [...f.run('inseamFront'), ...b.run('inseamBack')], f.near[1], b.near[1]],
    far: b.inside(f.inside(outline)),
    inseam: [top, bottom],
    crotch: [...f.run('centreFront', 'crotchFront'), ...b.run('crotchBack', 'centreBack')],
    waists: [f.waist, b.waist],
    folds: [f.fold, b.fold],
    front: f.move,
    back: b.move,
  };
}

/** The hem fold, from the front inseam to the back. */
export const hemFold = ({ leg, finished }: Garment): readonly [Point, Point] => [
  leg.hem[0]?.[0] ?? finished.hem.raw[0],
  leg.hem.at(-1)?.[3] ?? finished.hem.raw[1],
];

/** What is turned up at the hem of the flat leg, as far as it is seen: without what is tucked under. */
export function hemStrip(g: Garment): readonly Point[] {
  const fold = hemFold(g);
  const cut = g.finished.sewn.cutLine;
  const run = (name: EdgeName) => cut.filter((edge) => edge.name === name).flatMap((edge) => edge.curves);
  const turned = polygon([...run('inseamFrontTurning'), ...run('hem'), ...run('inseamBackTurning')]).map((p) =>
    mirrored(p, ...fold),
  );
  const [a, b] = g.finished.hem.stitching;
  return g.hem.turnUnder > 0 ? cutOff(turned, a, subtract(a, b)) : turned;
}
