import type { WantedAlong } from '../../drawing';
import { type Draft, sheetsOf } from '../../project';
import { controlLengths } from '../../sheets';
import { mm, printPhrase, say } from '../../words';

/** The height of the capitals, on the paper: they are read over the taped pattern. */
const CAPITALS = 2.4;

/** The lengths that prove the joins, each once along its line. */
export function controlWords(draft: Draft): readonly WantedAlong[] {
  const { printed, project } = draft;
  const plan = sheetsOf(draft);
  const { scale } = project.paper;
  return controlLengths(printed, plan, project.paper).map(({ name, length, curves }) => ({
    runs: [curves],
    says: [
      printPhrase(say`${name}: ${mm(length)} when joined`, project.units),
      printPhrase(say`${mm(length)} when joined`, project.units),
    ],
    size: CAPITALS / scale,
    turn: plan.places[0]?.turn ?? 0,
    side: 'inside',
    once: true,
  }));
}
