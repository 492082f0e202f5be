import { create } from 'zustand';

/** Whether the class is open: from the bar, from Paper, or because a table came in. */
export const useClassOpen = create<{ readonly open: boolean }>()(() => ({ open: false }));

export const openClass = (): void => useClassOpen.setState({ open: true });
