import { words } from '../../words';
import { noHistory } from '../store/history';
import { type Keeper, LAST } from './keeper';
import { EXAMPLE } from './keeping';
import { shelveNotes } from './shelve-notes';
import type { Surroundings } from './surroundings';

/**
 * Opens what was on the bench last; what could not be kept before the page was closed is brought back from its note.
 *
 * @param wanted whether it still may take the place of what is on the bench
 */
export async function openLast(around: Surroundings, keeper: Keeper, wanted: () => boolean): Promise<void> {
  const { shelf, ofTab } = around;
  const { left, trouble } = await shelveNotes(around);
  try {
    const id = ofTab.get(LAST) ?? (trouble === undefined ? await shelf.last() : undefined);
    const noted = id === undefined ? left[0] : left.find(({ read }) => read.id === id);
    if (id === EXAMPLE && wanted()) keeper.look();
    else if (noted && wanted()) keeper.bring(noted.read, noted.history ?? noHistory);
    else if (id !== undefined && !(await keeper.open(id, wanted)) && wanted()) await tellUnread(around, id);
    if (trouble !== undefined) keeper.tellTrouble(trouble);
  } catch (fault) {
    keeper.tellTrouble(trouble ?? fault);
  }
}

/** Says that the last project can't be read, if it is there at all. */
async function tellUnread({ shelf, bench }: Surroundings, id: string): Promise<void> {
  if (!(await shelf.list()).some((one) => one.id === id)) return;
  bench.getState().tell({
    tone: 'refused',
    text: words`The project that was open last can’t be read here. It is left as it is, and listed under Projects with all others.`,
  });
}
