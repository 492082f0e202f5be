import { withNotes } from '../store/changes';
import { noHistory } from '../store/history';
import type { BenchState } from '../store/state';
import { copied } from './copied';
import { copyOf } from './copy';
import { type Held, hold, holdLater } from './holding';
import { forgetNote, noteLast } from './last-note';
import type { ReadCopy } from './read-copy';
import { restored } from './restored';
import { sameButUnits } from './same-but-units';
import type { Put } from './shelf';
import type { Surroundings } from './surroundings';
import { TROUBLE_WORDS, troubleOf } from './trouble';

/** A change is kept when nothing follows it for this long, ms … */
const PAUSE = 400;
/** … and while changes go on, no later than this, ms: with the time that saving takes, within the last second. */
const LONGEST = 700;
/** What could not be kept is tried again after this long, ms, then after twice as long, … */
const SOON = 5000;
/** … but never later than this, ms. */
const LATE = 60_000;

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
  /** Takes a copy of what is on the bench, as a project of its own. */
  readonly copy: () => void;
  /** Tells other tabs, and lists in this one, that the shelf has changed. */
  readonly tellChange: (id: string) => void;
  /** Says that something could not be kept, or read from the shelf, and why. */
  readonly tellTrouble: (fault: unknown) => void;
  readonly stop: () => void;
}

/**
 * Keeps the project on the shelf after every change. One tab at a time holds a project; another that has it open is
 * told, follows what is kept, and gets a copy of its own with its first change, so that neither eats the other's work.
 */
export function startKeeper(around: Surroundings): Keeper {
  const { shelf, bench, kept, locks, ofTab, onComputer } = around;
  const { tell } = bench.getState();
  /** The revision on which this tab's state is built, for each project it had open. */
  const bases = new Map<string, number>();
  /** What is not kept yet: the newest state of each project. */
  const unkept = new Map<string, BenchState>();
  let held: Held | undefined;
  /** The project that is shown here and held by another tab. */
  let waiting: { readonly id: string; readonly end: AbortController } | undefined;
  let giveUp: (() => void) | undefined;
  let since = 0;
  let again = SOON;
  /** What comes from the shelf is no change of this tab's. */
  let bringing = false;
  // Everything that touches the shelf runs one after the other.
  let queue: Promise<unknown> = Promise.resolve();
  const next = <T>(work: () => Promise<T>): Promise<T> => {
    const result = queue.then(work);
    queue = result.catch(() => undefined);
    return result;
  };

  const isShown = (id: string) => bench.getState().id === id;
  const isElsewhere = () => waiting !== undefined && isShown(waiting.id);
  const inTrouble = () => ['full', 'off', 'fault'].includes(kept.getState().state);

  const news = around.openNews(({ id }) => {
    kept.setState(({ changes }) => ({ changes: changes + 1 }));
    if (isElsewhere()) void followSoon(id);
  });

  const tellChange = (id: string) => {
    news.tell({ id });
    kept.setState(({ changes }) => ({ changes: changes + 1 }));
  };

  function bring(back: Partial<BenchState>): void {
    bringing = true;
    bench.setState(back);
    bringing = false;
  }

  /** Shows what is kept of a project, if that is still wanted when it has been read; undefined where it isn't shown. */
  async function follow(id: string, wanted: () => boolean): Promise<ReadCopy | undefined> {
    const taken = await shelf.take(id);
    if (!taken || !wanted()) return undefined;
    const { read, history, setAside } = taken;
    bring(restored(read, history, bench.getState().draft));
    bases.set(id, read.revision);
    kept.setState({ at: read.savedAt });
    if (setAside.length > 0) {
      const text = `${setAside.join(', and ')} can’t be read. It is set aside as it is, and listed under Projects.`;
      tell({ tone: 'refused', text: withNotes(text.charAt(0).toUpperCase() + text.slice(1), read.notes) });
    } else tellNotes(read);
    return read;
  }

  function tellNotes({ project, notes }: ReadCopy): void {
    if (notes.length > 0) tell({ tone: 'told', text: withNotes(`“${project.name}” is open.`, notes) });
  }

  /** Shows what another tab kept, where nothing was changed here: a change here goes into a copy instead. */
  const followSoon = (id: string): Promise<unknown> =>
    next(() => follow(id, () => isShown(id) && !unkept.has(id))).catch(tellTrouble);

  function letGo(): void {
    waiting?.end.abort();
    waiting = undefined;
    held?.release();
    held = undefined;
  }

  /** Takes hold of the project that is open now. */
  async function takeHold(id: string): Promise<boolean> {
    if (held?.id === id) return true;
    letGo();
    held = await hold(locks, id);
    if (held) return true;
    waitFor(id);
    return false;
  }

  function waitFor(id: string): void {
    const wait = { id, end: new AbortController() };
    waiting = wait;
    kept.setState({ state: 'elsewhere' });
    const { name } = bench.getState().project;
    tell({
      tone: 'refused',
      text: `“${name}” is open in another tab, and is kept from there. What you change here goes into a copy of its own.`,
      remedies: [{ name: 'take a copy now', act: copy }],
    });
    void holdLater(locks, id, wait.end.signal).then(async (later) => {
      if (!later) return;
      if (waiting !== wait || !isShown(id)) {
        later.release();
        return;
      }
      waiting = undefined;
      held = later;
      await followSoon(id);
      if (held === later && !inTrouble()) kept.setState({ state: 'kept' });
      tell({ tone: 'told', text: `The other tab is closed: “${name}” is kept from here again.` });
    });
  }

  /** What is on the bench gets another name and another place; the subscription keeps it there. */
  function copy(): void {
    const state = bench.getState();
    // What another tab holds is changed by that tab alone.
    if (isElsewhere()) unkept.delete(state.id);
    const own = copied(state);
    bench.setState(own);
    tell({ tone: 'told', text: `What is on the table is now a project of its own: “${own.project.name}”.` });
  }

  /** A change that can't be kept where it belongs, because another tab went on with that project, goes into a copy. */
  async function keepApart(state: BenchState): Promise<void> {
    if (isShown(state.id)) {
      unkept.delete(state.id);
      bases.delete(state.id);
      copy();
      note(bench.getState());
      forgetNote(onComputer, state.id);
      return;
    }
    const own = { ...state, ...copied(state) };
    await put(own, 0);
    if (unkept.get(state.id) === state) unkept.delete(state.id);
    forgetNote(onComputer, state.id);
    tellChange(own.id);
    const text = `“${state.project.name}” was changed in another tab, too: what you changed of it here is now “${own.project.name}”.`;
    tell({ tone: 'refused', text });
  }

  /** Notes a state where writing takes no time. */
  const note = (state: BenchState) =>
    noteLast(onComputer, copyOf(state, (bases.get(state.id) ?? 0) + 1, around.date()), state.history);

  /** Puts a state on the shelf; the way back is given up rather than the project. */
  async function put(state: BenchState, base: number): Promise<Put> {
    const now = copyOf(state, base + 1, around.date());
    try {
      return await shelf.put(now, state.history, base);
    } catch (fault) {
      if (troubleOf(fault) !== 'fault' || state.history === noHistory) throw fault;
      const bare = await shelf.put(now, undefined, base);
      around.tellFault(fault);
      return bare;
    }
  }

  async function save(state: BenchState): Promise<void> {
    const { id } = state;
    const base = bases.get(id) ?? (await baseOf(state));
    const done = await put(state, base);
    if (!done.ok) {
      // Without locks, or after an undo into a project that another tab went on with.
      await keepApart(state);
      return;
    }
    bases.set(id, base + 1);
    if (unkept.get(id) === state) unkept.delete(id);
    forgetNote(onComputer, id);
    tellChange(id);
    if (!isShown(id)) return;
    ofTab.set(LAST, id);
    // In trouble it is told when all of it is over.
    kept.setState({ ...(inTrouble() ? {} : { state: 'kept' }), at: around.date() });
  }

  /** What a project that this tab has not read builds on: what is kept, if it is the same, as after an undo into it. */
  async function baseOf(state: BenchState): Promise<number> {
    const taken = await shelf.take(state.id);
    return taken && sameButUnits(taken.read.project, state.project) ? taken.read.revision : 0;
  }

  /** Keeps a state, under a lock of its own where another project is on the bench by now. */
  async function keep(state: BenchState): Promise<void> {
    const { id } = state;
    if (isShown(id)) {
      if (await takeHold(id)) await save(state);
      else await keepApart(state);
      return;
    }
    const own = held?.id === id ? held : await hold(locks, id);
    if (!own) {
      await keepApart(state);
      return;
    }
    try {
      await save(state);
    } finally {
      if (own !== held) own.release();
    }
  }

  function tellTrouble(fault: unknown): void {
    const trouble = troubleOf(fault);
    const before = kept.getState().state;
    kept.setState({ state: trouble });
    tryLater();
    if (trouble === 'fault') around.tellFault(fault);
    else if (before !== trouble) tell({ tone: 'refused', text: TROUBLE_WORDS[trouble] });
  }

  function schedule(milliseconds: number): void {
    giveUp?.();
    giveUp = around.after(milliseconds, () => void flush());
  }

  function tryLater(): void {
    schedule(again);
    again = Math.min(2 * again, LATE);
  }

  function flush(): Promise<void> {
    giveUp?.();
    giveUp = undefined;
    return next(async () => {
      const faults: unknown[] = [];
      const tried = (work: Promise<unknown>) => work.catch((fault) => faults.push(fault));
      // Where nothing waits something is asked for all the same: only so it is known that there is a storage again.
      if (unkept.size === 0 && inTrouble()) await tried(shelf.last());
      for (const state of [...unkept.values()]) await tried(keep(state));
      if (faults.length > 0) tellTrouble(faults[0]);
      else allIsWell();
    });
  }

  function allIsWell(): void {
    again = SOON;
    if (!inTrouble()) return;
    kept.setState({ state: isElsewhere() ? 'elsewhere' : bases.has(bench.getState().id) ? 'kept' : 'example' });
    tell({ tone: 'told', text: 'Your work is kept on this computer again.' });
  }

  function changed(state: BenchState): void {
    unkept.set(state.id, state);
    if (giveUp === undefined || inTrouble()) since = around.clock();
    schedule(Math.max(0, Math.min(PAUSE, since + LONGEST - around.clock())));
    if (kept.getState().state === 'example') kept.setState({ state: 'waiting' });
  }

  const unsubscribe = bench.subscribe((state, before) => {
    if (bringing) return;
    if (state.id !== before.id) {
      if (!inTrouble()) kept.setState({ state: 'waiting', at: undefined });
      changed(state);
    } else if (state.project !== before.project || state.entries !== before.entries) {
      changed(state);
    } else if (state.station !== before.station && bases.has(state.id) && held?.id === state.id) {
      changed(state);
    }
  });

  const stopWatching = around.onLeave(() => {
    // The page may be gone before the shelf has answered.
    if (isElsewhere() && unkept.has(bench.getState().id)) copy();
    for (const state of unkept.values()) note(state);
    const { id } = bench.getState();
    if (unkept.has(id) || bases.has(id)) ofTab.set(LAST, id);
    void flush();
  });

  return {
    flush,
    async open(id, wanted = () => true) {
      await flush();
      return next(async () => {
        const mine = unkept.get(id);
        const read = mine ? undefined : await follow(id, wanted);
        if (mine) bring(placed(mine));
        else if (!read) return false;
        ofTab.set(LAST, id);
        if (!(await takeHold(id))) return true;
        if (!inTrouble()) kept.setState({ state: 'kept' });
        // Kept as it is now, it is not told of again.
        if (read && read.notes.length > 0) changed(bench.getState());
        return true;
      });
    },
    bring(noted, history) {
      bring(restored(noted, history, bench.getState().draft));
      bases.set(noted.id, noted.revision - 1);
      unkept.set(noted.id, bench.getState());
      tellNotes(noted);
    },
    copy,
    tellChange,
    tellTrouble,
    stop() {
      giveUp?.();
      unsubscribe();
      stopWatching();
      news.close();
      letGo();
    },
  };
}

/** What of a state belongs to its project, to be put back on the bench. */
const placed = ({ id, project, draft, problems, entries, station, history }: BenchState): Partial<BenchState> => ({
  id,
  project,
  draft,
  problems,
  entries,
  station,
  history,
  before: undefined,
  running: undefined,
  step: undefined,
});

/** Which project this tab has open, for a reload of this tab. */
export const LAST = 'legwork-project';
