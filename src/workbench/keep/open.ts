import { printPhrase } from '../../length';
import { LARGEST_FILE, tooLarge } from '../../project';
import { useBench } from '../store/bench';

/** Opens a file that was chosen or dropped; one that can't be read changes nothing and is spoken of. */
export async function openFromFile(file: File): Promise<void> {
  const { open, tell } = useBench.getState();
  const refuse = (reason: string) =>
    tell({ tone: 'refused', text: `“${file.name}” ${reason} Nothing here was changed.` });
  if (file.size > LARGEST_FILE) {
    refuse(printPhrase(tooLarge(file.size), 'cm'));
    return;
  }
  try {
    open(await file.text(), file.name);
  } catch {
    refuse('can’t be read.');
  }
}
