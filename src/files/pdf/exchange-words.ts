import { changedSince, type Draft, printDay } from '../../project';
import { planParts, type Reprint, STILL } from '../../sheets';
import { all, dated, mm, own, printPhrase, say, words } from '../../words';
import { bullets, headed, type Passage } from '../pen/passage';

/** What to exchange in a pattern that was printed before: when that was, what has changed since, what to throw away and what to keep. */
export function exchangePassages(draft: Draft, { plan, anew, away, moved }: Reprint): readonly Passage[] {
  const { lastPrint, units } = draft.project;
  const labels = (list: readonly string[]) => own(list.join(', '));
  const changes = changedSince(draft);
  const again = plan.sheets.filter(({ label }) => anew.includes(label));
  const printed = planParts({ sheets: again }).map(({ label }) => label);
  const keep = planParts(plan)
    .map(({ label }) => label)
    .filter((label) => !printed.includes(label));
  return headed(
    words`Only changed sheets`,
    bullets([
      ...(lastPrint ? [words`The other sheets were printed on ${own(dated(printDay(lastPrint)))} or earlier.`] : []),
      ...(changes.length > 0 ? [printPhrase(say`Changed since: ${all(changes)}.`, units)] : []),
      words`In this file: ${labels(printed)}.`,
      ...(away.length > 0 ? [words`Throw away the old ${labels(away)}.`] : []),
      printPhrase(
        moved < STILL
          ? say`Keep ${labels(keep)}: no line on them has moved.`
          : say`Keep ${labels(keep)}: no line on them has moved by more than ${mm(moved)}.`,
        units,
      ),
      words`If one of these is missing, print that sheet from the file of all sheets; saved now, it is laid out the same way.`,
    ]),
  );
}
