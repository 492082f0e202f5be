import type { Layout } from '../cloth';
import type {
  Allowances,
  CasingChoices,
  FinishedLeg,
  HemChoices,
  Notions,
  Piece,
  PieceKind,
  PocketChoices,
} from '../edges';
import type { Leg } from '../leg';
import type { Mm } from '../length';

/** What stands on the sewing table: a plain machine with zigzag, or a serger beside it. */
export type SewingMachine = 'plain' | 'serger';

/** The cloth, as far as sewing asks. */
export interface SewnCloth {
  readonly kind: 'woven' | 'knit';
  readonly washFirst: boolean;
  readonly width: Mm;
  readonly oneWay: boolean;
  readonly shrinkLength: number;
  readonly shrinkWidth: number;
  /** Of a check or a print along the grain, and of stripes across it; 0 where nothing is matched. */
  readonly repeat: Mm;
  readonly repeatAcross: Mm;
  /** How the cloth lies on the table when the pieces are cut. */
  readonly layout: Layout | 'best';
}

/** Everything that the order of work depends on: the finished pattern and what was chosen. */
export interface Garment {
  readonly leg: Leg;
  readonly finished: FinishedLeg;
  /** As they are where both legs are alike; see `sides`. */
  readonly pieces: readonly Piece[];
  /**
   * Where left and right differ: all else is the right leg's, as if the other one were like it; this is the left one's in
   * the same way, and the pieces as they are really cut, each of its side.
   */
  readonly sides?: { readonly left: Garment; readonly pieces: readonly Piece[] };
  readonly notions: Notions;
  readonly waist: CasingChoices;
  readonly hem: HemChoices;
  readonly allowances: Allowances;
  readonly pocket: PocketChoices | null;
  readonly cloth: SewnCloth;
  readonly machine: SewingMachine;
  /** A rule asks for a label on this nightwear: it is sewn in at the waist. */
  readonly nightwearLabel: boolean;
}

/** The piece of that kind. Throws where there is none: a step only speaks of pieces that its finish makes. */
export function pieceOfKind({ pieces }: Garment, kind: PieceKind): Piece {
  const found = pieces.find((piece) => piece.kind === kind);
  if (!found) throw new RangeError(`there is no piece of the kind ${kind}`);
  return found;
}

/** The pieces as they are cut. */
export const cutPieces = ({ pieces, sides }: Garment): readonly Piece[] => sides?.pieces ?? pieces;

/** Pieces that are sewn to a tube as a cord, where a cord is cut from cloth. */
export const cordPieces = ({ pieces }: Garment): readonly Piece[] =>
  pieces.filter((piece) => piece.kind === 'waistCord' || piece.kind === 'hemCord');
