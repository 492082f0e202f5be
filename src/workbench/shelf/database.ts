/** A browser that keeps nothing: it has no storage, refuses it, or doesn't answer. */
export class NoStorage extends Error {
  override readonly name = 'NoStorage';
}

/** Runs work within one transaction, which holds as a whole or not at all. */
export type Within = <Found>(
  mode: IDBTransactionMode,
  work: (store: IDBObjectStore) => Promise<Found>,
) => Promise<Found>;

/** How long a browser is waited for, ms. */
export interface Patience {
  /** Until it has opened its storage. */
  readonly opening: number;
  /** Until it has carried out what was asked of it. */
  readonly answer: number;
}

const PATIENCE: Patience = { opening: 3000, answer: 10_000 };

/** Everything is in one store. */
const STORE = 'shelf';

/**
 * A database of the browser. It is opened when it is first used, and again when it was closed or could not be opened. The
 * transaction's promise is kept only when the browser says that all of it is written.
 *
 * @param storage the browser's storage, or a test's; asked for at each opening, because a browser may throw at the word
 * @returns the way to it, which fails with {@link NoStorage} where there is none, and as the browser said otherwise
 */
export function openDatabase(
  name: string,
  storage: () => IDBFactory | undefined = () => globalThis.indexedDB,
  patience = PATIENCE,
): Within {
  let opening: Promise<IDBDatabase> | undefined;
  // Once it was waited for in vain, nobody waits again; what is asked after it has come at last is answered.
  let inVain = false;

  function database(): Promise<IDBDatabase> {
    if (opening) return opening;
    const attempt = opened(name, storage);
    const forget = () => {
      if (opening === attempt) opening = undefined;
    };
    attempt.then((db) => {
      inVain = false;
      db.onclose = forget;
      // Another tab makes the store anew, or the person empties the browser: neither should wait for this page.
      db.onversionchange = () => {
        db.close();
        forget();
      };
    }, forget);
    opening = attempt;
    return attempt;
  }

  async function transactionOf(mode: IDBTransactionMode): Promise<IDBTransaction> {
    const ready = async () => {
      try {
        return await inTime(database(), inVain ? 0 : patience.opening);
      } catch (fault) {
        inVain ||= fault instanceof NoStorage && opening !== undefined;
        throw fault;
      }
    };
    const db = await ready();
    try {
      return db.transaction(STORE, mode);
    } catch {
      // The browser has closed it without a word, as some do after a while.
      opening = undefined;
      db.close();
      return (await ready()).transaction(STORE, mode);
    }
  }

  return async (mode, work) => {
    const transaction = await transactionOf(mode);
    const over = ended(transaction);
    over.catch(() => undefined);
    const doing = (async () => work(transaction.objectStore(STORE)))();
    try {
      const [found] = await inTime(Promise.all([doing, over]), patience.answer);
      return found;
    } catch (fault) {
      // Whatever of it was asked for already must not be written, where the rest can't be.
      const ours = abort(transaction);
      // A browser that doesn't answer may not say that it has given up, either.
      if (ours && fault instanceof NoStorage) throw fault;
      const gaveUp = await over.then(
        () => false,
        () => true,
      );
      if (ours || !gaveUp || !isEcho(fault)) throw fault;
      throw transaction.error ?? new NoStorage('the browser gave it up', { cause: fault });
    }
  };
}

/** What a request came to. */
export function found<T>(request: IDBRequest<T>): Promise<T> {
  const answer = new Promise<T>((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
  // Where its transaction is given up nobody may be waiting for it any more: the transaction says so itself.
  answer.catch(() => undefined);
  return answer;
}

async function opened(name: string, storage: () => IDBFactory | undefined, version?: number): Promise<IDBDatabase> {
  let db: IDBDatabase;
  try {
    const factory = storage();
    if (!factory) throw new Error('there is none');
    const request = factory.open(name, version);
    request.onupgradeneeded = () => {
      if (!request.result.objectStoreNames.contains(STORE)) request.result.createObjectStore(STORE);
    };
    db = await found(request);
  } catch (cause) {
    throw new NoStorage('the storage could not be opened', { cause });
  }
  if (db.objectStoreNames.contains(STORE)) return db;
  // Made by something else, or torn down halfway.
  db.close();
  return opened(name, storage, db.version + 1);
}

const ended = (transaction: IDBTransaction): Promise<void> =>
  new Promise((resolve, reject) => {
    transaction.oncomplete = () => resolve();
    transaction.onabort = () => reject(transaction.error ?? new NoStorage('the browser gave it up'));
  });

/** Requests of a transaction that was given up say no more than that; the transaction itself may say why. */
const isEcho = (fault: unknown): boolean =>
  fault instanceof NoStorage ||
  (fault instanceof DOMException &&
    ['AbortError', 'InvalidStateError', 'TransactionInactiveError'].includes(fault.name));

/** Whether there was something to give up. */
function abort(transaction: IDBTransaction): boolean {
  try {
    transaction.abort();
    return true;
  } catch {
    return false;
  }
}

/** Fails where an answer doesn't come within so many milliseconds; 0 waits no longer than for what is there already. */
function inTime<T>(answer: Promise<T>, most: number): Promise<T> {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(() => reject(new NoStorage(`no answer in ${most} ms`)), most);
    answer.then(resolve, reject).finally(() => clearTimeout(timer));
  });
}
