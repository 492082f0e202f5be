import { cutCurves, drawnKey, type LineKind, type Piece, type PieceText } from '../edges';
import { type Box, type Curve, curveMap, curvesBounds, type Edge, type Point, point, straight } from '../plane';
import { placer } from './placer';
import { arrowheads, foldTriangles, notchTicks, openingBars } from './symbols';

/** The named groups of a drawing, from the bottom up. */
export const LAYERS = ['levels', 'folds', 'stitch', 'cut', 'notches', 'grain', 'text'] as const;
export type Layer = (typeof LAYERS)[number];

/** What a line means; each meaning has its own line type. `solid` is a filled sign: an arrowhead, a fold triangle. */
export type Stroke =
  | 'cut'
  | 'stitching'
  | 'fold'
  | 'level'
  | 'lengthen'
  | 'side'
  | 'waistEdge'
  | 'notch'
  | 'grain'
  | 'solid';

/** One line or sign of a drawing. */
export interface DrawnPath {
  readonly layer: Layer;
  readonly stroke: Stroke;
  /** By which programs find it, e.g. `cut line`, `hip`: it stays as it is, whatever language people read. */
  readonly name: string;
  readonly curves: readonly Curve[];
  readonly closed: boolean;
}

/** Everything that is drawn of one piece: the one truth for paper, screen and cutting files. */
export interface PieceDrawing {
  readonly piece: Piece;
  /** The least box round its cut line. */
  readonly bounds: Box;
  /** In the order in which they are drawn. */
  readonly paths: readonly DrawnPath[];
  readonly texts: readonly PieceText[];
}

const LINE_LAYER: Readonly<Record<LineKind, Layer>> = {
  level: 'levels',
  side: 'levels',
  waistEdge: 'levels',
  stitching: 'stitch',
  quarter: 'notches',
  opening: 'notches',
  lengthen: 'levels',
  place: 'levels',
};

/** Quarters and openings are drawn as notches are, places to lengthen as levels. */
const LINE_STROKE: Readonly<Record<LineKind, Stroke>> = {
  level: 'level',
  side: 'side',
  waistEdge: 'waistEdge',
  stitching: 'stitching',
  quarter: 'notch',
  opening: 'notch',
  lengthen: 'lengthen',
  place: 'waistEdge',
};

/**
 * The display list of a piece: its lines by meaning, its signs as shapes, its words.
 *
 * Where an edge has no allowance the cut line stands for the stitching line too.
 *
 * @param piece the finished piece
 * @param shift added to every point: where the piece lies among others (default: where it was drafted)
 * @param turn degrees, clockwise as seen, about the origin and before the shift
 */
export function pieceDrawing(piece: Piece, shift: Point = point(0, 0), turn = 0): PieceDrawing {
  const place = placer({ turn, shift });
  const paths: DrawnPath[] = [];
  const draw = (layer: Layer, stroke: Stroke, name: string, curves: readonly Curve[], closed = false) =>
    paths.push({
      layer,
      stroke,
      name,
      curves: curves.map((curve) => curveMap(curve, place)),
      closed,
    });

  for (const line of piece.lines) {
    const bars = line.kind === 'opening' ? openingBars(line.curves) : [];
    for (const curves of [line.curves, ...bars.map((bar) => [bar])])
      draw(LINE_LAYER[line.kind], LINE_STROKE[line.kind], drawnKey(line.name), curves);
  }
  for (const fold of piece.folds) {
    draw('folds', 'fold', drawnKey(fold.name), fold.curves);
    for (const triangle of foldTriangles(fold.curves)) draw('folds', 'solid', drawnKey(fold.name), triangle, true);
  }
  for (const edge of sewnEdges(piece)) draw('stitch', 'stitching', edge.name, edge.curves);
  draw('cut', 'cut', 'cut line', cutCurves(piece), true);
  for (const notch of piece.notches) {
    for (const tick of notchTicks(notch)) draw('notches', 'notch', `notch ${notch.edge}`, tick);
  }
  const [from, to] = piece.grainline;
  draw('grain', 'grain', 'grainline', [straight(from, to)]);
  for (const head of arrowheads(from, to)) draw('grain', 'solid', 'grainline', head, true);

  const order = (path: DrawnPath) => LAYERS.indexOf(path.layer);
  return {
    piece,
    bounds: curvesBounds(cutCurves(piece).map((curve) => curveMap(curve, place))),
    paths: paths.sort((a, b) => order(a) - order(b)),
    texts: piece.texts.map((text) => ({ ...text, at: place(text.at), turn: text.turn + turn })),
  };
}

/** The stitching edges that don't lie on the cut line. */
function sewnEdges(piece: Piece): readonly Edge[] {
  return piece.stitchLine.filter((edge) => piece.cutLine.some((cut) => cut.name === edge.name && cut.allowance > 0));
}
