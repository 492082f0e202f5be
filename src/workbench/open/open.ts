import { openProject, salvageProject } from '../../project';
import { words } from '../../words';
import { openClass } from '../class/class-open';
import { withLate } from '../faults/late';
import { openPhoto } from '../photo/opened';
import { useBench } from '../store/bench';
import { bring } from './bring';
import { isTable } from './carried';
import { useOffered } from './repairs';
import { withText } from './with-text';

/**
 * Opens a file that was chosen or dropped: a project, a drawing of blocks or a photograph of them, or the table of a
 * class. One that can't be read changes nothing and is spoken of, one that can be repaired is offered with the list of
 * repairs.
 */
export async function openFromFile(file: File): Promise<void> {
  if (/\.(svg|dxf)$/i.test(file.name)) {
    bring(file);
    return;
  }
  if (file.type.startsWith('image/')) {
    openPhoto(file);
    return;
  }
  if (isTable(file)) {
    withLate(
      words`The sheet for a class`,
      () => import('../class/class-table'),
      ({ chooseTable }) => {
        openClass();
        void chooseTable(file);
      },
    );
    return;
  }
  await withText(file, (text) => {
    const salvaged = openProject(text).ok ? undefined : salvageProject(text);
    if (salvaged?.ok) useOffered.setState({ offered: { fileName: file.name, salvaged: salvaged.value } });
    else useBench.getState().open(text, file.name);
  });
}
