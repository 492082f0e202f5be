import { safeFileName } from '../../files';
import { printProblem } from '../../length';
import { LARGEST_FILE, openProject, type Project } from '../../project';
import { useBench } from '../store/bench';

/**
 * Reads project files that were chosen to be drawn together with the one on the table.
 *
 * @returns all of them, or undefined where one can't be read, which is then spoken of
 */
export async function readProjects(
  files: readonly File[],
): Promise<readonly { readonly name: string; readonly project: Project }[] | undefined> {
  const read: { readonly name: string; readonly project: Project }[] = [];
  for (const file of files) {
    const opened = file.size > LARGEST_FILE ? undefined : openProject(await file.text());
    if (opened?.ok) {
      read.push({ name: safeFileName(file.name.replace(/(\.legwork)?\.json$/i, '')), project: opened.value });
      continue;
    }
    const why = opened?.problems.map((problem) => printProblem(problem, 'cm')).join(' ') ?? 'it is too large.';
    useBench.getState().tell({ tone: 'refused', text: `“${file.name}” is no project that can be drawn: ${why}` });
    return undefined;
  }
  return read;
}
