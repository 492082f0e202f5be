import type { WantedAlong } from '../../drawing';
import { type Draft, sheetsOf } from '../../project';
import { controlLengths } from '../../sheets';
import { mm, type Phrase, printPhrase, say } from '../../words';

/** The height of the capitals, on the paper: they are read over the taped pattern. */
const CAPITALS = 2.4;

/** The lengths that prove the joins, or the print of one sheet, each once along its line. */
export function controlWords(draft: Draft): readonly WantedAlong[] {
  const { project } = draft;
  const plan = sheetsOf(draft);
  const { scale } = project.paper;
  const told = (phrase: Phrase) => printPhrase(phrase, project.units);
  return controlLengths(draft.printed, plan, project.paper).map(({ name, length, curves }) => ({
    runs: [curves],
    says:
      plan.sheets.length > 1
        ? [told(say`${name}: ${mm(length)} when joined`), told(say`${mm(length)} when joined`)]
        : [told(say`${name}: ${mm(length)} when printed at 100 %`), told(say`${mm(length)} at 100 %`)],
    size: CAPITALS / scale,
    turn: plan.places[0]?.turn ?? 0,
    side: 'inside',
    once: true,
  }));
}
