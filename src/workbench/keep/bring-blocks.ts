import { readBlocks } from '../../files';
import { printPhrase } from '../../length';
import { LARGEST_FILE, tooLarge } from '../../project';
import { useBench } from '../store/bench';
import { refusal } from '../store/refusal';

/**
 * Brings the front and back block of an SVG drawing to the table, as one step to undo; a drawing that can't be read
 * changes nothing and is spoken of.
 */
export async function bringBlocks(file: File): Promise<void> {
  const { choose, tell } = useBench.getState();
  const refuse = (text: string) => tell({ tone: 'refused', text });
  if (file.size > LARGEST_FILE) {
    refuse(`“${file.name}” ${printPhrase(tooLarge(file.size), 'cm')} Nothing here was changed.`);
    return;
  }
  try {
    const read = await readBlocks(await file.text());
    if (!read.ok) {
      refuse(refusal(read.problems, file.name));
      return;
    }
    choose('block', { source: 'traced', ...read.value });
    tell({ tone: 'told', text: `The blocks of “${file.name}” are on the table. Undo brings the others back.` });
  } catch {
    refuse(`“${file.name}” can’t be read. Nothing here was changed.`);
  }
}
