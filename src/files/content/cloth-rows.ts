import { LAYOUT_WORDS, type LayAnswer } from '../../cloth';
import { formatAmount, formatLength, type Units } from '../../length';
import { clothOf, type Draft } from '../../project';
import { printPhrase, words } from '../../words';
import type { Row } from './rows';

/** The cloths that are bought beside the legs' own, as people call them. */
export const OTHER_CLOTHS = {
  contrast: 'contrasting cloth',
  knit: 'knit for the band',
  rib: 'rib for the cuffs',
} as const;

/** How much cloth to buy, each cloth in a row. */
export function clothRows(draft: Draft): readonly Row[] {
  const { units } = draft.project;
  const { answer, others } = clothOf(draft);
  return [
    { name: 'Cloth to buy', value: toBuyWords(answer, units) },
    ...others.map((other) => ({ name: OTHER_CLOTHS[other.kind], value: toBuyWords(other.answer, units) })),
  ];
}

function toBuyWords(answer: LayAnswer, units: Units): string {
  if (!answer.fits) {
    const [first] = answer.instead;
    return `none fits ${formatLength(answer.width, units)}${first ? `; ${printPhrase(first, units)}` : ''}`;
  }
  const { toBuy, width, layout } = answer.lay;
  return `${formatAmount(toBuy, units)} of ${formatLength(width, units)}, ${words`${LAYOUT_WORDS[layout]}`}`;
}
