/** A project that this tab holds: no other tab writes it meanwhile. */
export interface Held {
  readonly id: string;
  readonly release: () => void;
}

const lockName = (id: string) => `legwork/${id}`;

/**
 * Takes hold of a project for this tab, if no other has it. Where the browser has no locks the shelf's revisions alone
 * keep two tabs apart.
 */
export async function hold(locks: LockManager | undefined, id: string): Promise<Held | undefined> {
  return locked(locks, id, { ifAvailable: true });
}

/** Waits until the tab that holds a project lets it go, and takes hold of it then. */
export async function holdLater(
  locks: LockManager | undefined,
  id: string,
  signal: AbortSignal,
): Promise<Held | undefined> {
  return locked(locks, id, { signal }).catch(() => undefined);
}

function locked(locks: LockManager | undefined, id: string, options: LockOptions): Promise<Held | undefined> {
  if (!locks) return Promise.resolve({ id, release: () => undefined });
  return new Promise((resolve, reject) => {
    locks
      .request(lockName(id), options, (lock) => {
        if (!lock) {
          resolve(undefined);
          return undefined;
        }
        return new Promise<void>((release) => resolve({ id, release }));
      })
      .catch((fault) => {
        // Refused altogether, as to a page that may keep nothing: nobody else holds it either.
        if (fault instanceof DOMException && fault.name === 'SecurityError') resolve({ id, release: () => undefined });
        else reject(fault);
      });
  });
}

/** Word from other tabs: a project was put on the shelf, or taken off. */
interface News {
  readonly id: string;
}

/** Tells the other tabs, and hears from them; the last function puts an end to it. */
export type OpenNews = (hear: (news: News) => void) => { tell: (news: News) => void; close: () => void };

export const openNews: OpenNews = (hear) => {
  try {
    const channel = new BroadcastChannel('legwork');
    channel.onmessage = (event: MessageEvent<News>) => hear(event.data);
    return { tell: (news) => channel.postMessage(news), close: () => channel.close() };
  } catch {
    // A browser without, or one that keeps tabs apart: then each hears of the other at the next load.
    return { tell: () => undefined, close: () => undefined };
  }
};
