import { words } from '../../words';
import { withLate } from '../faults/late';

/**
 * Brings the blocks of a drawing to the table by what is loaded for it only then.
 *
 * @param anew whether they begin a project of their own
 */
export const bring = (file: File, anew = false): void =>
  withLate(
    words`The reader of drawings`,
    () => import('./bring-blocks'),
    ({ bringBlocks }) => void bringBlocks(file, anew),
  );
