import { cutCurves } from '../../edges';
import { type Mm, mm, say } from '../../length';
import { between, distance, leftOf, mirrored, type Point, subtract, unit } from '../../plane';
import { lengthOf } from '../facts';
import { type Garment, pieceNamed } from '../garment';
import { hemStitchingAt } from '../hem-turning';
import { overlockedEdges } from '../steps-flat';
import { drawing, onePanel, panelled } from './draw';
import { cutLeg, hemFold, hemStrip, runOf } from './leg-views';
import type { PictureItem, PicturePanel, StepPicture } from './picture';
import { boundsOf, laidOn, type Move, polygon, polyline, shifted } from './polygon';

/** The pocket: its facing turned, its sides pressed under, or in its place on the leg. */
export function pocketPicture(g: Garment, stage: 'facing' | 'sides' | 'placed'): StepPicture {
  const pocket = g.pocket as NonNullable<Garment['pocket']>;
  const piece = pieceNamed(g, 'pocket');
  const { width, height, facing } = pocket;
  if (stage === 'placed') return placedPocket(g);
  const cut = polygon(cutCurves(piece));
  const box = boundsOf(cut);
  const d = drawing(1.35 * Math.max(height + facing, width));
  const u = d.unit;
  const side = g.allowances.inseam;
  const rectangle = (l: Mm, t: Mm, r: Mm, b: Mm): readonly Point[] => [
    { x: l, y: t },
    { x: r, y: t },
    { x: r, y: b },
    { x: l, y: b },
  ];
  const sides = stage === 'sides';
  const body = sides ? rectangle(0, 0, width, height) : rectangle(box.left, 0, box.right, box.bottom);
  const turned = sides ? rectangle(0, 0, width, facing) : rectangle(box.left, 0, box.right, facing);
  const under =
    sides && side > 0
      ? [
          ...d.cloth('right', rectangle(0, height - side, width, height)),
          ...d.cloth('right', rectangle(0, facing, side, height)),
          ...d.cloth('right', rectangle(width - side, facing, width, height)),
        ]
      : [];
  return onePanel(
    { left: box.left - 3 * u, top: -8 * u, right: box.right + 34 * u, bottom: box.bottom + 4 * u },
    [
      ...d.cloth('wrong', body),
      ...under,
      ...d.cloth('right', turned),
      d.line(sides ? 'fold' : 'lit', { x: body[0]?.x ?? 0, y: 0 }, { x: body[1]?.x ?? width, y: 0 }),
      d.line(
        sides ? 'stitch' : 'lit',
        { x: turned[0]?.x ?? 0, y: facing - 5 },
        { x: turned[1]?.x ?? width, y: facing - 5 },
      ),
      ...(sides
        ? [d.line('lit', { x: 0, y: facing }, { x: 0, y: height }, { x: width, y: height }, { x: width, y: facing })]
        : []),
      ...d.note({ x: box.right + 4 * u, y: 1 * u }, 'fold', { x: width, y: 0 }),
      ...(sides
        ? side > 0
          ? d.note({ x: box.right + 4 * u, y: 0.6 * height }, say`${mm(side)} under`, {
              x: width - side / 2,
              y: 0.6 * height,
            })
          : []
        : d.note({ x: box.right + 4 * u, y: facing + 2 * u }, 'stitch', { x: width, y: facing - 5 })),
      d.word({ x: width / 2, y: 0.55 * height }, 'wrong side up', 'middle'),
      d.word({ x: width / 2, y: 0.5 * facing + u }, 'facing', 'middle'),
    ],
    sides
      ? say`The pocket, wrong side up, its facing stitched, its sides and bottom pressed under.`
      : say`The pocket, wrong side up, with the facing turned over and stitched.`,
  );
}

function placedPocket(g: Garment): StepPicture {
  const { sewn } = g.finished;
  const place = sewn.lines.find((line) => line.kind === 'place');
  const run = polyline(place?.curves ?? []);
  const box = boundsOf(run);
  const leg = cutLeg(g);
  const top = boundsOf(leg).top;
  const d = drawing(1.25 * (box.bottom + 60 - top));
  const u = d.unit;
  const waist = sewn.lines.find((line) => line.name === 'waist edge');
  const [a, b, c, e] = run as readonly [Point, Point, Point, Point];
  return onePanel(
    { left: box.left - 130, top: top - 2 * u, right: box.right + 150, bottom: box.bottom + 60 },
    [
      ...d.cloth('right', leg),
      ...sewn.folds.map((fold) => d.line('fold', ...polyline(fold.curves))),
      ...(waist ? [d.line('thin', ...polyline(waist.curves))] : []),
      ...sewn.lines.filter((line) => line.kind === 'side').map((line) => d.line('fold', ...polyline(line.curves))),
      ...d.cloth('right', [a, b, c, e]),
      d.line('lit', ...run),
      ...triangle(d, a, 1),
      ...triangle(d, e, -1),
      ...d.pin(between(a, b, 0.5), { x: 0, y: 1 }),
      ...d.pin(between(c, e, 0.5), { x: 0, y: 1 }),
      d.word({ x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 }, 'pocket', 'middle'),
      d.word({ x: 1.5 * u, y: box.bottom + 30 }, 'side'),
      d.word({ x: (box.left + box.right) / 2, y: box.bottom + 8 * u }, 'right side of the leg', 'middle'),
    ],
    say`The pocket on the right side of the ${g.pocket?.part ?? 'back'}, stitched round three sides, with a triangle at both upper corners.`,
  );
}

const triangle = (d: ReturnType<typeof drawing>, at: Point, way: 1 | -1): readonly PictureItem[] => [
  d.line('lit', at, { x: at.x + way * 3 * d.unit, y: at.y }, { x: at.x, y: at.y + 3.5 * d.unit }),
];

/** Where the cord comes out, before anything is folded: the opening lit, the patch behind it. */
export function openingsPicture(g: Garment, at: 'waist' | 'hem'): StepPicture {
  const { sewn } = g.finished;
  const name = at === 'waist' ? 'cord opening' : 'hem cord opening';
  const opening = polyline(sewn.lines.find((line) => line.name === name)?.curves ?? []);
  const [a, b] = opening as readonly [Point, Point];
  const middle = between(a, b, 0.5);
  const d = drawing(210);
  const u = d.unit;
  const reach = 15;
  const tall = Math.max(15, distance(a, b) / 2 + 9);
  const patch = [
    { x: middle.x - reach, y: middle.y - tall },
    { x: middle.x + reach, y: middle.y - tall },
    { x: middle.x + reach, y: middle.y + tall },
    { x: middle.x - reach, y: middle.y + tall },
  ];
  const leg = cutLeg(g);
  const around = boundsOf(leg);
  const left = at === 'waist' ? middle.x - 110 : middle.x - 105;
  const top = at === 'waist' ? Math.max(around.top - 6 * u, middle.y - 110) : middle.y - 90;
  const label = (y: number) => ({ x: left + 30 * u, y });
  const fold = sewn.folds.find((one) => one.name === (at === 'waist' ? 'waist fold' : 'hem fold'));
  const seam = sewn.lines.find((line) => line.name === (at === 'waist' ? 'casing stitching' : 'hem stitching'));
  const levelAt = (curves: Parameters<typeof polyline>[0] | undefined): number => {
    const points = polyline(curves ?? []);
    return points.reduce((p, q) => (Math.abs(q.x - middle.x) < Math.abs(p.x - middle.x) ? q : p), points[0] ?? middle)
      .y;
  };
  return onePanel(
    { left, top, right: left + 210, bottom: top + 190 },
    [
      ...d.cloth('right', leg),
      ...sewn.folds.map((one) => d.line('fold', ...polyline(one.curves))),
      ...sewn.lines.filter((line) => line.kind === 'stitching').map((line) => d.line('mark', ...polyline(line.curves))),
      ...sewn.lines.filter((line) => line.kind === 'side').map((line) => d.line('fold', ...polyline(line.curves))),
      d.line('hidden', ...patch, patch[0] as Point),
      d.line('lit', a, b),
      d.line('mark', { x: a.x - 1.4, y: a.y }, { x: a.x + 1.4, y: a.y }),
      d.line('mark', { x: b.x - 1.4, y: b.y }, { x: b.x + 1.4, y: b.y }),
      d.word({ ...label(levelAt(fold?.curves) - u) }, 'fold', 'right'),
      d.word({ ...label(levelAt(seam?.curves) - u) }, 'stitching line', 'right'),
      ...d.note(
        { x: middle.x + (at === 'waist' ? -reach - 5 * u : reach + 5 * u), y: middle.y - tall - 12 * u },
        'patch behind, opening',
        middle,
      ),
      d.word(
        { x: left + 3 * u, y: top + 186 },
        at === 'waist' ? 'right side up, centre front at the right' : 'right side up',
      ),
    ],
    say`The opening for the cord on the right side of the leg, with a patch behind it, between fold and stitching line.`,
  );
}

/** The raw edges that are overlocked, each in a window of its own. */
export function rawEdgesPicture(g: Garment): StepPicture {
  const works = overlockedEdges(g);
  const panels: PicturePanel[] = [];
  let y = 0;
  const shapes = works.map(({ piece, edges: [edge] }) => {
    const own = piece === 'leg' ? g.finished.sewn : pieceNamed(g, piece);
    const run = polyline(own.cutLine.filter((one) => one.name === edge).flatMap((one) => one.curves));
    return { piece, edge, points: polygon(cutCurves(own)), run, box: boundsOf(run) };
  });
  const width = Math.max(...shapes.map(({ box }) => box.right - box.left)) + 60;
  const d = drawing(1.1 * width);
  for (const { piece, edge, points, run, box } of shapes) {
    const above = edge === 'waist' || edge === 'upper';
    const depth = 0.28 * width;
    const move = shifted(30 - box.left, y + (above ? 5 * d.unit : depth - 5 * d.unit) - box.top);
    panels.push({
      window: { left: 0, right: width, top: y, bottom: y + depth + 4 * d.unit },
      items: [
        ...d.cloth('wrong', points.map(move)),
        d.zigzag('overlock', run.map(move), 2 * d.unit),
        d.word({ x: width / 2, y: y + (above ? 0.6 : 0.45) * depth }, piece, 'middle'),
      ],
    });
    y += depth + 7 * d.unit;
  }
  return panelled(
    panels,
    say`The raw edges overlocked: ${works.map(({ piece, edges }) => `${piece}, ${edges.join()}`).join('; ')}.`,
  );
}

/** Casing and hem pressed over on the flat leg, wrong side up. */
export function foldsPicture(g: Garment): StepPicture {
  const { sewn, casing, heights, hemPlan } = g.finished;
  const leg = cutLeg(g);
  const box = boundsOf(leg);
  const d = drawing(1.15 * (box.right - box.left));
  const u = d.unit;
  const panels: PicturePanel[] = [];
  const overIn = (fold: readonly [Point, Point], start: readonly string[], raw: string): readonly Point[] => {
    const run = polygon(
      sewn.cutLine.filter((edge) => edge.name === raw || start.includes(edge.name)).flatMap((edge) => edge.curves),
    );
    return run.map((p) => mirrored(p, fold[0], fold[1]));
  };
  let y = 0;
  if (heights.kind === 'folded') {
    const strip = overIn(casing.fold, ['centreFrontTurning', 'centreBackTurning'], 'waist');
    const top = Math.min(casing.fold[0].y, casing.fold[1].y);
    const move = shifted(-box.left + 2 * u, y - top + 6 * u);
    const body = sewn.cutLine.filter(
      (edge) => !['centreFrontTurning', 'centreBackTurning', 'waist'].includes(edge.name),
    );
    panels.push({
      window: { left: 0, right: box.right - box.left + 4 * u, top: y, bottom: y + 34 * u },
      items: [
        ...d.cloth('wrong', polygon(body.flatMap((edge) => edge.curves)).map(move)),
        ...d.cloth('right', strip.map(move)),
        d.line('lit', ...casing.fold.map(move)),
        d.word({ x: (box.right - box.left) / 2, y: y + 3.4 * u }, 'fold', 'middle'),
        d.word({ x: (box.right - box.left) / 2, y: y + 30 * u }, 'waist, wrong side up', 'middle'),
        ...d.arrow(
          move(between(casing.raw[0], casing.raw[1], 0.75)),
          move(mirrored(between(casing.raw[0], casing.raw[1], 0.75), ...casing.fold)),
        ),
      ],
    });
    y += 38 * u;
  }
  if (hemPlan.kind === 'folded') {
    const fold = hemFold(g);
    const bottom = Math.max(fold[0].y, fold[1].y);
    const move = shifted(-box.left + 2 * u, y - bottom + 24 * u);
    const strip = hemStrip(g);
    const body = sewn.cutLine.filter(
      (edge) => !edge.name.endsWith('Turning') && edge.name !== 'hem' && edge.name !== 'waist',
    );
    panels.push({
      window: { left: 0, right: box.right - box.left + 4 * u, top: y, bottom: y + 30 * u },
      items: [
        ...d.cloth('wrong', polygon(body.flatMap((edge) => edge.curves)).map(move)),
        ...d.cloth('right', strip.map(move)),
        d.line('lit', ...fold.map(move)),
        d.word({ x: (box.right - box.left) / 2, y: y + 28.5 * u }, 'fold', 'middle'),
        d.word({ x: (box.right - box.left) / 2, y: y + 8 * u }, 'hem, wrong side up', 'middle'),
      ],
    });
  }
  return panelled(
    panels,
    say`The leg, wrong side up, with ${heights.kind === 'folded' ? 'the casing' : 'the hem'}${heights.kind === 'folded' && hemPlan.kind === 'folded' ? ' and the hem' : ''} pressed over in the fold.`,
  );
}

/** A straight piece: folded end on end with its end seam lit, or folded lengthwise. */
export function stripPicture(g: Garment, name: string, stage: 'ends' | 'folded'): StepPicture {
  const piece = pieceNamed(g, name);
  const length = lengthOf(piece, ['upper']);
  const height = lengthOf(piece, ['rightEnd']);
  const allowanceOf = (edge: string) => piece.cutLine.find((one) => one.name === edge)?.allowance ?? 0;
  const [long, end] = [allowanceOf('upper'), allowanceOf('rightEnd')];
  const half = length / 2;
  const d = drawing(1.25 * Math.max(half + end, 3 * height));
  const u = d.unit;
  const box = (l: Mm, t: Mm, r: Mm, b: Mm): readonly Point[] => [
    { x: l, y: t },
    { x: r, y: t },
    { x: r, y: b },
    { x: l, y: b },
  ];
  const whole =
    stage === 'ends' ? box(0, -long, half + end, height + long) : box(-end, 0, length + end, height / 2 + long);
  const threads = name === 'casing';
  const gapTop = height / 2 + 5;
  const lit: readonly (readonly Point[])[] =
    stage === 'ends'
      ? threads
        ? [
            [
              { x: half, y: -long },
              { x: half, y: gapTop },
            ],
            [
              { x: half, y: height - 5 },
              { x: half, y: height + long },
            ],
          ]
        : [
            [
              { x: half, y: -long },
              { x: half, y: height + long },
            ],
          ]
      : [
          [
            { x: -end, y: height / 2 },
            { x: length + end, y: height / 2 },
          ],
        ];
  const ringTop = height + long + 16 * u;
  const ring = box(0, ringTop, half, ringTop + height / 2 + long);
  return onePanel(
    {
      left: -3 * u - end,
      top: -long - 6 * u,
      right: (stage === 'ends' ? half : length) + end + 26 * u,
      bottom: stage === 'ends' ? ringTop + height / 2 + long + 8 * u : height / 2 + long + 8 * u,
    },
    [
      ...d.cloth('right', whole.map(shifted(0, 1.2 * u))),
      ...d.cloth('wrong', whole),
      ...lit.map((run) => d.line('lit', ...run)),
      d.word({ x: 0, y: -long - 2.5 * u }, `${name}, right sides together, folded at the left`),
      ...d.note(
        { x: (stage === 'ends' ? half : length) + end + 3 * u, y: 0.3 * height },
        threads && stage === 'ends' ? 'seam, with a gap' : 'seam',
        { x: stage === 'ends' ? half : length, y: 0.3 * height },
      ),
      ...(stage === 'ends'
        ? [
            ...d.cloth('right', ring),
            d.line('fold', { x: 0, y: ringTop }, { x: half, y: ringTop }),
            d.line('stitch', { x: half * 0.985, y: ringTop }, { x: half * 0.985, y: ringTop + height / 2 + long }),
            ...[0.5].map((share) =>
              d.line(
                'mark',
                { x: share * half, y: ringTop + height / 2 + long },
                { x: share * half, y: ringTop + height / 2 + long - 3 * u },
              ),
            ),
            d.word({ x: 0, y: ringTop - 3 * u }, 'then the ring, folded lengthwise, right side out'),
            ...d.note({ x: half + end + 3 * u, y: ringTop + 2 * u }, 'fold', { x: half * 0.9, y: ringTop }),
            d.word({ x: half / 2, y: ringTop + height / 2 + long + 4 * u }, 'quarter', 'middle'),
          ]
        : []),
    ],
    stage === 'ends'
      ? say`The ${name} folded right sides together with its end seam lit; below, the ring folded lengthwise.`
      : say`The ${name} folded lengthwise, right sides together, its seam lit.`,
  );
}

/** A facing: its pieces joined to a ring, or laid on the leg, right sides together. */
export function facingPicture(g: Garment, name: string, stage: 'ring' | 'on'): StepPicture {
  const piece = pieceNamed(g, name);
  const points = polygon(cutCurves(piece));
  const box = boundsOf(points);
  const d = drawing(1.2 * (box.right - box.left));
  const u = d.unit;
  const waist = name === 'waist facing';
  if (stage === 'on') {
    const { sewn } = g.finished;
    const edge = waist ? 'waist' : 'hem';
    const run = polyline(piece.stitchLine.filter((one) => one.name === edge).flatMap((one) => one.curves));
    const window = waist
      ? { top: box.top - 6 * u, bottom: box.bottom + 22 * u }
      : { top: box.top - 22 * u, bottom: box.bottom + 6 * u };
    return onePanel(
      { left: box.left - 3 * u, right: box.right + 3 * u, ...window },
      [
        ...d.cloth('right', cutLeg(g)),
        ...sewn.lines.filter((line) => line.kind === 'side').map((line) => d.line('fold', ...polyline(line.curves))),
        ...d.cloth('wrong', points),
        d.line('lit', ...run),
        ...[0.15, 0.5, 0.85].flatMap((share) =>
          d.pin(between(run[0] as Point, run.at(-1) as Point, share), { x: 1, y: 0 }),
        ),
        d.word({ x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 + u }, name, 'middle'),
        d.word(
          { x: (box.left + box.right) / 2, y: waist ? box.bottom + 12 * u : box.top - 10 * u },
          'leg, right side up',
          'middle',
        ),
      ],
      say`The facing, wrong side up, on the right side of the leg, the seam at the ${waist ? 'upper' : 'lower'} edge lit.`,
    );
  }
  const seams = waist ? ['centreFront', 'centreBack'] : ['inseamFront', 'inseamBack'];
  const lit = seams.map((seam) => polyline(runOf(piece.stitchLine, seam)));
  if (waist) {
    return onePanel(
      { left: box.left - 4 * u, right: box.right + 4 * u, top: box.top - 8 * u, bottom: box.bottom + 10 * u },
      [
        ...d.cloth('right', points.map(shifted(0, 1.5 * u))),
        ...d.cloth('wrong', points),
        ...lit.map((run) => d.line('lit', ...run)),
        d.word({ x: box.left, y: box.top - 3 * u }, 'centre back'),
        d.word({ x: box.right, y: box.top - 3 * u }, 'centre front', 'right'),
        d.word({ x: (box.left + box.right) / 2, y: box.bottom + 7 * u }, 'two facings, right sides together', 'middle'),
      ],
      say`The two waist facings, right sides together, with both centre seams lit.`,
    );
  }
  return foldedFacing(g, points, drawing(0.8 * (box.right - box.left)));
}

/** The hem facing folded, inseam on inseam. */
function foldedFacing(g: Garment, points: readonly Point[], d: ReturnType<typeof drawing>): StepPicture {
  const piece = pieceNamed(g, 'hem facing');
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
  const box = boundsOf([...near, ...fold]);
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
      ...d.note({ x: box.right + 4 * u, y: box.top - 3 * u }, 'inseam', a),
      ...d.note({ x: box.left - 2 * u, y: box.top - 3 * u }, 'fold', fold[0]),
    ],
    say`The hem facing folded right sides together, its inseam, ${mm(hemStitchingAt(g))} high, lit.`,
  );
}
