import type { Side } from '../leg';

/** What a piece is, whatever it is called. */
export type PieceKind =
  | 'leg'
  | 'forkTip'
  | 'waistFacing'
  | 'casing'
  | 'waistBand'
  | 'hemFacing'
  | 'hemBand'
  | 'cuff'
  | 'pocket'
  | 'waistCord'
  | 'hemCord';

/** The pieces that are drawn as a rectangle. */
export type StraightKind = Extract<PieceKind, 'casing' | 'waistBand' | 'hemBand' | 'cuff' | 'waistCord' | 'hemCord'>;

/** Which piece of a pattern: no two have both in common. */
export interface PieceRef {
  readonly kind: PieceKind;
  /** Whose it is, as worn, where the two sides differ; else undefined. */
  readonly side: Side | undefined;
}

/** What people call each kind of piece. */
export const KIND_NAMES: Readonly<Record<PieceKind, string>> = {
  leg: 'leg',
  forkTip: 'fork tip',
  waistFacing: 'waist facing',
  casing: 'casing',
  waistBand: 'waist band',
  hemFacing: 'hem facing',
  hemBand: 'hem band',
  cuff: 'cuff',
  pocket: 'pocket',
  waistCord: 'waist cord',
  hemCord: 'hem cord',
};

/** What people call a piece: its kind, and its side where it has one. */
export const pieceName = ({ kind, side }: PieceRef): string =>
  side ? `${KIND_NAMES[kind]} ${side}` : KIND_NAMES[kind];

/** What tells a piece from all others, without the piece. */
export const pieceRef = ({ kind, side }: PieceRef): PieceRef => ({ kind, side });

export const isSamePiece = (a: PieceRef, b: PieceRef): boolean => a.kind === b.kind && a.side === b.side;

/** A piece's own key in a list: the same for the same piece, whatever it is called. */
export const pieceKey = ({ kind, side }: PieceRef): string => (side ? `${kind}-${side}` : kind);
