import { create } from 'zustand';

/** Whether the photograph screen is open; small, so that the first load needs no more of it. */
export const usePhotoOpen = create<{ readonly open: boolean; readonly file: File | undefined }>()(() => ({
  open: false,
  file: undefined,
}));

/** Opens the screen, with a photograph that was dropped on the page, if there is one. */
export const openPhoto = (file?: File) => usePhotoOpen.setState({ open: true, file });
