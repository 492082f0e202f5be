import { lineHeight, type WidthOf } from '../../drawing';
import type { Mm } from '../../length';
import type { Box } from '../../plane';
import type { Row } from '../content/rows';

/** A titled part of the first sheet: a list, sentences, or both. */
export interface Section {
  readonly title: string;
  readonly rows?: readonly Row[];
  readonly sentences?: readonly string[];
}

/** One set line: words at the left, maybe a value at the right, on the baseline `y`. */
export interface SetLine {
  readonly left: string;
  readonly right: string;
  readonly title: boolean;
  readonly box: Box;
}

/** Between a name and its value. */
const GUTTER: Mm = 2;

/** Above a section's title, in lines. */
const SECTION_GAP = 0.6;

/**
 * Breaks a text into lines no wider than `width`: at spaces, and inside a word only where it alone is wider.
 *
 * @param taken of the first line's width, by what stands before the text
 * @returns at least one line
 */
export function wrapText(text: string, width: Mm, pt: number, widthOf: WidthOf, taken: Mm = 0): readonly string[] {
  const lines: string[] = [];
  let line = '';
  const fits = (s: string) => widthOf(s, pt) <= width - (lines.length === 0 ? taken : 0);
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (fits(longer)) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    let rest = word;
    while (!fits(rest)) {
      const letters = [...rest];
      let count = 1;
      while (count < letters.length && fits(letters.slice(0, count + 1).join(''))) count += 1;
      lines.push(letters.slice(0, count).join(''));
      rest = letters.slice(count).join('');
    }
    line = rest;
  }
  return line === '' && lines.length > 0 ? lines : [...lines, line];
}

/** One row or sentence of a section; it is never torn apart. */
type Item = Row | string;

/** A row's or sentence's lines in one column's width; a value that doesn't fit beside its name goes below it. */
function itemLines(item: Item, width: Mm, pt: number, widthOf: WidthOf): readonly Omit<SetLine, 'box'>[] {
  const plain = (text: string) => wrapText(text, width, pt, widthOf).map((left) => ({ left, right: '', title: false }));
  if (typeof item === 'string') return plain(item);
  const { name, value } = item;
  if (widthOf(name, pt) + GUTTER + widthOf(value, pt) <= width) return [{ left: name, right: value, title: false }];
  const below = widthOf(value, pt) <= width ? [{ left: '', right: value, title: false }] : plain(value);
  return [...plain(name), ...below];
}

const sectionItems = (section: Section): readonly Item[] => [...(section.rows ?? []), ...(section.sentences ?? [])];

/**
 * Sets sections into columns, one after the other; a title never stands alone, a row or sentence is never torn apart.
 *
 * @param columns boxes on the page, filled in order
 * @returns the set lines, and what found no room: whole sections, or the rest of one under its title
 */
export function flowSections(
  sections: readonly Section[],
  columns: readonly Box[],
  pt: number,
  widthOf: WidthOf,
): { readonly lines: readonly SetLine[]; readonly left: readonly Section[] } {
  const set: SetLine[] = [];
  const height = lineHeight(pt);
  const rest = [...columns];
  let y = rest[0]?.top ?? 0;
  for (const [index, section] of sections.entries()) {
    const items = sectionItems(section);
    let gap = height * SECTION_GAP;
    let title = section.title;
    for (let i = 0; i < items.length; ) {
      const column = rest[0];
      if (!column) {
        const sentences = items
          .slice(i)
          .map((item) => (typeof item === 'string' ? item : `${item.name}: ${item.value}`));
        return { lines: set, left: [{ title: section.title, sentences }, ...sections.slice(index + 1)] };
      }
      const head = title === '' ? [] : wrapText(title, column.right - column.left, pt, widthOf);
      const lines = [
        ...head.map((left) => ({ left, right: '', title: true })),
        ...itemLines(items[i] as Item, column.right - column.left, pt, widthOf),
      ];
      const start = y > column.top ? y + gap : y;
      if (start + lines.length * height > column.bottom + 1e-6) {
        rest.shift();
        y = rest[0]?.top ?? 0;
        continue;
      }
      y = start;
      for (const line of lines) {
        set.push({ ...line, box: { left: column.left, right: column.right, top: y, bottom: y + height } });
        y += height;
      }
      gap = 0;
      title = '';
      i += 1;
    }
  }
  return { lines: set, left: [] };
}

/**
 * Sets sections so that all columns are equally long, as far as sections let themselves be shared; the whole room where
 * they need it.
 *
 * @param columns the columns, where they end at a height
 * @param top where they begin
 * @param bottom the lowest that they may end
 */
export function flowBalanced(
  sections: readonly Section[],
  columns: (lower: Mm) => readonly Box[],
  top: Mm,
  bottom: Mm,
  pt: number,
  widthOf: WidthOf,
): ReturnType<typeof flowSections> {
  const line = lineHeight(pt);
  for (let lower = top + 10 * line; lower < bottom; lower += line) {
    const flow = flowSections(sections, columns(lower), pt, widthOf);
    if (flow.left.length === 0) return flow;
  }
  return flowSections(sections, columns(bottom), pt, widthOf);
}

/**
 * Sets whole sections into columns that are as even as they let them be: none is torn apart, as long as all find room so.
 *
 * @param columns the columns, where they end at a height
 * @param room where they begin at the earliest, and end at the lowest
 */
export function flowWhole(
  sections: readonly Section[],
  columns: (lower: Mm) => readonly Box[],
  room: Pick<Box, 'top' | 'bottom'>,
  pt: number,
  widthOf: WidthOf,
): ReturnType<typeof flowSections> {
  const line = lineHeight(pt);
  for (let lower = room.top + 10 * line; lower < room.bottom + line; lower += line) {
    const lines = wholeIn(sections, columns(Math.min(lower, room.bottom)), pt, widthOf);
    if (lines) return { lines, left: [] };
  }
  return flowBalanced(sections, columns, room.top, room.bottom, pt, widthOf);
}

/** Whole sections, each in the first column from there on in which it fits; undefined where one finds none. */
function wholeIn(
  sections: readonly Section[],
  columns: readonly Box[],
  pt: number,
  widthOf: WidthOf,
): readonly SetLine[] | undefined {
  const full: SetLine[] = [];
  const rest = [...columns];
  let here: readonly Section[] = [];
  let lines: readonly SetLine[] = [];
  for (const section of sections) {
    for (;;) {
      const column = rest[0];
      if (!column) return undefined;
      const flow = flowSections([...here, section], [column], pt, widthOf);
      if (flow.left.length === 0) {
        here = [...here, section];
        lines = flow.lines;
        break;
      }
      full.push(...lines);
      [here, lines] = [[], []];
      rest.shift();
    }
  }
  return [...full, ...lines];
}
