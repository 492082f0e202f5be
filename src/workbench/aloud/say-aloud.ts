import { create } from 'zustand';
import { own, words } from '../../words';
import { useBench } from '../store/bench';

/** What was done last and is seen on the screen at once, for those who listen instead of looking. */
export const useAloud = create<{ readonly said: string }>()(() => ({ said: '' }));

/** The same words said twice are two events: a space that nobody hears makes them differ. */
const AGAIN = ' ';

export function sayAloud(text: string): void {
  useAloud.setState(({ said }) => ({ said: said === text ? text + AGAIN : text }));
}

/** One step back, and what it took back. */
export function undoAloud(): void {
  const { history, undo } = useBench.getState();
  const last = history.past.at(-1);
  if (!last) return;
  undo();
  sayAloud(words`Undone: ${own(last.label)}.`);
}

/** One step forward again, and what it brought back. */
export function redoAloud(): void {
  const { history, redo } = useBench.getState();
  const [next] = history.future;
  if (!next) return;
  redo();
  sayAloud(words`Redone: ${own(next.label)}.`);
}
