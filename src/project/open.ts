import { number, type Phrase, type Problem, type Result, say } from '../words';
import { DEEPEST, type JsonOutline, jsonOutline, MOST_VALUES } from './json-text';
import { migrated, type RawProject, VERSION } from './migrate';
import { type PlainData, plainData } from './plain-data';
import { checkedProject } from './schema';
import type { Project } from './types';

/** No project is larger; a file beyond this is something else. */
export const LARGEST_FILE = 5_000_000;
/** Written with its lines indented, a text grows by less than this; only a larger one has to be weighed. */
const GROWS = 8;
/** More problems than these are told by their number only. */
const MOST_TOLD = 100;

/** A project that was opened, and what a person should know about it; or every problem in its file. */
export type Opened =
  | { readonly ok: true; readonly value: Project; readonly notes: readonly Phrase[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Opens a project file.
 *
 * @param text the file's text
 * @returns the project with its defaults filled in and unknown fields kept, or every problem in it
 */
export function openProject(text: string): Opened {
  const read = readProject(text);
  if (!read.ok) return read;
  const { project, problems } = checkedProject(read.value.raw);
  const all = [...read.value.problems, ...problems];
  return all.length > 0 ? { ok: false, problems: fewer(all) } : { ok: true, value: project, notes: read.value.notes };
}

/** A parsed project file at the newest version, whose fields are not looked at yet. */
interface ReadProject extends PlainData {
  readonly notes: readonly Phrase[];
}

/**
 * Reads a project file as far as it can be told what it is: its fields are not looked at yet.
 *
 * @param text the file's text
 * @returns the parsed file at the newest version, with what can't stand in any file taken out and told; or why it is
 *   none of ours
 */
export function readProject(text: string, seen?: JsonOutline): Result<ReadProject> {
  if (text.length > LARGEST_FILE) return refused(fileProblem(undefined, tooLarge(text.length)));
  const outline = seen ?? jsonOutline(unmarked(text));
  if (outline.beyond === 'depth')
    return refused(
      fileProblem(undefined, say`isn’t a project file: it is nested more than ${number(DEEPEST, 0)} levels deep.`),
    );
  if (outline.beyond === 'values')
    return refused(
      fileProblem(undefined, say`isn’t a project file: it holds more than ${number(MOST_VALUES, 0)} values.`),
    );
  const parsed = parsedJson(unmarked(text));
  if (parsed === undefined)
    return refused(fileProblem(text.slice(0, 40), say`isn’t a project file: it can’t be read as JSON.`));
  const raw = parsed.value;
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw))
    return refused(fileProblem(raw, say`isn’t a project file: it must be one object in braces.`));
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
  if (!upToDate) return refused({ field: 'version', value: version, phrase: say`must be ${number(VERSION, 0)}.` });
  const plain = plainData(upToDate.raw);
  // Some numbers are longer written out: what could not be opened again is not opened now.
  const written = text.length * GROWS > LARGEST_FILE ? JSON.stringify(plain.raw).length : 0;
  if (written > LARGEST_FILE) return refused(fileProblem(undefined, tooLarge(written)));
  const problems = [...outline.twice.map(twiceProblem), ...plain.problems];
  return { ok: true, value: { raw: plain.raw, problems, notes: upToDate.notes } };
}

/** Some editors put a byte order mark in front, which JSON doesn't know. */
export const unmarked = (text: string): string => (text.startsWith('\ufeff') ? text.slice(1) : text);

function parsedJson(text: string): { readonly value: unknown } | undefined {
  try {
    return { value: JSON.parse(text) };
  } catch {
    return undefined;
  }
}

const twiceProblem = (path: readonly string[]): Problem => ({
  field: path.join('.'),
  value: 'twice',
  phrase: say`stands twice in the file; only the last one can count.`,
});

function fewer(problems: readonly Problem[]): readonly Problem[] {
  if (problems.length <= MOST_TOLD) return problems;
  const more = problems.length - MOST_TOLD;
  return [...problems.slice(0, MOST_TOLD), fileProblem(undefined, say`holds ${number(more, 0)} more problems.`)];
}

/** What to say of a file that is too large. */
export const tooLarge = (size: number) =>
  say`has ${number(size / 1e6, 1)} MB; a project file has at most ${number(LARGEST_FILE / 1e6, 0)} MB.`;

const refused = (problem: Problem): Result<never> => ({ ok: false, problems: [problem] });
const fileProblem = (value: unknown, phrase: Problem['phrase']): Problem => ({ field: 'file', value, phrase });

/** A project as the text of its file: in indented lines for people, where it is not too large for that. */
export function saveProject(project: Project): string {
  const text = `${JSON.stringify(project, null, 2)}\n`;
  return text.length > LARGEST_FILE ? JSON.stringify(project) : text;
}
