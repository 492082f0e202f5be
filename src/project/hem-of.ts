import { type HemChoices, usualTurnUnder } from '../edges';
import type { Project } from './types';

/** How the hem is finished, with what is left to the drafting found from the cloth. */
export const hemOf = ({ hem, cloth }: Pick<Project, 'hem' | 'cloth'>): HemChoices => ({
  ...hem,
  turnUnder: hem.turnUnder === 'auto' ? usualTurnUnder(cloth.kind) : hem.turnUnder,
});
