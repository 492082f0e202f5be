import { create } from 'zustand';

/** What is going on before a class, beside the step that is shown. */
export const useShow = create<{ readonly blank: boolean; readonly choosing: boolean }>()(() => ({
  /** Whether the screen is dark, so that the class looks at the teacher. */
  blank: false,
  /** Whether the list of steps lies over it. */
  choosing: false,
}));
