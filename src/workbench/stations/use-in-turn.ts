import { useEffect, useState } from 'react';
import type { Draft } from '../../project';
import { useBench } from '../store/bench';
import { useTable } from '../table/table-state';

/** After this long without a change nobody is dragging or typing, milliseconds. */
const QUIET = 250;

/** Questions about a draft that take long to answer; undefined where the answer is nothing. */
export type Questions<Answer> = (draft: Draft) => readonly (() => Answer | undefined)[];

/** What was answered by now, in the order of the questions, and whether all were asked. */
export interface InTurn<Answer> {
  readonly answers: readonly Answer[];
  readonly done: boolean;
}

/**
 * Asks costly questions about the draft once nothing has changed for a moment, one at a time: between them the screen
 * answers. While something on the drawing is held, nothing is asked.
 *
 * @param questionsOf the same function at each call
 */
export function useInTurn<Answer>(questionsOf: Questions<Answer>): InTurn<Answer> {
  const draft = useBench((state) => state.draft);
  const held = useTable((state) => state.held !== undefined);
  const [found, setFound] = useState<(InTurn<Answer> & { readonly draft: Draft }) | undefined>(undefined);
  const known = found?.draft === draft ? found : undefined;
  const done = known?.done ?? false;
  useEffect(() => {
    if (held || done) return;
    let timer: ReturnType<typeof setTimeout>;
    const ask = ([question, ...more]: ReturnType<Questions<Answer>>, before: readonly Answer[]) => {
      const answer = question?.();
      const answers = answer === undefined ? before : [...before, answer];
      const last = more.length === 0;
      if (answer !== undefined || last) setFound({ draft, answers, done: last });
      if (!last) timer = setTimeout(() => ask(more, answers));
    };
    timer = setTimeout(() => ask(questionsOf(draft), []), QUIET);
    return () => clearTimeout(timer);
  }, [draft, held, done, questionsOf]);
  return known ?? { answers: [], done: false };
}
