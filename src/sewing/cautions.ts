import { own, type Phrase, say } from '../words';
import type { Caution, CautionChoices, CautionMeasures } from './caution';
import { edgeCautions } from './cautions-edges';
import { sleepCautions } from './cautions-sleep';

const tools: Caution = {
  id: 'tools',
  title: say`Tools`,
  sentence: say`Cut away from your hands and close a rotary cutter after each cut; count pins and needles; never leave a hot iron alone.`,
  source: { document: 'practice', clause: '', sure: 'practice' },
  raisedBy: [],
};

/**
 * Every caution, for exactly these choices; what is worn near fire and round a child's neck first.
 *
 * Each caution names its source. The rules hold for goods on sale; a garment made at home burns and snags the same.
 * No table of garment sizes is shipped, because none was read.
 *
 * @param choices what was chosen, and for whom
 * @param measures of the finished pattern, millimetres
 */
export const cautions = (choices: CautionChoices, measures: CautionMeasures): readonly Caution[] => [
  ...sleepCautions(choices, measures),
  ...edgeCautions(choices, measures),
  tools,
];

/** What stands once under all cautions. */
export const CAUTIONS_NOTE: Phrase = say`Local rules and the cloth’s own label come before anything said here; Legwork certifies nothing.`;

/** A caution's source in words, with how sure it is where nobody read it: “EN 14682:2007, quoted”. */
export function cautionSource({ source: { document, clause, sure } }: Caution): Phrase {
  if (sure === 'practice') return say`practice`;
  const named = own(clause === '' ? document : `${document}, ${clause}`);
  if (sure === 'memory') return say`${named}, from memory`;
  return sure === 'read' ? say`${named}` : say`${named}, quoted`;
}
