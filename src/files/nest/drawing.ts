import {
  type DrawnPath,
  type LineStyle,
  type PieceDrawing,
  type PiecePlace,
  placedDrawings,
  printedStyle,
} from '../../drawing';
import type { Mm } from '../../length';
import { pathAt, pathLength } from '../../plane';
import type { Look } from '../pen/draw-paths';
import { bodyLayer } from './layers';
import { lineNumber } from './numbers';
import { type NestedMember, type NestedPiece, ownLines, sharedLines } from './pieces';
import { nestedStyle, numberStyle } from './styles';

/** Shorter edges bear no number. */
const NUMBERED: Mm = 80;
const WHITE: LineStyle = { width: 0, colour: '#FFFFFF', dash: [] };

/** A nest as it is drawn. */
export interface NestedDrawing {
  /** One for each name of a piece. */
  readonly drawings: readonly PieceDrawing[];
  /** Each body's lines in a style and on a layer of its own. */
  readonly look: Look;
}

/** A body's path. */
interface Owned {
  readonly body: number;
  readonly style: LineStyle;
}
type Owners = Map<DrawnPath, Owned>;

/**
 * Several bodies on one drawing: each body's lines in its own line type and colour, broken here and there by its number;
 * what is common drawn once.
 *
 * @param places one for each nested piece
 */
export function nestedDrawing(pieces: readonly NestedPiece[], places: readonly PiecePlace[]): NestedDrawing {
  const owners: Owners = new Map();
  const drawings = pieces.map((nested, i): PieceDrawing => {
    const place = places.slice(i, i + 1);
    const [whole] = placedDrawings([nested.whole], place) as [PieceDrawing];
    const [shared] = placedDrawings([sharedLines(nested.members)], place) as [PieceDrawing];
    const members = nested.members.map((member) => ({
      member,
      drawn: placedDrawings([ownLines(member)], place)[0] as PieceDrawing,
    }));
    const lines = members.flatMap(({ member, drawn }) => ownPaths(member, drawn, owners));
    const numbers = members.flatMap(({ member, drawn }, k) => numberPaths(member, drawn, k, members.length, owners));
    const common = shared.paths.filter(
      ({ stroke, name }) => stroke !== 'cut' && (stroke !== 'solid' || name === 'grainline'),
    );
    return { piece: nested.whole, bounds: whole.bounds, paths: [...common, ...lines, ...numbers], texts: shared.texts };
  });
  return {
    drawings,
    look: {
      styleOf: (path) => owners.get(path)?.style ?? printedStyle(path),
      layerOf: (path) => bodyLayer(owners.get(path)?.body),
    },
  };
}

/** A member's own lines; the grainline is drawn once for all, and folds bear no signs: ten bodies' would be a crowd. */
function ownPaths({ body }: NestedMember, drawn: PieceDrawing, owners: Owners): readonly DrawnPath[] {
  const style = nestedStyle(body);
  const paths = drawn.paths.filter(({ name, stroke }) => name !== 'grainline' && stroke !== 'solid');
  for (const path of paths)
    owners.set(path, {
      body,
      style: path.stroke === 'cut' ? style.cut : path.stroke === 'fold' ? style.fold : style.notch,
    });
  return paths;
}

/** The body's number on each long edge of its cut line, each body's a little further along than the one before. */
function numberPaths(
  { body, piece }: NestedMember,
  drawn: PieceDrawing,
  turn: number,
  count: number,
  owners: Owners,
): readonly DrawnPath[] {
  const cut = drawn.paths.find(({ stroke }) => stroke === 'cut')?.curves ?? [];
  let start = 0;
  return piece.cutLine.flatMap(({ curves }) => {
    const length = pathLength(curves);
    const at = start + (length * (turn + 1)) / (count + 1);
    start += length;
    if (length < NUMBERED) return [];
    const place = pathAt(cut, at);
    const { field, figures } = lineNumber(body + 1, place.at, place.way);
    const name = `body ${body + 1}`;
    const ground: DrawnPath = { layer: 'notches', stroke: 'solid', name, curves: field, closed: true };
    owners.set(ground, { body, style: WHITE });
    const drawnFigures = figures.map(
      (line): DrawnPath => ({ layer: 'notches', stroke: 'notch', name, curves: line, closed: false }),
    );
    for (const path of drawnFigures) owners.set(path, { body, style: numberStyle(body) });
    return [ground, ...drawnFigures];
  });
}
