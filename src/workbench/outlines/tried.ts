import type { Units } from '../../length';
import { BLOCK_EDGES, blockFromReading, blocksFromTrace, LANDMARKS, type TracedPair } from '../../trace';
import { inside, own, type Phrase, type Problem, printPhrase, Refusal, type Result, say } from '../../words';
import { EDGE_NAMES, LANDMARK_WORDS } from '../photo/words';
import { sentence } from '../store/refusal';
import type { OutlinesWork } from './outlines-store';

/** The pair as it was picked and read so far, or what is missing of it. */
export function pairTried({ front, back }: OutlinesWork): Result<TracedPair> {
  if (!front || !back) return { ok: false, problems: [] };
  try {
    const pair = { front: blockFromReading('front', front.reading), back: blockFromReading('back', back.reading) };
    // Refuses edges that are too short; the body's rise doesn't matter for that.
    blocksFromTrace(pair.front, pair.back, 0);
    return { ok: true, value: pair };
  } catch (error) {
    if (error instanceof Refusal) return { ok: false, problems: error.problems };
    throw error;
  }
}

const WHERE: Readonly<Record<string, Phrase>> = {
  ...Object.fromEntries(LANDMARKS.map((name) => [name, LANDMARK_WORDS[name].name])),
  ...EDGE_NAMES,
  grain: say`Grainline`,
  hip: say`Hip line`,
  outline: say`Outline`,
};

/** Each problem in a sentence that says of which block and of what it is. */
export const problemsTold = (problems: readonly Problem[], units: Units): readonly string[] =>
  problems.map(({ field, phrase }) => {
    const what = /(\w+)$/.exec(field)?.[1] ?? '';
    const part = field.includes('front') ? say`Front` : say`Back`;
    const edge = BLOCK_EDGES.find((one) => one === what);
    const where = edge ? EDGE_NAMES[edge] : (WHERE[what] ?? say`${own(what)}`);
    return sentence(printPhrase(say`${part}, ${inside(where)}: ${phrase}`, units));
  });
