import { create } from 'zustand';

/** Whether the list of projects is open: from the bar, or from a place where something went wrong. */
export const useProjectsOpen = create<{ readonly open: boolean }>()(() => ({ open: false }));
