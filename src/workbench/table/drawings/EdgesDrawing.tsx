import { type FoldName, isLeg, type Piece, pieceKey } from '../../../edges';
import { formatLength } from '../../../length';
import { type Point, pathEnd, pathStart } from '../../../plane';
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
  const l = (value: number) => formatLength(value, units);
  const lies = folded ? 'folded over' : 'laid flat';
  const words: Readonly<Partial<Record<FoldName, readonly string[]>>> = {
    waistFold: [`casing ${l(measures.casingHeight)}, ${lies}`, ...holds(draft, l)],
    hemFold: [project.hem.finish === 'turned' ? `hem ${l(project.hem.depth)}, ${lies}` : `hem casing, ${lies}`],
  };
  return piece.folds.flatMap((fold) =>
    (words[fold.name] ?? []).map((text, row) => (
      <Word
        key={`${fold.name} ${row === 0 ? 'depth' : 'holds'}`}
        at={frontEnd(fold)}
        anchor="start"
        dx={22}
        dy={6 + 17 * row}
        className={row === 0 ? 'word-number word-aside' : 'word-note'}
      >
        {text}
      </Word>
    )),
  );
}

/** What is drawn through the casing. */
function holds(
  { project: { waist }, notions }: DrawingProps['draft'],
  l: (value: number) => string,
): readonly string[] {
  const parts = [
    ...(notions.elasticLength === undefined ? [] : [`${l(waist.elasticWidth)} elastic`]),
    ...(notions.cordLength === undefined ? [] : [`${l(waist.cordWidth)} cord`]),
  ];
  return [`for ${parts.join(' and ')}`];
}

function frontEnd({ curves }: { readonly curves: Parameters<typeof pathStart>[0] }): Point {
  const [start, end] = [pathStart(curves), pathEnd(curves)];
  return start.x > end.x ? start : end;
}
