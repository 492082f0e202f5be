import { safeFileName } from '../../files';
import { saveProject } from '../../project';
import { own, words } from '../../words';
import { isStale } from '../store/asked';
import { useBench } from '../store/bench';
import { download } from './download';

/** Saves the project as a file. What can't be drawn can't be reopened either, so the last good state is saved then, and said. */
export function saveToFile(): void {
  const state = useBench.getState();
  const project = { ...state.draft.project, name: state.project.name };
  const fileName = `${safeFileName(project.name)}.legwork.json`;
  download(saveProject(project), 'application/json', fileName);
  const text = isStale(state)
    ? words`Saved as “${own(fileName)}” with the last values that can be drawn.`
    : words`Saved as “${own(fileName)}”.`;
  state.tell({ tone: 'told', text });
}
