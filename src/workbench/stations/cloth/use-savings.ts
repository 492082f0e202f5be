import { useEffect, useState } from 'react';
import { type ClothSaving, type Draft, inOrder, savingQuestions } from '../../../project';
import { useBench } from '../../store/bench';
import { useTable } from '../../table/table-state';

/** After this long without a change nobody is dragging or typing, milliseconds. */
const QUIET = 250;

/** What would save cloth, as far as it is known by now. */
export interface SavingsFound {
  readonly savings: readonly ClothSaving[];
  readonly done: boolean;
}

interface Found extends SavingsFound {
  readonly draft: Draft;
}

const NOTHING_YET: SavingsFound = { savings: [], done: false };

/**
 * Looks for what would save cloth once nothing has changed for a moment, one lay or two at a time: between them the screen
 * answers. While something on the drawing is held, nothing is looked for.
 */
export function useSavings(): SavingsFound {
  const draft = useBench((state) => state.draft);
  const held = useTable((state) => state.held !== undefined);
  const [found, setFound] = useState<Found | undefined>(undefined);
  const known = found?.draft === draft ? found : undefined;
  const done = known?.done ?? false;
  useEffect(() => {
    if (held || done) return;
    const questions = savingQuestions(draft);
    let timer: ReturnType<typeof setTimeout>;
    const ask = (next: number, savings: readonly ClothSaving[]) => {
      const answer = questions[next]?.();
      const all = answer ? inOrder([...savings, answer]) : savings;
      const last = next + 1 >= questions.length;
      if (answer || last) setFound({ draft, savings: all, done: last });
      if (!last) timer = setTimeout(() => ask(next + 1, all));
    };
    timer = setTimeout(() => ask(0, []), QUIET);
    return () => clearTimeout(timer);
  }, [draft, held, done]);
  return known ?? NOTHING_YET;
}
