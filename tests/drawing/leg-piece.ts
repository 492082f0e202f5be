import type { EdgeName, Notch, Piece, PieceKind, PieceLine, PieceText } from '../../src/edges';
import {
  type Curve,
  leftOf,
  type Outline,
  parallelOutline,
  pathAt,
  pathLength,
  point,
  straight,
} from '../../src/plane';

const p = point;
const line = (x1: number, y1: number, x2: number, y2: number) => straight(p(x1, y1), p(x2, y2));

/** The net edges of a believable leg, about 770 × 1,150 mm: drawn by hand, no formula behind it. */
const EDGES: Readonly<Partial<Record<EdgeName, readonly Curve[]>>> = {
  waist: [[p(-250, -95), p(-120, -78), p(100, -60), p(245, -58)]],
  centreFrontTurning: [line(245, -58, 248, -28)],
  centreFront: [line(248, -28, 262, 200)],
  crotchFront: [[p(262, 200), p(265, 256), p(300, 290), p(352, 300)]],
  inseamFront: [[p(352, 300), p(310, 520), p(230, 800), p(230, 1010)]],
  inseamFrontTurning: [line(230, 1010, 236, 1050)],
  hem: [line(236, 1050, -266, 1050)],
  inseamBackTurning: [line(-266, 1050, -260, 1010)],
  inseamBack: [[p(-260, 1010), p(-260, 800), p(-365, 525), p(-420, 305)]],
  crotchBack: [[p(-420, 305), p(-350, 292), p(-298, 250), p(-285, 180)]],
  centreBack: [line(-285, 180, -255, -62)],
  centreBackTurning: [line(-255, -62, -250, -95)],
};

const stitchLine: Outline<EdgeName> = Object.entries(EDGES).map(([name, curves]) => ({
  name: name as EdgeName,
  curves,
}));
const allowance = (name: EdgeName) => (name === 'waist' || name === 'hem' ? 0 : 15);

function notch(edge: EdgeName, share: number, count: 1 | 2): Notch {
  const curves = EDGES[edge] ?? [];
  const { at, way } = pathAt(curves, share * pathLength(curves));
  return { edge, at, outward: leftOf(way), length: 15, count };
}

const lines: readonly PieceLine[] = [
  { name: 'waistEdge', kind: 'waistEdge', curves: [[p(-257, -34), p(-120, -20), p(100, 0), p(248, 2)]] },
  { name: 'casingStitching', kind: 'stitching', curves: [[p(-254, -36), p(-120, -22), p(100, -3), p(246, -1)]] },
  { name: 'hip', kind: 'level', curves: [line(-287, 190, 261, 190)] },
  { name: 'knee', kind: 'level', curves: [line(-318, 650, 285, 650)] },
  { name: 'side', kind: 'side', curves: [line(0, -70, 0, 1050)] },
];

const texts: readonly PieceText[] = [
  { at: p(-150, 480), text: 'leg', size: 12, turn: 0, says: 'piece' },
  { at: p(-150, 500), text: 'cut 2, one of them mirrored', size: 5, turn: 0, says: 'note' },
  { at: p(-200, 100), text: 'back', size: 8, turn: 0, says: 'side' },
  { at: p(180, 100), text: 'front', size: 8, turn: 0, says: 'side' },
  { at: p(-4, 420), text: 'side – no seam here', size: 3.5, turn: -90, says: 'note' },
  { at: p(200, 187), text: 'hip', size: 3.5, turn: 0, says: 'note' },
];

/** A leg as the room `edges` would hand it on. */
export const legPiece: Piece = {
  kind: 'leg',
  side: undefined,
  cut: 2,
  mirrored: true,
  stitchLine,
  cutLine: parallelOutline(stitchLine, allowance).map((edge) => ({ ...edge, allowance: allowance(edge.name) })),
  lines,
  folds: [
    { name: 'waistFold', curves: [[p(-255, -62), p(-120, -48), p(100, -30), p(248, -28)]] },
    { name: 'hemFold', curves: [line(230, 1010, -260, 1010)] },
  ],
  notches: [
    notch('crotchFront', 0, 1),
    notch('crotchBack', 1, 2),
    notch('inseamFront', 0.5, 1),
    notch('inseamBack', 0.5, 1),
    notch('inseamFront', 0.2, 1),
    notch('inseamBack', 0.8, 1),
  ],
  grainline: [p(-90, 330), p(-90, 900)],
  texts,
};

/** A plain rectangle, for questions whose answer can be counted on the fingers. */
export function rectanglePiece(kind: PieceKind, width: number, height: number): Piece {
  const outline: Outline<EdgeName> = [
    { name: 'upper', curves: [line(0, 0, width, 0)] },
    { name: 'rightEnd', curves: [line(width, 0, width, height)] },
    { name: 'lower', curves: [line(width, height, 0, height)] },
    { name: 'leftEnd', curves: [line(0, height, 0, 0)] },
  ];
  return {
    kind,
    side: undefined,
    cut: 1,
    mirrored: false,
    stitchLine: outline,
    cutLine: outline.map((edge) => ({ ...edge, allowance: 0 })),
    lines: [],
    folds: [],
    notches: [],
    grainline: [p(width / 2, 20), p(width / 2, 60)],
    texts: [],
  };
}
