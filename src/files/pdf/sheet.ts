import {
  baseline,
  capitalsOfPt,
  INK,
  type Ink,
  inkNear,
  type LineStyle,
  lineHeight,
  type PieceDrawing,
  type PlacedWord,
  placer,
  type WidthOf,
  wordBoxes,
} from '../../drawing';
import type { Mm } from '../../length';
import { add, type Box, boxesMeet, type Point, pathThrough, point } from '../../plane';
import {
  type ClearPlaces,
  clearPlaces,
  joinLine,
  MARK,
  markBoxes,
  markCorners,
  partsInOrder,
  type Sheet,
  type SheetPart,
  type SheetPlan,
  type Side,
  sheetCell,
} from '../../sheets';
import { number, own, words } from '../../words';
import { drawPaths, type Look } from '../pen/draw-paths';
import { drawWords } from '../pen/draw-words';
import { type PageFrame, sheetFrame, tipFrame } from '../pen/page-frame';
import type { Pen } from '../pen/pen';
import { JOIN_NOTE_PT, placeJoinNotes } from './join-notes';
import { type PlacedNumber, placeNumbers } from './mark-numbers';
import { type PartOnPaper, printedSheet, SCISSORS, scissorsAt } from './part-on-paper';
import { drawScissors } from './scissors';
import { FINE, LARGEST_LABEL, labelHeights, placeLabel, type SheetLabel } from './sheet-label';
import { NOTE_CLEAR, NOTE_PT, placeNote, type SheetNote, type SheetSays } from './sheet-notes';

const FRAME: LineStyle = { width: 0.15, colour: INK.frame, dash: [] };
const JOIN: LineStyle = { width: 0.2, colour: INK.join, dash: [] };
const TIP_RIM: LineStyle = { width: 0.3, colour: INK.sign, dash: [2.4, 1.2] };
const TIP_LABEL: Mm = 8;

/** What one sheet needs to know beside its own window. */
export interface SheetMatter {
  readonly plan: SheetPlan;
  readonly drawings: readonly PieceDrawing[];
  readonly ink: Ink;
  /** The drawing's words that stand on a sheet or a tip. */
  readonly wordsOf: (part: SheetPart) => readonly PlacedWord[];
  /** Lines under the label, most needed first. */
  readonly says: (shown: readonly PieceDrawing[]) => readonly string[];
  /** Lines that must stand under every label, whole. */
  readonly remarks?: readonly string[];
  /** How lines are drawn; by their meaning where it is left out. */
  readonly look?: Partial<Look>;
}

/** Draws one sheet on the current page, and the tips in its empty corners. */
export function drawSheet(pen: Pen, matter: SheetMatter, sheet: Sheet): void {
  const { plan } = matter;
  const frame = sheetFrame(plan, sheet);
  const asked = sheet.tips.map(({ label }) => words`Cut out the small piece ${own(label)} before you trim this sheet.`);
  const whole = { ...matter, says: (shown: readonly PieceDrawing[]) => [...asked, ...matter.says(shown)] };
  const [printed, ...tips] = printedSheet(plan, sheet);
  drawPart(pen, whole, { ...printed, frame, label: LARGEST_LABEL });
  for (const [i, tip] of sheet.tips.entries()) {
    const own = tipFrame(frame, tip);
    // The half-diamonds lie on the rim: their edge is what is laid edge to edge.
    pen.onLayer('joins', () => {
      pen.frame(own.box, TIP_RIM);
      drawScissors(pen, frame.map(scissorsAt(tip, plan.scale)), 0, SCISSORS.long);
    });
    drawPart(
      pen,
      { ...matter, remarks: [], says: tipSays },
      { ...(tips[i] as PartOnPaper), frame: own, label: TIP_LABEL },
    );
  }
}

const tipSays = () => [words`small piece: cut out along the dashes`];

/** Where a part lies on its page. */
interface PartSetting extends PartOnPaper {
  readonly frame: PageFrame;
  /** The height of its label’s capitals at most: less where it is not to be read from above. */
  readonly label: Mm;
}

/** Draws one part: lines, frame, joins, words, and the joining marks last of all. */
function drawPart(pen: Pen, matter: SheetMatter, setting: PartSetting): void {
  const { drawings } = matter;
  const { part, scale, frame, turn } = setting;
  const plan = { ...matter.plan, scale };
  const ink = inkNear(matter.ink, part.window);
  const shown = drawings.filter((drawing) => boxesMeet(drawing.bounds, part.window));
  pen.within(frame.box, () => drawPaths(pen, shown, part.window, frame, scale.x, matter.look));
  pen.onLayer('joins', () => drawJoins(pen, part, frame, plan));
  const numbers = placeNumbers(setting, ink, pen.widthOf);
  const marked = [...setting.taken, ...markBoxes(part, plan), ...numbers.map((number) => number.box)];
  const placed = matter.wordsOf(part);
  drawWords(pen, placed, frame, { turn });
  const taken = [...marked, ...placed.flatMap((word) => wordBoxes(word, scale))];
  const joinNotes = placeJoinNotes(plan, part, ink, taken, pen.widthOf);
  taken.push(...joinNotes.map((note) => note.box));
  const clear = clearPlaces(sheetCell(part), ink, scale.x);
  const clearOf = (also: readonly Box[], fine?: Mm) =>
    (fine === undefined ? clear : clearPlaces(sheetCell(part), ink, scale.x, fine))([...taken, ...also]);
  const says = { must: matter.remarks ?? [], may: [...orderTold(matter.plan, part), ...matter.says(shown)] };
  const { label, note } = placeTold(plan, part, clearOf, says, pen.widthOf, setting.label);
  pen.onLayer('joins', () => {
    drawLabel(pen, part, label, setting);
    for (const { text, at, turn: own } of joinNotes) {
      pen.words(text, frame.map(at), { pt: JOIN_NOTE_PT, colour: INK.quietWords, align: 'middle', turn: own + turn });
    }
    if (note) drawNote(pen, note, setting);
    drawMarks(pen, part, numbers, setting);
  });
}

/** The label as large as it leaves room for what must stand under it, and as it is where nothing does. */
function placeTold(
  plan: SheetPlan,
  part: SheetPart,
  clearOf: (also: readonly Box[], fine?: Mm) => ClearPlaces,
  says: SheetSays,
  widthOf: WidthOf,
  largest: Mm,
): { readonly label: SheetLabel; readonly note: SheetNote | undefined } {
  const room = { clear: clearOf([]), fine: () => clearOf([], FINE) };
  const told = (height: Mm) => {
    const label = placeLabel(plan, part, room, widthOf, height);
    return { label, note: placeNote(plan, label.box, clearOf([label.box]), says, widthOf) };
  };
  const first = told(largest);
  if (first.note || says.must.length === 0) return first;
  const smaller = labelHeights(capitalsOfPt(first.label.pt));
  for (const height of smaller) {
    const next = told(height);
    if (next.note) return next;
  }
  return first;
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

/** Which part it is in the order of taping; nothing where there is one alone. */
function orderTold(plan: SheetPlan, part: SheetPart): readonly string[] {
  const parts = partsInOrder(plan);
  const place = parts.findIndex(({ label }) => label === part.label) + 1;
  return parts.length > 1
    ? [words`Number ${number(place, 0)} of ${number(parts.length, 0)} in the order of taping`]
    : [];
}

/** Light, so that no line is missed beside it. */
function drawLabel(pen: Pen, { label: text }: SheetPart, { at, pt }: SheetLabel, { frame, turn }: PartSetting): void {
  const down = turned(turn)(point(0, capitalsOfPt(pt) / 2));
  pen.words(text, add(frame.map(at), down), { pt, colour: INK.label, align: 'middle', turn });
}

function drawNote(pen: Pen, { lines, box }: SheetNote, { frame, turn }: PartSetting): void {
  const corner = frame.map(point(box.left, box.top));
  const beside = turned(turn);
  for (const [i, line] of lines.entries()) {
    const by = beside(point(NOTE_CLEAR, baseline(NOTE_CLEAR + i * lineHeight(NOTE_PT), NOTE_PT)));
    pen.words(line, add(corner, by), { pt: NOTE_PT, colour: INK.quietWords, turn });
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
  for (const { text, pt, at } of numbers) {
    const by = beside(point(0, capitalsOfPt(pt) / 2));
    pen.words(text, add(frame.map(at), by), { pt, colour: INK.mark, align: 'middle', turn });
  }
}

/** Turns what is measured on the paper, from a place of a part, as the part is turned. */
const turned = (turn: number) => placer({ turn, shift: point(0, 0) });
