import { safeFileName } from '../../files';
import { saveProject } from '../../project';
import { download } from '../save/download';
import { useBench } from '../store/bench';

/**
 * Saves the project as it stands, whether or not it can be drawn: after a fault what was typed last matters more than
 * that it draws. Opened again, it is looked through like any file.
 */
export function saveAnyhow(): void {
  const { project } = useBench.getState();
  download(saveProject(project), 'application/json', `${nameOf(project)}.legwork.json`);
}

/** The project is what may be broken. */
function nameOf(project: { readonly name: unknown }): string {
  return typeof project.name === 'string' ? safeFileName(project.name) : 'pattern';
}
