import { create } from 'zustand';

/** Whether the photograph screen is open; small, so that the first load needs no more of it. */
export const usePhotoOpen = create<{
  readonly open: boolean;
  readonly file: File | undefined;
  /** Whether its blocks begin a project of their own. */
  readonly anew: boolean;
}>()(() => ({ open: false, file: undefined, anew: false }));

/** Opens the screen, with a photograph that was dropped on the page, if there is one. */
export const openPhoto = (file?: File) => usePhotoOpen.setState({ open: true, file, anew: false });

/** Opens it for blocks that begin a project of their own. */
export const openPhotoAnew = () => usePhotoOpen.setState({ open: true, file: undefined, anew: true });
