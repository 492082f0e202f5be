import type { Page } from 'playwright-core';

interface KeptCopy {
  readonly text: string;
  readonly revision: number;
}

/** All copies on the shelf of the page's browser, the newest of a project first. */
const keptCopies = (page: Page): Promise<KeptCopy[]> =>
  page.evaluate(async () => {
    const result = <T>(request: IDBRequest<T>) =>
      new Promise<T>((done) => {
        request.onsuccess = () => done(request.result);
      });
    const { length } = (await indexedDB.databases()).filter(({ name }) => name === 'legwork');
    // To open one that isn't there would make it.
    if (length === 0) return [];
    const db = await result(indexedDB.open('legwork'));
    const values: { text?: string; revision?: number }[] = await result(
      db.transaction('shelf').objectStore('shelf').getAll(),
    );
    db.close();
    return values
      .flatMap(({ text, revision }) => (text === undefined ? [] : [{ text, revision: revision ?? 0 }]))
      .sort((a, b) => b.revision - a.revision);
  });

/** The texts of all copies on the shelf. */
export const keptTexts = async (page: Page): Promise<string[]> => (await keptCopies(page)).map(({ text }) => text);
