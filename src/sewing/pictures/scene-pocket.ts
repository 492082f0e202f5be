import { cutCurves } from '../../edges';
import type { Mm } from '../../length';
import { between, type Point, pointsBounds } from '../../plane';
import { mm, say } from '../../words';
import { type Garment, pieceOfKind } from '../garment';
import { captioned, drawing, onePanel, panelled } from './draw';
import { cutLeg } from './leg-views';
import type { PictureItem, PicturePanel, StepPicture } from './picture';
import { polygon, polyline, rectangle } from './polygon';

/** The pocket: its facing turned, its sides pressed under, or in its place on the leg. */
export function pocketPicture(g: Garment, stage: 'facing' | 'sides' | 'placed'): StepPicture {
  const pocket = g.pocket as NonNullable<Garment['pocket']>;
  const piece = pieceOfKind(g, 'pocket');
  const { width, height, facing } = pocket;
  if (stage === 'placed') return placedPocket(g);
  if (stage === 'facing' && g.allowances.inseam > 0) return turnedFacing(g);
  const cut = polygon(cutCurves(piece));
  const box = pointsBounds(cut);
  const d = drawing(1.35 * Math.max(height + facing, width));
  const u = d.unit;
  const side = g.allowances.inseam;
  const sides = stage === 'sides';
  const body = sides ? rectangle(0, 0, width, height) : rectangle(box.left, 0, box.right, box.bottom);
  const turned = sides ? rectangle(0, 0, width, facing) : rectangle(box.left, 0, box.right, facing);
  // At the facing, which was turned with its ends stitched, the allowances lie within; below it they are pressed under.
  const pressed =
    sides && side > 0
      ? [
          ...d.cloth('right', rectangle(0, height - side, width, height)),
          ...d.cloth('right', rectangle(0, facing, side, height)),
          ...d.cloth('right', rectangle(width - side, facing, width, height)),
        ]
      : [];
  const round = [
    { x: 0, y: 0 },
    { x: 0, y: height },
    { x: width, y: height },
    { x: width, y: 0 },
  ];
  return onePanel(
    { left: box.left - 3 * u, top: -8 * u, right: box.right + 34 * u, bottom: box.bottom + 4 * u },
    [
      ...d.cloth('wrong', body),
      ...d.cloth('right', turned),
      d.line(sides ? 'fold' : 'litFold', { x: body[0]?.x ?? 0, y: 0 }, { x: body[1]?.x ?? width, y: 0 }),
      d.line(
        sides ? 'stitch' : 'lit',
        { x: turned[0]?.x ?? 0, y: facing - 5 },
        { x: turned[1]?.x ?? width, y: facing - 5 },
      ),
      ...pressed,
      ...(sides ? [side > 0 ? d.line('litFold', ...round) : d.zigzag('overlock', round)] : []),
      ...d.note({ x: box.right + 4 * u, y: 1 * u }, say`fold`, { x: width, y: 0 }),
      ...(sides
        ? side > 0
          ? d.note({ x: box.right + 4 * u, y: 0.6 * height }, say`${mm(side)} under`, {
              x: width - side / 2,
              y: 0.6 * height,
            })
          : []
        : d.note({ x: box.right + 4 * u, y: facing + 2 * u }, say`stitch`, { x: width, y: facing - 5 })),
      d.word({ x: width / 2, y: 0.55 * height }, say`wrong side up`, 'middle'),
      d.word({ x: width / 2, y: 0.5 * facing + u }, say`facing`, 'middle'),
    ],
    sides
      ? say`The pocket, wrong side up, its facing stitched, its sides and bottom pressed under.`
      : say`The pocket, wrong side up, with the facing turned over and stitched.`,
  );
}

/** The facing folded to the right side, its ends lit; below, turned to the wrong side and stitched down. */
function turnedFacing(g: Garment): StepPicture {
  const { width, height, facing } = g.pocket as NonNullable<Garment['pocket']>;
  const side = g.allowances.inseam;
  const d = drawing(1.75 * (width + 2 * side));
  const u = d.unit;
  const shown = Math.min(height, facing + 16 * u);
  const strip = (top: Mm): PicturePanel['window'] => ({
    left: -side - 3 * u,
    right: width + side + 34 * u,
    top: top - 8 * u,
    bottom: top + shown,
  });
  const second = shown + 12 * u;
  const end = (x: Mm) => d.line('lit', { x, y: 0 }, { x, y: facing });
  const right = width + side + 4 * u;
  return panelled(
    [
      {
        window: strip(0),
        items: [
          ...d.cloth('right', rectangle(-side, 0, width + side, height)),
          ...d.cloth('wrong', rectangle(-side, 0, width + side, facing)),
          d.line('litFold', { x: -side, y: 0 }, { x: width + side, y: 0 }),
          end(0),
          end(width),
          ...d.note({ x: right, y: 1 * u }, say`fold`, { x: width + side, y: 0 }),
          ...d.note({ x: right, y: facing + 3 * u }, say`stitch the ends`, { x: width, y: 0.7 * facing }),
          d.word({ x: width / 2, y: facing + 7 * u }, say`right side up`, 'middle'),
        ],
      },
      {
        window: strip(second),
        items: [
          ...d.cloth('wrong', rectangle(-side, second + facing, width + side, second + height)),
          ...d.cloth('right', rectangle(0, second, width, second + facing)),
          d.line('fold', { x: 0, y: second }, { x: width, y: second }),
          d.line('lit', { x: 0, y: second + facing - 5 }, { x: width, y: second + facing - 5 }),
          ...d.note({ x: right, y: second + facing + 3 * u }, say`stitch it down`, {
            x: width,
            y: second + facing - 5,
          }),
          d.word({ x: width / 2, y: second + facing + 7 * u }, say`turned, wrong side up`, 'middle'),
        ],
      },
    ],
    say`The upper end of the pocket: the facing folded to the right side with both its ends stitched; below, turned to the wrong side and stitched down.`,
  );
}

function placedPocket(g: Garment): StepPicture {
  const { sewn } = g.finished;
  const place = sewn.lines.find((line) => line.kind === 'place');
  const run = polyline(place?.curves ?? []);
  const box = pointsBounds(run);
  const leg = cutLeg(g);
  const top = pointsBounds(leg).top;
  const d = drawing(1.25 * (box.bottom + 60 - top));
  const u = d.unit;
  const waist = sewn.lines.find((line) => line.name === 'waistEdge');
  const [a, b, c, e] = run as readonly [Point, Point, Point, Point];
  return captioned(
    { left: box.left - 130, top: top - 2 * u, right: box.right + 150, bottom: box.bottom + 50 },
    [
      ...d.cloth('right', leg),
      ...sewn.folds.map((fold) => d.line('fold', ...polyline(fold.curves))),
      ...(waist ? [d.line('thin', ...polyline(waist.curves))] : []),
      ...sewn.lines.filter((line) => line.kind === 'side').map((line) => d.line('side', ...polyline(line.curves))),
      ...d.cloth('right', [a, b, c, e]),
      d.line('lit', ...run),
      ...triangle(d, a, 1),
      ...triangle(d, e, -1),
      ...d.pin(between(a, b, 0.5), { x: 0, y: 1 }),
      ...d.pin(between(c, e, 0.5), { x: 0, y: 1 }),
      d.word({ x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 }, say`pocket`, 'middle'),
      d.word({ x: 1.5 * u, y: box.bottom + 35 }, say`side`),
    ],
    say`leg, right side up`,
    g.pocket?.part === 'front'
      ? say`The pocket on the right side of the front, stitched round three sides, with a triangle at both upper corners.`
      : say`The pocket on the right side of the back, stitched round three sides, with a triangle at both upper corners.`,
    d,
  );
}

const triangle = (d: ReturnType<typeof drawing>, at: Point, way: 1 | -1): readonly PictureItem[] => [
  d.line('lit', at, { x: at.x + way * 3 * d.unit, y: at.y }, { x: at.x, y: at.y + 3.5 * d.unit }),
];
