/** A project that this tab holds: no other tab writes it meanwhile. */
export interface Held {
  readonly release: () => void;
}

const lockName = (id: string) => `legwork/${id}`;

/**
 * Takes hold of a project for this tab, if no other has it. Where the browser has no locks the shelf's revisions alone
 * keep two tabs apart.
 */
export async function hold(id: string): Promise<Held | undefined> {
  return locked(id, { ifAvailable: true });
}

/** Waits until the tab that holds a project lets it go, and takes hold of it then. */
export async function holdLater(id: string, signal: AbortSignal): Promise<Held | undefined> {
  return locked(id, { signal }).catch(() => undefined);
}

function locked(id: string, options: LockOptions): Promise<Held | undefined> {
  const { locks } = navigator as { locks?: LockManager };
  if (!locks) return Promise.resolve({ release: () => undefined });
  return new Promise((resolve, reject) => {
    locks
      .request(lockName(id), options, (lock) => {
        if (!lock) {
          resolve(undefined);
          return undefined;
        }
        return new Promise<void>((release) => resolve({ release }));
      })
      .catch(reject);
  });
}

/** Word from other tabs: a project was put on the shelf, or taken off. */
export interface News {
  readonly id: string;
}

/** Tells the other tabs, and hears from them; the function puts an end to it. */
export function openNews(hear: (news: News) => void): { tell: (news: News) => void; close: () => void } {
  if (typeof BroadcastChannel === 'undefined') return { tell: () => undefined, close: () => undefined };
  const channel = new BroadcastChannel('legwork');
  channel.onmessage = (event: MessageEvent<News>) => hear(event.data);
  return { tell: (news) => channel.postMessage(news), close: () => channel.close() };
}
