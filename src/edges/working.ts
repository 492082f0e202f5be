import { mm, type Phrase, say } from '../length';
import type { Edge, WorkingStep } from '../plane';
import { type CasingHeights, elasticLength } from './casing';
import type { EdgeChoices, FinishedLeg } from './finish';

/** How the leg got its edges, step by step, in the order of work. */
export function edgesWorking(
  finished: FinishedLeg,
  choices: EdgeChoices,
  heights: CasingHeights,
  waistGirth: number,
  opening: number,
): readonly WorkingStep[] {
  const { piece } = finished;
  const step = (id: string, sentence: Phrase, formula: Phrase, lines: readonly Edge[]): WorkingStep => ({
    id: `edges.${id}`,
    station: 'edges',
    sentence,
    formula,
    lines,
  });
  const edges = (...names: readonly string[]) =>
    [...piece.stitchLine, ...piece.folds, ...piece.lines].filter((edge) => names.includes(edge.name));
  const { waist, hem, allowances } = choices;
  const rows = waist.rows > 1 ? `${waist.rows} rows of ` : '';
  return [
    step(
      'casing',
      say`The casing is built ${mm(heights.height)} above the waist edge: twice the elastic and the turn of the cloth. It folds halfway, at ${mm(heights.fold)}.`,
      say`2 × ${rows}${mm(waist.elasticWidth)} + ${mm(waist.turnOfCloth)}${waist.rows > 1 ? ' and 3 mm between the rows' : ''}`,
      edges('waist edge', 'waist fold', 'waist'),
    ),
    ...(heights.catch > 0
      ? [
          step(
            'catch',
            say`${mm(heights.catch)} more lie beyond the stitching, so that the ${waist.rawEdge === 'overlocked' ? 'overlocked edge' : 'edge turned under'} is caught.`,
            [],
            edges('waist', 'casing stitching'),
          ),
        ]
      : []),
    step(
      'mirror',
      say`Above its fold the casing mirrors the leg below, and so does the hem below its fold: turned over, they lie flat.`,
      [],
      edges(
        'centreFrontTurning',
        'centreBackTurning',
        'inseamFrontTurning',
        'inseamBackTurning',
        'waist fold',
        'hem fold',
      ),
    ),
    step(
      'elastic',
      say`Cut the elastic ${mm(elasticLength(waistGirth, opening))} long: it holds, and it never is longer than the opening.`,
      say`0.92 × waist ${mm(waistGirth)} + ${mm(25)} lap`,
      [],
    ),
    step(
      'hem',
      say`The hem is turned up ${mm(hem.depth)}${hem.turnUnder > 0 ? say`, with ${mm(hem.turnUnder)} turned under` : []}.`,
      [],
      edges('hem fold', 'hem stitching', 'turn-under fold', 'hem'),
    ),
    step(
      'allowances',
      say`The cut line runs parallel to the stitching line: ${mm(allowances.inseam)} at the inseams, ${mm(allowances.crotch)} at the crotch seam. At the crotch point both go on straight until they meet; at folds they mirror; raw edges carry none.`,
      [],
      piece.cutLine,
    ),
    step(
      'marks',
      say`One notch in front and two behind where the crotch curve begins; single notches on the inseams at equal lengths from the crotch, so that they meet.`,
      [],
      [],
    ),
  ];
}
