import type { Mm } from '../../length';
import type { Box } from '../../plane';
import type { Row } from '../content/rows';
import type { Pen } from './pen';
import type { TypeName } from './type-scale';

/** What words are besides plain: less important, that all is well, or that somebody should take care. */
export type Tone = 'plain' | 'quiet' | 'good' | 'doubtful' | 'care';

/** A drawing of a given shape. */
export interface PagePicture {
  /** Its height by its width. */
  readonly ratio: number;
  /** The largest that it is drawn; the column's width where it is not said. */
  readonly widest?: Mm;
  readonly tallest?: Mm;
  /** What stands under it. */
  readonly caption?: string;
  /** Draws it into a box of its shape. */
  readonly draw: (pen: Pen, box: Box) => void;
}

/** A column of a table; without a share it is as wide as its widest cell, up to three fifths of the table. */
export interface TableColumn {
  readonly head?: string;
  readonly align: 'left' | 'right';
  /** Of what the others leave, in parts. */
  readonly share?: number;
}

export interface TableRow {
  readonly cells: readonly string[];
  /** It is of the row above: set in, and quiet. */
  readonly part?: boolean | undefined;
  /** Of single cells; plain where nothing is said. */
  readonly tones?: readonly (Tone | undefined)[];
}

/** A row of a key. */
export interface KeyRow {
  /** Draws the sample from `left` as wide as the key's, around `middle`. */
  readonly draw: (pen: Pen, left: Mm, middle: Mm) => void;
  readonly text: string;
  /** Stands before the text, bold. */
  readonly label?: string;
}

/** What a document's page is made of, as data; it is laid by {@link passageStrips}. */
export type Passage =
  /** `aside` stands at the right, quiet. */
  | { readonly kind: 'heading'; readonly size: 'part' | 'head'; readonly text: string; readonly aside?: string }
  | {
      readonly kind: 'paragraph';
      readonly text: string;
      /** Stands before the text, bold. */
      readonly label?: string;
      readonly size?: TypeName;
      readonly tone?: Tone;
    }
  /** Each item behind its sign, or its number, counted from one. */
  | { readonly kind: 'list'; readonly items: readonly string[]; readonly sign: '•' | '□' | 'numbers' }
  | { readonly kind: 'table'; readonly columns: readonly TableColumn[]; readonly rows: readonly TableRow[] }
  | { readonly kind: 'picture'; readonly picture: PagePicture }
  /** A picture at the left and passages at its right, which take the whole width once they are past it. */
  | {
      readonly kind: 'beside';
      readonly picture: PagePicture;
      /** The picture's part of the width. */
      readonly share: number;
      readonly passages: readonly Passage[];
    }
  /** Small pictures in order, so many in a row, each in a cell of this shape. */
  | {
      readonly kind: 'gallery';
      readonly across: number;
      readonly ratio: number;
      readonly pictures: readonly PagePicture[];
    }
  /** Small drawings at the left, each with what it means at its right. */
  | { readonly kind: 'key'; readonly width: Mm; readonly rows: readonly KeyRow[] }
  /** What to take care of: a bar at its left, so that it is seen in grey too. */
  | { readonly kind: 'caution'; readonly label: string; readonly text: string }
  /** Passages that are best not parted. */
  | { readonly kind: 'group'; readonly passages: readonly Passage[] };

/** A heading that stands in a column, and what stands under it; nothing where that is nothing. */
export const headed = (text: string, ...passages: readonly Passage[]): readonly Passage[] =>
  passages.length === 0 ? [] : [{ kind: 'heading', size: 'head', text }, ...passages];

/** The same as what is best not parted. */
export const headedWhole = (text: string, ...passages: readonly Passage[]): readonly Passage[] => [
  { kind: 'group', passages: headed(text, ...passages) },
];

/** Names at the left, their values at the right. */
export const pairs = (rows: readonly Row[]): Passage => ({
  kind: 'table',
  columns: [{ align: 'left', share: 1 }, { align: 'right' }],
  rows: rows.map(({ name, value }) => ({ cells: [name, value] })),
});

/** Where something comes from, small, a paragraph each. */
export const notes = (texts: readonly string[]): readonly Passage[] =>
  texts.map((text) => ({ kind: 'paragraph', size: 'small', text }));

/** Sentences: a list where they are several. */
export const sentences = (texts: readonly string[]): readonly Passage[] =>
  texts.length > 1 ? [bullets(texts)] : texts.map((text) => ({ kind: 'paragraph', text }));

export const bullets = (items: readonly string[]): Passage => ({ kind: 'list', sign: '•', items });
