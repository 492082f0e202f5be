import { type PieceDrawing, placedDrawings, type Stroke, uprightPlaces } from '../../drawing';
import { pieceKey } from '../../edges';
import { type Mm, plainLetters } from '../../length';
import { flattenCurves, type Point, pathEnd, pathFoot, point, TOLERANCE } from '../../plane';
import type { Draft } from '../../project';

/**
 * The layers by number, after the open standard for garment pieces in DXF (ASTM D6673, ANSI/AAMA-292), as others quote
 * it: the standard itself was not at hand, so these files use its numbers and claim no conformity. The colours are
 * ours (the ordinary colour numbers of DXF), so that an operator sees the layers apart.
 */
export const DXF_LAYERS = [
  { number: '1', colour: 7, what: 'cut line' },
  { number: '4', colour: 1, what: 'notches' },
  { number: '7', colour: 5, what: 'grainline' },
  { number: '8', colour: 8, what: 'lines inside, not cut' },
  { number: '14', colour: 3, what: 'sewing lines' },
  { number: '15', colour: 2, what: 'words' },
] as const;
export type DxfLayer = (typeof DXF_LAYERS)[number]['number'];

/** Words stand on a layer of their own. */
export const DXF_WORDS: DxfLayer = '15';

/** A run of straight stretches, millimetres, y up; a closed one does not repeat its first point. */
export interface DxfLine {
  readonly layer: DxfLayer;
  readonly points: readonly Point[];
  readonly closed: boolean;
}

/** A word: the middle of its baseline, millimetres, y up. */
export interface DxfWord {
  readonly text: string;
  readonly at: Point;
  /** Of the capitals. */
  readonly height: Mm;
  /** Degrees, against the clock as seen. */
  readonly turn: number;
}

/** Where a notch is in the cut line, as the standard has it; its line across the allowance stands on the same layer. */
export const DXF_NOTCHES: DxfLayer = '4';

/** One piece, the lower left corner of its cut line's box at 0, 0. */
export interface DxfPiece {
  /** Letters, figures and hyphens; unlike every other piece's. */
  readonly name: string;
  /** Where that corner lies among the pieces; never negative. */
  readonly at: Point;
  readonly lines: readonly DxfLine[];
  /** Where a notch is in the cut line: two where it is a double one. */
  readonly notches: readonly Point[];
  readonly words: readonly DxfWord[];
}

/** Closely enough that a cut line keeps its length within 0.05 mm and its area within 0.01 %, on tight curves too. */
const CHORD = TOLERANCE.chord / 8;
/** Points are written to a ten-thousandth of a millimetre: rounding must not be seen beside the chords. */
const STEP = 1e-4;

/** Arrowheads and fold triangles are signs for the eye; a machine would draw them all. */
const STROKE_LAYER: Readonly<Record<Stroke, DxfLayer | undefined>> = {
  cut: '1',
  notch: '4',
  grain: '7',
  fold: '8',
  level: '8',
  lengthen: '8',
  side: '8',
  waistEdge: '8',
  stitching: '14',
  solid: undefined,
};

/**
 * What a cutting file holds: each piece at its true size, its y axis up, curves as close runs of straight stretches; the
 * pieces beside each other. The paper's scale and its printer's correction belong to paper.
 */
export function dxfPieces({ pieces }: Draft): readonly DxfPiece[] {
  const drawings = placedDrawings(pieces, uprightPlaces(pieces));
  const left = Math.min(...drawings.map(({ bounds }) => bounds.left));
  const bottom = Math.max(...drawings.map(({ bounds }) => bounds.bottom));
  const names = drawings.map(({ piece }) => pieceKey(piece).replace(/[^A-Za-z0-9]+/g, '-'));
  return drawings.map((drawing, i) => {
    const name = names[i] as string;
    const before = names.slice(0, i).filter((other) => other === name).length;
    return {
      name: before === 0 ? name : `${name}-${before + 1}`,
      at: point(rounded(drawing.bounds.left - left), rounded(bottom - drawing.bounds.bottom)),
      ...dxfContent(drawing),
    };
  });
}

function dxfContent({ bounds, paths, texts }: PieceDrawing): Pick<DxfPiece, 'lines' | 'notches' | 'words'> {
  const up = ({ x, y }: Point): Point => point(rounded(x - bounds.left), rounded(bounds.bottom - y));
  // A notch's line is straight across the allowance: where the cut line leans it ends a hair off it.
  const cut = paths.filter(({ stroke }) => stroke === 'cut').flatMap(({ curves }) => flattenCurves(curves, CHORD));
  return {
    lines: paths.flatMap(({ stroke, curves, closed }) => {
      const layer = STROKE_LAYER[stroke];
      if (layer === undefined || curves.length === 0) return [];
      const points = flattenCurves(curves, CHORD).map(up);
      return [{ layer, points: closed ? withoutRepeat(points) : points, closed }];
    }),
    notches: paths
      .filter(({ name }) => name.startsWith('notch '))
      .map(({ curves }) => up(pathFoot(cut, pathEnd(curves)).at)),
    words: texts.map(({ text, at, size, turn }) => ({ text: oneLine(text), at: up(at), height: size, turn: 0 - turn })),
  };
}

/** A closed line's last point is its first one again. */
function withoutRepeat(points: readonly Point[]): readonly Point[] {
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last || Math.hypot(first.x - last.x, first.y - last.y) > 2 * STEP) return points;
  return points.slice(0, -1);
}

/** The format ends a text with its line, and takes two per cent signs for the start of a sign of its own. */
const oneLine = (text: string): string => plainLetters(text).replace(/%(?=%)/g, '% ');

const rounded = (value: Mm): Mm => Math.round(value / STEP) * STEP;
