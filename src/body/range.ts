import type { Mm } from '../length';
import type { Estimate } from './types';

/** Nine bodies in ten lie within so many spreads of their estimate. @source ANSUR II, 2014: 88 to 91 in 100, as of any normal spread */
const NINE_IN_TEN = 1.645;

/** Between which values nine bodies in ten like this one lie. */
export const estimateRange = ({ value, spread }: Pick<Estimate, 'value' | 'spread'>): readonly [Mm, Mm] => [
  Math.max(0, value - NINE_IN_TEN * spread),
  value + NINE_IN_TEN * spread,
];
