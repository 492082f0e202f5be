import { between, distance, type Point } from '../../plane';
import { say } from '../../words';
import { polyline } from './polygon';
import { both, lineOf, type Stage } from './waist-parts';

export const elasticOn: Stage = (g, view, d) => {
  const u = d.unit;
  const w = g.waist.elasticWidth;
  const [centre, side] = view.raw;
  const strip = [centre, side, { x: side.x, y: side.y + w }, { x: centre.x, y: centre.y + w }];
  const start = between(centre, side, -0.02);
  const below = Math.max(centre.y, side.y, view.upper[0].y, view.upper[1].y) + w;
  return [
    ...both((move) => [d.area('elastic', strip.map(move)), d.line('edge', ...strip.map(move))]),
    ...both((move) => [d.zigzag('overlock', [start, side].map(move), 1.6 * u)]),
    ...lineOf(d, 'fold', view.upper),
    ...both((move) =>
      d.pin(move(between(centre, side, Math.min(1, view.quarter / distance(centre, side)))), { x: 1, y: 0 }),
    ),
    ...d.pin(centre, { x: 1, y: 0 }),
    d.word({ x: -0.5 * Math.abs(side.x), y: below + 5 * u }, say`elastic`, 'middle'),
    ...d.arrow({ x: 0.3 * Math.abs(side.x), y: below + 3 * u }, { x: 0.75 * Math.abs(side.x), y: below + 3 * u }),
    d.word({ x: 0.5 * Math.abs(side.x), y: below + 7 * u }, say`stretch`, 'middle'),
  ];
};

export const corded: Stage = (g, view, d) => {
  const u = d.unit;
  const opening = polyline(g.finished.sewn.lines.find((line) => line.name === 'cordOpening')?.curves ?? []).map(
    view.move,
  );
  const at = between(opening[0] as Point, opening.at(-1) as Point, 0.5);
  const channel = g.finished.heights.channels.find((one) => one.holds === 'cord');
  const [centre, side] = view.waistEdge;
  const inside = channel
    ? [channel.from + 3, channel.to - 3].map((h) => [
        { x: at.x, y: centre.y - h },
        { x: side.x, y: side.y - h },
      ])
    : [];
  const hanging = [
    at,
    { x: at.x - 2 * u, y: at.y + 9 * u },
    { x: at.x - 1 * u, y: at.y + 18 * u },
    { x: at.x - 3 * u, y: at.y + 24 * u },
  ];
  const under = Math.max(centre.y, side.y) + 5 * u;
  return [
    ...lineOf(d, 'stitch', view.waistEdge),
    ...view.partings.flatMap((p) => lineOf(d, 'stitch', p)),
    ...inside.flatMap((run) => lineOf(d, 'hidden', run)),
    ...lineOf(d, 'cord', hanging),
    ...lineOf(d, 'notch', opening),
    ...both((move) => [d.dot(move(hanging.at(-1) as Point))]),
    ...d.note({ x: at.x - 14 * u, y: at.y + 18 * u }, say`cord`, { x: at.x - 1.6 * u, y: at.y + 16 * u }),
    ...d.note({ x: at.x - 14 * u, y: at.y + 10 * u }, say`opening`, opening.at(-1) as Point),
    ...d.arrow({ x: -0.4 * side.x, y: under }, { x: -0.7 * side.x, y: under }),
    d.word({ x: -0.55 * side.x, y: under + 5 * u }, say`draw in`, 'middle'),
  ];
};
