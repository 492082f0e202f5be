import { create } from 'zustand';

interface Show {
  readonly blank: boolean;
  readonly choosing: boolean;
  /** Which task of a step of the sewing is told, counted from 0: all at once would leave no room for the picture. */
  readonly task: number;
}

/** What is going on before a class, beside the step that is shown. */
export const useShow = create<Show>()(() => ({
  /** Whether the screen is dark, so that the class looks at the teacher. */
  blank: false,
  /** Whether the list of steps lies over it. */
  choosing: false,
  task: 0,
}));
