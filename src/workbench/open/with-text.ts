import { LARGEST_FILE, tooLarge } from '../../project';
import { own, type Phrase, say, words } from '../../words';
import { useBench } from '../store/bench';

/**
 * Hands the text of a file that was chosen or dropped to what is done with it. A file that is too large or that can't be
 * read changes nothing and is spoken of.
 */
export async function withText(file: File, work: (text: string) => void | Promise<void>): Promise<void> {
  const refuse = (reason: Phrase) =>
    useBench.getState().tell({ tone: 'refused', text: words`“${own(file.name)}” ${reason} Nothing here was changed.` });
  if (file.size > LARGEST_FILE) {
    refuse(tooLarge(file.size));
    return;
  }
  let text: string;
  try {
    text = await file.text();
  } catch {
    refuse(say`can’t be read.`);
    return;
  }
  try {
    await work(text);
  } catch (error) {
    // No fault of the file.
    console.error(error);
    refuse(say`could not be opened because of an error in Legwork: please report it.`);
  }
}
