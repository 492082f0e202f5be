import { inside, mm, type Phrase, say } from '../../words';
import type { Contradiction } from './contradictions';
import { tapeLength } from './table';

/** A number that the others contradict, in a sentence. */
export function contradictionTold({ part, key, given, others, drawn }: Contradiction): Phrase {
  const name = inside(tapeLength(key).name);
  const by = mm(Math.abs(given - others));
  if (part === 'front')
    return given > others
      ? say`Front, ${name}: ${mm(given)}, but the other numbers make it ${mm(others)}, ${by} less; it is drawn with ${mm(drawn)}.`
      : say`Front, ${name}: ${mm(given)}, but the other numbers make it ${mm(others)}, ${by} more; it is drawn with ${mm(drawn)}.`;
  return given > others
    ? say`Back, ${name}: ${mm(given)}, but the other numbers make it ${mm(others)}, ${by} less; it is drawn with ${mm(drawn)}.`
    : say`Back, ${name}: ${mm(given)}, but the other numbers make it ${mm(others)}, ${by} more; it is drawn with ${mm(drawn)}.`;
}
