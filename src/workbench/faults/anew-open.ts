import { create } from 'zustand';

/** Whether somebody is asked how to begin anew, beside a project that is open. */
export const useAnewOpen = create<{ readonly open: boolean }>()(() => ({ open: false }));
