import { printPhrase } from '../../length';
import { LARGEST_FILE, openProject, salvageProject, tooLarge } from '../../project';
import { useBench } from '../store/bench';
import { bringBlocks } from './bring-blocks';
import { useOffered } from './repairs';

/**
 * Opens a file that was chosen or dropped, a project or a drawing of blocks; one that can't be read changes nothing and is spoken of, one that can be
 * repaired is offered with the list of repairs.
 */
export async function openFromFile(file: File): Promise<void> {
  if (/\.svg$/i.test(file.name)) {
    await bringBlocks(file);
    return;
  }
  const { open, tell } = useBench.getState();
  const refuse = (reason: string) =>
    tell({ tone: 'refused', text: `“${file.name}” ${reason} Nothing here was changed.` });
  if (file.size > LARGEST_FILE) {
    refuse(printPhrase(tooLarge(file.size), 'cm'));
    return;
  }
  try {
    const text = await file.text();
    const salvaged = openProject(text).ok ? undefined : salvageProject(text);
    if (salvaged?.ok) useOffered.setState({ offered: { fileName: file.name, salvaged: salvaged.value } });
    else open(text, file.name);
  } catch {
    refuse('can’t be read.');
  }
}
