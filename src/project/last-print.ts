import type { Print, Project } from './types';

/** The project of which nothing is known to be printed. */
export function withoutLastPrint(project: Project): Omit<Project, 'lastPrint'> {
  if (!project.lastPrint) return project;
  const { lastPrint: _none, ...others } = project;
  return others;
}

/** The project where what was saved last never came to paper: what was printed before that counts. */
export function lastPrintTakenBack(project: Project): Project {
  const before = project.lastPrint?.before;
  return before ? { ...project, lastPrint: before } : withoutLastPrint(project);
}

/** Midday of the day of a print, by the clock here. */
export const printDay = ({ on }: Pick<Print, 'on'>): Date => new Date(`${on}T12:00:00`);
