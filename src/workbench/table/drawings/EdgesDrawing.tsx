import { type FoldName, isLeg, type Piece, pieceKey } from '../../../edges';
import type { Mm } from '../../../length';
import { type Point, pathEnd, pathStart } from '../../../plane';
import type { Project } from '../../../project';
import { all, mm, type Phrase, printPhrase, say } from '../../../words';
import { useBench } from '../../store/bench';
import { foldedTurnings } from '../folded';
import { Word } from '../Word';
import type { DrawingProps } from './drawing-props';
import { FinishedLeg } from './FinishedLeg';
import { LegNames } from './LegNames';
import { PieceName, placeOf } from './PieceName';

/** The piece with its cut line, stitching lines and folds; its turnings folded over, wrong side up, or laid flat. */
export function EdgesDrawing({ draft }: DrawingProps) {
  const folded = useBench((state) => state.folded);
  return draft.pieces.map((piece, i) => (
    <g key={pieceKey(piece)} transform={placeOf(draft, i)}>
      <FinishedLeg piece={piece} turnings={folded ? foldedTurnings(piece) : []} />
      {isLeg(piece) ? <LegNames piece={piece} /> : <PieceName piece={piece} />}
      <FoldWords piece={piece} draft={draft} />
    </g>
  ));
}

/** What is folded, and how deep, beside the front end of each fold. */
function FoldWords({ piece, draft }: DrawingProps & { readonly piece: Piece }) {
  const units = useBench((state) => state.project.units);
  const folded = useBench((state) => state.folded);
  const { measures, project } = draft;
  const told: Readonly<Partial<Record<FoldName, readonly Phrase[]>>> = {
    waistFold: [casingWords(measures.casingHeight, folded), held(draft)],
    hemFold: [hemWords(project, folded)],
  };
  return piece.folds.flatMap((fold) =>
    (told[fold.name] ?? []).map((phrase, row) => (
      <Word
        key={`${fold.name} ${row === 0 ? 'depth' : 'holds'}`}
        at={frontEnd(fold)}
        anchor="start"
        dx={22}
        dy={6 + 17 * row}
        className={row === 0 ? 'word-number word-aside' : 'word-note'}
      >
        {printPhrase(phrase, units)}
      </Word>
    )),
  );
}

const casingWords = (height: Mm, folded: boolean): Phrase =>
  folded ? say`casing ${mm(height)}, folded over` : say`casing ${mm(height)}, laid flat`;

function hemWords({ hem }: Project, folded: boolean): Phrase {
  if (hem.finish !== 'turned') return folded ? say`hem casing, folded over` : say`hem casing, laid flat`;
  return folded ? say`hem ${mm(hem.depth)}, folded over` : say`hem ${mm(hem.depth)}, laid flat`;
}

/** What is drawn through the casing. */
function held({ project: { waist }, notions }: DrawingProps['draft']): Phrase {
  const elastic = say`${mm(waist.elasticWidth)} elastic`;
  const cord = say`${mm(waist.cordWidth)} cord`;
  return say`for ${all([
    ...(notions.elasticLength === undefined ? [] : [elastic]),
    ...(notions.cordLength === undefined ? [] : [cord]),
  ])}`;
}

function frontEnd({ curves }: { readonly curves: Parameters<typeof pathStart>[0] }): Point {
  const [start, end] = [pathStart(curves), pathEnd(curves)];
  return start.x > end.x ? start : end;
}
