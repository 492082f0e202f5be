import type { Wanted, WantedLine } from '../../drawing';
import type { Mm } from '../../length';
import { mapTuple } from '../../plane';

/** Words are read from where the cutter stands. */
const LARGER = 1.25;
/** Along lines they are small on paper: so high are their capitals at least. */
const LEAST: Mm = 5;

/** Smaller type is lost in the light. */
export const LEAST_PROJECTED_PT = 12;

const larger = (size: Mm): Mm => Math.max(LEAST, size * LARGER);

/** The words of a pattern as they are read from a step away. */
export const projectedWords = ({ once, along }: Wanted): Wanted => ({
  once: once.map((one) => ({
    ...one,
    lines: mapTuple(one.lines, ({ text, size }: WantedLine) => ({ text, size: larger(size) })),
  })),
  along: along.map((one) => ({ ...one, size: larger(one.size) })),
});
