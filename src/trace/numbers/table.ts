import type { Mm } from '../../length';
import { type Phrase, say } from '../../words';

type TapeGroup = 'heights' | 'widths' | 'centre' | 'grain' | 'edges';

/**
 * What each length of the table is called, of which kind it is, and its limits, in the order of work. Heights run along
 * the grainline and widths square to it, straight; lengths along an edge follow its bends. Where a block has its seam allowances on, the tape begins and ends at the stitching lines.
 *
 * @source practice; limits half as large again as the largest body of ANSUR II, 2014
 */
const LENGTHS = {
  waistToHip: [say`Waist to hip line`, 'heights', 20, 500],
  hipToCrotch: [say`Hip line to crotch line`, 'heights', 5, 300],
  crotchToKnee: [say`Crotch line to knee line`, 'heights', 10, 700],
  crotchToHem: [say`Crotch line to hem`, 'heights', 25, 1300],
  waistWidth: [say`Width at the waist`, 'widths', 60, 700],
  hipWidth: [say`Width at the hip line`, 'widths', 80, 700],
  crotchWidth: [say`Width at the crotch line`, 'widths', 80, 900],
  kneeWidth: [say`Width at the knee line`, 'widths', 50, 700],
  hemWidth: [say`Width at the hem`, 'widths', 40, 700],
  fork: [say`Fork`, 'centre', 5, 350],
  centreRise: [say`Centre above the side`, 'centre', -120, 150],
  centreLean: [say`Lean of the centre line`, 'centre', -120, 200],
  curveStart: [say`Start of the crotch curve`, 'centre', 5, 350],
  grainHip: [say`Side to grainline at the hip line`, 'grain', -100, 600],
  grainKnee: [say`Side to grainline at the knee line`, 'grain', -100, 600],
  grainHem: [say`Side to grainline at the hem`, 'grain', -100, 600],
  waistEdge: [say`Along the waist edge`, 'edges', 60, 800],
  crotchSeam: [say`Along centre and crotch curve`, 'edges', 80, 1000],
  inseam: [say`Along the inseam`, 'edges', 25, 1400],
  side: [say`Along the side`, 'edges', 60, 1700],
} as const satisfies Readonly<Record<string, readonly [Phrase, TapeGroup, Mm, Mm]>>;

export type TapeKey = keyof typeof LENGTHS;

/** The lengths that a tape takes of one block on its paper, in the order of work. */
export const TAPE_KEYS = Object.keys(LENGTHS) as readonly TapeKey[];

/** Lengths that lie along an edge, with all its bends. */
export const EDGE_KEYS = ['waistEdge', 'crotchSeam', 'inseam', 'side'] as const;

/** A dart as a tape tells it. */
export interface DartNumbers {
  /** What it takes in at the waist edge. */
  readonly intake: Mm;
  /** From the waist edge to its point. */
  readonly length: Mm;
  /** Along the waist edge, from the side to its middle. */
  readonly fromSide: Mm;
}

/** What was measured of one block; what was not is left out. */
export type BlockNumbers = Readonly<Partial<Record<TapeKey, Mm>>> & { readonly darts?: readonly DartNumbers[] };

/** Both blocks by their numbers. */
export interface NumbersPair {
  readonly front: BlockNumbers;
  readonly back: BlockNumbers;
}

/** A length of the table: what it is called, and between which limits a block of a person has it. */
export interface TapeLength {
  readonly key: TapeKey;
  readonly name: Phrase;
  readonly group: TapeGroup;
  readonly lowest: Mm;
  readonly highest: Mm;
}

/** All lengths of the table by their names; where the tape lies for each stands in {@link TAPE_PLACES}. */
export const TAPE_LENGTHS: readonly TapeLength[] = TAPE_KEYS.map((key) => {
  const [name, group, lowest, highest] = LENGTHS[key];
  return { key, name, group, lowest, highest };
});

/** A length of the table by its key. */
export const tapeLength = (key: TapeKey): TapeLength => TAPE_LENGTHS[TAPE_KEYS.indexOf(key)] as TapeLength;

/** Limits of what a dart may be. @source practice */
export const DART_LIMITS: Readonly<Record<keyof DartNumbers, { readonly lowest: Mm; readonly highest: Mm }>> = {
  intake: { lowest: 1, highest: 100 },
  length: { lowest: 10, highest: 300 },
  fromSide: { lowest: 0, highest: 800 },
};
/** A block has at most so many darts. @source practice */
export const MOST_DARTS = 4;
