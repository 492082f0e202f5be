import { saveProject } from '../../project';
import { useBench } from '../store/bench';
import { newId } from '../store/new-id';
import type { BenchState } from '../store/state';
import { copyOf, restored } from './copy';
import { type Held, hold, holdLater, openNews } from './holding';
import { useKept } from './kept';
import { noteLast } from './last-note';
import type { Shelf } from './shelf';

/** A change is kept when nothing follows it for this long, ms … */
const PAUSE = 400;
/** … and while changes go on, no later than this, ms: with the time that saving takes, within the last second. */
const LONGEST = 700;

/** What keeps the project on this computer, as long as the page is open. */
export interface Keeper {
  /** Keeps what isn't kept yet, now. */
  readonly flush: () => Promise<void>;
  /** Puts a kept project on the bench; false where it can't be read. */
  readonly open: (id: string) => Promise<boolean>;
  /** Takes a copy of what is on the bench, as a project of its own. */
  readonly copy: () => void;
  /** Tells other tabs, and lists in this one, that the shelf has changed. */
  readonly tellChange: (id: string) => void;
  readonly stop: () => void;
}

/**
 * Keeps the project on the shelf after every change. One tab at a time holds a project; another that has it open is
 * told, follows what is kept, and gets a copy of its own with its first change, so that neither eats the other's work.
 */
export function startKeeper(shelf: Shelf): Keeper {
  /** The revision on which this tab's state is built, for each project it had open. */
  const bases = new Map<string, number>();
  let held: Held | undefined;
  let waiting: AbortController | undefined;
  let dirty: BenchState | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let since = 0;
  /** What comes from the shelf is no change of this tab's. */
  let bringing = false;
  // Everything that touches the shelf runs one after the other.
  let queue: Promise<unknown> = Promise.resolve();
  const next = <T>(work: () => Promise<T>): Promise<T> => {
    const result = queue.then(work);
    queue = result.catch(() => undefined);
    return result;
  };

  const news = openNews(({ id }) => {
    useKept.setState(({ changes }) => ({ changes: changes + 1 }));
    if (useKept.getState().state === 'elsewhere') void next(() => followIfUnchanged(id));
  });

  const tellChange = (id: string) => {
    news.tell({ id });
    useKept.setState(({ changes }) => ({ changes: changes + 1 }));
  };

  /** Shows what another tab kept. */
  async function follow(id: string): Promise<boolean> {
    const found = await shelf.take(id);
    const back = found && restored(found.copy, found.history);
    if (!back) return false;
    bringing = true;
    useBench.setState({ ...back, notice: useBench.getState().notice });
    bringing = false;
    bases.set(id, found.copy.revision);
    useKept.setState({ at: found.copy.savedAt });
    return true;
  }

  /** The same, where nothing was changed here: a change here goes into a copy instead. */
  async function followIfUnchanged(id: string): Promise<void> {
    if (dirty === undefined && useBench.getState().id === id) await follow(id);
  }

  function letGo(): void {
    waiting?.abort();
    waiting = undefined;
    held?.release();
    held = undefined;
  }

  /** Takes hold of the project that is open now. */
  async function takeHold(id: string): Promise<boolean> {
    if (held) return true;
    held = await hold(id);
    if (held) return true;
    waitFor(id);
    return false;
  }

  function waitFor(id: string): void {
    if (waiting) return;
    const wait = new AbortController();
    waiting = wait;
    useKept.setState({ state: 'elsewhere' });
    const name = useBench.getState().project.name;
    useBench.getState().tell({
      tone: 'refused',
      text: `“${name}” is open in another tab, and is kept from there. What you change here goes into a copy of its own.`,
      remedy: { name: 'take a copy now', act: copy },
    });
    void holdLater(id, wait.signal).then((later) => {
      if (!later) return;
      if (waiting !== wait || useBench.getState().id !== id) {
        later.release();
        return;
      }
      waiting = undefined;
      held = later;
      void next(() => followIfUnchanged(id)).then(() => useKept.setState({ state: 'kept' }));
      useBench.getState().tell({ tone: 'told', text: `The other tab is closed: “${name}” is kept from here again.` });
    });
  }

  /** Another name and another place for what is on the bench; the subscription keeps it there. */
  function copy(): void {
    const { id, project, tell } = useBench.getState();
    const name = `${project.name.slice(0, 72)}, copy`;
    bases.delete(id);
    useBench.setState({ id: newId(), project: { ...project, name } });
    tell({ tone: 'told', text: `What is on the table is now a project of its own: “${name}”.` });
  }

  async function save(state: BenchState): Promise<void> {
    const { id } = state;
    const savedAt = Date.now();
    try {
      const base = bases.get(id) ?? (await baseOf(state));
      const put = await shelf.put(copyOf(state, base + 1, savedAt), state.history, base);
      if (!put.ok) {
        // Without locks, or after an undo into a project that another tab went on with.
        if (useBench.getState().id === id) copy();
        else await shelf.put(copyOf({ ...state, id: newId() }, 1, savedAt), state.history, 0);
        return;
      }
      bases.set(id, base + 1);
      remember(id);
      if (useBench.getState().id === id) useKept.setState({ state: 'kept', at: savedAt });
      tellChange(id);
    } catch (fault) {
      notKept(state, fault);
    }
  }

  /** What a project that this tab has not read builds on: what is kept, if it is the same, as after an undo into it. */
  async function baseOf(state: BenchState): Promise<number> {
    const found = await shelf.take(state.id);
    return found && found.copy.text === saveProject(state.project) ? found.copy.revision : 0;
  }

  function notKept(state: BenchState, fault: unknown): void {
    const full = fault instanceof DOMException && fault.name === 'QuotaExceededError';
    const told = useKept.getState().state;
    useKept.setState({ state: full ? 'full' : 'off' });
    // It may be kept with the next change; until then it is not forgotten.
    dirty ??= state;
    if (told === 'full' || told === 'off') return;
    useBench.getState().tell({
      tone: 'refused',
      text: full
        ? 'There is no room left on this computer: your work goes on, but save it as a file to keep it.'
        : 'This browser keeps nothing for Legwork: your work goes on, but save it as a file to keep it.',
    });
  }

  async function keep(state: BenchState): Promise<void> {
    if (await takeHold(state.id)) await save(state);
    else if (useBench.getState().id === state.id) copy();
  }

  function flush(): Promise<void> {
    clearTimeout(timer);
    timer = undefined;
    return next(async () => {
      const state = dirty;
      dirty = undefined;
      if (state) await keep(state);
    });
  }

  function changed(state: BenchState): void {
    dirty = state;
    if (timer === undefined) since = Date.now();
    clearTimeout(timer);
    timer = setTimeout(() => void flush(), Math.max(0, Math.min(PAUSE, since + LONGEST - Date.now())));
    const { state: now } = useKept.getState();
    if (now === 'example') useKept.setState({ state: 'waiting' });
  }

  const unsubscribe = useBench.subscribe((state, before) => {
    if (bringing) return;
    if (state.id !== before.id) {
      const last = dirty;
      dirty = undefined;
      void next(async () => {
        if (last) await keep(last);
        letGo();
      });
      useKept.setState({ state: 'waiting', at: undefined });
      changed(state);
    } else if (state.project !== before.project || state.entries !== before.entries) {
      changed(state);
    } else if (state.station !== before.station && bases.has(state.id) && held) {
      changed(state);
    }
  });

  const onHide = () => {
    if (document.visibilityState !== 'hidden') return;
    // The page may be gone before the shelf has answered: what it holds is noted where writing takes no time.
    const { id } = useBench.getState();
    if (dirty?.id === id && held) noteLast(copyOf(dirty, (bases.get(id) ?? 0) + 1, Date.now()), dirty.history);
    void flush();
  };
  document.addEventListener('visibilitychange', onHide);
  window.addEventListener('pagehide', onHide);

  return {
    flush,
    async open(id) {
      await flush();
      return next(async () => {
        letGo();
        if (!(await follow(id))) return false;
        remember(id);
        if (await takeHold(id)) useKept.setState({ state: 'kept' });
        return true;
      });
    },
    copy,
    tellChange,
    stop() {
      clearTimeout(timer);
      unsubscribe();
      document.removeEventListener('visibilitychange', onHide);
      window.removeEventListener('pagehide', onHide);
      news.close();
      letGo();
    },
  };
}

const LAST = 'legwork-project';

/** Which project this tab has open, for a reload of this tab. */
function remember(id: string): void {
  try {
    sessionStorage.setItem(LAST, id);
  } catch {
    // A browser that keeps nothing: then the shelf's last one is opened.
  }
}

/** The project that this tab had open before it was loaded anew. */
export function remembered(): string | undefined {
  try {
    return sessionStorage.getItem(LAST) ?? undefined;
  } catch {
    return undefined;
  }
}
