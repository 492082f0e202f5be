import type { Piece, PieceKind } from '../../src/edges';
import type { Curve, Point } from '../../src/plane';
import type { Draft } from '../../src/project';
import { pieceName } from '../names';
import { type Find, find, told, warned } from './find';
import { flat, footOn, polylineLength } from './flat';

/** Seams that are sewn to each other may differ by this, and their notches. */
const EQUAL = 0.1;
/** The seams of two legs that are sewn to each other. */
const BETWEEN_LEGS = 1;
/** A turning that was grown with a slanting hem: what still lies flat. */
const GROWN_FLAT = 3;

/** Everything that is sewn to something else is as long as that; notches meet; turnings lie on the leg. */
export const seamFinds = (draft: Draft): readonly Find[] => [
  ...draft.legs.flatMap((leg) => seamsOfLeg(draft, leg)),
  ...betweenLegs(draft),
];

function seamsOfLeg(whole: Draft, one: Draft['legs'][number]): readonly Find[] {
  // A test spoils a draft’s own pieces, and not what they were made of.
  const draft: Draft = whole.legs.length === 1 ? whole : { ...whole, finished: one.finished, pieces: one.pieces };
  const { finished, pieces } = draft;
  // Where a tip was cut off the fork, seams and notches are looked at where it is sewn on again.
  const leg = pieces[1]?.kind === 'forkTip' ? finished.cut.piece : (pieces[0] as Piece);
  return [
    ...tipFinds(draft, leg),
    ...inseams(whole, 'inseams apart', finished.sewn),
    ...(leg === finished.sewn ? [] : inseams(whole, 'inseams apart as cut', leg)),
    ...notches(whole, leg),
    ...turnings(whole, 'turning off the leg', finished.sewn, EQUAL),
    ...(leg === finished.sewn ? [] : turnings(whole, 'turning off the leg as cut', leg, GROWN_FLAT)),
    ...pieces.slice(1).flatMap((piece) => [...besideLeg(draft, leg, piece), ...offEdge(piece)]),
  ];
}

/** Left and right are sewn to each other along centres and crotch curves. */
function betweenLegs(draft: Draft): readonly Find[] {
  const [left, right] = draft.legs;
  if (!right || warned(draft, ['legs-meet'], ['doubtful', 'wrong'])) return [];
  const seams = ['centreFront', 'crotchFront', 'crotchBack', 'centreBack'];
  return seams.flatMap((name) => {
    const off = lengthOf(left.finished.sewn, name) - lengthOf(right.finished.sewn, name);
    return Math.abs(off) <= BETWEEN_LEGS ? [] : [find('legs apart', `${name}, left less right ${told(off)}`)];
  });
}

const edge = (piece: Piece, name: string): readonly Curve[] =>
  piece.stitchLine.find((one) => one.name === name)?.curves ?? [];
const lengthOf = (piece: Piece, name: string): number => polylineLength(flat(edge(piece, name)));

function inseams(draft: Draft, kind: string, piece: Piece): readonly Find[] {
  const off = lengthOf(piece, 'inseamFront') - lengthOf(piece, 'inseamBack');
  if (Math.abs(off) <= EQUAL || warned(draft, ['inseams-equal', 'traced-inseams'], ['doubtful', 'wrong'])) return [];
  return [find(kind, `front less back ${told(off)}`)];
}

function notches(draft: Draft, leg: Piece): readonly Find[] {
  if (warned(draft, ['notches-meet'], ['doubtful', 'wrong'])) return [];
  const front = flat(edge(leg, 'inseamFront'));
  const back = [...flat(edge(leg, 'inseamBack'))].reverse();
  const arcs = (name: string, line: readonly Point[]) =>
    leg.notches
      .filter((notch) => notch.edge === name)
      .map((notch) => footOn(line, notch.at))
      .sort((a, b) => a.arc - b.arc);
  const [fronts, backs] = [arcs('inseamFront', front), arcs('inseamBack', back)];
  if (fronts.length !== backs.length)
    return [find('notch alone', `${fronts.length} in front, ${backs.length} in back`)];
  const worst = Math.max(
    0,
    ...fronts.map((one, i) => Math.abs(one.arc - (backs[i]?.arc ?? Number.NaN))),
    ...[...fronts, ...backs].map(({ away }) => away),
  );
  return worst > EQUAL ? [find('notches apart', `by ${told(worst)}`)] : [];
}

/** A fork's tip and the rest of its leg are the leg, edge by edge. */
function tipFinds({ pieces: [rest, tip] }: Draft, leg: Piece): readonly Find[] {
  if (!rest || tip?.kind !== 'forkTip') return [];
  const off = ['inseamBack', 'crotchBack'].map(
    (name) => lengthOf(rest, name) + lengthOf(tip, name) - lengthOf(leg, name),
  );
  const seam = lengthOf(rest, 'piecing') - lengthOf(tip, 'piecing');
  const worst = Math.max(...[...off, seam].map(Math.abs));
  return worst > EQUAL ? [find('fork tip unlike the leg', `by ${told(worst)}`)] : [];
}

/** Notches of the other pieces lie on their edges. */
function offEdge(piece: Piece): readonly Find[] {
  const off = Math.max(0, ...piece.notches.map((notch) => footOn(flat(edge(piece, notch.edge)), notch.at).away));
  return off > EQUAL ? [find('notch beside its edge', `${pieceName(piece)}: ${told(off)}`)] : [];
}

/** The seams of the turned part, mirrored in the fold, lie on the seams of the leg. */
function turnings(draft: Draft, kind: string, piece: Piece, tolerance: number): readonly Find[] {
  if (warned(draft, ['turnings-flat'], ['doubtful', 'wrong'])) return [];
  const fold = piece.folds.find(({ name }) => name === 'hemFold');
  if (!fold) return [];
  const [a, b] = [(fold.curves[0] as Curve)[0], (fold.curves.at(-1) as Curve)[3]];
  const worst = Math.max(
    0,
    ...(['inseamFront', 'inseamBack'] as const).flatMap((name) => {
      const line = flat(edge(piece, name));
      return flat(edge(piece, `${name}Turning`)).map((p) => footOn(line, mirrored(p, a, b)).away);
    }),
  );
  return worst > tolerance ? [find(kind, `by ${told(worst)}`)] : [];
}

function mirrored(p: Point, a: Point, b: Point): Point {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const t = ((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy);
  return { x: 2 * (a.x + t * dx) - p.x, y: 2 * (a.y + t * dy) - p.y };
}

/** Which edge of a piece is sewn to how many of which edge of the leg, unstretched. Bands of knit and rib are sewn on stretched. */
const SEWN_TO: Readonly<Partial<Record<PieceKind, readonly (readonly [own: string, legs: string, times: number])[]>>> =
  {
    casing: [['lower', 'waist', 2]],
    waistFacing: [['waist', 'waist', 1]],
    hemBand: [['lower', 'hem', 1]],
    hemFacing: [['hem', 'hem', 1]],
  };

function besideLeg(draft: Draft, leg: Piece, piece: Piece): readonly Find[] {
  const grown = leg === draft.finished.sewn ? '' : ' as cut';
  return (SEWN_TO[piece.kind] ?? []).flatMap(([own, legs, times]) => {
    const both = draft.legs.reduce((sum, one) => sum + lengthOf(one.finished.cut.piece, legs), 0) / draft.legs.length;
    const off = lengthOf(piece, own) - (times === 2 && draft.legs.length > 1 ? 2 * both : times * lengthOf(leg, legs));
    return Math.abs(off) <= EQUAL
      ? []
      : [find(`${pieceName(piece)} unlike the leg${grown}`, `${own} less ${legs} ${told(off)}`)];
  });
}
