import { CLASS_KINDS, FILE_KINDS, type FileKind } from '../files';

/** What the command line asks for. */
export interface DraftOrder {
  /** The project files' paths, at least one; `-` is standard input. */
  readonly projects: readonly [string, ...string[]];
  /** The folder to write to. */
  readonly out: string;
  /** A drawing of the front and back block that every project uses instead of its own; undefined where each keeps its own. */
  readonly blocks: string | undefined;
  /** All that these projects can have, where none was named. */
  readonly files: readonly FileKind[] | 'all';
  /** A table of bodies, each to be drafted with the project's choices; undefined where the projects' own bodies are. */
  readonly table: string | undefined;
  /** Write an empty table of bodies, in the project's units, and nothing else. */
  readonly emptyTable: boolean;
  /** Exit with 1 where a check says wrong. */
  readonly strict: boolean;
}

export type ParsedArguments =
  | { readonly ok: true; readonly order: DraftOrder }
  | { readonly ok: true; readonly order: 'help' }
  | { readonly ok: false; readonly problems: readonly string[] };

export const USAGE = `Drafts a lounge pant from a project file and writes its pattern.

  npm run --silent draft -- PROJECT.legwork.json … --out DIR [--files ${FILE_KINDS.join(',')}] [--blocks BLOCKS.svg] [--strict]
  npm run --silent draft -- PROJECT.legwork.json --class BODIES.csv --out DIR [--files …] [--strict]
  npm run --silent draft -- PROJECT.legwork.json --empty-table --out DIR

  PROJECT   a project file, or - to read it from standard input; several may be named
  --out     the folder to write to; it is made if it is missing
  --files   which files, with commas between them (all where it is left out);
            samples draws all projects at a quarter, several to a page, nested draws them on one
            drawing, zip packs everything in one file
  --blocks  an SVG drawing of your own front and back block, each edge a line by its name, to be
            used instead of drafting them; --files blocks writes such a drawing
  --class   a table of bodies, one a row, each drafted with the project's choices: a folder for each
            with the files asked for (${CLASS_KINDS.join(',')} where that is left out) and a
            summary, in one ZIP; a row that can't be drafted is told, and the rest is made
  --empty-table
            write such a table to fill in, in the project's units
  --strict  exit with 1 if a check says wrong, or a row of a class can't be drafted; the files are
            written all the same
  --help    these lines

Exit codes: 0 written, 1 written but a check says wrong (--strict), 2 refused and nothing written.`;

/**
 * Reads the command line's words.
 *
 * @param words what stands after the command's own name
 * @returns the order, or a sentence for each word that is wrong or missing
 */
export function parseArguments(words: readonly string[]): ParsedArguments {
  const problems: string[] = [];
  const projects: string[] = [];
  let out: string | undefined;
  let files: readonly FileKind[] | 'all' = 'all';
  let blocks: string | undefined;
  let table: string | undefined;
  let emptyTable = false;
  let strict = false;
  const rest = [...words];
  for (let word = rest.shift(); word !== undefined; word = rest.shift()) {
    const [option, attached] = optionParts(word);
    const value = (): string | undefined =>
      attached ?? (rest[0] !== undefined && !isOption(rest[0]) ? rest.shift() : undefined);
    if (option === '--help') return { ok: true, order: 'help' };
    if (option === '--strict' && attached === undefined) strict = true;
    else if (option === '--empty-table' && attached === undefined) emptyTable = true;
    else if (option === '--class') {
      table = value();
      if (!table) problems.push('--class: missing: name the table of bodies');
    } else if (option === '--out') {
      out = value();
      if (!out) problems.push('--out: missing: name the folder to write to');
    } else if (option === '--blocks') {
      blocks = value();
      if (!blocks) problems.push('--blocks: missing: name the drawing of the blocks');
    } else if (option === '--files') {
      const list = value();
      if (list === undefined) problems.push(`--files: missing: name one or more of ${FILE_KINDS.join(', ')}`);
      else {
        const asked = list.split(',').map((kind) => kind.trim());
        const unknown = asked.filter((kind) => !isFileKind(kind));
        for (const kind of unknown)
          problems.push(`--files: "${kind}": unknown kind; it must be one of ${FILE_KINDS.join(', ')}`);
        files = FILE_KINDS.filter((kind) => asked.includes(kind));
      }
    } else if (isOption(word))
      problems.push(
        `${word}: unknown option; known are --out, --files, --blocks, --class, --empty-table, --strict and --help`,
      );
    else projects.push(word);
  }
  const [project, ...others] = projects;
  if (project === undefined) problems.push('project: missing: name a project file, or - for standard input');
  for (const again of new Set(projects.filter((path, i) => projects.indexOf(path) < i)))
    problems.push(`project: "${again}": named twice`);
  if ((table || emptyTable) && others.length > 0)
    problems.push(`project: "${others[0]}": a class has one project; its bodies stand in the table`);
  if (table && blocks) problems.push('--blocks: blocks that were brought along fit one body, no class');
  if (table && emptyTable) problems.push('--empty-table: a table is written or read, not both at once');
  if (!table && files !== 'all' && files.includes('nested') && project !== undefined && others.length === 0)
    problems.push('--files: "nested": needs two projects or more, to lay one on the other');
  if (out === undefined && !problems.some((problem) => problem.startsWith('--out'))) {
    problems.push('--out: missing: name the folder to write to');
  }
  if (problems.length > 0 || project === undefined || !out) return { ok: false, problems };
  return { ok: true, order: { projects: [project, ...others], out, files, blocks, table, emptyTable, strict } };
}

/** `--out=DIR` is `--out DIR`. */
function optionParts(word: string): readonly [string, string | undefined] {
  const equals = word.indexOf('=');
  return word.startsWith('--') && equals > 0 ? [word.slice(0, equals), word.slice(equals + 1)] : [word, undefined];
}

/** A single hyphen is standard input, no option. */
const isOption = (word: string): boolean => word.startsWith('-') && word !== '-';

const isFileKind = (kind: string): kind is FileKind => (FILE_KINDS as readonly string[]).includes(kind);
