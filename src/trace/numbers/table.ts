import type { Mm } from '../../length';
import { mm, type Phrase, say } from '../../words';

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

/** A length of the table: what it is called, where the tape lies, and between which limits a block of a person has it. */
export interface TapeLength {
  readonly key: TapeKey;
  readonly name: Phrase;
  readonly where: Phrase;
  readonly group: 'heights' | 'widths' | 'centre' | 'grain' | 'edges';
  readonly lowest: Mm;
  readonly highest: Mm;
}

/**
 * All lengths of the table. Heights run along the grainline and widths square to it, straight; lengths along an edge follow
 * its bends. Where a block has its seam allowances on, the tape begins and ends at the stitching lines.
 *
 * @source practice; limits half as large again as the largest body of ANSUR II, 2014
 */
export const TAPE_LENGTHS: readonly TapeLength[] = [
  {
    key: 'waistToHip',
    name: say`Waist to hip line`,
    where: say`From the waist’s end at the side, straight down along the grain, to the level of the hip line.`,
    group: 'heights',
    lowest: 20,
    highest: 500,
  },
  {
    key: 'hipToCrotch',
    name: say`Hip line to crotch line`,
    where: say`From the hip line straight down to the level of the crotch point, where the inseam begins.`,
    group: 'heights',
    lowest: 5,
    highest: 300,
  },
  {
    key: 'crotchToKnee',
    name: say`Crotch line to knee line`,
    where: say`From the level of the crotch point straight down to the knee line. Leave it out where the block has no knee.`,
    group: 'heights',
    lowest: 10,
    highest: 700,
  },
  {
    key: 'crotchToHem',
    name: say`Crotch line to hem`,
    where: say`From the level of the crotch point straight down to the hem.`,
    group: 'heights',
    lowest: 25,
    highest: 1300,
  },
  {
    key: 'waistWidth',
    name: say`Width at the waist`,
    where: say`Straight across, square to the grain: from the waist’s end at the side to the level of its end at the centre, over the darts as they lie open.`,
    group: 'widths',
    lowest: 60,
    highest: 700,
  },
  {
    key: 'hipWidth',
    name: say`Width at the hip line`,
    where: say`Along the hip line, from the side to the centre line; where the crotch curve has already begun there, to the centre line carried on straight.`,
    group: 'widths',
    lowest: 80,
    highest: 700,
  },
  {
    key: 'crotchWidth',
    name: say`Width at the crotch line`,
    where: say`Straight across from the crotch point to the side.`,
    group: 'widths',
    lowest: 80,
    highest: 900,
  },
  {
    key: 'kneeWidth',
    name: say`Width at the knee line`,
    where: say`Straight across from the inseam to the side.`,
    group: 'widths',
    lowest: 50,
    highest: 700,
  },
  {
    key: 'hemWidth',
    name: say`Width at the hem`,
    where: say`Straight across from the inseam to the side.`,
    group: 'widths',
    lowest: 40,
    highest: 700,
  },
  {
    key: 'fork',
    name: say`Fork`,
    where: say`Carry the centre line on straight down to the crotch line; from there straight across to the crotch point.`,
    group: 'centre',
    lowest: 5,
    highest: 350,
  },
  {
    key: 'centreRise',
    name: say`Centre above the side`,
    where: say`How much higher the waist lies at the centre than at the side; less than ${mm(0)} where it lies lower.`,
    group: 'centre',
    lowest: -120,
    highest: 150,
  },
  {
    key: 'centreLean',
    name: say`Lean of the centre line`,
    where: say`Set a ruler upright on the hip line’s end at the centre: how far inside of it the waist’s end lies; less than ${mm(0)} where it lies outside.`,
    group: 'centre',
    lowest: -120,
    highest: 200,
  },
  {
    key: 'curveStart',
    name: say`Start of the crotch curve`,
    where: say`From the crotch line straight up to where the centre line stops being straight.`,
    group: 'centre',
    lowest: 5,
    highest: 350,
  },
  {
    key: 'grainHip',
    name: say`Side to grainline at the hip line`,
    where: say`Along the hip line, from the side to the grainline, carried on where it ends below.`,
    group: 'grain',
    lowest: -100,
    highest: 600,
  },
  {
    key: 'grainKnee',
    name: say`Side to grainline at the knee line`,
    where: say`Along the knee line, from the side to the grainline.`,
    group: 'grain',
    lowest: -100,
    highest: 600,
  },
  {
    key: 'grainHem',
    name: say`Side to grainline at the hem`,
    where: say`Along the hem, from the side to the grainline, carried on where it ends above.`,
    group: 'grain',
    lowest: -100,
    highest: 600,
  },
  {
    key: 'waistEdge',
    name: say`Along the waist edge`,
    where: say`Stand the tape on its edge and follow the waist from the side to the centre, over the darts as they lie open.`,
    group: 'edges',
    lowest: 60,
    highest: 800,
  },
  {
    key: 'crotchSeam',
    name: say`Along centre and crotch curve`,
    where: say`Stand the tape on its edge and follow the line from the waist down the centre and round the curve to the crotch point.`,
    group: 'edges',
    lowest: 80,
    highest: 1000,
  },
  {
    key: 'inseam',
    name: say`Along the inseam`,
    where: say`Follow the line from the crotch point down to the hem.`,
    group: 'edges',
    lowest: 25,
    highest: 1400,
  },
  {
    key: 'side',
    name: say`Along the side`,
    where: say`Follow the line from the waist down to the hem.`,
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
