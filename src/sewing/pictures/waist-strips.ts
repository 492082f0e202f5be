import { between, type Point } from '../../plane';
import { say } from '../../words';
import type { Garment } from '../garment';
import type { Draw } from './draw';
import type { PictureItem } from './picture';
import { flipped } from './polygon';
import { both, lineOf, raised, type Stage } from './waist-parts';
import type { WaistView } from './waist-view';

/** The ring on the waist: as it is sewn, lying down on the leg, or standing up afterwards. Its one seam is seen at centre back. */
export function stripOnTop(
  g: Garment,
  view: WaistView,
  d: Draw,
  { down, seamSeen }: { readonly down: boolean; readonly seamSeen: boolean },
): readonly PictureItem[] {
  const height = g.finished.heights.height / 2;
  const [centre, side] = view.waistEdge;
  const by = down ? height : -height;
  const [sideFold, centreFold] = [side, centre].map(({ x, y }): Point => ({ x, y: y + by })) as [Point, Point];
  const over = flipped(0);
  return [
    ...d.cloth('right', [side, centre, over(side), over(sideFold), centreFold, sideFold]),
    ...(seamSeen ? [d.line('stitch', centre, centreFold)] : []),
    ...lineOf(d, 'fold', [centreFold, sideFold]),
  ];
}

export const stripOn: Stage = (g, view, d) => {
  const u = d.unit;
  const [centre, side] = view.waistEdge;
  const name = g.waist.finish === 'knitBand' ? say`band` : say`casing`;
  return [
    ...stripOnTop(g, view, d, { down: true, seamSeen: false }),
    ...lineOf(d, 'lit', view.waistEdge),
    ...view.partings.flatMap((p) => lineOf(d, 'stitch', p)),
    ...[0.5, 0.98].flatMap((share) => both((move) => d.pin(move(between(centre, side, share)), { x: 1, y: 0 }))),
    d.word(
      { x: 0.5 * side.x, y: between(centre, side, 0.5).y + g.finished.heights.height / 2 + 4.5 * u },
      say`fold of the ${name}`,
      'middle',
    ),
    ...d.note(
      { x: 0.62 * Math.abs(side.x), y: Math.min(centre.y, side.y) - 0.5 * u },
      say`raw edges together`,
      between(centre, { x: Math.abs(side.x), y: side.y }, 0.75),
    ),
  ];
};

export const bandUp: Stage = (g, view, d) => [
  ...stripOnTop(g, view, d, { down: false, seamSeen: false }),
  ...lineOf(d, 'stitch', view.waistEdge),
  ...lineOf(d, 'lit', raised(view.waistEdge, -3)),
  d.word(
    { x: 0.5 * view.waistEdge[1].x, y: Math.max(view.waistEdge[0].y, view.waistEdge[1].y) + 5 * d.unit },
    say`stitch, stretched`,
    'middle',
  ),
];

/** Two rows of long stitches, their threads left long, before they are drawn up. */
export const gathered: Stage = (_, view, d) => {
  const u = d.unit;
  const [centre, side] = view.waistEdge;
  const rows = [0.6, 2.2].map((by) => raised(view.waistEdge, -by * u));
  const folds = [0.2, 0.4, 0.6, 0.8].map((share) => between(centre, side, share));
  return [
    ...rows.flatMap((row) => lineOf(d, 'lit', row)),
    ...both((move) =>
      folds.map((p) =>
        d.line(
          'gather',
          ...[
            { x: p.x, y: p.y + 3.5 * u },
            { x: p.x, y: p.y + 8 * u },
          ].map(move),
        ),
      ),
    ),
    ...both((move) =>
      rows.map((row) =>
        d.line('thin', ...[row[0], { x: row[0].x + Math.sign(side.x) * 4 * u, y: row[0].y + 9 * u }].map(move)),
      ),
    ),
    ...d.note({ x: -0.2 * Math.abs(side.x), y: centre.y + 14 * u }, say`threads to draw up`, {
      x: -3 * u,
      y: centre.y + 8 * u,
    }),
  ];
};
