import { exampleShown } from '../store/example-shown';
import { noHistory } from '../store/history';
import type { BenchState } from '../store/state';
import { copied } from './copied';
import { copyOf } from './copy';
import { type Held, hold, holdLater } from './holding';
import { type Deed, type DeedOf, type Event, keepingAtFirst } from './keeping';
import { step } from './keeping-step';
import * as words from './keeping-words';
import { forgetNote, noteLast } from './last-note';
import type { ReadCopy } from './read-copy';
import { sameButUnits } from './same-but-units';
import type { Put } from './shelf';
import type { Surroundings } from './surroundings';
import { troubleOf } from './trouble';

/** What keeps the project on this computer, as long as the page is open. */
export interface Keeper {
  /** Keeps what isn't kept yet, now. */
  readonly flush: () => Promise<void>;
  /**
   * Puts a kept project on the bench; false where it can't be read, or where it came too late.
   *
   * @param wanted asked when it has been read, before anything is changed
   */
  readonly open: (id: string, wanted?: () => boolean) => Promise<boolean>;
  /** Puts on the bench what was noted of a project, and could not be kept yet. */
  readonly bring: (noted: ReadCopy, history: BenchState['history']) => void;
  /** Puts the example on the bench, which is nobody's yet. */
  readonly look: () => void;
  /** Takes a copy of what is on the bench, as a project of its own. */
  readonly copy: () => void;
  /** Tells other tabs, and lists in this one, that the shelf has changed. */
  readonly tellChange: (id: string) => void;
  /** Says that something could not be kept, or read from the shelf, and why. */
  readonly tellTrouble: (fault: unknown) => void;
  readonly stop: () => void;
}

/** Keeps the project on the shelf after every change: carries out what {@link step} wants done, and tells it what came of it. */
export function startKeeper(around: Surroundings): Keeper {
  const { shelf, bench, kept, locks, ofTab, onComputer } = around;
  const { tell } = bench.getState();
  let state = keepingAtFirst(bench.getState());
  /** The browser's own word for what this tab holds, and an end to what it waits for. */
  let held: Held | undefined;
  let waiting: AbortController | undefined;
  let giveUp: (() => void) | undefined;
  let bringing = false;
  // Everything that touches the shelf runs one after the other.
  let queue: Promise<unknown> = Promise.resolve();
  const next = <T>(work: () => Promise<T> | T): Promise<T> => {
    const result = queue.then(work);
    queue = result.catch(() => undefined);
    return result;
  };

  /** What is done at once is done before this returns; a promise comes only of what takes its time. */
  function happen(event: Event): Promise<void> | undefined {
    const [now, deeds] = step(state, event, around.clock());
    const { stand, at } = now;
    if (stand !== state.stand || at !== state.at) kept.setState({ state: stand, at });
    state = now;
    return inTurn(deeds);
  }

  function inTurn([first, ...others]: readonly Deed[]): Promise<void> | undefined {
    if (!first) return undefined;
    const doing = carryOut(first);
    return doing instanceof Promise ? doing.then(() => inTurn(others)) : inTurn(others);
  }

  const carryOut = (deed: Deed): unknown => DEEDS[deed.do](deed as never);

  const DEEDS: { readonly [Name in Deed['do']]: (deed: DeedOf<Name>) => unknown } = {
    wake({ after }) {
      giveUp?.();
      giveUp = around.after(after, () => void flush());
    },
    doze() {
      giveUp?.();
      giveUp = undefined;
    },
    flush: () => void flush(),
    goOn: ({ event }) => happen(event),
    async attempt({ deed }) {
      try {
        await carryOut(deed);
      } catch (fault) {
        await happen({ happens: 'failed', fault });
      }
    },
    knock: () => shelf.last(),
    async hold({ id, ours, theirs }) {
      held = await hold(locks, id);
      await happen(held ? { happens: 'held', id, next: ours } : { happens: 'refused', id, next: theirs });
    },
    wait({ id }) {
      const ending = new AbortController();
      waiting = ending;
      void holdLater(locks, id, ending.signal).then((later) => {
        if (!later) return undefined;
        if (waiting !== ending) return later.release();
        waiting = undefined;
        held = later;
        return happen({ happens: 'freed', id });
      });
    },
    letGo() {
      waiting?.abort();
      waiting = undefined;
      held?.release();
      held = undefined;
    },
    async borrow({ state: lent }) {
      const own = await hold(locks, lent.id);
      try {
        await happen({ happens: own ? 'save' : 'overtaken', state: lent });
      } finally {
        own?.release();
      }
    },
    async put({ state: now, base }) {
      const on = base ?? (await baseOf(now));
      const done = await putOn(now, on);
      const at = around.date();
      await happen({ happens: done.ok ? 'stored' : 'overtaken', state: now, revision: on + 1, at });
    },
    async putApart({ state: now }) {
      const own = { ...now, ...copied(now) };
      await putOn(own, 0);
      await happen({ happens: 'parted', state: now, own });
    },
    show({ part }) {
      bringing = true;
      bench.setState(part);
      bringing = false;
    },
    async follow({ id, next: then }) {
      const reading = next(async () => {
        const taken = await shelf.take(id);
        if (taken) await happen({ happens: 'followed', id, taken });
      });
      await reading.catch((fault) => happen({ happens: 'trouble', fault }));
      if (then) await happen(then);
    },
    copy({ noted }) {
      const own = copied(bench.getState());
      bench.setState(own);
      tell({ tone: 'told', text: words.copied(own.project.name) });
      if (noted) DEEDS.note({ do: 'note', state: bench.getState(), revision: 1 });
    },
    note: ({ state: now, revision }) => noteLast(onComputer, copyOf(now, revision, around.date()), now.history),
    forget: ({ id }) => forgetNote(onComputer, id),
    remember: ({ id }) => ofTab.set(LAST, id),
    tellChange({ id }) {
      news.tell({ id });
      count();
    },
    count,
    say: ({ tone, text, offersCopy }) =>
      tell({ tone, text, ...(offersCopy && { remedies: [{ name: words.takeCopy(), act: copy }] }) }),
    tellFault: ({ fault }) => around.tellFault(fault),
  };

  function count(): void {
    kept.setState(({ changes }) => ({ changes: changes + 1 }));
  }

  /** Puts a state on the shelf; the way back is given up rather than the project. */
  async function putOn(now: BenchState, base: number): Promise<Put> {
    const own = copyOf(now, base + 1, around.date());
    try {
      return await shelf.put(own, now.history, base);
    } catch (fault) {
      if (troubleOf(fault) !== 'fault' || now.history === noHistory) throw fault;
      const bare = await shelf.put(own, undefined, base);
      around.tellFault(fault);
      return bare;
    }
  }

  /** What a project that this tab has not read builds on: what is kept, if it is the same, as after an undo into it. */
  async function baseOf(now: BenchState): Promise<number> {
    const taken = await shelf.take(now.id);
    return taken && sameButUnits(taken.read.project, now.project) ? taken.read.revision : 0;
  }

  function flush(): Promise<void> {
    void happen({ happens: 'asked' });
    return next(async () => happen({ happens: 'round' }));
  }

  const copy = () => void happen({ happens: 'copy' });
  const news = around.openNews(({ id }) => void happen({ happens: 'heard', id }));
  const unsubscribe = bench.subscribe((now) => void happen({ happens: 'shown', now, brought: bringing }));
  const stopWatching = around.onLeave(() => void happen({ happens: 'leave' }));

  return {
    flush,
    async open(id, wanted = () => true) {
      await flush();
      return next(async () => {
        const mine = state.unkept.get(id);
        const taken = mine ? undefined : await shelf.take(id);
        if (mine) await happen({ happens: 'opened', id, mine });
        else if (taken && wanted()) await happen({ happens: 'opened', id, taken });
        else return false;
        return true;
      });
    },
    bring: (read, history) => void happen({ happens: 'noted', read, history }),
    look: () => {
      const { habits, project } = bench.getState();
      void happen({ happens: 'looked', example: exampleShown({ ...habits, units: project.units }) });
    },
    copy,
    tellChange: (id) => void carryOut({ do: 'tellChange', id }),
    tellTrouble: (fault) => void happen({ happens: 'trouble', fault }),
    stop() {
      unsubscribe();
      stopWatching();
      news.close();
      void inTurn([{ do: 'doze' }, { do: 'letGo' }]);
    },
  };
}

/** Which project this tab has open, for a reload of this tab. */
export const LAST = 'legwork-project';
