import { printPhrase } from '../../length';
import { openProject } from '../../project';
import { useBench } from '../store/bench';
import { broughtIn } from '../store/changes';
import { noHistory } from '../store/history';
import { refusal } from '../store/refusal';
import { tellFault, watchFaults } from './faults';
import { type Keeper, LAST, startKeeper } from './keeper';
import { notedLast } from './last-note';
import { projectFromHash } from './link';
import { surroundingsOfPage } from './page-surroundings';
import { openShelf, type Shelf } from './shelf';
import { shelveNotes } from './shelve-notes';

export const shelf: Shelf = openShelf();
const around = surroundingsOfPage(shelf);
export const keeper: Keeper = startKeeper(around);

/** A browser that doesn't answer for this long is not waited for, ms. */
const PATIENCE = 4000;

/**
 * Brings back what was on the bench before the page was closed, and then what came in a link. The editor is shown only
 * after this, so that nothing typed meanwhile could be lost.
 */
export async function bringBack(): Promise<void> {
  watchFaults();
  let late = false;
  const patience = new Promise<void>((go) => {
    setTimeout(() => {
      late = true;
      go();
    }, PATIENCE);
  });
  await Promise.race([openLast(() => !late), patience]);
  if (late && location.hash === '') useBench.getState().tell({ tone: 'refused', text: LATE });
  await openLink();
  window.addEventListener('hashchange', () => void openLink());
}

const LATE = 'This browser is slow to give back what it keeps: your projects are listed under Projects when it does.';

/**
 * Opens what was on the bench last.
 *
 * @param wanted whether it still may take the place of what is on the bench
 */
async function openLast(wanted: () => boolean): Promise<void> {
  try {
    await shelveNotes(around);
    const id = around.ofTab.get(LAST) ?? (await shelf.last());
    if (id !== undefined && !(await keeper.open(id, wanted)) && wanted()) await tellUnread(id);
  } catch (fault) {
    // Without a storage there may be a note of the work still.
    const [noted] = notedLast(around.onComputer);
    if (noted?.read && wanted()) keeper.bring(noted.read, noted.history ?? noHistory);
    keeper.tellTrouble(fault);
  }
}

/** Says that the last project can't be read, if it is there at all. */
async function tellUnread(id: string): Promise<void> {
  if (!(await shelf.list()).some((one) => one.id === id)) return;
  useBench.getState().tell({
    tone: 'refused',
    text: 'The project that was open last can’t be read here. It is left as it is, and listed under Projects with all others.',
  });
}

/** Opens the project that a link holds, as a project of its own, and takes it out of the address. */
async function openLink(): Promise<void> {
  const { tell } = useBench.getState();
  try {
    const text = await projectFromHash(location.hash);
    if (text === undefined) return;
    history.replaceState(null, '', location.pathname + location.search);
    if (text.ok) openLinked(text.value);
    else {
      const why = text.problems.map(({ phrase }) => printPhrase(phrase, 'cm')).join(' ');
      tell({ tone: 'refused', text: `This link ${why} Nothing here was changed.` });
    }
  } catch (fault) {
    // No fault of the link: what is on the bench stays, and the page goes on.
    tellFault('opening a link', fault);
  }
}

function openLinked(text: string): void {
  const result = openProject(text);
  if (!result.ok) {
    useBench.getState().tell({ tone: 'refused', text: refusal(result.problems, 'The link') });
    return;
  }
  const told = `“${result.value.name}” came with the link, and is now a project of yours.`;
  useBench.setState((state) => broughtIn(state, result.value, 'opening a link', told));
}
