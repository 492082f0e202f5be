import { type PieceDrawing, placedDrawings, uprightPlaces } from '../../drawing';
import { pieceKey } from '../../edges';
import { type Mm, plainLetters } from '../../length';
import { flattenCurves, type Point, pathEnd, pathFoot, point, TOLERANCE } from '../../plane';
import type { Draft } from '../../project';
import { DRAWING_LAYERS, type LayerNumber, layerNumber } from '../content/layers';

/** The ordinary colour numbers of DXF, chosen here, so that an operator sees the layers apart. */
const COLOURS: Readonly<Record<LayerNumber, number>> = { 1: 7, 4: 1, 7: 5, 8: 8, 14: 3, 15: 2 };

/** The layers of a cutting file, by their numbers. */
export const DXF_LAYERS = [...new Set(DRAWING_LAYERS.map(({ id }) => layerNumber(id)))]
  .sort((a, b) => Number(a) - Number(b))
  .map((number) => ({ number, colour: COLOURS[number] }));

/** A run of straight stretches, millimetres, y up; a closed one does not repeat its first point. */
export interface DxfLine {
  readonly layer: LayerNumber;
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

/** One piece, the lower left corner of its cut line's box at 0, 0. */
export interface DxfPiece {
  /** Letters, figures and hyphens; unlike every other piece's. */
  readonly name: string;
  /** Where that corner lies among the pieces; never negative. */
  readonly at: Point;
  readonly lines: readonly DxfLine[];
  /** Where a notch is in the cut line, as the standard has it, on the layer of its line across the allowance: two where it is a double one. */
  readonly notches: readonly Point[];
  readonly words: readonly DxfWord[];
}

/** Closely enough that a cut line keeps its length within 0.05 mm and its area within 0.01 %, on tight curves too. */
const CHORD = TOLERANCE.chord / 8;
/** Points are written to a ten-thousandth of a millimetre: rounding must not be seen beside the chords. */
const STEP = 1e-4;

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
    lines: paths.flatMap(({ stroke, layer, curves, closed }) => {
      // Arrowheads and fold triangles are signs for the eye; a machine would draw them all.
      if (stroke === 'solid' || curves.length === 0) return [];
      const points = flattenCurves(curves, CHORD).map(up);
      return [{ layer: layerNumber(layer), points: closed ? withoutRepeat(points) : points, closed }];
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
