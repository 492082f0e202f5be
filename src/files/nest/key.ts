import { measuredOf } from '../../body';
import { baseline, INK, lineHeight } from '../../drawing';
import { formatLength, type Mm } from '../../length';
import { point, straight } from '../../plane';
import { type Draft, measureTold } from '../../project';
import { inTurn, mm, own, printPhrase, say } from '../../words';
import type { Pen } from '../pen/pen';
import { wrapText } from '../pen/text-flow';
import { lineNumber } from './numbers';
import { nestedStyle, numberStyle } from './styles';

const SAMPLE: Mm = 55;
const GAP: Mm = 5;
const ROW_GAP: Mm = 2.5;
const NAME_PT = 10;
const WORDS_PT = 8;

/** What a nest's key says of one body. */
export interface KeyRow {
  readonly body: number;
  readonly name: string;
  readonly says: string;
}

/** One row for each body: whose it is, the line type in words, and the measures by which it is known again. */
export function keyRows(drafts: readonly Draft[]): readonly KeyRow[] {
  return drafts.map((draft, body) => {
    const { project, measures } = draft;
    const l = (value: Mm) => formatLength(value, project.units);
    const { waistGirth, hipGirth, insideLeg } = measuredOf(project.body);
    const given = [
      [say`waist`, waistGirth],
      [say`hip`, hipGirth],
      [say`inside leg`, insideLeg],
    ] as const;
    const measured = given.flatMap(([name, value]) => (value === undefined ? [] : [say`${name} ${mm(value)}`]));
    const finished = say`finished: hip ${mm(measures.hipGirthFinished)}, inseam ${own(measureTold(draft, 'inseamFront', l))}, hem ${own(measureTold(draft, 'hemGirthFinished', l))}`;
    return {
      body,
      name: `${body + 1}  ${project.body.label} · ${project.name}`,
      says: printPhrase(inTurn([nestedStyle(body).name, inTurn(measured, ', '), finished], '; '), project.units),
    };
  });
}

/** How high the key is at a width. */
export const keyHeight = (rows: readonly KeyRow[], width: Mm, widthOf: Pen['widthOf']): Mm =>
  rows.reduce((sum, row) => sum + rowHeight(row, width, widthOf), 0);

/** Draws the key: each body's line with its number on it, and what the row says beside it. */
export function drawKey(pen: Pen, rows: readonly KeyRow[], left: Mm, top: Mm, width: Mm): void {
  let y = top;
  for (const row of rows) {
    const { cut } = nestedStyle(row.body);
    const height = rowHeight(row, width, pen.widthOf);
    const middle = y + lineHeight(NAME_PT) / 2;
    pen.stroke([straight(point(left, middle), point(left + SAMPLE, middle))], (p) => p, cut);
    const { field, figures } = lineNumber(row.body + 1, point(left + SAMPLE / 2, middle), point(1, 0));
    pen.fill(field, (p) => p, '#FFFFFF');
    for (const figure of figures) pen.stroke(figure, (p) => p, numberStyle(row.body));
    const x = left + SAMPLE + GAP;
    let line = y;
    for (const { text, pt } of rowLines(row, width, pen.widthOf)) {
      pen.words(text, point(x, baseline(line, pt)), { pt, colour: pt === NAME_PT ? INK.cut : INK.words });
      line += lineHeight(pt);
    }
    y += height;
  }
}

function rowLines({ name, says }: KeyRow, width: Mm, widthOf: Pen['widthOf']) {
  const room = width - SAMPLE - GAP;
  return [
    ...wrapText(name, room, NAME_PT, widthOf).map((text) => ({ text, pt: NAME_PT })),
    ...wrapText(says, room, WORDS_PT, widthOf).map((text) => ({ text, pt: WORDS_PT })),
  ];
}

const rowHeight = (row: KeyRow, width: Mm, widthOf: Pen['widthOf']): Mm =>
  rowLines(row, width, widthOf).reduce((sum, { pt }) => sum + lineHeight(pt), ROW_GAP);
