import type { Mm } from '../../length';
import { between, distance, type Point, pathEnd, pointsBounds, subtract } from '../../plane';
import { say } from '../../words';
import { LAP } from '../elastic';
import { lengthOf, sewingFacts } from '../facts';
import { type Garment, pieceOfKind } from '../garment';
import { drawing, onePanel } from './draw';
import { drawnIn, drawnUp, widthAt } from './hem-levels';
import type { StepPicture } from './picture';
import { cutOff, flipped, type Move, polyline } from './polygon';

/**
 * The finished pair from the front: both fronts, the crotch hanging closed, and behind them the inside of the waist, which
 * rises to centre back. The right leg is seen on the left.
 */
export function finishedPicture(g: Garment): StepPicture {
  const own = frontOf(g);
  const other = frontMirrored(g.sides ? frontOf(g.sides.left) : own);
  const fronts = [own, other];
  const across = (run: readonly Point[], back: readonly Point[]) => [...run, ...back.toReversed()];
  const behind = across([own.waist[0], own.backTop], [other.waist[0], other.backTop]);
  const turned = across(
    [own.waist[0], own.backTop, other.waist[0]],
    [own.waist[0], own.backTop, other.waist[0]].map(({ x, y }) => ({ x, y: y + own.turned })),
  );
  const band = own.band && other.band && [...own.band, ...other.band.toReversed()];
  const box = pointsBounds([...fronts.flatMap(({ areas }) => areas.flat()), ...behind, ...(band ?? [])]);
  const d = drawing(1.08 * (box.bottom - box.top));
  const u = d.unit;
  const share = gatheredWaist(g);
  // As elastic or band draw it in when nobody wears it: from the crotch upwards more and more.
  const worn: Shape = (points) => drawnUp(points, g.leg.crotchLevel, box.top, share);
  const round = (points: readonly Point[]) => worn([...points, points[0] as Point]);
  return onePanel(
    { left: box.left - 12 * u, top: box.top - 4 * u, right: box.right + 12 * u, bottom: box.bottom + 4 * u },
    [
      ...d.cloth('wrong', round([...behind, other.waist[1], own.waist[1]])),
      ...d.cloth('right', round(turned)),
      ...fronts.flatMap(({ areas }) => areas.flatMap((area) => d.cloth('right', round(area)))),
      ...(band ? d.cloth('right', round(band)) : []),
      ...fronts.flatMap(({ stitched }) => stitched.map((run) => d.line('stitch', ...worn(run)))),
      ...(share < 1
        ? fronts.flatMap((front) => gathersBelow(front, u).map((run) => d.line('gather', ...worn(run))))
        : []),
      ...fronts.flatMap(({ gathers }) => gathers.map((run) => d.line('gather', ...run))),
      ...fronts.flatMap(({ cordFrom, out }) =>
        cordsFrom(cordFrom && worn([cordFrom])[0], out * u).map((run) => d.line('cord', ...run)),
      ),
      // The opening at the side is seen from its edge: one end hangs before the leg, one beside it.
      ...fronts.flatMap(({ hemCordFrom, out }) =>
        [0.35, -0.35].flatMap((way) => cordsFrom(hemCordFrom, way * out * u).map((run) => d.line('cord', ...run))),
      ),
    ],
    share < 1
      ? say`The finished trousers from the front, right side out, the waist drawn in as it hangs when nobody wears them; behind it the inside of the back, which stands highest at its centre.`
      : say`The finished trousers from the front, right side out, laid flat with the waist at its widest; behind it the inside of the back, which stands highest at its centre.`,
  );
}

type Shape = (points: readonly Point[]) => readonly Point[];

/** What elastic or band leaves of the waist's width; all of it where a cord alone draws it in. */
function gatheredWaist({ notions, finished }: Garment): number {
  const round = 2 * distance(...finished.casing.waistEdge);
  const length = notions.elasticLength === undefined ? notions.bandLength : notions.elasticLength - LAP;
  return length === undefined ? 1 : Math.min(1, length / round);
}

/** The same of the hem: a cuff, or elastic in its casing. */
function gatheredHem(g: Garment): number {
  const { hemRound } = sewingFacts(g);
  if (g.hem.finish === 'ribCuff') return lengthOf(pieceOfKind(g, 'cuff'), ['upper']) / hemRound;
  return g.notions.hemElasticLength === undefined ? 1 : Math.min(1, (g.notions.hemElasticLength - LAP) / hemRound);
}

/** Gathers are drawn at these shares of a width, long and short in turn. */
const GATHERS = [0.14, 0.28, 0.42, 0.56, 0.7, 0.84] as const;

/** Under the waist's lowest stitching, or under the edge that a band is sewn to. */
function gathersBelow({ waist: [side, centre], stitched, band }: Front, u: Mm): readonly (readonly Point[])[] {
  const [from, to] = band ? [band[1] ?? side, band[0] ?? centre] : (stitched[0] ?? [side, centre]);
  return GATHERS.map((share, i) => {
    const at = between(from as Point, to as Point, share);
    return [2, i % 2 === 0 ? 8 : 5].map((down) => ({ x: at.x, y: at.y + down * u }));
  });
}

/** Above a hem that is drawn in. */
const gathersAbove = ([left, right]: readonly [Mm, Mm], level: Mm): readonly (readonly Point[])[] =>
  GATHERS.map((share, i) => {
    const x = left + share * (right - left);
    return [0.06, i % 2 === 0 ? 0.3 : 0.2].map((up) => ({ x, y: level - up * (right - left) }));
  });

/** What is seen of one leg from the front; the centre at x = 0. */
interface Front {
  /** The leg, and what is sewn on at its hem. */
  readonly areas: readonly (readonly Point[])[];
  /** What is sewn on at its waist, from the centre below to the centre above: it has no seam in front. */
  readonly band: readonly Point[] | undefined;
  /** The upper edge, from the side to the centre. */
  readonly waist: readonly [Point, Point];
  /** Centre back at the upper edge, and how deep cloth is turned in there, its right side seen. */
  readonly backTop: Point;
  readonly turned: Mm;
  readonly stitched: readonly (readonly Point[])[];
  /** Where the hem is drawn in. */
  readonly gathers: readonly (readonly Point[])[];
  /** Where a waist cord comes out, and to which side it hangs. */
  readonly cordFrom: Point | undefined;
  /** Where a hem cord comes out, at the side. */
  readonly hemCordFrom: Point | undefined;
  readonly out: 1 | -1;
}

function frontMirrored(front: Front): Front {
  const over = flipped(0);
  return {
    areas: front.areas.map((area) => area.map(over)),
    band: front.band?.map(over),
    waist: [over(front.waist[0]), over(front.waist[1])],
    backTop: over(front.backTop),
    turned: front.turned,
    stitched: front.stitched.map((run) => run.map(over)),
    gathers: front.gathers.map((run) => run.map(over)),
    cordFrom: front.cordFrom && over(front.cordFrom),
    hemCordFrom: front.hemCordFrom && over(front.hemCordFrom),
    out: -1,
  };
}

function frontOf(g: Garment): Front {
  const { leg, finished } = g;
  const { front } = leg;
  const extension = front.crotchPoint.x - front.curveEnd.x;
  const outline = cutOff(
    polyline(finished.sewn.stitchLine.flatMap((edge) => edge.curves)),
    { x: 0, y: 0 },
    { x: 0, y: -1 },
  );
  const top = finished.heights.kind === 'seamed' ? finished.casing.waistEdge : finished.casing.fold;
  const bottom = Math.min(pathEnd(front.inseam).y, pathEnd(leg.back.inseam).y);
  // Where the curve reaches beyond the centre the cloth goes round to the back: the leg hangs that much further out.
  const { waistPoint, curveEnd } = front;
  const slant = (curveEnd.x - waistPoint.x) / (curveEnd.y - waistPoint.y);
  const hang: Move = ({ x, y }) => {
    const down = Math.min(1, Math.max(0, (y - curveEnd.y) / (front.crotchPoint.y - curveEnd.y)));
    const centre = curveEnd.x + slant * Math.min(0, y - curveEnd.y);
    return { x: x - centre - extension * (1 - Math.sqrt(Math.max(0, 1 - down * down))), y };
  };
  const worn = cutOff(cutOff(outline, top[0], subtract(top[1], top[0])), { x: 0, y: bottom }, { x: -1, y: 0 }).map(
    hang,
  );
  const half = cuffed(
    g,
    worn.map((p) => ({ x: Math.min(p.x, 0), y: p.y })),
    bottom,
  );
  const opening = finished.sewn.lines.find((line) => line.name === 'cordOpening');
  const [cordFrom] = polyline(opening?.curves ?? []).map(hang);
  const waist = waistOf(g, hang);
  return {
    areas: [half, ...hemBandOf(g, half, bottom)],
    ...waist,
    stitched: stitchedLines(g, half, waist.waist, bottom),
    gathers:
      gatheredHem(g) < 1
        ? gathersAbove(
            widthAt([half], bottom - 1),
            bottom - (g.finished.hemPlan.kind === 'folded' ? g.finished.hemPlan.depth : 0),
          )
        : [],
    cordFrom,
    hemCordFrom:
      g.hem.finish === 'drawstringCasing'
        ? { x: widthAt([half], bottom - 1)[0] + 4, y: bottom - sewingFacts(g).hemDepth / 2 }
        : undefined,
    out: 1,
  };
}

/** Where casing and hem are stitched, across one half of the finished front: the casing along its slant, channel by channel. */
function stitchedLines(
  { finished: { heights, hemPlan } }: Garment,
  half: readonly Point[],
  [side, centre]: readonly [Point, Point],
  bottom: Mm,
): readonly (readonly Point[])[] {
  const at = (y: Mm, end: 0 | 1): Point => ({ x: widthAt([half], y)[end], y });
  const rows = heights.kind === 'seamed' ? [] : heights.channels.map(({ from }) => heights.fold - from);
  return [
    ...rows.map((down) => [at(side.y + down, 0), at(centre.y + down, 1)]),
    ...(hemPlan.kind === 'seamed' ? [] : [[at(bottom - hemPlan.depth, 0), at(bottom - hemPlan.depth, 1)]]),
  ];
}

/** The leg drawn in to its cuff or by its elastic. */
function cuffed(g: Garment, half: readonly Point[], bottom: Mm): readonly Point[] {
  const [left, right] = widthAt([half], bottom - 1);
  const tall = Math.min(1.2 * (right - left), 0.8 * (bottom - g.leg.crotchLevel));
  return drawnIn(half, (left + right) / 2, bottom - tall, bottom, Math.min(1, gatheredHem(g)));
}

/** The upper edge of one half in front and behind, and what is sewn on there. */
function waistOf({ finished }: Garment, hang: Move): Pick<Front, 'band' | 'waist' | 'backTop' | 'turned'> {
  const { heights, casing } = finished;
  const seamed = heights.kind === 'seamed';
  const [back, front] = seamed ? casing.waistEdge : casing.fold;
  const side: Point = { x: 0, y: back.y + (-back.x / (front.x - back.x)) * (front.y - back.y) };
  const lower = [side, front].map(hang).map((p): Point => ({ x: Math.min(p.x, 0), y: p.y })) as [Point, Point];
  const up = seamed ? heights.height / 2 : 0;
  const upper = lower.map(({ x, y }): Point => ({ x, y: y - up })) as [Point, Point];
  return {
    band: seamed ? [lower[1], lower[0], upper[0], upper[1]] : undefined,
    waist: upper,
    backTop: { x: 0, y: upper[0].y + back.y - side.y },
    turned: seamed ? up : heights.fold,
  };
}

/** What is sewn on at the hem of one half. */
function hemBandOf(g: Garment, half: readonly Point[], bottom: Mm): readonly (readonly Point[])[] {
  if (g.finished.hemPlan.kind !== 'seamed') return [];
  const [left, right] = widthAt([half], bottom - 1);
  const down = bottom + g.hem.bandHeight;
  return [
    [
      { x: left, y: bottom },
      { x: right, y: bottom },
      { x: right, y: down },
      { x: left, y: down },
    ],
  ];
}

/** The ends of a waist cord at the front, hanging out of their opening; outwards by so much a step. */
function cordsFrom(at: Point | undefined, step: Mm): readonly (readonly Point[])[] {
  if (!at) return [];
  const end = (x: number, y: number): Point => ({ x: at.x - x * step, y: at.y + y * Math.abs(step) });
  return [[at, end(1, 4), end(0.6, 9), end(1.6, 13)]];
}
