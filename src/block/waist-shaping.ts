import type { Mm } from '../length';
import { DARTS, LEAN, SIDE_SHAPING } from './figures';

/** Where the waist loses what it is smaller than the hip line, millimetres of one leg. */
export interface WaistShaping {
  /** Taken off by centre back's lean. */
  readonly leanBack: Mm;
  /** Taken off at the side, front and back alike. */
  readonly side: Mm;
  readonly dartsFront: readonly Mm[];
  readonly dartsBack: readonly Mm[];
  /** Waist shaping without a place, over the whole waist. */
  readonly shapingLeft: Mm;
}

/**
 * Shares out what the waist is smaller than the hip line: centre back's lean, the side, then darts.
 *
 * @param quarter what a quarter of the waist must lose
 * @param steepest what centre back may lean at most
 * @source practice
 */
export function waistShaping(quarter: Mm, steepest: Mm): WaistShaping {
  const leanBack = Math.min(LEAN.most, LEAN.share * quarter, steepest);
  const rest = Math.max(0, 2 * quarter - leanBack);
  const side = Math.min(SIDE_SHAPING.share * rest, SIDE_SHAPING.most);
  const darts = rest - 2 * side;
  const room = DARTS.front + DARTS.back;
  const front = worthSewing(Math.min((darts * DARTS.front) / room, DARTS.front * DARTS.widest));
  const back = worthSewing(Math.min((darts * DARTS.back) / room, DARTS.back * DARTS.widest));
  return {
    leanBack,
    side,
    dartsFront: dartWidths(front),
    dartsBack: dartWidths(back),
    shapingLeft: 2 * (darts - front - back),
  };
}

const worthSewing = (width: Mm): Mm => (width < DARTS.narrowest ? 0 : width);

/** Rounding must not open another dart. @source tolerance */
const ROUNDING = 1e-9;

/** As few equal darts as the width needs. */
function dartWidths(width: Mm): readonly Mm[] {
  const count = Math.ceil(width / DARTS.widest - ROUNDING);
  return Array.from({ length: count }, () => width / count);
}
