import { useEffect, useState } from 'react';
import { useKept } from '../shelf/kept';
import { onThisPage } from '../shelf/start';

/**
 * What stands on the shelf, read again whenever that changes; undefined until it has been read, and nothing where the
 * browser keeps nothing, which is then said.
 */
export function useShelved<Found>(read: () => Promise<readonly Found[]>): readonly Found[] | undefined {
  const changes = useKept((kept) => kept.changes);
  const [found, setFound] = useState<readonly Found[]>();
  // biome-ignore lint/correctness/useExhaustiveDependencies: each change of the shelf is a reason to read it again
  useEffect(() => {
    let gone = false;
    read().then(
      (all) => !gone && setFound(all),
      (fault) => {
        if (gone) return;
        setFound([]);
        onThisPage().keeper.tellTrouble(fault);
      },
    );
    return () => {
      gone = true;
    };
  }, [changes]);
  return found;
}

/** Changes something on the shelf; where that fails it is said, and nothing is changed. */
export async function changeShelf<Found>(work: () => Promise<Found>, id = ''): Promise<Found | undefined> {
  try {
    const done = await work();
    onThisPage().keeper.tellChange(id);
    return done;
  } catch (fault) {
    onThisPage().keeper.tellTrouble(fault);
    return undefined;
  }
}
