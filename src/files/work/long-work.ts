import { number, type PhraseValue, words } from '../../words';

/** How far long work has come. */
export interface Progress {
  /** 0 … 1. */
  readonly share: number;
  /** What is just being done, in a word or two, e.g. `sheet B3`. */
  readonly doing: string;
}

/** “Ada, 3 of 12”: what is being done, of how many. */
export const countedOff = (what: PhraseValue, index: number, count: number): string =>
  words`${what}, ${number(index + 1)} of ${number(count)}`;

/** Long work, cut into short steps: it tells after each how far it has come, and gives what it made at the end. */
export type LongWork<T> = Generator<Progress, T, undefined> | AsyncGenerator<Progress, T>;

/** Who looks on while long work is done, and may stop it. */
export interface Onlooker {
  readonly signal?: AbortSignal | undefined;
  readonly onProgress?: ((progress: Progress) => void) | undefined;
}

/** Thrown where long work was stopped; nothing was made then. */
export class Stopped extends Error {
  constructor() {
    super('stopped');
  }
}

/** Longer than this, in milliseconds, nobody else waits: a screen is still redrawn twenty times a second. */
const BREATH = 50;

/**
 * Does long work to its end, step by step, letting others have their turn in between.
 *
 * @param steps the work
 * @param onlooker told of every step; its signal stops the work at the next one
 * @returns what the work made
 * @throws Stopped where the signal said so; whatever the work throws
 */
export async function carriedOut<T>(steps: LongWork<T>, { signal, onProgress }: Onlooker = {}): Promise<T> {
  let rested = performance.now();
  for (;;) {
    if (signal?.aborted) throw new Stopped();
    const step = await steps.next();
    if (step.done) return step.value;
    onProgress?.(step.value);
    if (performance.now() - rested < BREATH) continue;
    await new Promise((resolve) => setTimeout(resolve, 0));
    rested = performance.now();
  }
}

/**
 * Long work as a part of longer work.
 *
 * @param steps the part
 * @param from where in the whole it begins, 0 … 1
 * @param to where it ends
 * @param name said before what the part is doing
 */
export async function* partOf<T>(
  steps: LongWork<T>,
  from: number,
  to: number,
  name: string,
): AsyncGenerator<Progress, T> {
  for (;;) {
    const step = await steps.next();
    if (step.done) return step.value;
    const { share, doing } = step.value;
    yield { share: from + (to - from) * share, doing: [name, doing].filter((word) => word !== '').join(', ') };
  }
}
