import { type Project, saveProject } from '../../project';
import { shownProject } from './read-copy';

/** Whether two projects are the same but for how their numbers are printed, which no undo brings back. */
export const sameButUnits = (one: Project, other: Project): boolean => plainText(one) === plainText(other);

/** The text by which projects are compared: read once more, its fields stand in the schema's order. */
function plainText(project: Project): string {
  const text = saveProject({ ...project, units: 'cm' });
  return saveProject(shownProject(text)?.value ?? project);
}
