import { LAYOUT_WORDS } from '../../../cloth';
import { pieceName } from '../../../edges';
import { formatAmount, formatLength, plain } from '../../../length';
import { clothOf } from '../../../project';
import { printPhrase, words } from '../../../words';
import { useBench } from '../../store/bench';

/** By this it is found again. */
export const CLOTH_RESULT = 'cloth-result';

/** How much to buy, or why none of this width and what would do. */
export function ClothResult() {
  const draft = useBench((state) => state.draft);
  const units = useBench((state) => state.project.units);
  const { answer } = clothOf(draft);
  const l = (value: number) => formatLength(value, units);
  if (!answer.fits) {
    return (
      <div id={CLOTH_RESULT} tabIndex={-1} className="cloth-result" data-fits="no" aria-live="polite">
        <p>
          <strong>Does not fit this width.</strong> The {words`${pieceName(answer.widest.piece)}`} is{' '}
          {l(answer.widest.width)} wide; {words`${LAYOUT_WORDS[answer.layout]}`} {l(answer.room)} can be cut. What would
          fit:
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
  const other = units === 'cm' ? 'inch' : 'cm';
  return (
    <div id={CLOTH_RESULT} tabIndex={-1} className="cloth-result" aria-live="polite">
      <p>
        <strong>
          Buy {formatAmount(lay.toBuy, units)} ({formatAmount(lay.toBuy, other)})
        </strong>
        , {l(lay.width)} wide, laid {words`${LAYOUT_WORDS[lay.layout]}`}: the pieces need {l(lay.lengthNeeded)} of it,
        and {plain(lay.waste * 100, 0)} % is left over.
      </p>
    </div>
  );
}
