import { LAYOUT_WORDS, type LayAnswer, laidRows } from '../../cloth';
import type { Units } from '../../length';
import { clothOf, type Draft, shoppingOf } from '../../project';
import { amount, inside, mm, printPhrase, said, say, words } from '../../words';
import { bothUnits, type Row } from './rows';

/** The cloths that are bought beside the legs' own, as people call them. */
export const OTHER_CLOTHS = {
  contrast: say`Contrasting cloth`,
  knit: say`Knit for the band`,
  rib: say`Rib for the cuffs`,
} as const;

/** How much cloth to buy, each cloth in a row. */
export function clothRows(draft: Draft): readonly Row[] {
  const { units } = draft.project;
  const { answer, others } = clothOf(draft);
  return [
    { name: words`Cloth to buy`, value: toBuyWords(answer, units) },
    ...others.map((other) => ({
      name: words`${inside(OTHER_CLOTHS[other.kind])}`,
      value: toBuyWords(other.answer, units),
    })),
  ];
}

/** Everything that is bought, with its amount in both units. */
export function shoppingRows(draft: Draft): readonly Row[] {
  const { units } = draft.project;
  return shoppingOf(draft).map(({ name, howMuch }) => ({
    name: printPhrase(name, units),
    value: bothUnits(howMuch, units),
  }));
}

function toBuyWords(answer: LayAnswer, units: Units): string {
  if (!answer.fits) {
    const [first] = answer.instead;
    const width = mm(answer.width);
    return printPhrase(first ? say`none fits ${width}; ${first}` : say`none fits ${width}`, units);
  }
  const { toBuy, width, layout } = answer.lay;
  return printPhrase(say`${amount(toBuy)} of ${mm(width)}, ${LAYOUT_WORDS[layout]}`, units);
}

/** Each piece of the lay, which way up it lies and where its grainline goes; nothing where the cloth is too narrow. */
export function layRows(draft: Draft): readonly Row[] {
  const { answer } = clothOf(draft);
  if (!answer.fits) return [];
  return laidRows(answer.lay, draft.pieces).map(({ name, place }) => ({
    name: said(name),
    value: printPhrase(place, draft.project.units),
  }));
}
