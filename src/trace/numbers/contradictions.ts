import type { Mm } from '../../length';
import { type FittedShape, shapeFitted } from './fitted';
import { tapeReads, tapesOn } from './measured';
import { type BlockShape, shapeDrawn } from './shape';
import { type BlockNumbers, EDGE_KEYS, type NumbersPair, TAPE_KEYS, type TapeKey } from './table';
import { usualPlaces } from './usual';

/** A number of the table that the others contradict. */
export interface Contradiction {
  readonly part: keyof NumbersPair;
  readonly key: TapeKey;
  readonly given: Mm;
  /** What all the other numbers make it. */
  readonly others: Mm;
  /** What it is drawn as, between the two. */
  readonly drawn: Mm;
}

/** Numbers that miss each other by no more were read off as well as a tape can be. @source tolerance */
const MISSED: Mm = 1.5;
/** What is further from usual by so many spreads would hang oddly: a number is wrong rather. @source practice */
const UNLIKELY = 2.5;
/** A number is named where it lies so far from what the others make it. @source tolerance */
const NAMED: Mm = 3;
const SUSPECTS = 4;
/** More than so many numbers at once are not wrong: the block is another one. @source tolerance */
const MOST = 4;

type Part = keyof NumbersPair;

/** What each length of the table is on a block of a shape. */
function readingsOf(part: Part, shape: BlockShape): Readonly<Record<TapeKey, Mm>> {
  const tapes = Object.entries(tapesOn(shapeDrawn(part, shape)));
  const read = tapes.map(([key, tape]) => [key, tapeReads(tape, part === 'front' ? 1 : -1)] as const);
  return Object.fromEntries(read) as Record<TapeKey, Mm>;
}

/**
 * The numbers that can't be true together with the others, the worst first: that number is taken for wrong without which
 * all others agree best. Where two are as likely, it is the one along an edge, which is harder to measure.
 *
 * @param part whose numbers
 * @param pair what was measured of both
 * @param fitted the shape that agrees best with all of them
 * @source W. Baarda, *A testing procedure for use in geodetic networks*, 1968, from memory
 */
export function contradictionsOf(part: Part, pair: NumbersPair, fitted: FittedShape): readonly Contradiction[] {
  const drawn = readingsOf(part, fitted.shape);
  const told: Contradiction[] = [];
  let [left, now, unusual] = [pair, drawn, fitted.unusual];
  for (let round = 0; round < MOST && (worstMiss(left[part], now) > MISSED || unusual > UNLIKELY); round += 1) {
    const found = suspectsAmong(left[part], now)
      .map((key) => {
        const without = { ...left, [part]: { ...left[part], [key]: undefined } };
        return { key, without, ...shapeFitted(part, without[part], usualPlaces(part, without)) };
      })
      .reduce((best, one) => (one.strain < best.strain ? one : best));
    const { key } = found;
    const given = pair[part][key] as Mm;
    [left, now, unusual] = [found.without, readingsOf(part, found.shape), found.unusual];
    if (Math.abs(given - now[key]) > NAMED) told.push({ part, key, given, others: now[key], drawn: drawn[key] });
  }
  return told;
}

/** The numbers that are missed most; what is wrong is among them. Those along an edge first. */
function suspectsAmong(given: BlockNumbers, read: Readonly<Record<TapeKey, Mm>>): readonly TapeKey[] {
  const miss = (key: TapeKey): Mm => Math.abs((given[key] ?? read[key]) - read[key]);
  const keys = [...EDGE_KEYS, ...TAPE_KEYS.filter((key) => EDGE_KEYS.every((edge) => edge !== key))];
  return keys.toSorted((a, b) => miss(b) - miss(a)).slice(0, SUSPECTS);
}

const worstMiss = (given: BlockNumbers, read: Readonly<Record<TapeKey, Mm>>): Mm =>
  Math.max(0, ...TAPE_KEYS.map((key) => (given[key] === undefined ? 0 : Math.abs(given[key] - read[key]))));
