import type { Mm } from '../length';
import { edgeLength } from '../plane';
import type { CasingHeights } from './casing';
import { type EdgeName, isAlong } from './edge-names';
import type { HemPlan } from './hem';
import type { Piece } from './piece';
import type { PieceKind } from './piece-names';

/** Seam allowances by seam; waist and hem only count where a seam is sewn there. */
export interface Allowances {
  readonly inseam: Mm;
  readonly crotch: Mm;
  readonly waist: Mm;
  readonly hem: Mm;
}

/** What a seam is sewn for: a ring closes a strip or two facings, a tube a cord. */
export type SeamKind = 'piecing' | 'inseam' | 'crotch' | 'waist' | 'waistRing' | 'hem' | 'hemRing' | 'tube';

/** Edges of one piece that lie in a seam; turnings that go on from them are sewn with them. */
export interface SeamPart {
  readonly piece: PieceKind;
  readonly edges: readonly EdgeName[];
}

/** Two edges that are sewn to each other. */
export interface Seam {
  readonly kind: SeamKind;
  readonly a: readonly SeamPart[];
  /** Of the same piece, of another one, or of the other leg. */
  readonly b: readonly SeamPart[];
  /** Net, of one copy of what `a` is part of; and of `b` what is sewn to that, stretched or gathered where it is shorter or longer. */
  readonly lengthA: Mm;
  readonly lengthB: Mm;
}

type Pair = Pick<Seam, 'kind' | 'a' | 'b'>;

const part = (piece: PieceKind, ...edges: readonly EdgeName[]): SeamPart => ({ piece, edges });
const pair = (kind: SeamKind, a: SeamPart, ...b: readonly SeamPart[]): Pair => ({ kind, a: [a], b });
/** One leg's edges to the same ones of the other. */
const acrossLegs = (kind: SeamKind, ...both: readonly SeamPart[]): Pair => ({ kind, a: both, b: both });

/** A strip closed to a ring and, folded lengthwise, both its long edges sewn to the leg. */
const strip = (at: 'waist' | 'hem', piece: PieceKind): readonly Pair[] => [
  pair(`${at}Ring`, part(piece, 'leftEnd'), part(piece, 'rightEnd')),
  pair(at, part('leg', at), part(piece, 'upper')),
  pair(at, part('leg', at), part(piece, 'lower')),
];
const tube = (piece: PieceKind): Pair => pair('tube', part(piece, 'upper'), part(piece, 'lower'));

/** Who is sewn to whom, of all pieces that there may be. A new finish says here what it is sewn to. */
const PAIRS: readonly Pair[] = [
  pair('piecing', part('leg', 'piecing'), part('forkTip', 'piecing')),
  pair('inseam', part('leg', 'inseamFront'), part('leg', 'inseamBack'), part('forkTip', 'inseamBack')),
  acrossLegs('crotch', part('leg', 'centreFront', 'crotchFront')),
  acrossLegs('crotch', part('leg', 'crotchBack', 'centreBack'), part('forkTip', 'crotchBack')),
  acrossLegs('waistRing', part('waistFacing', 'centreFront')),
  acrossLegs('waistRing', part('waistFacing', 'centreBack')),
  pair('waist', part('leg', 'waist'), part('waistFacing', 'waist')),
  ...strip('waist', 'casing'),
  ...strip('waist', 'waistBand'),
  pair('hemRing', part('hemFacing', 'inseamFront'), part('hemFacing', 'inseamBack')),
  pair('hem', part('leg', 'hem'), part('hemFacing', 'hem')),
  ...strip('hem', 'hemBand'),
  ...strip('hem', 'cuff'),
  tube('waistCord'),
  tube('hemCord'),
];

/** By which allowance a seam is sewn; a cord's has its own. */
const SEWN_BY: Readonly<Record<Exclude<SeamKind, 'tube'>, keyof Allowances>> = {
  piecing: 'inseam',
  inseam: 'inseam',
  crotch: 'crotch',
  waist: 'waist',
  waistRing: 'crotch',
  hem: 'hem',
  hemRing: 'inseam',
};

/** The allowance that each edge of a piece bears: its seam's; none where it is a raw edge. */
export const seamAllowance =
  (allowances: Allowances, piece: PieceKind) =>
  (edge: EdgeName): Mm => {
    const seam = PAIRS.find(({ a, b }) => [...a, ...b].some((one) => one.piece === piece && isAlong(edge, one.edges)));
    return seam && seam.kind !== 'tube' ? allowances[SEWN_BY[seam.kind]] : 0;
  };

/** The same of a leg, whose waist and hem are raw edges where they are folded over. */
export const legAllowance = (allowances: Allowances, waist: CasingHeights['kind'], hem: HemPlan['kind']) =>
  seamAllowance(
    { ...allowances, waist: waist === 'folded' ? 0 : allowances.waist, hem: hem === 'folded' ? 0 : allowances.hem },
    'leg',
  );

/**
 * The seams of a pattern.
 *
 * @param pieces of one leg, and what is sewn to it
 * @param others of the other leg, where it differs
 */
export const seamsOf = (pieces: readonly Piece[], others: readonly Piece[] = pieces): readonly Seam[] =>
  PAIRS.flatMap((one): readonly Seam[] => {
    const [a, b] = [present(one.a, pieces), present(one.b, one.a === one.b ? others : pieces)];
    const [copies, of] = [cutOf(a, pieces), cutOf(b, others)];
    if (copies === 0 || of === 0) return [];
    return [{ kind: one.kind, a, b, lengthA: lengthOf(a, pieces), lengthB: (lengthOf(b, others) * of) / copies }];
  });

/** All edges that lie in seams of one kind, piece by piece, each in its own order with its turnings. */
export function seamParts(pieces: readonly Piece[], kind: SeamKind): readonly SeamPart[] {
  const parts = seamsOf(pieces).flatMap((seam) => (seam.kind === kind ? [...seam.a, ...seam.b] : []));
  const sewn = (piece: Piece): readonly EdgeName[] => {
    const edges = parts.flatMap((one) => (one.piece === piece.kind ? one.edges : []));
    return piece.stitchLine.flatMap(({ name }) => (isAlong(name, edges) ? [name] : []));
  };
  return pieces.map((piece) => part(piece.kind, ...sewn(piece))).filter(({ edges }) => edges.length > 0);
}

const pieceOf = (pieces: readonly Piece[], kind: PieceKind): Piece | undefined =>
  pieces.find((piece) => piece.kind === kind);

/** What there is of it: a leg has a tip to itself only where it is pieced. */
const present = (parts: readonly SeamPart[], pieces: readonly Piece[]): readonly SeamPart[] =>
  parts.flatMap(({ piece, edges }) => {
    const drawn = pieceOf(pieces, piece)?.stitchLine ?? [];
    const found = edges.filter((edge) => drawn.some(({ name }) => name === edge));
    return found.length > 0 ? [part(piece, ...found)] : [];
  });

const cutOf = ([first]: readonly SeamPart[], pieces: readonly Piece[]): number =>
  (first && pieceOf(pieces, first.piece)?.cut) ?? 0;

const lengthOf = (parts: readonly SeamPart[], pieces: readonly Piece[]): Mm =>
  parts
    .flatMap(({ piece, edges }) => pieceOf(pieces, piece)?.stitchLine.filter(({ name }) => edges.includes(name)) ?? [])
    .reduce((sum, edge) => sum + edgeLength(edge), 0);
