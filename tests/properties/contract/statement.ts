/** One thing that a line of the contract says of a pair of legs: a figure, and between what it has to lie. */
export interface Statement {
  readonly what: string;
  readonly measured: number;
  readonly low: number;
  readonly high: number;
}

/** The contract's own tolerance, mm. */
const HALF = 0.5;

/** A figure lies between two others. */
export const within = (what: string, measured: number, low: number, high: number): Statement => ({
  what,
  measured,
  low,
  high,
});

/** A figure is another one, to the contract's tolerance or its own. */
export const is = (what: string, measured: number, wanted: number, tolerance = HALF): Statement =>
  within(what, measured, wanted - tolerance, wanted + tolerance);

/** Something doesn't move. */
export const still = (what: string, move: number, tolerance = HALF): Statement => is(what, move, 0, tolerance);

/** By how much a statement is missed; 0 or less where it holds. What is no number at all is missed without end. */
export const missedBy = ({ measured, low, high }: Statement): number =>
  Number.isFinite(measured) ? Math.max(low - measured, measured - high) : Number.POSITIVE_INFINITY;

/** A statement in words. */
export const told = ({ what, measured, low, high }: Statement): string =>
  `${what}: ${measured.toFixed(3)}, wanted ${low.toFixed(2)} … ${high.toFixed(2)}`;
