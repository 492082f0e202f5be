/** No project is nested more deeply; what is would only be a way to fill the memory. */
export const DEEPEST = 50;
/** A project with blocks traced very finely has a few ten thousand; reading many more would take seconds. */
export const MOST_VALUES = 200_000;
/** More names that stand twice are not told one by one. */
const MOST_TWICE = 100;

/** What can be seen of a JSON text in one pass from its beginning to its end, whether it can be parsed or not. */
export interface JsonOutline {
  /** Whether it is deeper than {@link DEEPEST} or has more values than {@link MOST_VALUES}; the rest was not looked at then. */
  readonly beyond: 'depth' | 'values' | undefined;
  /** Paths of names that stand twice in the same object: a parser keeps the last, and drops the others without a word. */
  readonly twice: readonly (readonly string[])[];
  /** The text closed after the last value that is whole: what an interrupted copy leaves. Undefined where none is open. */
  readonly closed: () => string | undefined;
}

/** An object or a list that is open while the text is read. */
interface Open {
  readonly closing: '}' | ']';
  names: Set<string> | undefined;
  /** The name that was read last, in an object. */
  name: string | undefined;
  /** In an object: whether a text would be a name. */
  nameNext: boolean;
  /** In a list: how many values came before. */
  before: number;
}

/**
 * Looks through a JSON text once, in time that rises with its length and no faster.
 *
 * @param text that may be cut off, or no JSON at all
 */
export function jsonOutline(text: string): JsonOutline {
  const open: Open[] = [];
  const twice: string[][] = [];
  // The last place after which the text may be cut. All that opens or closes is such a place, so that what is open at the
  // end of the text was open there.
  let whole = 0;
  let mismatched = false;
  let values = 0;
  for (let i = 0; i < text.length; i += 1) {
    const sign = text[i];
    const inner = open.at(-1);
    if (sign === '"') {
      const end = textEnd(text, i);
      if (inner?.nameNext && end < text.length) noteName(open, text.slice(i + 1, end), twice);
      i = end;
    } else if (sign === '{' || sign === '[') {
      if (open.length === DEEPEST) return beyond('depth');
      values += 1;
      const closing = sign === '{' ? '}' : ']';
      open.push({ closing, names: undefined, name: undefined, nameNext: closing === '}', before: 0 });
      whole = i + 1;
    } else if (sign === '}' || sign === ']') {
      if (open.pop()?.closing !== sign) mismatched = true;
      if (mismatched) break;
      whole = i + 1;
    } else if (sign === ',' && inner) {
      values += 1;
      inner.before += 1;
      inner.nameNext = inner.closing === '}';
      whole = i;
    }
    if (values > MOST_VALUES) return beyond('values');
  }
  const closing = open.map((one) => one.closing).reverse();
  const cut = !mismatched && open.length > 0;
  return { beyond: undefined, twice, closed: () => (cut ? text.slice(0, whole) + closing.join('') : undefined) };
}

const beyond = (what: 'depth' | 'values'): JsonOutline => ({ beyond: what, twice: [], closed: () => undefined });

/** Where the text that begins at a quotation mark ends, or the whole does. */
function textEnd(text: string, start: number): number {
  let i = start + 1;
  while (i < text.length && text[i] !== '"') i += text[i] === '\\' ? 2 : 1;
  return i;
}

function noteName(open: readonly Open[], raw: string, twice: string[][]): void {
  const inner = open.at(-1);
  if (!inner) return;
  const name = raw.includes('\\') ? unescaped(raw) : raw;
  inner.names ??= new Set();
  inner.name = name;
  inner.nameNext = false;
  if (inner.names.has(name) && twice.length < MOST_TWICE)
    twice.push(open.map((one) => (one.closing === '}' ? (one.name ?? '') : String(one.before))));
  inner.names.add(name);
}

function unescaped(raw: string): string {
  try {
    return JSON.parse(`"${raw}"`) as string;
  } catch {
    return raw;
  }
}
