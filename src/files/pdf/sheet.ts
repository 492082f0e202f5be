import {
  baseline,
  capitalsOfPt,
  INK,
  type Ink,
  inkNear,
  type LineStyle,
  type PieceDrawing,
  type PlacedWord,
  placeWords,
  type StyleOf,
} from '../../drawing';
import { boxesMeet, type Point, pathThrough, point } from '../../plane';
import { MARK, markBoxes, markCorners, type Sheet, type SheetPlan, sheetCell, sheetTexts } from '../../sheets';
import { drawPaths } from '../pen/draw-paths';
import { type PageFrame, sheetFrame } from '../pen/page-frame';
import type { Pen } from '../pen/pen';
import { JOIN_NOTE_PT, placeJoinNotes } from './join-notes';
import { NUMBER_PT, type PlacedNumber, placeNumbers } from './mark-numbers';
import { NOTE_CLEAR, noteLineHeight, placeNote, type SheetNote } from './sheet-notes';

const FRAME: LineStyle = { width: 0.15, colour: INK.frame, dash: [] };
const JOIN: LineStyle = { width: 0.2, colour: INK.join, dash: [] };

/** What one sheet needs to know beside its own window. */
export interface SheetMatter {
  readonly plan: SheetPlan;
  readonly drawings: readonly PieceDrawing[];
  readonly ink: Ink;
  /** Lines under the label, most needed first. */
  readonly says: (shown: readonly PieceDrawing[]) => readonly string[];
  /** Lines that must stand under every label, whole. */
  readonly remarks?: readonly string[];
  /** How lines are drawn; by their meaning where it is left out. */
  readonly styleOf?: StyleOf;
}

/** Draws one sheet on the current page: lines, frame, joins, words, and the joining marks last of all. */
export function drawSheet(pen: Pen, matter: SheetMatter, sheet: Sheet): void {
  const { plan, drawings } = matter;
  const frame = sheetFrame(plan, sheet);
  const ink = inkNear(matter.ink, sheet.window);
  const shown = drawings.filter((drawing) => boxesMeet(drawing.bounds, sheet.window));
  pen.within(frame.box, () => drawPaths(pen, shown, sheet.window, frame, plan.scale.x, matter.styleOf));
  pen.onLayer('joins', () => drawJoins(pen, sheet, frame, plan));
  const numbers = placeNumbers(sheet, plan, ink, pen.widthOf);
  const marked = [...markBoxes(sheet, plan), ...numbers.map((number) => number.box)];
  const texts = sheetTexts(
    drawings.flatMap((drawing) => drawing.texts),
    plan,
    sheet,
  );
  const words = placeWords(texts, { box: sheetCell(sheet), scale: plan.scale, ink, taken: marked }, pen.widthOf);
  if (words.length > 0)
    pen.onLayer('text', () => {
      for (const word of words) drawWord(pen, word, frame);
    });
  const taken = [...marked, ...words.flatMap((word) => word.parts)];
  const joinNotes = placeJoinNotes(plan, sheet, ink, taken, pen.widthOf);
  taken.push(...joinNotes.map((note) => note.box));
  const note = placeNote(plan, sheet, ink, taken, { must: matter.remarks ?? [], may: matter.says(shown) }, pen.widthOf);
  pen.onLayer('joins', () => {
    for (const { text, at, turn } of joinNotes) {
      pen.words(text, frame.map(at), { pt: JOIN_NOTE_PT, colour: INK.quietWords, align: 'middle', turn });
    }
    drawNote(pen, note, frame);
    drawMarks(pen, sheet, numbers, frame);
  });
}

/** Joins where they lie, and the light frame on the window's other sides. */
function drawJoins(pen: Pen, { joins, window, marks }: Sheet, { map }: PageFrame, plan: SheetPlan): void {
  const { left, right, top, bottom } = window;
  const half = { x: MARK.halfBase / plan.scale.x, y: MARK.halfBase / plan.scale.y };
  // A join stops at the bases of its marks: their edge is what is laid edge to edge, and stands against bare paper.
  const bases = (x: number | undefined, y: number | undefined): readonly (readonly [number, number])[] =>
    marks
      .filter(({ towards }) => (towards === 'left' || towards === 'right') === (x !== undefined))
      .filter(({ at }) => (x === undefined ? at.y === y : at.x === x))
      .map(({ at, size }): readonly [number, number] =>
        x === undefined ? [at.x - half.x * size, at.x + half.x * size] : [at.y - half.y * size, at.y + half.y * size],
      )
      .sort((a, b) => a[0] - b[0]);
  for (const x of new Set([joins.left ?? left, joins.right, right])) {
    if (x === undefined) continue;
    const style = x === joins.left || x === joins.right ? JOIN : FRAME;
    for (const [from, to] of between(top, bottom, bases(x, undefined)))
      pen.line(map(point(x, from)), map(point(x, to)), style);
  }
  for (const y of new Set([joins.top ?? top, joins.bottom, bottom])) {
    if (y === undefined) continue;
    const style = y === joins.top || y === joins.bottom ? JOIN : FRAME;
    for (const [from, to] of between(left, right, bases(undefined, y)))
      pen.line(map(point(from, y)), map(point(to, y)), style);
  }
}

/** What is left of a stretch without the gaps, which are in order. */
function between(
  from: number,
  to: number,
  gaps: readonly (readonly [number, number])[],
): readonly (readonly [number, number])[] {
  const starts = [from, ...gaps.map((gap) => gap[1])];
  const ends = [...gaps.map((gap) => gap[0]), to];
  return starts.map((start, i) => [start, ends[i] as number] as const);
}

function drawWord(pen: Pen, { text, at, pt, turn }: PlacedWord, { map }: PageFrame): void {
  pen.words(text, map(at), { pt, colour: INK.words, align: 'middle', turn });
}

function drawNote(pen: Pen, { lines, box }: SheetNote, { map }: PageFrame): void {
  const corner = map(point(box.left, box.top));
  let top = corner.y + NOTE_CLEAR;
  for (const line of lines) {
    const colour = line.quiet ? INK.quietWords : INK.words;
    pen.words(line.text, point(corner.x + NOTE_CLEAR, baseline(top, line.pt)), { pt: line.pt, colour });
    top += noteLineHeight(line);
  }
}

function drawMarks(pen: Pen, { marks }: Sheet, numbers: readonly PlacedNumber[], { map }: PageFrame): void {
  for (const { at, towards, size } of marks) {
    const base = map(at);
    const corners = markCorners(towards, size).map((corner) => point(base.x + corner.x, base.y + corner.y)) as [
      Point,
      Point,
      Point,
    ];
    pen.fill(pathThrough(...corners, corners[0]), (p) => p, INK.mark);
  }
  for (const { text, at } of numbers) {
    const { x, y } = map(at);
    pen.words(text, point(x, y + capitalsOfPt(NUMBER_PT) / 2), { pt: NUMBER_PT, colour: INK.mark, align: 'middle' });
  }
}
