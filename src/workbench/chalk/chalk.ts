import { createStore } from 'zustand';
import { type Draft, draft, openProject, type Project, saveProject } from '../../project';
import { number, words } from '../../words';
import { useBench } from '../store/bench';
import { pageStore } from '../store/page-store';

/** An outline that was kept, to compare what comes after it. */
export interface ChalkLine {
  readonly id: string;
  readonly name: string;
  readonly draft: Draft;
  readonly shown: boolean;
}

export interface Chalk {
  readonly lines: readonly ChalkLine[];
  /** Keeps the present outline. */
  readonly mark: () => void;
  readonly rename: (id: string, name: string) => void;
  readonly show: (id: string, shown: boolean) => void;
  readonly rub: (id: string) => void;
}

/** More outlines than these nobody tells apart. */
export const MOST_LINES = 4;

const KEY = 'legwork.chalk';

const createChalk = () =>
  createStore<Chalk>()((set, get) => {
    const put = (lines: readonly ChalkLine[]) => {
      set({ lines });
      keepLines(lines);
    };
    const change = (id: string, part: Partial<ChalkLine>) =>
      put(get().lines.map((line) => (line.id === id ? { ...line, ...part } : line)));
    return {
      lines: keptLines(),
      mark() {
        const { lines } = get();
        const { draft: now } = useBench.getState();
        if (lines.length >= MOST_LINES) return;
        const next = 1 + Math.max(0, ...lines.map((line) => Number(line.id)));
        put([...lines, { id: String(next), name: words`chalk line ${number(next, 0)}`, draft: now, shown: true }]);
      },
      rename: (id, name) => change(id, { name }),
      show: (id, shown) => change(id, { shown }),
      rub: (id) => put(get().lines.filter((line) => line.id !== id)),
    };
  });

export const useChalk = pageStore(createChalk);

/** What is kept of a chalk line over a reload: its project says all the rest. */
interface Kept {
  readonly id: string;
  readonly name: string;
  readonly shown: boolean;
  readonly project: string;
}

function keepLines(lines: readonly ChalkLine[]): void {
  const kept: readonly Kept[] = lines.map(({ id, name, shown, draft: { project } }) => ({
    id,
    name,
    shown,
    project: saveProject(project),
  }));
  try {
    localStorage.setItem(KEY, JSON.stringify(kept));
  } catch {
    // Storage is full or forbidden: the lines last as long as the page.
  }
}

/** The lines of the last visit; those that can no longer be read or drawn are left out. */
function keptLines(): readonly ChalkLine[] {
  try {
    const kept = JSON.parse(localStorage.getItem(KEY) ?? '[]') as readonly Kept[];
    return kept.flatMap(({ id, name, shown, project }) => {
      const drawn = drafted(project);
      return drawn ? [{ id: String(id), name: String(name), shown: Boolean(shown), draft: drawn }] : [];
    });
  } catch {
    return [];
  }
}

function drafted(text: string): Draft | undefined {
  const opened = openProject(text);
  return opened.ok ? draftOf(opened.value) : undefined;
}

/** The draft of a project; undefined where it can't be drawn. */
export function draftOf(project: Project): Draft | undefined {
  const result = draft(project);
  return result.ok ? result.value : undefined;
}
