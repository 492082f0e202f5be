import { parseArgs } from 'node:util';
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
  --        what follows is project files, also where a name begins with a hyphen

Exit codes: 0 written, 1 written but a check says wrong (--strict), 2 refused and nothing written;
129, 130 or 143 where it was stopped (HUP, INT, TERM), and nothing written. All files are written or
none: where that fails, those of the same names stay as they were.`;

/**
 * Reads the command line's words.
 *
 * @param words what stands after the command's own name
 * @returns the order, or a sentence for each word that is wrong or missing
 */
export function parseArguments(words: readonly string[]): ParsedArguments {
  const { projects, values, switches, problems } = sortedWords(words);
  if (switches.has('--help')) return { ok: true, order: 'help' };
  const [project, ...others] = projects;
  const out = values.get('--out');
  const blocks = values.get('--blocks');
  const table = values.get('--class');
  const list = values.get('--files');
  const emptyTable = switches.has('--empty-table');
  const asked = list?.split(',').map((kind) => kind.trim());
  const files = asked ? FILE_KINDS.filter((kind) => asked.includes(kind)) : 'all';

  for (const kind of new Set(asked?.filter((kind) => !isFileKind(kind))))
    problems.push(`--files: ${JSON.stringify(kind)}: unknown kind; it must be one of ${FILE_KINDS.join(', ')}`);
  if (project === undefined) problems.push('project: missing: name a project file, or - for standard input');
  for (const again of new Set(projects.filter((path, i) => projects.indexOf(path) < i)))
    problems.push(`project: ${JSON.stringify(again)}: named twice`);
  if ((table || emptyTable) && others.length > 0)
    problems.push(`project: ${JSON.stringify(others[0])}: a class has one project; its bodies stand in the table`);
  if (table && blocks) problems.push('--blocks: blocks that were brought along fit one body, no class');
  if (table && emptyTable) problems.push('--empty-table: a table is written or read, not both at once');
  if (emptyTable && (asked || blocks))
    problems.push('--empty-table: nothing else is written; leave out --files and --blocks');
  if (!table && files !== 'all' && files.includes('nested') && project !== undefined && others.length === 0)
    problems.push('--files: "nested": needs two projects or more, to lay one on the other');
  if (out === undefined) problems.push(missing('--out'));
  if (problems.length > 0 || project === undefined || out === undefined)
    return { ok: false, problems: [...new Set(problems)] };
  const strict = switches.has('--strict');
  return { ok: true, order: { projects: [project, ...others], out, files, blocks, table, emptyTable, strict } };
}

/** The options that a word belongs to, and what that word names. */
const VALUED = {
  '--out': 'name the folder to write to',
  '--files': `name one or more of ${FILE_KINDS.join(', ')}`,
  '--blocks': 'name the drawing of the blocks',
  '--class': 'name the table of bodies',
} as const;
type Valued = keyof typeof VALUED;
const SWITCHES = ['--empty-table', '--strict', '--help'];

const missing = (option: Valued): string => `${option}: missing: ${VALUED[option]}`;

/** The words, each where it belongs, and a sentence for each that belongs nowhere. */
function sortedWords(words: readonly string[]) {
  const projects: string[] = [];
  const values = new Map<Valued, string>();
  const switches = new Set<string>();
  const problems: string[] = [];
  // Told of no option, it takes the words apart and leaves to us what they mean, and our own sentences for what is wrong.
  const { tokens } = parseArgs({ args: [...words], tokens: true, strict: false, allowPositionals: true });
  for (let token = tokens.shift(); token !== undefined; token = tokens.shift()) {
    if (token.kind === 'positional') projects.push(token.value);
    if (token.kind !== 'option') continue;
    const word = words[token.index] ?? token.rawName;
    const option = token.rawName;
    if (SWITCHES.includes(word)) switches.add(word);
    else if (isValued(option)) {
      const next = tokens[0]?.kind === 'positional' && token.value === undefined ? tokens.shift() : undefined;
      const value = next?.kind === 'positional' ? next.value : token.value;
      if (values.has(option)) problems.push(`${option}: named twice; name it once`);
      if (value) values.set(option, value);
      else problems.push(missing(option));
    } else problems.push(`${word}: unknown option; known are ${[...Object.keys(VALUED), ...SWITCHES].join(', ')}`);
  }
  return { projects, values, switches, problems };
}

const isValued = (option: string): option is Valued => Object.hasOwn(VALUED, option);

const isFileKind = (kind: string): kind is FileKind => (FILE_KINDS as readonly string[]).includes(kind);
