import { create } from 'zustand';
import type { DrawnSheet } from '../../trace';

/** A drawing whose blocks are still to be picked. */
export interface OpenedSheet {
  readonly sheet: DrawnSheet;
  readonly fileName: string;
  /** Whether its blocks begin a project of their own. */
  readonly anew: boolean;
}

/** The drawing that is open on its screen, if one is; small, so that the first load needs no more of it. */
export const useOpenedSheet = create<{ readonly opened: OpenedSheet | undefined }>()(() => ({ opened: undefined }));

export const openSheet = (opened: OpenedSheet): void => useOpenedSheet.setState({ opened });
export const closeSheet = (): void => useOpenedSheet.setState({ opened: undefined });
