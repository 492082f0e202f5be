import { type Project, saveProject, withFewestSheets } from '../../project';
import { inTurn, own, printPhrase, Refusal, said, say, words } from '../../words';
import { TOGETHER_FILES, type TogetherFile } from '../make/kinds';
import { type FileJob, makeFiles } from '../make/make-files';
import { MOST_NESTED } from '../nest/styles';
import type { PdfOptions } from '../pen/options';
import { safeFileName, unlikeNames } from '../work/file-name';
import { countedOff, type Progress, partOf } from '../work/long-work';
import { type ZipWriter, zipWriter } from '../zip/zip';
import type { ClassKind } from './class-kinds';
import { type MadeMember, madeMember, rowDraft, unmadeMember } from './member';
import type { ClassRow, ClassTable } from './read-class';
import { summaryContent } from './summary-content';
import { writeSummaryCsv } from './summary-csv';
import { writeSummaryPdf } from './summary-pdf';

/** A set to be made. */
export interface ClassOrder {
  readonly table: ClassTable;
  /** Whose design is used: its name and units count for the summary. */
  readonly project: Project;
  readonly kinds: readonly ClassKind[];
}

/** Handouts of more bodies are several files, so that the pages of one are held at a time. */
const MOST_SAMPLES = 60;
const TOGETHER = TOGETHER_FILES.map(({ kind }) => kind);
/** How long what is made together takes for one learner, against that learner's own files. */
const TOGETHER_WEIGHT = 0.3;

/**
 * Makes a class's set: for each row its own folder with the files asked for and the project, beside them what is made of
 * all together and the teacher's summary, all in one ZIP. A row that can't be drafted is told in the summary, and the
 * rest is made. Whatever is finished is handed on at once: no more than one learner's files are held at a time.
 *
 * The same order and options give the same bytes.
 *
 * @param write is given each piece of the ZIP
 * @returns all learners, in the order of the table
 */
export async function* makeClass(
  { table, project, kinds }: ClassOrder,
  options: Omit<PdfOptions, 'fileName'>,
  write: (bytes: Uint8Array) => void,
): AsyncGenerator<Progress, readonly MadeMember[]> {
  const zip = zipWriter(options.date, write);
  const { rows } = table;
  const { units } = project;
  const single = kinds.filter((kind): kind is Exclude<ClassKind, TogetherFile> => !isTogether(kind));
  const together = TOGETHER.filter((kind) => kinds.includes(kind));
  const names = unlikeNames(rows.map(({ name }) => safeFileName(name)));
  const each = 1 / (rows.length * (1 + TOGETHER_WEIGHT * together.length));
  const members: MadeMember[] = [];
  for (const [i, row] of rows.entries()) {
    const says = countedOff(own(row.name), i, rows.length);
    yield { share: i * each, doing: says };
    const drafted = rowDraft(row);
    if (!drafted.ok) {
      members.push(unmadeMember(row, drafted.problems, units));
      continue;
    }
    const job: FileJob = { name: names[i] ?? safeFileName(row.name), draft: withFewestSheets(drafted.value) };
    try {
      const files = yield* partOf(makeFiles([job], single, options), i * each, (i + 1) * each, row.name);
      zip.add({ name: `${job.name}/${job.name}.legwork.json`, content: saveProject(job.draft.project) });
      for (const file of files) zip.add({ ...file, name: `${job.name}/${file.name}` });
      members.push(madeMember(row, job.draft));
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      members.push(unmadeMember(row, error.problems, units));
    }
  }
  const made = rows.flatMap((row, i) => (members[i]?.figures ? [{ row, name: names[i] ?? '' }] : []));
  const notes = [...notesOf(table)];
  for (const [k, kind] of together.entries()) {
    const from = rows.length * each * (1 + TOGETHER_WEIGHT * k);
    try {
      yield* togetherFiles(zip, kind, made, options, from, from + rows.length * each * TOGETHER_WEIGHT);
    } catch (error) {
      // What can't be made of all together is no reason to leave the teacher without each learner's own.
      if (!(error instanceof Refusal)) throw error;
      notes.push(
        printPhrase(say`Not made, ${own(kind)}: ${inTurn(error.problems.map(({ phrase }) => phrase))}`, units),
      );
    }
  }
  yield { share: 1, doing: words`the summary` };
  zip.add({
    name: 'summary.pdf',
    content: writeSummaryPdf(summaryContent(project.name, members, units, notes), units, options),
  });
  zip.add({ name: 'summary.csv', content: writeSummaryCsv(members, units) });
  zip.end();
  return members;
}

const isTogether = (kind: ClassKind): kind is TogetherFile => (TOGETHER as readonly ClassKind[]).includes(kind);

interface MadeRow {
  readonly row: ClassRow;
  readonly name: string;
}

/** Handouts in the order of the table, drawings of bodies of like size: in as many groups as one can hold. */
async function* togetherFiles(
  zip: ZipWriter,
  kind: TogetherFile,
  made: readonly MadeRow[],
  options: Omit<PdfOptions, 'fileName'>,
  from: number,
  to: number,
): AsyncGenerator<Progress, void> {
  const sorted = kind === 'nested' ? [...made].sort((a, b) => hipOf(a) - hipOf(b)) : made;
  // A drawing of one body is its own pattern.
  const groups = evenGroups(sorted, kind === 'nested' ? MOST_NESTED : MOST_SAMPLES).filter(
    (group) => kind !== 'nested' || group.length > 1,
  );
  const what = kind === 'nested' ? say`on one drawing` : say`samples at a quarter`;
  for (const [g, group] of groups.entries()) {
    const at = (share: number) => from + ((to - from) * (g + share)) / groups.length;
    const says = groups.length === 1 ? said(what) : countedOff(what, g, groups.length);
    yield { share: at(0), doing: says };
    const jobs: FileJob[] = [];
    for (const { row, name } of group) {
      const drafted = rowDraft(row);
      if (drafted.ok) jobs.push({ name, draft: drafted.value });
      yield { share: at(0), doing: says };
    }
    const files = yield* partOf(makeFiles(jobs, [kind], options), at(0), at(1), '');
    const part = groups.length === 1 ? '' : `-${g + 1}-of-${groups.length}`;
    for (const { name, content } of files) {
      const ending = name.slice(name.lastIndexOf(`.${kind}`) + kind.length + 1);
      zip.add({ name: `${kind}${part}${ending}`, content });
    }
  }
}

const hipOf = ({ row }: MadeRow): number => (row.project.ok ? (row.project.value.body.hipGirth ?? 0) : 0);

/** In as few groups as the most allows, none of them much smaller than another. */
function evenGroups<One>(all: readonly One[], most: number): readonly (readonly One[])[] {
  const count = Math.ceil(all.length / most);
  return Array.from({ length: count }, (_, g) =>
    all.slice(Math.round((g * all.length) / count), Math.round(((g + 1) * all.length) / count)),
  );
}

/** What of table and project was not used, in sentences. */
function notesOf({ unused, leftOut }: ClassTable): readonly string[] {
  return [
    ...(unused.length > 0 ? [words`Columns not used: ${own(unused.join(', '))}.`] : []),
    ...(leftOut.length > 0 ? [words`Left out, because it belongs to one body: ${own(leftOut.join(', '))}.`] : []),
  ];
}
