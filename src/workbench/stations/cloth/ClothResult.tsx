import { LAYOUT_WORDS, type Lay, type LayAnswer } from '../../../cloth';
import { pieceName } from '../../../edges';
import { formatAmount } from '../../../length';
import { clothOf } from '../../../project';
import { mm, number, own, type Phrase, type PhraseValue, printPhrase, say, words } from '../../../words';
import { useBench } from '../../store/bench';

/** By this it is found again. */
export const CLOTH_RESULT = 'cloth-result';

/** How much to buy, or why none of this width and what would do. */
export function ClothResult() {
  const draft = useBench((state) => state.draft);
  const units = useBench((state) => state.project.units);
  const { answer } = clothOf(draft);
  if (!answer.fits) {
    return (
      <div id={CLOTH_RESULT} tabIndex={-1} className="cloth-result" data-fits="no" aria-live="polite">
        <p>
          <strong>{words`Does not fit this width.`}</strong> {printPhrase(tooWide(answer), units)}
        </p>
        <ul>
          {answer.instead.map((phrase) => (
            <li key={printPhrase(phrase, units)}>{printPhrase(phrase, units)}</li>
          ))}
        </ul>
      </div>
    );
  }
  const { lay } = answer;
  const amounts = (['cm', 'inch'] as const).map((one) => formatAmount(lay.toBuy, one));
  const [here = '', there = ''] = units === 'cm' ? amounts : amounts.toReversed();
  const buy = words`Buy ${own(here)} (${own(there)})`;
  const [before, after] = printPhrase(bought(own(PLACE), lay), units).split(PLACE);
  return (
    <div id={CLOTH_RESULT} tabIndex={-1} className="cloth-result" aria-live="polite">
      <p>
        {before}
        <strong>{buy}</strong>
        {after}
      </p>
    </div>
  );
}

const tooWide = ({ widest, layout, room }: Extract<LayAnswer, { fits: false }>): Phrase =>
  say`The ${pieceName(widest.piece)} is ${mm(widest.width)} wide; ${LAYOUT_WORDS[layout]} ${mm(room)} can be cut. What would fit:`;

/** Where the words stand that are shown larger: no letter that anybody writes. */
const PLACE = '\uE000';

const bought = (buy: PhraseValue, { width, layout, lengthNeeded, waste }: Lay): Phrase =>
  say`${buy}, ${mm(width)} wide, laid ${LAYOUT_WORDS[layout]}: the pieces need ${mm(lengthNeeded)} of it, and ${number(waste * 100, 0)} % is left over.`;
