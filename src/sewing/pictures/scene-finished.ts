import type { Mm } from '../../length';
import { type Point, pathEnd, pointsBounds } from '../../plane';
import { say } from '../../words';
import { lengthOf, sewingFacts } from '../facts';
import { type Garment, pieceOfKind } from '../garment';
import { drawing, onePanel } from './draw';
import { drawnIn, widthAt } from './hem-levels';
import type { StepPicture } from './picture';
import { cutOff, flipped, type Move, polyline } from './polygon';

/** The finished pair from the front: both fronts, the crotch hanging closed. The right leg is seen on the left. */
export function finishedPicture(g: Garment): StepPicture {
  const own = frontOf(g);
  const fronts = [own, frontMirrored(g.sides ? frontOf(g.sides.left) : own)];
  const box = pointsBounds(fronts.flatMap(({ areas }) => areas.flat()));
  const d = drawing(1.08 * (box.bottom - box.top));
  const u = d.unit;
  return onePanel(
    { left: box.left - 12 * u, top: box.top - 4 * u, right: box.right + 12 * u, bottom: box.bottom + 4 * u },
    [
      ...fronts.flatMap(({ areas }) => areas.flatMap((area) => d.cloth('right', area))),
      ...fronts.flatMap(({ stitched }) => stitched.map((run) => d.line('stitch', ...run))),
      ...fronts.flatMap(({ cordFrom, out }) => cordsFrom(cordFrom, out * u).map((run) => d.line('cord', ...run))),
    ],
    say`The finished trousers from the front, right side out, laid flat with the waist at its widest.`,
  );
}

/** What is seen of one leg from the front; the centre at x = 0. */
interface Front {
  /** The leg, and what is sewn on at its waist and hem. */
  readonly areas: readonly (readonly Point[])[];
  readonly stitched: readonly (readonly Point[])[];
  /** Where a waist cord comes out, and to which side it hangs. */
  readonly cordFrom: Point | undefined;
  readonly out: 1 | -1;
}

const frontMirrored = ({ areas, stitched, cordFrom }: Front): Front => {
  const over = flipped(0);
  return {
    areas: areas.map((area) => area.map(over)),
    stitched: stitched.map((run) => run.map(over)),
    cordFrom: cordFrom && over(cordFrom),
    out: -1,
  };
};

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
  const level = Math.min(top[0].y, top[1].y);
  const bottom = Math.min(pathEnd(front.inseam).y, pathEnd(leg.back.inseam).y);
  // Where the curve reaches beyond the centre the cloth goes round to the back: the leg hangs that much further out.
  const { waistPoint, curveEnd } = front;
  const slant = (curveEnd.x - waistPoint.x) / (curveEnd.y - waistPoint.y);
  const hang: Move = ({ x, y }) => {
    const down = Math.min(1, Math.max(0, (y - curveEnd.y) / (front.crotchPoint.y - curveEnd.y)));
    const centre = curveEnd.x + slant * Math.min(0, y - curveEnd.y);
    return { x: x - centre - extension * (1 - Math.sqrt(Math.max(0, 1 - down * down))), y };
  };
  const worn = cutOff(cutOff(outline, { x: 0, y: level }, { x: 1, y: 0 }), { x: 0, y: bottom }, { x: -1, y: 0 }).map(
    hang,
  );
  const half = cuffed(
    g,
    worn.map((p) => ({ x: Math.min(p.x, 0), y: p.y })),
    bottom,
  );
  const opening = finished.sewn.lines.find((line) => line.name === 'cordOpening');
  const [cordFrom] = polyline(opening?.curves ?? []).map(hang);
  return {
    areas: [half, ...bandsOf(g, half, hang, bottom)],
    stitched: stitchedLines(g, half, level, bottom),
    cordFrom,
    out: 1,
  };
}

/** Where casing and hem are stitched, across one half of the finished front. */
function stitchedLines(
  { finished }: Garment,
  half: readonly Point[],
  top: number,
  bottom: number,
): readonly (readonly Point[])[] {
  const { heights, hemPlan } = finished;
  const levels = [
    ...(heights.kind === 'seamed' ? [] : [top + heights.fold]),
    ...(hemPlan.kind === 'seamed' ? [] : [bottom - hemPlan.depth]),
  ];
  // Where the waist runs steeply up to the back, its stitching may lie above all that is seen of the front.
  const [highest, lowest] = [Math.min(...half.map((p) => p.y)), Math.max(...half.map((p) => p.y))];
  return levels.filter((y) => y > highest && y < lowest).map((y) => widthAt([half], y).map((x): Point => ({ x, y })));
}

/** The leg drawn in to its cuff. */
function cuffed(g: Garment, half: readonly Point[], bottom: Mm): readonly Point[] {
  if (g.hem.finish !== 'ribCuff') return half;
  const share = lengthOf(pieceOfKind(g, 'cuff'), ['upper']) / sewingFacts(g).hemRound;
  const [left, right] = widthAt([half], bottom - 1);
  return drawnIn(half, (left + right) / 2, bottom - 1.2 * (right - left), bottom, Math.min(1, share));
}

/** What is sewn on at the waist and at the hem, of one half. */
function bandsOf(g: Garment, half: readonly Point[], hang: Move, bottom: Mm): readonly (readonly Point[])[] {
  const { heights, casing, hemPlan } = g.finished;
  const [back, front] = casing.waistEdge;
  const side: Point = { x: 0, y: back.y + (-back.x / (front.x - back.x)) * (front.y - back.y) };
  const up = heights.height / 2;
  const waist = [side, front].map(hang).map((p) => ({ x: Math.min(p.x, 0), y: p.y }));
  const [left, right] = widthAt([half], bottom - 1);
  const down = bottom + g.hem.bandHeight;
  return [
    ...(heights.kind === 'seamed' ? [[...waist, ...waist.map(({ x, y }) => ({ x, y: y - up })).reverse()]] : []),
    ...(hemPlan.kind === 'seamed'
      ? [
          [
            { x: left, y: bottom },
            { x: right, y: bottom },
            { x: right, y: down },
            { x: left, y: down },
          ],
        ]
      : []),
  ];
}

/** The ends of a waist cord at the front, hanging out of their opening; outwards by so much a step. */
function cordsFrom(at: Point | undefined, step: Mm): readonly (readonly Point[])[] {
  if (!at) return [];
  const end = (x: number, y: number): Point => ({ x: at.x - x * step, y: at.y + y * Math.abs(step) });
  return [[at, end(1, 4), end(0.6, 9), end(1.6, 13)]];
}
