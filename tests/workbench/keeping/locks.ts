type Holder = object;

interface Waiting {
  readonly name: string;
  readonly who: Holder;
  readonly grant: () => void;
}

/** Locks as browsers have them, for tabs that are only objects. */
export class Locks {
  private readonly held = new Map<string, { readonly who: Holder; readonly let: () => void }>();
  private waiting: readonly Waiting[] = [];
  private readonly gone = new Set<Holder>();

  /** The locks as one tab asks for them. */
  of(who: Holder): LockManager {
    const request = (name: string, options: LockOptions, work: (lock: Lock | null) => unknown) =>
      new Promise<void>((done, failed) => {
        // What a tab still asked for when it was ended is never granted.
        if (this.gone.has(who)) return;
        const grant = () => {
          let free = () => {};
          const over = new Promise<void>((go) => {
            free = go;
          });
          this.held.set(name, { who, let: free });
          void Promise.resolve()
            .then(() => Promise.race([work({ name, mode: 'exclusive' }), over]))
            .then(() => {
              this.free(name, free);
              done();
            }, failed);
        };
        if (!this.held.has(name)) grant();
        else if (options.ifAvailable) void Promise.resolve(work(null)).then(() => done(), failed);
        else {
          const wait = { name, who, grant };
          this.waiting = [...this.waiting, wait];
          options.signal?.addEventListener('abort', () => {
            this.waiting = this.waiting.filter((one) => one !== wait);
            failed(new DOMException('given up', 'AbortError'));
          });
        }
      });
    return { request } as unknown as LockManager;
  }

  /** Everything that a tab held or waited for is free. */
  leave(who: Holder): void {
    this.gone.add(who);
    this.waiting = this.waiting.filter((one) => one.who !== who);
    for (const [name, lock] of [...this.held]) if (lock.who === who) this.free(name, lock.let);
  }

  private free(name: string, own: () => void): void {
    if (this.held.get(name)?.let !== own) return;
    this.held.delete(name);
    own();
    const next = this.waiting.find((one) => one.name === name);
    if (!next) return;
    this.waiting = this.waiting.filter((one) => one !== next);
    next.grant();
  }
}
