import type { Mm } from '../../length';

/** A size of type and its weight. */
export interface Type {
  /** Points. */
  readonly pt: number;
  readonly bold?: true;
}

/** Every size in which a document's words are set; the least is read at arm's length. */
export const TYPE = {
  title: { pt: 18, bold: true },
  part: { pt: 13, bold: true },
  lead: { pt: 11 },
  head: { pt: 10, bold: true },
  words: { pt: 8.4 },
  small: { pt: 8 },
} as const satisfies Readonly<Record<string, Type>>;

export type TypeName = keyof typeof TYPE;

/** White between what stands below each other. */
export const SPACE = {
  /** Between the items of a list. */
  item: 0.8,
  paragraph: 1.6,
  /** Above a heading that stands in a column, and below it. */
  head: 4,
  underHead: 1,
  part: 5,
  underPart: 2.4,
  /** Round a picture. */
  picture: 2,
  /** Between the runs of a page. */
  run: 4,
  /** Above and below the words of a table's row. */
  row: 0.5,
  /** Between two columns of a table. */
  cell: 2.5,
} as const satisfies Readonly<Record<string, Mm>>;
