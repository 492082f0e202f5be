import { type Project, saveProject } from '../../project';

/** Whether two projects are the same but for how their numbers are printed, which no undo brings back. */
export const sameButUnits = (one: Project, other: Project): boolean =>
  saveProject({ ...one, units: 'cm' }) === saveProject({ ...other, units: 'cm' });
