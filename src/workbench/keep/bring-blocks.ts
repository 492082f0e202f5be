import { readBlocks } from '../../files';
import { useBench } from '../store/bench';
import { refusal } from '../store/refusal';
import { withText } from './with-text';

/**
 * Brings the front and back block of an SVG drawing to the table, as one step to undo; a drawing that can't be read
 * changes nothing and is spoken of.
 */
export async function bringBlocks(file: File): Promise<void> {
  const { choose, tell } = useBench.getState();
  await withText(file, async (text) => {
    const read = await readBlocks(text);
    if (!read.ok) {
      tell({ tone: 'refused', text: refusal(read.problems, file.name) });
      return;
    }
    choose('block', { source: 'traced', ...read.value });
    tell({ tone: 'told', text: `The blocks of “${file.name}” are on the table. Undo brings the others back.` });
  });
}
