import { safeFileName } from '../../files';
import { LARGEST_FILE, openProject, type Project } from '../../project';
import { own, printProblem, words } from '../../words';
import { useBench } from '../store/bench';
import { withNotes } from '../store/changes';

/**
 * Reads project files that were chosen to be drawn together with the one on the table.
 *
 * @returns all of them, or undefined where one can't be read, which is then spoken of
 */
export async function readProjects(
  files: readonly File[],
): Promise<readonly { readonly name: string; readonly project: Project }[] | undefined> {
  const read: { readonly name: string; readonly project: Project }[] = [];
  const notes: string[] = [];
  for (const file of files) {
    const opened = file.size > LARGEST_FILE ? undefined : openProject(await file.text());
    if (opened?.ok) {
      if (opened.notes.length > 0) notes.push(withNotes(words`“${own(file.name)}” is drawn, too.`, opened.notes));
      read.push({ name: safeFileName(file.name.replace(/(\.legwork)?\.json$/i, '')), project: opened.value });
      continue;
    }
    const why = opened?.problems.map((problem) => printProblem(problem, 'cm')).join(' ') ?? words`it is too large.`;
    useBench
      .getState()
      .tell({ tone: 'refused', text: words`“${own(file.name)}” isn’t a project that can be drawn: ${own(why)}` });
    return undefined;
  }
  if (notes.length > 0) useBench.getState().tell({ tone: 'told', text: notes.join(' ') });
  return read;
}
