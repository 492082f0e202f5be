import { uprightPlaces } from '../drawing';
import { edgeName, isAlong, isTurning, type Piece, pieceKey, pieceName } from '../edges';
import { curveMap, type Edge, type Point, type WorkingStep } from '../plane';
import { inside, mm, type Phrase, say, UNSAID } from '../words';
import type { Draft } from './draft-types';
import { remembered } from './remembered';

/**
 * The allowances edge by edge, as a class adds them: of each piece, in the order round it, the stitching line of the edge
 * and the cut line beside it. Sides of turnings belong to the edge that they go on from. The pieces lie as on the table.
 *
 * @source practice
 */
export const allowanceStepsOf: (draft: Draft) => readonly WorkingStep[] = remembered(({ pieces }: Draft) => {
  const places = uprightPlaces(pieces);
  return pieces.flatMap((piece, i) => pieceSteps(piece, places[i]?.shift ?? { x: 0, y: 0 }));
});

const pieceSteps = (piece: Piece, shift: Point): readonly WorkingStep[] =>
  piece.cutLine
    .filter(({ name }) => !isTurning(name))
    .map(({ name, allowance }) => {
      const along = ({ name: other }: { readonly name: typeof name }) => isAlong(other, [name]);
      const lines = [...piece.stitchLine.filter(along), ...(allowance > 0 ? piece.cutLine.filter(along) : [])];
      return {
        id: `edges.allowance ${pieceKey(piece)} ${name}`,
        station: 'edges',
        sentence: allowanceTold(edgeName(name), pieceName(piece), allowance),
        formula: UNSAID,
        lines: lines.map((line) => shifted(line, shift)),
      };
    });

const allowanceTold = (edge: Phrase, piece: Phrase, allowance: number): Phrase =>
  allowance > 0
    ? say`At the ${inside(edge)} of the ${inside(piece)} the cut line runs ${mm(allowance)} outside the stitching line.`
    : say`At the ${inside(edge)} of the ${inside(piece)} nothing is added: the cloth is cut along this line.`;

const shifted = ({ name, curves }: Edge, by: Point): Edge => ({
  name,
  curves: curves.map((curve) => curveMap(curve, ({ x, y }) => ({ x: x + by.x, y: y + by.y }))),
});
