import { type EdgeName, isAlong, type Piece, seamParts } from '../edges';
import type { Mm } from '../length';
import { distance, edgeLength } from '../plane';
import type { Garment } from './garment';

/** The lengths that steps and their times are told in; as the cloth is sewn. */
export interface SewingFacts {
  /** Of one leg, from the crotch to the hem's raw edge. */
  readonly inseam: Mm;
  /** From the waist's raw edge in front, under the body, to the one behind. */
  readonly crotchSeam: Mm;
  /** Round both legs at the casing's stitching. */
  readonly waistRound: Mm;
  /** Round one leg at the hem fold. */
  readonly hemRound: Mm;
  /** Finished depth of the casing: from its fold to its stitching. */
  readonly casingDepth: Mm;
  readonly hemDepth: Mm;
  /** The leg is hemmed flat, before its inseam. */
  readonly hemFlat: boolean;
}

/** A free arm is 25 to 30 cm round: a narrower leg can't be drawn over it. @source practice */
const FREE_ARM: Mm = 320;

/** Edges of a piece with the turnings that go on from them, in its own order. */
export const edgesOf = (piece: Piece, ...edges: readonly EdgeName[]): readonly EdgeName[] =>
  piece.stitchLine.map((edge) => edge.name).filter((name) => isAlong(name, edges));

/** How long edges are together. */
export const lengthOf = (piece: Piece, names: readonly EdgeName[]): Mm =>
  piece.stitchLine.filter((edge) => names.includes(edge.name)).reduce((sum, edge) => sum + edgeLength(edge), 0);

/** @param garment the finished pattern */
export function sewingFacts({ finished, hem }: Garment): SewingFacts {
  const { sewn, casing, heights, hemPlan } = finished;
  const hemRound = distance(...finished.hem.stitching);
  return {
    inseam: lengthOf(sewn, edgesOf(sewn, 'inseamFront')),
    crotchSeam: lengthOf(sewn, seamParts([sewn], 'crotch')[0]?.edges ?? []),
    waistRound: 2 * distance(...casing.waistEdge),
    hemRound,
    casingDepth: heights.kind === 'seamed' ? heights.height / 2 : heights.fold,
    hemDepth: hemPlan.depth,
    hemFlat: hemPlan.kind === 'folded' && hem.finish !== 'drawstringCasing' && hemRound < FREE_ARM,
  };
}
