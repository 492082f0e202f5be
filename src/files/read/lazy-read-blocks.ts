import type { Result } from '../../words';
import type { BroughtBlocks } from './blocks';

/**
 * Reads a front and a back block from an SVG drawing; the reader is loaded when it is first asked for.
 *
 * @param text of the file
 */
export const readBlocks = async (text: string): Promise<Result<BroughtBlocks>> =>
  (await import('./blocks')).readBlocks(text);
