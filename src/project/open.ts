import { number, type Problem, type Result, say } from '../length';
import { migrated, type RawProject, VERSION } from './migrate';
import { checkedProject } from './schema';
import type { Project } from './types';

/** No project is larger; a file beyond this is something else. */
export const LARGEST_FILE = 5_000_000;

/**
 * Opens a project file.
 *
 * @param text the file's text
 * @returns the project with its defaults filled in and unknown fields kept, or every problem in it
 */
export function openProject(text: string): Result<Project> {
  const raw = readProject(text);
  if (!raw.ok) return raw;
  const { project, problems } = checkedProject(raw.value);
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: project };
}

/**
 * Reads a project file as far as it can be told what it is: its fields are not looked at yet.
 *
 * @param text the file's text
 * @returns the parsed file at the newest version, or why it is none of ours
 */
export function readProject(text: string): Result<RawProject> {
  if (text.length > LARGEST_FILE) return refused(fileProblem(undefined, tooLarge(text.length)));
  let raw: unknown;
  try {
    raw = JSON.parse(text);
  } catch {
    return refused(fileProblem(text.slice(0, 40), say`is no project file: it can't be read as JSON.`));
  }
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw))
    return refused(fileProblem(raw, say`is no project file: it must be one object in braces.`));
  const { format, version } = raw as { format?: unknown; version?: unknown };
  if (format !== 'legwork-project')
    return refused({
      field: 'format',
      value: format,
      phrase: say`must be “legwork-project”; this is another kind of file.`,
    });
  if (typeof version === 'number' && version > VERSION) {
    return refused({
      field: 'version',
      value: version,
      phrase: say`was written by a newer Legwork; this one reads up to version ${number(VERSION, 0)}.`,
    });
  }
  const upToDate = Number.isInteger(version) ? migrated(raw as RawProject, version as number) : undefined;
  return upToDate
    ? { ok: true, value: upToDate }
    : refused({ field: 'version', value: version, phrase: say`must be ${number(VERSION, 0)}.` });
}

/** What to say of a file that is too large. */
export const tooLarge = (size: number) =>
  say`has ${number(size / 1e6, 1)} MB; a project file has at most ${number(LARGEST_FILE / 1e6, 0)} MB.`;

const refused = (problem: Problem): Result<never> => ({ ok: false, problems: [problem] });
const fileProblem = (value: unknown, phrase: Problem['phrase']): Problem => ({ field: 'file', value, phrase });

/** A project as the text of its file. */
export const saveProject = (project: Project): string => `${JSON.stringify(project, null, 2)}\n`;
