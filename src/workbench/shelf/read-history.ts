import type { Project } from '../../project';
import { type History, type Moment, momentOf, noHistory, placeOf } from '../store/history';
import { shownProject } from './read-copy';

/** More is never kept; what stands beyond it is not looked at. */
const MOST = 200;

/**
 * Reads the way back and forth that was kept with a project, moment by moment: a damaged one costs what lies beyond it,
 * and nothing else.
 *
 * @param found what the storage gave back: it may be anything, or undefined where nothing was kept
 */
export function readHistory(found: unknown): { readonly history: History; readonly whole: boolean } {
  if (found === undefined) return { history: noHistory, whole: true };
  const { past, future } = (found ?? {}) as { readonly past?: unknown; readonly future?: unknown };
  const share = sharing();
  const behind = Array.isArray(past) ? past.slice(-MOST).map((one) => readMoment(one, share)) : [undefined];
  const ahead = Array.isArray(future) ? future.slice(0, MOST).map((one) => readMoment(one, share)) : [undefined];
  const broken = behind.lastIndexOf(undefined);
  const end = ahead.indexOf(undefined);
  return {
    history: {
      past: behind.slice(broken + 1) as Moment[],
      future: ahead.slice(0, end < 0 ? ahead.length : end) as Moment[],
    },
    whole: broken < 0 && end < 0,
  };
}

function readMoment(found: unknown, share: (text: string) => Project | undefined): Moment | undefined {
  const { label, id, project } = (found ?? {}) as Partial<Moment>;
  if (typeof label !== 'string' || typeof id !== 'string' || typeof project !== 'object') return undefined;
  try {
    const read = share(JSON.stringify(project));
    return read && momentOf(label, placeOf({ project: read, id }));
  } catch {
    // What can't even be written as text, as something that holds itself.
    return undefined;
  }
}

/** Reads projects so that what is alike in them is one, as it was while they were worked on: two hundred weigh little. */
function sharing(): (text: string) => Project | undefined {
  const projects = new Map<string, Project | undefined>();
  const parts = new Map<string, unknown>();
  const shared = <Part>(key: string, part: Part): Part => {
    const name = `${key}${JSON.stringify(part)}`;
    if (!parts.has(name)) parts.set(name, part);
    // What stands under the same name is the same, read another time.
    return parts.get(name) as Part;
  };
  return (text) => {
    if (!projects.has(text)) {
      const read = shownProject(text)?.value;
      projects.set(text, read && thinned(read, shared));
    }
    return projects.get(text);
  };
}

/** A project whose every part is one that others have, too, where they are the same. */
function thinned(project: Project, shared: <Part>(key: string, part: Part) => Part): Project {
  const thin: { -readonly [Key in keyof Project]: Project[Key] } = { ...project };
  const share = <Key extends keyof Project>(key: Key) => {
    thin[key] = shared(key, thin[key]);
  };
  for (const key of Object.keys(project)) share(key as keyof Project);
  return thin;
}
