import type { BlockTold } from '../body';
import { toldByBlocks } from '../trace';
import type { Project } from './types';

/** What the project's own blocks tell of its body; looked for only where something is taken from them. */
export const toldToBody = ({ body, block }: Pick<Project, 'body' | 'block'>): BlockTold =>
  (body.fromBlock ?? []).length > 0 ? toldByBlocks(block) : {};
