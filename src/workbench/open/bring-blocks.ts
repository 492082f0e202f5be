import { checksOf } from '../../project';
import { inTurn, own, printPhrase, say } from '../../words';
import { openSheet } from '../outlines/opened';
import { isUnmeasured } from '../store/asked';
import { useBench } from '../store/bench';
import { refusal } from '../store/refusal';
import { readDrawing } from './read-drawing';
import { withText } from './with-text';

/**
 * Brings the front and back block of a drawing, SVG or DXF, to the table, as one step to undo: at once where its lines
 * have our names, else its outlines are shown to be picked from. A drawing that can't be read changes nothing and is spoken of.
 *
 * @param anew whether they begin a project of their own
 */
export async function bringBlocks(file: File, anew: boolean): Promise<void> {
  const { takeBlocks, tell } = useBench.getState();
  await withText(file, async (text) => {
    const read = await readDrawing(text);
    if (!read.ok) {
      tell({ tone: 'refused', text: refusal(read.problems, file.name) });
      return;
    }
    if ('sheet' in read.value) {
      openSheet({ sheet: read.value.sheet, fileName: file.name, anew });
      return;
    }
    takeBlocks({ source: 'drawn', ...read.value.pair }, say`The blocks of “${own(file.name)}” are on the table.`, anew);
    const state = useBench.getState();
    const { draft, notice, problems, project } = state;
    // Their rise is checked against the body’s, once that is measured.
    const parts =
      problems.length > 0 || isUnmeasured(state) ? undefined : checksOf(draft).find(({ id }) => id === 'traced-parts');
    if (notice && parts?.verdict === 'wrong')
      tell({
        ...notice,
        text: printPhrase(inTurn([say`${own(notice.text)}`, parts.reason, parts.remedy]), project.units),
      });
  });
}
