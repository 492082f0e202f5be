import { printPhrase } from '../../length';
import { openProject } from '../../project';
import { useBench } from '../store/bench';
import { broughtIn } from '../store/changes';
import { refusal } from '../store/refusal';
import { type Keeper, remembered, startKeeper } from './keeper';
import { shelveLastNote } from './last-note';
import { projectFromHash } from './link';
import { openShelf, type Shelf } from './shelf';

export const shelf: Shelf = openShelf();
export const keeper: Keeper = startKeeper(shelf);

/** A browser that doesn't answer for this long keeps nothing, ms. */
const PATIENCE = 3000;

/**
 * Brings back what was on the bench before the page was closed, and then what came in a link. The editor is shown only
 * after this, so that nothing typed meanwhile could be lost.
 */
export async function bringBack(): Promise<void> {
  await Promise.race([openLast().catch(() => undefined), new Promise((go) => setTimeout(go, PATIENCE))]);
  await openLink();
  window.addEventListener('hashchange', () => void openLink());
}

async function openLast(): Promise<void> {
  await shelveLastNote(shelf);
  const id = remembered() ?? (await shelf.last());
  if (id !== undefined) await keeper.open(id);
}

/** Opens the project that a link holds, as a project of its own, and takes it out of the address. */
async function openLink(): Promise<void> {
  const text = await projectFromHash(location.hash);
  if (text === undefined) return;
  history.replaceState(null, '', location.pathname + location.search);
  const { tell } = useBench.getState();
  if (!text.ok) {
    const why = text.problems.map(({ phrase }) => printPhrase(phrase, 'cm')).join(' ');
    tell({ tone: 'refused', text: `This link ${why} Nothing here was changed.` });
    return;
  }
  try {
    const result = openProject(text.value);
    if (result.ok) {
      const told = `“${result.value.name}” came with the link, and is now a project of yours.`;
      useBench.setState((state) => broughtIn(state, result.value, 'opening a link', told));
    } else tell({ tone: 'refused', text: refusal(result.problems, 'The link') });
  } catch (error) {
    // No fault of the link: what is on the bench stays, and the page goes on.
    console.error(error);
    tell({
      tone: 'refused',
      text: 'The project in this link could not be drawn: a fault of Legwork, please report it. Nothing here was changed.',
    });
  }
}
