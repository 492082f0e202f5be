import { openProject } from '../../project';
import { inTurn, own, said, say, words } from '../../words';
import { tellFault, watchFaults } from '../save/faults';
import { useBench } from '../store/bench';
import { broughtIn, withNotes } from '../store/changes';
import { refusal } from '../store/refusal';
import { clearAddress, goToAddress, keepAddress } from './address';
import { type Keeper, startKeeper } from './keeper';
import { projectFromHash } from './link';
import { openLast } from './open-last';
import { surroundingsOfPage } from './page-surroundings';
import { openShelf, type Shelf } from './shelf';
import type { Surroundings } from './surroundings';

let page: { readonly shelf: Shelf; readonly keeper: Keeper; readonly around: Surroundings } | undefined;

/** What keeps things on this page, made when it is first asked for: by the start, before anything is shown. */
export function onThisPage(): NonNullable<typeof page> {
  if (page) return page;
  const shelf = openShelf();
  const around = surroundingsOfPage(shelf);
  page = { shelf, around, keeper: startKeeper(around) };
  return page;
}

/** A browser that doesn't answer for this long is not waited for, ms. */
const PATIENCE = 4000;

/**
 * Brings back what was on the bench before the page was closed, and then what came in a link. The editor is shown only
 * after this, so that nothing typed meanwhile could be lost.
 */
export async function bringBack(): Promise<void> {
  watchFaults();
  const { around, keeper } = onThisPage();
  let late = false;
  const patience = new Promise<void>((go) => {
    setTimeout(() => {
      late = true;
      go();
    }, PATIENCE);
  });
  await Promise.race([openLast(around, keeper, () => !late), patience]);
  if (late && !location.hash.includes('project=')) useBench.getState().tell({ tone: 'refused', text: said(LATE) });
  await openLink();
  goToAddress();
  keepAddress();
  window.addEventListener('hashchange', () => void openLink());
}

const LATE = say`This browser is slow to give back what it keeps: your projects are listed under Projects when it does.`;

/** Opens the project that a link holds, as a project of its own at the link's station, and takes it out of the address. */
async function openLink(): Promise<void> {
  const { tell } = useBench.getState();
  try {
    const text = await projectFromHash(location.hash);
    if (text === undefined) return;
    clearAddress();
    if (text.ok) {
      openLinked(text.value);
      goToAddress();
    } else {
      const why = inTurn(text.problems.map(({ phrase }) => phrase));
      tell({ tone: 'refused', text: words`This link ${why} Nothing here was changed.` });
    }
  } catch (fault) {
    // No fault of the link: what is on the bench stays, and the page goes on.
    tellFault(say`opening a link`, fault);
  }
}

function openLinked(text: string): void {
  const result = openProject(text);
  if (!result.ok) {
    useBench.getState().tell({ tone: 'refused', text: refusal(result.problems, words`The link`) });
    return;
  }
  const told = words`“${own(result.value.name)}” came with the link, and is now a project of yours.`;
  useBench.setState((state) => broughtIn(state, result.value, words`opening a link`, withNotes(told, result.notes)));
}
