import type { Mm } from '../../length';
import { type Phrase, say } from '../../words';

/** The lengths that a tape takes of one block on its paper, in the order of work. */
export const TAPE_KEYS = [
  'waistToHip',
  'hipToCrotch',
  'crotchToKnee',
  'crotchToHem',
  'waistWidth',
  'hipWidth',
  'crotchWidth',
  'kneeWidth',
  'hemWidth',
  'fork',
  'centreRise',
  'centreLean',
  'curveStart',
  'grainHip',
  'grainKnee',
  'grainHem',
  'waistEdge',
  'crotchSeam',
  'inseam',
  'side',
] as const;
export type TapeKey = (typeof TAPE_KEYS)[number];

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
  readonly group: 'heights' | 'widths' | 'centre' | 'grain' | 'edges';
  readonly lowest: Mm;
  readonly highest: Mm;
}

/**
 * All lengths of the table; where the tape lies for each stands in {@link TAPE_PLACES}. Heights run along the grainline and widths square to it, straight; lengths along an edge follow
 * its bends. Where a block has its seam allowances on, the tape begins and ends at the stitching lines.
 *
 * @source practice; limits half as large again as the largest body of ANSUR II, 2014
 */
export const TAPE_LENGTHS: readonly TapeLength[] = [
  {
    key: 'waistToHip',
    name: say`Waist to hip line`,
    group: 'heights',
    lowest: 20,
    highest: 500,
  },
  {
    key: 'hipToCrotch',
    name: say`Hip line to crotch line`,
    group: 'heights',
    lowest: 5,
    highest: 300,
  },
  {
    key: 'crotchToKnee',
    name: say`Crotch line to knee line`,
    group: 'heights',
    lowest: 10,
    highest: 700,
  },
  {
    key: 'crotchToHem',
    name: say`Crotch line to hem`,
    group: 'heights',
    lowest: 25,
    highest: 1300,
  },
  {
    key: 'waistWidth',
    name: say`Width at the waist`,
    group: 'widths',
    lowest: 60,
    highest: 700,
  },
  {
    key: 'hipWidth',
    name: say`Width at the hip line`,
    group: 'widths',
    lowest: 80,
    highest: 700,
  },
  {
    key: 'crotchWidth',
    name: say`Width at the crotch line`,
    group: 'widths',
    lowest: 80,
    highest: 900,
  },
  {
    key: 'kneeWidth',
    name: say`Width at the knee line`,
    group: 'widths',
    lowest: 50,
    highest: 700,
  },
  {
    key: 'hemWidth',
    name: say`Width at the hem`,
    group: 'widths',
    lowest: 40,
    highest: 700,
  },
  {
    key: 'fork',
    name: say`Fork`,
    group: 'centre',
    lowest: 5,
    highest: 350,
  },
  {
    key: 'centreRise',
    name: say`Centre above the side`,
    group: 'centre',
    lowest: -120,
    highest: 150,
  },
  {
    key: 'centreLean',
    name: say`Lean of the centre line`,
    group: 'centre',
    lowest: -120,
    highest: 200,
  },
  {
    key: 'curveStart',
    name: say`Start of the crotch curve`,
    group: 'centre',
    lowest: 5,
    highest: 350,
  },
  {
    key: 'grainHip',
    name: say`Side to grainline at the hip line`,
    group: 'grain',
    lowest: -100,
    highest: 600,
  },
  {
    key: 'grainKnee',
    name: say`Side to grainline at the knee line`,
    group: 'grain',
    lowest: -100,
    highest: 600,
  },
  {
    key: 'grainHem',
    name: say`Side to grainline at the hem`,
    group: 'grain',
    lowest: -100,
    highest: 600,
  },
  {
    key: 'waistEdge',
    name: say`Along the waist edge`,
    group: 'edges',
    lowest: 60,
    highest: 800,
  },
  {
    key: 'crotchSeam',
    name: say`Along centre and crotch curve`,
    group: 'edges',
    lowest: 80,
    highest: 1000,
  },
  {
    key: 'inseam',
    name: say`Along the inseam`,
    group: 'edges',
    lowest: 25,
    highest: 1400,
  },
  {
    key: 'side',
    name: say`Along the side`,
    group: 'edges',
    lowest: 60,
    highest: 1700,
  },
];

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
