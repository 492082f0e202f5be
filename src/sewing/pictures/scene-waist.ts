import { type Mm, mm, say } from '../../length';
import { between, distance, type Point } from '../../plane';
import { LEFT_OPEN } from '../channels';
import type { Garment } from '../garment';
import { elasticSewnOn } from '../steps-flat';
import { type Draw, drawing, onePanel } from './draw';
import { cutLeg } from './leg-views';
import type { Face, PictureItem, StepPicture } from './picture';
import { flipped, laidOn, type Move, polyline } from './polygon';
import type { WaistStage } from './scene';
import { type WaistView, waistView } from './waist-view';

/** Both halves of something drawn for one. */
const both = (items: (move: Move) => readonly PictureItem[]): readonly PictureItem[] => [
  ...items((p) => p),
  ...items(flipped(0)),
];

const FRONT: readonly WaistStage[] = ['corded', 'stripOn', 'bandUp'];
const RIGHT_OUT: readonly WaistStage[] = ['corded', 'stripOn', 'bandUp'];

/** The waist of the sewn pair, from behind wrong side out, or from the front right side out. */
export function waistPicture(g: Garment, stage: WaistStage): StepPicture {
  const view = waistView(g, FRONT.includes(stage) ? 'front' : 'back');
  const width = 2 * Math.abs(view.upper[1].x);
  const d = drawing(1.12 * width);
  const face: Face = RIGHT_OUT.includes(stage) ? 'right' : 'wrong';
  const top = Math.min(...[...view.upper, ...(stage === 'elasticOn' ? view.raw : [])].map((p) => p.y));
  const sheet = stage === 'elasticOn' ? view.open : view.body;
  const up = stage === 'bandUp' || (g.waist.finish === 'separateCasing' && stage !== 'stripOn');
  const band = up ? g.finished.heights.height / 2 : 0;
  const window = {
    left: -width / 2 - 7 * d.unit,
    right: width / 2 + 7 * d.unit,
    top: top - band - 9 * d.unit,
    bottom: view.depth - 2 * d.unit,
  };
  const middle = FRONT.includes(stage) ? 'centre front' : 'centre back';
  const items = [
    ...both((move) => d.cloth(face, sheet.map(move))),
    d.line('stitch', { x: 0, y: top }, { x: 0, y: view.depth }),
    ...STAGES[stage](g, view, d),
    d.word({ x: 0, y: top - band - 4 * d.unit }, middle, 'middle'),
    d.word(
      { x: 0, y: view.depth - 5 * d.unit },
      face === 'wrong' ? 'wrong side out, seen from behind' : 'right side out, seen from the front',
      'middle',
    ),
  ];
  return onePanel(window, items, SAYS[stage](g));
}

type Stage = (g: Garment, view: WaistView, d: Draw) => readonly PictureItem[];

const lineOf = (d: Draw, look: Parameters<Draw['line']>[0], line: readonly Point[]) =>
  both((move) => [d.line(look, ...line.map(move))]);

/** What lies turned over the wrong side: the leg's own turning, or a facing; its right side looks out. */
const turning = (view: WaistView, d: Draw): readonly PictureItem[] =>
  both((move) => d.cloth('right', [...view.upper, view.inner[1], view.inner[0]].map(move)));

/** From the side to where the opening at the centre begins. */
function upTo([centre, side]: readonly [Point, Point], gap: Mm): readonly [Point, Point] {
  return [between(centre, side, gap / Math.max(gap + 1, distance(centre, side))), side];
}

const hasElastic = ({ finished }: Garment) => finished.heights.channels.some((channel) => channel.holds === 'elastic');

const stitched: Stage = (g, view, d) => {
  const u = d.unit;
  const on = elasticSewnOn(g);
  const gap = hasElastic(g) && !on ? LEFT_OPEN / 2 : 0;
  const seam = on ? raised(view.waistEdge, 3) : view.waistEdge;
  return [
    ...turning(view, d),
    ...lineOf(d, 'lit', upTo(seam, gap)),
    ...view.partings.flatMap((parting) => lineOf(d, 'lit', upTo(parting, gap))),
    ...(gap > 0
      ? [
          ...d.arrow({ x: 0, y: seam[0].y + 6 * u }, { x: -gap, y: seam[0].y + 6 * u }),
          ...d.arrow({ x: 0, y: seam[0].y + 6 * u }, { x: gap, y: seam[0].y + 6 * u }),
          d.word({ x: 0, y: seam[0].y + 10 * u }, say`${mm(LEFT_OPEN)} open`, 'middle'),
        ]
      : []),
    ...d.note({ x: view.upper[1].x * 0.62, y: view.upper[0].y - 3 * u }, 'fold', between(...view.upper, 0.45)),
    ...both((move) => d.pin(move(between(...view.waistEdge, 0.55)), { x: 1, y: 0 })),
  ];
};

const raised = ([a, b]: readonly [Point, Point], by: Mm): readonly [Point, Point] => [
  { x: a.x, y: a.y - by },
  { x: b.x, y: b.y - by },
];

const threaded: Stage = (g, view, d) => {
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
    ? stripOnTop(g, view, d, false)
    : [
        ...turning(view, d),
        ...lineOf(d, 'stitch', upTo(view.waistEdge, gap)),
        ...view.partings.flatMap((p) => lineOf(d, 'stitch', upTo(p, gap))),
      ];
  const at = { x: -0.3 * gap, y: centre.y - (strip ? 0.3 * w : 0) };
  const end = { x: at.x - 0.7 * tail, y: at.y + tail };
  return [
    ...base,
    ...inside,
    d.area('elastic', ribbon(at, end, w)),
    d.line('edge', ...ribbon(at, end, w), ribbon(at, end, w)[0] as Point),
    ...d.pin(between(at, end, 0.85), { x: 0.6, y: 0.8 }),
    ...d.note({ x: end.x - 7 * u, y: end.y - 3 * u }, 'elastic, safety pin', between(at, end, 0.7)),
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

const closed: Stage = (g, view, d) => {
  const u = d.unit;
  const strip = g.waist.finish === 'separateCasing';
  const base = strip
    ? stripOnTop(g, view, d, false)
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
          'thin',
          ...[
            { x: p.x, y: p.y + 2 * u },
            { x: p.x, y: p.y + (i % 2 === 0 ? 9 : 6) * u },
          ].map(move),
        ),
      ),
    ),
    d.line('lit', { x: -LEFT_OPEN / 2, y: centre.y }, { x: LEFT_OPEN / 2, y: centre.y }),
    d.line('lit', ...upright(centre)),
    ...(view.quarter <= whole ? both((move) => [d.line('lit', ...upright(quarter).map(move))]) : []),
    ...(view.quarter <= whole
      ? [
          d.word({ x: quarter.x, y: quarter.y - up - 2 * u }, 'quarter', 'middle'),
          d.word({ x: -quarter.x, y: quarter.y - up - 2 * u }, 'quarter', 'middle'),
        ]
      : []),
    d.word({ x: 0, y: centre.y + 13 * u }, 'opening shut', 'middle'),
  ];
};

const elasticOn: Stage = (g, view, d) => {
  const u = d.unit;
  const w = g.waist.elasticWidth;
  const [centre, side] = view.raw;
  const strip = [centre, side, { x: side.x, y: side.y + w }, { x: centre.x, y: centre.y + w }];
  const start = between(centre, side, -0.02);
  return [
    ...both((move) => [d.area('elastic', strip.map(move)), d.line('edge', ...strip.map(move))]),
    ...both((move) => [d.zigzag('overlock', [start, side].map(move), 1.6 * u)]),
    ...lineOf(d, 'fold', view.upper),
    ...both((move) =>
      d.pin(move(between(centre, side, Math.min(1, view.quarter / distance(centre, side)))), { x: 1, y: 0 }),
    ),
    ...d.pin(centre, { x: 1, y: 0 }),
    d.word({ x: -0.3 * Math.abs(side.x), y: centre.y + w + 4 * u }, 'elastic on the raw edge', 'middle'),
    ...d.arrow(
      { x: 0.3 * Math.abs(side.x), y: centre.y + w + 3 * u },
      { x: 0.75 * Math.abs(side.x), y: centre.y + w + 3 * u },
    ),
    d.word({ x: 0.5 * Math.abs(side.x), y: centre.y + w + 7 * u }, 'stretch', 'middle'),
  ];
};

const corded: Stage = (g, view, d) => {
  const u = d.unit;
  const opening = polyline(g.finished.sewn.lines.find((line) => line.name === 'cord opening')?.curves ?? []).map(
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
  return [
    ...lineOf(d, 'stitch', view.waistEdge),
    ...view.partings.flatMap((p) => lineOf(d, 'stitch', p)),
    ...inside.flatMap((run) => lineOf(d, 'hidden', run)),
    ...lineOf(d, 'mark', opening),
    ...lineOf(d, 'cord', hanging),
    ...both((move) => [d.dot(move(hanging.at(-1) as Point))]),
    ...d.note({ x: at.x - 14 * u, y: at.y + 14 * u }, 'cord', { x: at.x - 1.6 * u, y: at.y + 12 * u }),
    ...d.arrow({ x: 0.8 * side.x, y: at.y }, { x: 0.45 * side.x, y: at.y }),
  ];
};

/** The ring on the waist: as it is sewn, lying down on the leg, or standing up afterwards. */
function stripOnTop(g: Garment, view: WaistView, d: Draw, down: boolean): readonly PictureItem[] {
  const height = g.finished.heights.height / 2;
  const [centre, side] = view.waistEdge;
  const by = down ? height : -height;
  const strip = [centre, side, { x: side.x, y: side.y + by }, { x: centre.x, y: centre.y + by }];
  return [
    ...both((move) => d.cloth('right', strip.map(move))),
    ...lineOf(d, 'fold', [strip[3] as Point, strip[2] as Point]),
  ];
}

const stripOn: Stage = (g, view, d) => {
  const u = d.unit;
  const [centre, side] = view.waistEdge;
  const name = g.waist.finish === 'knitBand' ? 'band' : 'casing';
  return [
    ...stripOnTop(g, view, d, true),
    ...lineOf(d, 'lit', view.waistEdge),
    ...view.partings.flatMap((p) => lineOf(d, 'stitch', p)),
    ...[0.5, 0.98].flatMap((share) => both((move) => d.pin(move(between(centre, side, share)), { x: 1, y: 0 }))),
    d.word({ x: 0.5 * side.x, y: centre.y + g.finished.heights.height / 2 + 4 * u }, `fold of the ${name}`, 'middle'),
    ...d.note(
      { x: -0.35 * side.x, y: centre.y - 3.5 * u },
      'raw edges together',
      between(centre, { x: Math.abs(side.x), y: side.y }, 0.5),
    ),
  ];
};

const bandUp: Stage = (g, view, d) => [
  ...stripOnTop(g, view, d, false),
  ...lineOf(d, 'stitch', view.waistEdge),
  ...lineOf(d, 'lit', raised(view.waistEdge, -3)),
  d.word({ x: 0.5 * view.waistEdge[1].x, y: view.waistEdge[0].y + 6 * d.unit }, 'stitch, stretched', 'middle'),
];

const STAGES: Readonly<Record<WaistStage, Stage>> = {
  stitched,
  threaded,
  closed,
  elasticOn,
  corded,
  stripOn,
  bandUp,
  faced: stitched,
};

const SAYS: Readonly<Record<WaistStage, (g: Garment) => StepPicture['says']>> = {
  stitched: () => say`The waist from behind, wrong side out, the casing turned over it, its stitching lit.`,
  threaded: () => say`The waist from behind, wrong side out, elastic going in at the opening with a safety pin.`,
  closed: () =>
    say`The waist from behind, the opening shut, the casing stitched upright at centre back and at both quarter marks.`,
  elasticOn: () => say`The waist from behind, wrong side out, elastic sewn to its raw edge by a zigzag.`,
  corded: () => say`The waist from the front, right side out, the cord’s ends coming out at both openings.`,
  stripOn: () =>
    say`The waist from the front, right side out, the folded ring lying on it, raw edges together, the seam lit.`,
  bandUp: () => say`The waist from the front, right side out, the band standing up, the seam held down below it.`,
  faced: () => say`The waist from behind, wrong side out, the facing turned in, its stitching lit.`,
};

/** The waist laid out flat, both legs side by side, and above it the elastic or band with its quarters. */
export function quartersPicture(g: Garment, holds: 'elastic' | 'band'): StepPicture {
  const { casing, heights } = g.finished;
  const line = holds === 'elastic' ? casing.raw : casing.waistEdge;
  const whole = distance(...line);
  const down = { x: 1, y: 0 };
  const first = laidOn(line[0], line[1], { x: 0, y: 0 }, down, false);
  const second: Move = (p) => flipped(whole)(first(p));
  const d = drawing(2.15 * whole);
  const u = d.unit;
  const leg = cutLeg(g);
  const length = holds === 'elastic' ? (g.notions.elasticLength ?? 0) : (g.notions.bandLength ?? 0);
  const height = holds === 'elastic' ? g.waist.elasticWidth : heights.height / 2;
  const top = -16 * u - height;
  const start = whole - length / 2;
  const strip = [
    { x: start, y: top },
    { x: start + length, y: top },
    { x: start + length, y: top + height },
    { x: start, y: top + height },
  ];
  const marks = [0, 0.25, 0.5, 0.75, 1];
  const side = first({ x: 0, y: line[0].y }).x;
  return onePanel(
    { left: -7 * u, right: 2 * whole + 7 * u, top: top - 6 * u, bottom: 17 * u },
    [
      ...d.cloth(holds === 'elastic' ? 'wrong' : 'right', leg.map(first)),
      ...d.cloth(holds === 'elastic' ? 'wrong' : 'right', leg.map(second)),
      d.area(holds === 'elastic' ? 'elastic' : 'right', strip),
      d.line('edge', ...strip, strip[0] as Point),
      ...marks.flatMap((share) => {
        const from = { x: start + share * length, y: top + height };
        const to = { x: share * 2 * whole, y: 0 };
        return [
          d.line('mark', { x: from.x, y: top }, from),
          ...d.arrow(from, { x: to.x, y: to.y - 1 * u }),
          d.line('lit', { x: to.x, y: 0 }, { x: to.x, y: 4 * u }),
        ];
      }),
      d.word(
        { x: whole, y: top - 2 * u },
        holds === 'elastic' ? 'elastic, in quarters' : 'band, in quarters',
        'middle',
      ),
      d.word({ x: 0, y: 8 * u }, 'centre back'),
      d.word({ x: 2 * whole, y: 8 * u }, 'centre back', 'right'),
      d.word({ x: whole, y: 8 * u }, 'centre front', 'middle'),
      d.word({ x: whole / 2, y: 8 * u }, 'quarter', 'middle'),
      d.word({ x: 1.5 * whole, y: 8 * u }, 'quarter', 'middle'),
      ...[side, 2 * whole - side].flatMap((x) => [
        d.line('fold', { x, y: 0 }, { x, y: 12 * u }),
        d.word({ x, y: 15 * u }, 'side', 'middle'),
      ]),
    ],
    say`The waist laid out flat, both legs side by side, with the ${holds} above it: its quarters go to the centre seams and the quarter marks, which lie apart from the sides.`,
  );
}
