import { type BodyGiven, bodyProblems } from '../../body';
import { plainWords } from '../../length';
import { type Project, withoutLastPrint } from '../../project';
import { isBrought } from '../../trace';
import { inTurn, number, own, type Phrase, type Problem, type Result, say, UNSAID, words } from '../../words';
import { cellText, estimatedCell, legLengthCell, lengthCell, measurementCell, yesNoCell } from './cells';
import { type ColumnKind, fieldOf, isMeasurement, nameOf } from './columns';
import {
  readRecords,
  type TableHead,
  type TableRecords,
  type TableRow,
  tableHead,
  tableRow,
  type WrittenTable,
  writtenTable,
} from './table';

/** One learner of a class: the project that is drafted for them, or all that is wrong with their row. */
export interface ClassRow {
  /** As a spreadsheet numbers it. */
  readonly row: number;
  readonly name: string;
  readonly project: Result<Project>;
}

/** A class, read from a table. */
export interface ClassTable {
  /** At least one. */
  readonly rows: readonly ClassRow[];
  /** Heads of columns that nothing was made of. */
  readonly unused: readonly string[];
  /** What of the project belongs to one body and is not given to all of them; empty as a rule. */
  readonly leftOut: readonly string[];
}

/** A table with more rows is several classes; their files would burst a ZIP of the plain kind. */
const MOST_ROWS = 5000;
/** Rows that begin so are notes for people: the empty table explains itself with them. */
const NOTE = '#';
const LONGEST_NAME = 80;
/** Of the heads that nothing was made of, so many are named in a sentence. */
const MOST_SHOWN = 8;

/**
 * Reads a table of bodies: one a row, each to be drafted with the project's own choices.
 *
 * A bad row is told with all that is wrong in it, and the others are read all the same; only a table that can't be
 * understood as a whole is refused.
 *
 * @param bytes of the CSV file
 * @param project whose design is used for each row; its units count where the table names none
 */
export function readClass(bytes: Uint8Array, project: Project): Result<ClassTable> {
  const read = readRecords(bytes);
  return read.ok ? classOf(read.value, project) : read;
}

/** A class of a table that was read before, and may have been mended since; the rest as for {@link readClass}. */
export function classOf(records: TableRecords, project: Project): Result<ClassTable> {
  if (isBrought(project.block)) {
    const phrase = say`blocks that were brought along fit one body only; choose drafted blocks, to draft a class.`;
    return { ok: false, problems: [{ field: 'block.source', value: project.block.source, phrase }] };
  }
  const table = writtenTable(records);
  const wrong = headProblems(table);
  if (wrong.length > 0) return { ok: false, problems: wrong };
  const bodies = table.rows.filter(({ cells }) => !cells.find((cell) => cell !== '')?.startsWith(NOTE));
  if (bodies.length === 0 || bodies.length > MOST_ROWS) {
    const phrase =
      bodies.length === 0
        ? say`holds no body: each body stands in a row of its own below the names of the columns.`
        : say`has ${number(bodies.length, 0)} rows; at most ${number(MOST_ROWS, 0)} are made at once: divide it.`;
    return { ok: false, problems: [{ field: 'table', value: words`${number(bodies.length, 0)} rows`, phrase }] };
  }
  const { design, leftOut } = designOf(project);
  return {
    ok: true,
    value: {
      rows: bodies.map((row) => classRow(row, table.heads, design)),
      unused: table.heads.filter(({ text, column }) => !column && text !== '').map(({ text }) => text),
      leftOut,
    },
  };
}

/** What keeps a table as a whole from being read: two columns for one thing, or none for what every body needs. */
function headProblems({ heads }: WrittenTable): readonly Problem[] {
  const known = heads.flatMap(({ column }) => (column ? [column.kind] : []));
  const twice = [...new Set(known.filter((kind, i) => kind !== 'name' && known.indexOf(kind) < i))].map((kind) => {
    const texts = heads.filter(({ column }) => column?.kind === kind).map(({ text }) => text);
    return {
      field: 'table',
      value: texts.join(', '),
      phrase: say`are columns for the same thing; only one of them may stay.`,
    };
  });
  const strange = heads.filter(({ text, column }) => !column && text !== '').map(({ text }) => `“${text}”`);
  const hint = strangeHint(strange);
  const missing = bodyProblems({ label: '' }).flatMap(({ field, phrase }): readonly Problem[] => {
    const kind = field.replace('body.', '') as ColumnKind;
    if (known.includes(kind)) return [];
    return [{ field, place: say`column ${own(nameOf(kind))}`, value: undefined, phrase: inTurn([phrase, hint]) }];
  });
  return [...twice, ...missing];
}

/** The heads that are not known, as far as they can be taken in; one of them may be what is missing. */
function strangeHint(strange: readonly string[]): Phrase {
  if (strange.length === 0) return UNSAID;
  const shown = own(strange.slice(0, MOST_SHOWN).join(', '));
  const more = strange.length - MOST_SHOWN;
  return more > 0
    ? say`No column of that name was found; not known are ${shown} and ${number(more)} more.`
    : say`No column of that name was found; not known are ${shown}.`;
}

/** The project without what was typed for its own body alone. */
function designOf(project: Project): { readonly design: Project; readonly leftOut: readonly string[] } {
  const leftOut = [
    ...(project.fit ? [words`corrections after wearing`] : []),
    ...(project.sides ? [words`what left and right differ by`] : []),
    ...(project.waist.elasticLength === 'auto' ? [] : [words`a typed length of elastic`]),
  ];
  return {
    design: {
      ...withoutLastPrint(project),
      fit: null,
      sides: null,
      waist: { ...project.waist, elasticLength: 'auto' },
    },
    leftOut,
  };
}

/**
 * One row of a table that was read before, as {@link classOf} would read it.
 *
 * @param at which record it is, counted from 0
 */
export function classRowAt(records: TableRecords, at: number, project: Project): ClassRow {
  const heads = (records.records[records.headsAt] ?? []).map(tableHead);
  return classRow(tableRow(records.records[at] ?? [], at), heads, designOf(project).design);
}

function classRow({ row, cells }: TableRow, heads: readonly TableHead[], design: Project): ClassRow {
  const named = heads.flatMap(({ column }, i) => (column?.kind === 'name' ? [cellText(cells[i] ?? '')] : []));
  const written = plainWords(named.filter((word) => word !== '').join(' '));
  const name = [...written.slice(0, 2 * LONGEST_NAME)].slice(0, LONGEST_NAME).join('') || words`Row ${number(row)}`;
  const problems: Problem[] = [];
  const told = (kind: ColumnKind, head: string, value: unknown, phrase: Problem['phrase']) =>
    problems.push({ field: fieldOf(kind), place: say`${own(head)}`, value, phrase });

  // Some programs end every row with one more delimiter; no more than that is harmless.
  const tooMany = cells.length > heads.length + 1 || (cells[heads.length] ?? '') !== '';
  if (tooMany) {
    // Its cells may have moved: whatever they seem to say would be another column's.
    const phrase = say`has ${number(cells.length, 0)} cells below ${number(heads.length, 0)} names of columns; a decimal comma must stand in quotation marks, or the cells must be separated by semicolons.`;
    const value = words`${number(cells.length, 0)} cells`;
    const problem = { field: 'table', place: say`row ${number(row)}`, value, phrase };
    return { row, name, project: { ok: false, problems: [problem] } };
  }
  let project = design;
  const figures: Record<string, number | 'estimated'> = {};
  const unreadable = new Set<string>();
  let nappy: boolean | undefined;
  for (const [i, { text: head, column }] of heads.entries()) {
    const text = cellText(cells[i] ?? '');
    if (!column || text === '' || column.kind === 'name') continue;
    const { kind, unit } = column;
    if (isMeasurement(kind)) {
      const estimated = estimatedCell(text, kind);
      const cell = estimated
        ? { ok: true as const, value: estimated }
        : measurementCell(text, kind, unit, design.units);
      if (cell.ok) figures[kind] = cell.value;
      else {
        unreadable.add(kind);
        told(kind, head, text, cell.phrase);
      }
    } else if (kind === 'nappy') {
      const cell = yesNoCell(text);
      if (cell.ok) nappy = cell.value;
      else told(kind, head, text, cell.phrase);
    } else if (kind === 'length') {
      const cell = legLengthCell(text, unit, design.units);
      if (cell.ok) project = { ...project, leg: { ...project.leg, length: cell.value } };
      else told(kind, head, text, cell.phrase);
    } else {
      const cell = lengthCell(text, unit, design.units);
      if (cell.ok) project = { ...project, cloth: { ...project.cloth, width: cell.value } };
      else told(kind, head, text, cell.phrase);
    }
  }
  const body: BodyGiven = { label: name, ...figures, ...(nappy === undefined ? {} : { nappy }) };
  for (const { field, phrase } of bodyProblems(body)) {
    const kind = field.replace('body.', '') as ColumnKind;
    const at = heads.findIndex(({ column }) => column?.kind === kind);
    if (!unreadable.has(kind)) told(kind, heads[at]?.text ?? nameOf(kind), cells[at] || undefined, phrase);
  }
  if (problems.length > 0) return { row, name, project: { ok: false, problems } };
  return { row, name, project: { ok: true, value: { ...project, body } } };
}
