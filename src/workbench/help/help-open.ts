import { create } from 'zustand';

/** Whether the help is open: from the bar, or by its key. */
export const useHelpOpen = create<{ readonly open: boolean }>()(() => ({ open: false }));

export const openHelp = (): void => useHelpOpen.setState({ open: true });
