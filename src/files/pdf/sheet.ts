import {
  baseline,
  capitalsOfPt,
  INK,
  type Ink,
  inkNear,
  type LineStyle,
  type PieceDrawing,
  type PlacedWord,
  placer,
  placeWords,
  type StyleOf,
} from '../../drawing';
import { add, type Box, boxesMeet, type Point, pathThrough, point } from '../../plane';
import {
  joinLine,
  MARK,
  markBoxes,
  markCorners,
  type Sheet,
  type SheetPart,
  type SheetPlan,
  type Side,
  sheetCell,
  sheetTexts,
  tipBox,
} from '../../sheets';
import { drawPaths } from '../pen/draw-paths';
import { type PageFrame, sheetFrame, tipFrame } from '../pen/page-frame';
import type { Pen } from '../pen/pen';
import { JOIN_NOTE_PT, placeJoinNotes } from './join-notes';
import { NUMBER_PT, type PlacedNumber, placeNumbers } from './mark-numbers';
import { LABEL_PT, NOTE_CLEAR, noteLineHeight, placeNote, type SheetNote, TIP_LABEL_PT } from './sheet-notes';

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

/** Draws one sheet on the current page, and the tips in its empty corners. */
export function drawSheet(pen: Pen, matter: SheetMatter, sheet: Sheet): void {
  const frame = sheetFrame(matter.plan, sheet);
  drawPart(pen, matter, sheet, { frame, turn: 0, labelPt: LABEL_PT, taken: sheet.tips.map(tipBox) });
  const quiet = { ...matter, remarks: [], says: () => [] };
  for (const tip of sheet.tips) {
    drawPart(pen, quiet, tip, { frame: tipFrame(frame, tip), turn: tip.place.turn, labelPt: TIP_LABEL_PT, taken: [] });
  }
}

/** Where a part lies on its page. */
interface PartSetting {
  readonly frame: PageFrame;
  /** Degrees, clockwise as seen. */
  readonly turn: number;
  readonly labelPt: number;
  /** What is already there, on the drawing. */
  readonly taken: readonly Box[];
}

/** Draws one part: lines, frame, joins, words, and the joining marks last of all. */
function drawPart(pen: Pen, matter: SheetMatter, part: SheetPart, setting: PartSetting): void {
  const { plan, drawings } = matter;
  const { frame, turn } = setting;
  const ink = inkNear(matter.ink, part.window);
  const shown = drawings.filter((drawing) => boxesMeet(drawing.bounds, part.window));
  pen.within(frame.box, () => drawPaths(pen, shown, part.window, frame, plan.scale.x, matter.styleOf));
  pen.onLayer('joins', () => drawJoins(pen, part, frame, plan));
  const numbers = placeNumbers(part, plan, ink, pen.widthOf);
  const marked = [...setting.taken, ...markBoxes(part, plan), ...numbers.map((number) => number.box)];
  const texts = sheetTexts(
    drawings.flatMap((drawing) => drawing.texts),
    plan,
    part,
  );
  const words = placeWords(texts, { box: sheetCell(part), scale: plan.scale, ink, taken: marked }, pen.widthOf);
  if (words.length > 0)
    pen.onLayer('text', () => {
      for (const word of words) drawWord(pen, word, setting);
    });
  const taken = [...marked, ...words.flatMap((word) => word.parts)];
  const joinNotes = placeJoinNotes(plan, part, ink, taken, pen.widthOf);
  taken.push(...joinNotes.map((note) => note.box));
  const says = { labelPt: setting.labelPt, must: matter.remarks ?? [], may: matter.says(shown) };
  const note = placeNote(plan, part, ink, taken, says, pen.widthOf);
  pen.onLayer('joins', () => {
    for (const { text, at, turn: own } of joinNotes) {
      pen.words(text, frame.map(at), { pt: JOIN_NOTE_PT, colour: INK.quietWords, align: 'middle', turn: own + turn });
    }
    drawNote(pen, note, setting);
    drawMarks(pen, part, numbers, setting);
  });
}

/** Joins where they lie, and the light frame on the window's other sides. */
function drawJoins(pen: Pen, part: SheetPart, { map }: PageFrame, plan: SheetPlan): void {
  const { left, right, top, bottom } = part.window;
  const cell = sheetCell(part);
  const half = { x: MARK.halfBase / plan.scale.x, y: MARK.halfBase / plan.scale.y };
  const line = (side: Side, at: number, from: number, to: number, style: LineStyle) => {
    const down = side === 'left' || side === 'right';
    // A join stops at the bases of its marks: their edge is what is laid edge to edge, and stands against bare paper.
    const bases = part.marks
      .filter(({ towards }) => (towards === 'left' || towards === 'right') === down)
      .filter((mark) => (down ? mark.at.x : mark.at.y) === at)
      .map(({ at: { x, y }, size }): readonly [number, number] =>
        down ? [y - half.y * size, y + half.y * size] : [x - half.x * size, x + half.x * size],
      )
      .sort((a, b) => a[0] - b[0]);
    for (const [start, end] of between(from, to, bases)) {
      const [a, b] = down ? [point(at, start), point(at, end)] : [point(start, at), point(end, at)];
      pen.line(map(a), map(b), style);
    }
  };
  const style = (side: Side) => (joinLine(part, side) === undefined ? FRAME : JOIN);
  line('left', left, top, bottom, style('left'));
  line('right', right, top, bottom, plan.overlap === 0 ? style('right') : FRAME);
  line('top', top, left, right, style('top'));
  line('bottom', bottom, left, right, plan.overlap === 0 ? style('bottom') : FRAME);
  if (plan.overlap === 0) return;
  for (const { side, at, from, to } of part.joins) {
    // On over the overlap, where the join ends at it.
    if (side === 'right') line(side, at, from, to === cell.bottom ? bottom : to, JOIN);
    if (side === 'bottom') line(side, at, from, to === cell.right ? right : to, JOIN);
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

function drawWord(pen: Pen, { text, at, pt, turn }: PlacedWord, { frame, turn: by }: PartSetting): void {
  pen.words(text, frame.map(at), { pt, colour: INK.words, align: 'middle', turn: turn + by });
}

function drawNote(pen: Pen, { lines, box }: SheetNote, { frame, turn }: PartSetting): void {
  const corner = frame.map(point(box.left, box.top));
  const beside = turned(turn);
  let top = NOTE_CLEAR;
  for (const line of lines) {
    const by = beside(point(NOTE_CLEAR, baseline(top, line.pt)));
    const colour = line.quiet ? INK.quietWords : INK.words;
    pen.words(line.text, add(corner, by), { pt: line.pt, colour, turn });
    top += noteLineHeight(line);
  }
}

function drawMarks(
  pen: Pen,
  { marks }: SheetPart,
  numbers: readonly PlacedNumber[],
  { frame, turn }: PartSetting,
): void {
  const beside = turned(turn);
  for (const { at, towards, size } of marks) {
    const base = frame.map(at);
    const [a, tip, b] = markCorners(towards, size).map((corner) => add(base, beside(corner))) as [Point, Point, Point];
    pen.fill(pathThrough(a, tip, b, a), (p) => p, INK.mark);
  }
  for (const { text, at } of numbers) {
    const by = beside(point(0, capitalsOfPt(NUMBER_PT) / 2));
    pen.words(text, add(frame.map(at), by), { pt: NUMBER_PT, colour: INK.mark, align: 'middle', turn });
  }
}

/** Turns what is measured on the paper, from a place of a part, as the part is turned. */
const turned = (turn: number) => placer({ turn, shift: point(0, 0) });
