import {
  differenceTold,
  isBrought,
  type PairDifference,
  TRUING_NAMES,
  type TruedPair,
  type Truing,
  truingDone,
  truingOffered,
} from '../../../trace';
import { all, inside, mm, type Phrase, printPhrase, said, say, words } from '../../../words';
import { focusOn } from '../../aloud/focus-on';
import { sayAloud } from '../../aloud/say-aloud';
import { Group } from '../../fields/Group';
import { useBench } from '../../store/bench';

/** What front and back differ by where they are sewn or run on; each is trued at a press, and none by itself. */
export function PairTrued({ trued: { made, left } }: { readonly trued: TruedPair }) {
  const units = useBench((state) => state.project.units);
  const print = (phrase: Phrase) => printPhrase(phrase, units);
  const change = (next: (chosen: readonly Truing[]) => readonly Truing[], told: Phrase) => {
    const { project, choose } = useBench.getState();
    if (!isBrought(project.block)) return;
    const chosen = next(project.block.trued ?? []);
    choose('block.trued', chosen.length > 0 ? chosen : undefined);
    sayAloud(print(told));
    // The press goes with what it did.
    focusOn('.truings');
  };
  const off = left.filter(({ kind }) => kind !== 'even');
  const even = left.filter(({ kind, truing }) => kind === 'even' && made.every((one) => one.truing !== truing));
  return (
    <Group name={words`Front and back as a pair`}>
      <ul className="savings truings" tabIndex={-1} aria-label={words`Front and back as a pair`}>
        {off.map((difference) => (
          <li key={difference.truing}>
            {print(differenceTold(difference))}
            {difference.kind === 'offered' && (
              <button
                type="button"
                className="check-fix"
                onClick={() => change((chosen) => withTruing(chosen, difference), truingDone(difference))}
              >
                {print(truingOffered(difference))}
              </button>
            )}
          </li>
        ))}
        {made.map((difference) => (
          <li key={`trued ${difference.truing}`}>
            {print(truingDone(difference))}{' '}
            <button
              type="button"
              className="plain-link"
              aria-label={words`As it was brought: ${inside(TRUING_NAMES[difference.truing])}`}
              onClick={() =>
                change((chosen) => chosen.filter((one) => one !== difference.truing), say`As it was brought again.`)
              }
            >
              {words`As it was brought`}
            </button>
          </li>
        ))}
      </ul>
      {even.length > 0 && (
        <p className="field-help">
          {print(say`Even within ${mm(1)}: ${all(even.map(({ truing }) => say`${inside(TRUING_NAMES[truing])}`))}.`)}
        </p>
      )}
      {made.length > 0 && <p className="field-help">{said(DOTTED)}</p>}
    </Group>
  );
}

const DOTTED = say`The dotted line is what was brought; it is kept, and truing can be taken back at any time.`;

/** What was trued before and has come apart again by another truing is trued once more, last. */
const withTruing = (chosen: readonly Truing[], { truing }: PairDifference): readonly Truing[] => [
  ...chosen.filter((one) => one !== truing),
  truing,
];
