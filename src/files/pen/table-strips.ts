import { baseline, INK, type LineStyle, lineHeight } from '../../drawing';
import type { Mm } from '../../length';
import { point } from '../../plane';
import type { TableColumn, TableRow } from './passage';
import type { Pen } from './pen';
import type { Strip } from './strip';
import { type Measure, TONE_INK } from './text-strips';
import { SPACE, TYPE, type Type } from './type-scale';
import { wrapText } from './wrap-text';

export const RULE: LineStyle = { width: 0.2, colour: INK.frame, dash: [] };
const HEAD_RULE: LineStyle = { width: 0.3, colour: INK.join, dash: [] };
/** How far a row that is part of the one above is set in. */
const INSET: Mm = 3;
/** The most that a column takes by its cells alone. */
const WIDEST = 0.6;
/** So that the widest cell of a column, which sets its width, is not broken for rounding. */
const ROUNDING: Mm = 0.05;

/** Where a column's words lie. */
interface Placed {
  readonly from: Mm;
  readonly to: Mm;
}

/**
 * A table as strips, a row each, with a thin rule under it. A cell that is wider than its column goes on below.
 *
 * @param type of the rows
 */
export function tableStrips(
  columns: readonly TableColumn[],
  rows: readonly TableRow[],
  width: Mm,
  widthOf: Measure,
  type: Type = TYPE.words,
): readonly Strip[] {
  const places = columnPlaces(columns, rows, width, widthOf, type);
  const row = (
    cells: readonly string[],
    { pt, bold }: Type,
    inkOf: (i: number) => string,
    rule: LineStyle,
    inset = 0,
  ): Strip => {
    const placed = places.map(({ from, to }, i) => ({ from: i === 0 ? from + inset : from, to }));
    const wrapped = placed.map(({ from, to }, i) => wrapText(cells[i] ?? '', to - from, pt, widthOf));
    const inner = Math.max(...wrapped.map((lines) => lines.length)) * lineHeight(pt);
    const height = inner + 2 * SPACE.row;
    return {
      above: 0,
      height,
      draw: (pen: Pen, left: Mm, top: Mm) => {
        for (const [i, lines] of wrapped.entries()) {
          const { from, to } = placed[i] as Placed;
          const align = columns[i]?.align ?? 'left';
          for (const [k, words] of lines.entries()) {
            if (words === '') continue;
            const y = baseline(top + SPACE.row + k * lineHeight(pt), pt);
            pen.words(words, point(left + (align === 'left' ? from : to), y), { pt, bold, align, colour: inkOf(i) });
          }
        }
        pen.line(point(left, top + height), point(left + width, top + height), rule);
      },
    };
  };
  const heads = columns.map(({ head = '' }) => head);
  const headed = heads.some((head) => head !== '');
  const head = headed ? [{ ...row(heads, { ...TYPE.small, bold: true }, () => INK.mark, HEAD_RULE), stays: true }] : [];
  const body = rows.map(({ cells, part, tones = [] }) => {
    const ink = (i: number) => TONE_INK[tones[i] ?? (part ? 'quiet' : 'plain')];
    return row(cells, type, ink, RULE, part ? INSET : 0);
  });
  // A part stays with what it is of.
  const held = body.map((strip, i) => (rows[i + 1]?.part ? { ...strip, stays: true } : strip));
  return [...head, ...held];
}

function columnPlaces(
  columns: readonly TableColumn[],
  rows: readonly TableRow[],
  width: Mm,
  widthOf: Measure,
  { pt }: Type,
): readonly Placed[] {
  const widest = columns.map(({ head = '', share }, i) => {
    if (share !== undefined) return 0;
    const cells = rows.map((row) => widthOf(row.cells[i] ?? '', pt));
    // Heads are bold: a little room more.
    return Math.min(WIDEST * width, Math.max(widthOf(head, TYPE.small.pt) + 0.5, ...cells)) + ROUNDING + SPACE.cell;
  });
  const rest = width + SPACE.cell - widest.reduce((sum, one) => sum + one, 0);
  const shares = columns.reduce((sum, { share = 0 }) => sum + share, 0);
  let from = 0;
  return columns.map(({ share }, i) => {
    const wide = share === undefined ? (widest[i] as Mm) : (rest * share) / shares;
    const placed = { from, to: from + wide - SPACE.cell };
    from += wide;
    return placed;
  });
}
