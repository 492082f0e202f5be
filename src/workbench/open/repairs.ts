import { create } from 'zustand';
import type { Salvaged } from '../../project';

/** A broken file whose repairs wait to be agreed to. */
export interface Offered {
  readonly fileName: string;
  readonly salvaged: Salvaged;
}

export const useOffered = create<{ readonly offered: Offered | undefined }>()(() => ({ offered: undefined }));
