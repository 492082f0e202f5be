import type { Side } from '../leg';
import { number, type Phrase, say, words } from '../words';

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
export const KIND_NAMES: Readonly<Record<PieceKind, Phrase>> = {
  leg: say`leg`,
  forkTip: say`fork tip`,
  waistFacing: say`waist facing`,
  casing: say`casing`,
  waistBand: say`waist band`,
  hemFacing: say`hem facing`,
  hemBand: say`hem band`,
  cuff: say`cuff`,
  pocket: say`pocket`,
  waistCord: say`waist cord`,
  hemCord: say`hem cord`,
};

/** What people call a piece: its kind, and its side where it has one. */
export function pieceName({ kind, side }: PieceRef): Phrase {
  const name = KIND_NAMES[kind];
  if (!side) return name;
  return side === 'left' ? say`${name} left` : say`${name} right`;
}

/** What tells a piece from all others, without the piece. */
export const pieceRef = ({ kind, side }: PieceRef): PieceRef => ({ kind, side });

export const isSamePiece = (a: PieceRef, b: PieceRef): boolean => a.kind === b.kind && a.side === b.side;

/** What a piece says of itself, as it is written on it: its name, and how many are cut. */
export function countedWords(name: Phrase, cut: number, mirrored = false): string {
  return mirrored ? words`${name} · cut ${number(cut)}, mirrored` : words`${name} · cut ${number(cut)}`;
}

/**
 * A piece's own key, in lists and in files that programs read: `waist facing left`. It is the same whatever the piece is
 * called, in every language.
 */
export function pieceKey({ kind, side }: PieceRef): string {
  const key = kind.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  return side ? `${key} ${side}` : key;
}
