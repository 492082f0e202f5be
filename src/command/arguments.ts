import { parseArgs } from 'node:util';
import { FILE_KINDS, type FileKind } from '../files';
import { ENGLISHES, type English, either, isEnglish, own, say, words } from '../words';

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
  /** Whose words are used; undefined where the terminal's own are. */
  readonly words: English | undefined;
}

export type ParsedArguments =
  | { readonly ok: true; readonly order: DraftOrder }
  | { readonly ok: true; readonly order: 'help' }
  | { readonly ok: false; readonly problems: readonly string[] };

// Options and kinds are the same in every language.
const [FILES, BLOCKS, EMPTY_TABLE] = [own('--files'), own('--blocks'), own('--empty-table')];
const KINDS = own(FILE_KINDS.join(', '));
const quoted = (text: string) => own(JSON.stringify(text));

/**
 * Reads the command line's words.
 *
 * @param given what stands after the command's own name
 * @returns the order, or a sentence for each word that is wrong or missing
 */
export function parseArguments(given: readonly string[]): ParsedArguments {
  const { projects, values, switches, problems } = sortedWords(given);
  if (switches.has('--help')) return { ok: true, order: 'help' };
  const [project, ...others] = projects;
  const out = values.get('--out');
  const blocks = values.get('--blocks');
  const table = values.get('--class');
  const list = values.get('--files');
  const english = values.get('--words');
  const emptyTable = switches.has('--empty-table');
  const asked = list?.split(',').map((kind) => kind.trim());
  const files = asked ? FILE_KINDS.filter((kind) => asked.includes(kind)) : 'all';

  for (const kind of new Set(asked?.filter((kind) => !isFileKind(kind))))
    problems.push(words`${FILES}: ${quoted(kind)}: unknown kind; it must be one of ${KINDS}`);
  if (english !== undefined && !isEnglish(english))
    problems.push(
      words`${own('--words')}: ${quoted(english)}: must be ${either(ENGLISHES.map((one) => say`${own(one)}`))}`,
    );
  if (project === undefined) problems.push(words`project: missing: name a project file, or - for standard input`);
  for (const again of new Set(projects.filter((path, i) => projects.indexOf(path) < i)))
    problems.push(words`project: ${quoted(again)}: named twice`);
  if ((table || emptyTable) && others[0] !== undefined)
    problems.push(words`project: ${quoted(others[0])}: a class has one project; its bodies stand in the table`);
  if (table && blocks) problems.push(words`${BLOCKS}: blocks that were brought along fit one body, not a class`);
  if (table && emptyTable) problems.push(words`${EMPTY_TABLE}: a table is written or read, not both at once`);
  if (emptyTable && (asked || blocks))
    problems.push(words`${EMPTY_TABLE}: nothing else is written; leave out ${FILES} and ${BLOCKS}`);
  if (!table && files !== 'all' && files.includes('nested') && project !== undefined && others.length === 0)
    problems.push(words`${FILES}: ${quoted('nested')}: needs two projects or more, to lay one on the other`);
  if (out === undefined) problems.push(missing('--out'));
  if (problems.length > 0 || project === undefined || out === undefined)
    return { ok: false, problems: [...new Set(problems)] };
  const strict = switches.has('--strict');
  return {
    ok: true,
    order: {
      projects: [project, ...others],
      out,
      files,
      blocks,
      table,
      emptyTable,
      strict,
      words: isEnglish(english) ? english : undefined,
    },
  };
}

/** The options that a word belongs to, and what that word names. */
const VALUED = {
  '--out': say`name the folder to write to`,
  '--files': say`name one or more of ${KINDS}`,
  '--blocks': say`name the drawing of the blocks`,
  '--class': say`name the table of bodies`,
  '--words': say`name whose words to use`,
} as const;
type Valued = keyof typeof VALUED;
const SWITCHES = ['--empty-table', '--strict', '--help'];

const missing = (option: Valued): string => words`${own(option)}: missing: ${VALUED[option]}`;

/** The words, each where it belongs, and a sentence for each that belongs nowhere. */
function sortedWords(given: readonly string[]) {
  const projects: string[] = [];
  const values = new Map<Valued, string>();
  const switches = new Set<string>();
  const problems: string[] = [];
  // Told of no option, it takes the words apart and leaves to us what they mean, and our own sentences for what is wrong.
  const { tokens } = parseArgs({ args: [...given], tokens: true, strict: false, allowPositionals: true });
  for (let token = tokens.shift(); token !== undefined; token = tokens.shift()) {
    if (token.kind === 'positional') projects.push(token.value);
    if (token.kind !== 'option') continue;
    const word = given[token.index] ?? token.rawName;
    const option = token.rawName;
    if (SWITCHES.includes(word)) switches.add(word);
    else if (isValued(option)) {
      const next = tokens[0]?.kind === 'positional' && token.value === undefined ? tokens.shift() : undefined;
      const value = next?.kind === 'positional' ? next.value : token.value;
      if (values.has(option)) problems.push(words`${own(option)}: named twice; name it once`);
      if (value) values.set(option, value);
      else problems.push(missing(option));
    } else
      problems.push(
        words`${own(word)}: unknown option; known are ${own([...Object.keys(VALUED), ...SWITCHES].join(', '))}`,
      );
  }
  return { projects, values, switches, problems };
}

const isValued = (option: string): option is Valued => Object.hasOwn(VALUED, option);

const isFileKind = (kind: string): kind is FileKind => (FILE_KINDS as readonly string[]).includes(kind);
