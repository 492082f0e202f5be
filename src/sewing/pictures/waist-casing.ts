import type { Mm } from '../../length';
import { between, distance, type Point } from '../../plane';
import { mm, say } from '../../words';
import { LEFT_OPEN } from '../channels';
import type { Garment } from '../garment';
import { elasticSewnOn } from '../steps-flat';
import { both, hasElastic, lineOf, raised, type Stage, turning, upTo } from './waist-parts';
import { stripOnTop } from './waist-strips';

/** How far a line between channels stays open at the centre: only where an elastic is threaded above it. */
const partingGap = (g: Garment): Mm =>
  g.finished.heights.channels.filter(({ holds }) => holds === 'elastic').length > 1 ? LEFT_OPEN / 2 : 0;

export const stitched: Stage = (g, view, d) => {
  const u = d.unit;
  const on = elasticSewnOn(g);
  const gap = hasElastic(g) && !on ? LEFT_OPEN / 2 : 0;
  const seam = on ? raised(view.waistEdge, 3) : view.waistEdge;
  return [
    ...turning(view, d),
    ...lineOf(d, 'lit', upTo(seam, gap)),
    ...view.partings.flatMap((parting) => lineOf(d, 'lit', upTo(parting, partingGap(g)))),
    ...(gap > 0
      ? [
          ...d.arrow({ x: 0, y: seam[0].y + 6 * u }, { x: -gap, y: seam[0].y + 6 * u }),
          ...d.arrow({ x: 0, y: seam[0].y + 6 * u }, { x: gap, y: seam[0].y + 6 * u }),
          ...d.note({ x: gap + 5 * u, y: seam[0].y + 14 * u }, say`${mm(LEFT_OPEN)} open`, {
            x: 0.6 * gap,
            y: seam[0].y + 6 * u,
          }),
        ]
      : []),
    ...d.note({ x: view.upper[1].x * 0.62, y: view.upper[0].y - 3 * u }, say`fold`, between(...view.upper, 0.45)),
    ...both((move) => d.pin(move(between(...view.waistEdge, 0.55)), { x: 1, y: 0 })),
  ];
};

export const threaded: Stage = (g, view, d) => {
  const u = d.unit;
  const strip = g.waist.finish === 'separateCasing';
  const channels = g.finished.heights.channels.filter((channel) => channel.holds === 'elastic');
  const [centre, side] = view.waistEdge;
  const gap = LEFT_OPEN / 2;
  const w = g.waist.elasticWidth;
  const tail = 22 * u;
  const inside = channels.flatMap(({ from, to }) => {
    const middle = (from + to) / 2;
    return [middle - w / 2, middle + w / 2].flatMap((h) =>
      lineOf(d, 'hidden', [
        { x: centre.x, y: centre.y - h },
        { x: side.x, y: side.y - h },
      ]),
    );
  });
  const base = strip
    ? stripOnTop(g, view, d, { down: false, seamSeen: true })
    : [
        ...turning(view, d),
        ...lineOf(d, 'stitch', upTo(view.waistEdge, gap)),
        ...view.partings.flatMap((p) => lineOf(d, 'stitch', upTo(p, partingGap(g)))),
      ];
  const at = { x: -0.3 * gap, y: centre.y - (strip ? 0.3 * w : 0) };
  const end = { x: at.x - 0.7 * tail, y: at.y + tail };
  return [
    ...base,
    ...inside,
    d.area('elastic', ribbon(at, end, w)),
    d.line('edge', ...ribbon(at, end, w), ribbon(at, end, w)[0] as Point),
    ...d.pin(between(at, end, 0.85), { x: 0.6, y: 0.8 }),
    ...d.note({ x: 6 * u, y: end.y - 3 * u }, say`elastic, safety pin`, between(at, end, 0.7)),
  ];
};

/** A band of a width from point to point. */
function ribbon(a: Point, b: Point, width: Mm): readonly Point[] {
  const length = distance(a, b);
  const over = { x: (-(b.y - a.y) / length) * (width / 2), y: ((b.x - a.x) / length) * (width / 2) };
  return [
    { x: a.x + over.x, y: a.y + over.y },
    { x: b.x + over.x, y: b.y + over.y },
    { x: b.x - over.x, y: b.y - over.y },
    { x: a.x - over.x, y: a.y - over.y },
  ];
}

export const closed: Stage = (g, view, d) => {
  const u = d.unit;
  const strip = g.waist.finish === 'separateCasing';
  const base = strip
    ? stripOnTop(g, view, d, { down: false, seamSeen: true })
    : [
        ...turning(view, d),
        ...lineOf(d, 'stitch', upTo(view.waistEdge, LEFT_OPEN / 2)),
        ...view.partings.flatMap((p) => lineOf(d, 'stitch', p)),
      ];
  const [centre, side] = view.waistEdge;
  const up = strip ? g.finished.heights.height / 2 : g.finished.heights.fold;
  const whole = distance(centre, side);
  const quarter = between(centre, side, Math.min(1, view.quarter / whole));
  const upright = (p: Point) => [p, { x: p.x, y: p.y - up }];
  const folds = [0.12, 0.24, 0.36, 0.48, 0.6, 0.72, 0.84].map((share) => between(centre, side, share));
  return [
    ...base,
    ...both((move) =>
      folds.map((p, i) =>
        d.line(
          'gather',
          ...[
            { x: p.x, y: p.y + 2 * u },
            { x: p.x, y: p.y + (i % 2 === 0 ? 9 : 6) * u },
          ].map(move),
        ),
      ),
    ),
    // A ring that is sewn on has its gap in its own end seam, which stands upright at the centre.
    ...(strip ? [] : [d.line('lit', { x: -LEFT_OPEN / 2, y: centre.y }, { x: LEFT_OPEN / 2, y: centre.y })]),
    d.line('lit', ...upright(centre)),
    ...(view.quarter <= whole ? both((move) => [d.line('lit', ...upright(quarter).map(move))]) : []),
    ...(view.quarter <= whole
      ? [
          d.word({ x: quarter.x, y: quarter.y - up - 2 * u }, say`quarter`, 'middle'),
          d.word({ x: -quarter.x, y: quarter.y - up - 2 * u }, say`quarter`, 'middle'),
        ]
      : []),
    ...(strip
      ? d.note({ x: LEFT_OPEN / 2 + 3 * u, y: centre.y + 16 * u }, say`gap sewn shut`, { x: 0, y: centre.y - up / 2 })
      : d.note({ x: LEFT_OPEN / 2 + 3 * u, y: centre.y + 16 * u }, say`opening shut`, {
          x: LEFT_OPEN / 4,
          y: centre.y + u,
        })),
  ];
};
