import { checksOf } from '../../project';
import { inTurn, own, printPhrase, say } from '../../words';
import { useBench } from '../store/bench';
import { refusal } from '../store/refusal';
import { readDrawing } from './read-drawing';
import { withText } from './with-text';

/**
 * Brings the front and back block of an SVG drawing to the table, as one step to undo; a drawing that can't be read
 * changes nothing and is spoken of.
 */
export async function bringBlocks(file: File): Promise<void> {
  const { choose, tell } = useBench.getState();
  await withText(file, async (text) => {
    const read = await readDrawing(text);
    if (!read.ok) {
      tell({ tone: 'refused', text: refusal(read.problems, file.name) });
      return;
    }
    choose('block', { source: 'traced', ...read.value });
    const { draft, problems, project } = useBench.getState();
    const parts = problems.length > 0 ? undefined : checksOf(draft).find(({ id }) => id === 'traced-parts');
    const doubt = parts?.verdict === 'wrong' ? [parts.reason, parts.remedy] : [];
    const told = say`The blocks of “${own(file.name)}” are on the table. Undo brings the others back.`;
    tell({ tone: 'told', text: printPhrase(inTurn([told, ...doubt]), project.units) });
  });
}
