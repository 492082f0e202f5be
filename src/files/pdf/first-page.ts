import { baseline, INK, lineHeight, type PieceDrawing } from '../../drawing';
import type { Mm } from '../../length';
import { type Box, point } from '../../plane';
import { type Draft, sheetsOf } from '../../project';
import { own, said, say } from '../../words';
import { drawHead } from '../pen/page-head';
import type { Pen } from '../pen/pen';
import { flowBalanced, flowSections, flowWhole, type Section, type SetLine, wrapText } from '../pen/text-flow';
import { TYPE } from '../pen/type-scale';
import type { FirstWords, JoiningWords } from './first-words';
import { drawJoining } from './joining-pictures';
import { drawLineKey, keyHeight } from './line-key';
import { drawMap } from './map';
import { drawSquare, squareAt, TEST_SQUARES } from './squares';

/** The size of the first page, upright, and the white round it. */
export interface FirstPage {
  readonly width: Mm;
  readonly height: Mm;
  readonly margin: Mm;
}

const HEADING_PT = TYPE.lead.pt;
/** Of what stands for itself beside and below the pictures. */
const NOTE_PT = 9;
const GAP: Mm = 4;
/** Tried from the largest down until all words fit; smaller would not be read at arm's length. */
const WORDS_PT = [10.5, 10, 9.5, 9, 8.5, 8] as const;
const LEAST_PT = TYPE.small.pt;
/** The map has at least this share of the column beside the squares. */
const MAP_SHARE = 0.5;
/** The pictures of joining stand beside their words, and are no higher than this and no lower than that. */
const PICTURES = { highest: 54, lowest: 22, share: 0.42 } as const;
/** Between a picture and the words beside it. */
const ASIDE: Mm = 2.5;
/** A column of words is no narrower. */
const NARROWEST: Mm = 80;
/** A page on which fewer lines are left than this holds no more columns. */
const LEAST_LINES = 20;

/**
 * Draws the first page on the current one: both squares, how to print, the map, and cutting, laying and taping in
 * pictures. What else belongs to the pattern follows below where the paper is large, else on a second page: so no sheet
 * of the pattern lies on the back of the squares where a printer prints on both sides. Where even the smallest type leaves
 * words over, they go on on further pages.
 *
 * @param lit labels of the sheets that stand out on the map
 */
export function drawFirst(
  pen: Pen,
  page: FirstPage,
  words: FirstWords,
  draft: Draft,
  drawings: readonly PieceDrawing[],
  lit: readonly string[] = [],
): void {
  const inside: Box = {
    left: page.margin,
    top: page.margin,
    right: page.width - page.margin,
    bottom: page.height - page.margin,
  };
  const matter = { words, draft, drawings };
  const top = drawHead(pen, page, words.title, words.under);
  const correct = { x: draft.project.paper.correctX, y: draft.project.paper.correctY };
  const metric = squareAt(inside.left, top, TEST_SQUARES[0].side, correct);
  const inch = squareAt(inside.left, metric.bottom + GAP, TEST_SQUARES[1].side, correct);
  drawSquare(pen, metric, TEST_SQUARES[0].label);
  drawSquare(pen, inch, TEST_SQUARES[1].label);
  const beside = { ...inside, left: Math.max(metric.right, inch.right) + GAP, top, bottom: inch.bottom };
  const printed = flowFit(
    pen,
    words.print,
    (bottom) => [{ ...beside, bottom }],
    beside.top,
    beside.bottom - MAP_SHARE * (beside.bottom - beside.top),
  );
  drawLines(pen, printed);
  const below = printed.lines.reduce((low, { box }) => Math.max(low, box.bottom), beside.top);
  drawMapPart(pen, matter, { ...beside, top: below + GAP }, lit);

  const under = { ...inside, top: inch.bottom + GAP };
  const joined = drawJoiningPart(pen, matter, under);
  const rest: readonly Section[] = [...printed.left, ...words.sections];
  if (rest.length === 0 && joined !== undefined) return;
  const here = joined === undefined ? undefined : keyAndColumns(pen, matter, rest, { ...under, top: joined + GAP });
  if (here && here.left.length === 0) {
    here.draw();
    return;
  }
  pen.newPage(page.width, page.height);
  let second = drawHead(pen, page, words.title, underAgain(words));
  second = drawParagraph(pen, words.twoSided, { ...inside, top: second }, NOTE_PT) + 2;
  if (joined === undefined) second = (drawJoiningPart(pen, matter, { ...inside, top: second }) ?? second) + GAP;
  const flow = keyAndColumns(pen, matter, rest, { ...inside, top: second });
  flow.draw();
  drawRest(pen, page, inside, words, flow.left);
}

/** What the parts of the first pages are drawn of. */
interface Matter {
  readonly words: FirstWords;
  readonly draft: Draft;
  readonly drawings: readonly PieceDrawing[];
}

const underAgain = ({ under }: FirstWords): string => said(say`${own(under)} · first page, continued`);

/** Heading, note and map in a box. */
function drawMapPart(pen: Pen, { words, draft, drawings }: Matter, room: Box, lit: readonly string[]): void {
  drawHeading(pen, words.mapTitle, room);
  const top = room.top + lineHeight(HEADING_PT);
  const note = Math.max(
    ...[true, false].map((ordered) => paragraphHeight(pen, words.mapNote(ordered), room.right - room.left, NOTE_PT)),
  );
  const ordered = drawMap(pen, sheetsOf(draft), drawings, { ...room, top: top + note + 2 }, lit);
  drawParagraph(pen, words.mapNote(ordered), { ...room, top }, NOTE_PT);
}

/**
 * Cutting, laying and taping side by side, each picture with its words beside it, and what proves the joins below.
 *
 * @returns where they end; undefined where the room is too low for them and nothing is drawn
 */
function drawJoiningPart(pen: Pen, { words, draft, drawings }: Matter, room: Box): Mm | undefined {
  const { joining, afterwards } = words;
  if (joining.length === 0) return room.top - GAP;
  const lines = afterwards.flatMap((told) => wrapText(told, room.right - room.left, NOTE_PT, pen.widthOf));
  const foot = lines.length * lineHeight(NOTE_PT) + (lines.length > 0 ? 2 : 0);
  const height = Math.min(PICTURES.highest, room.bottom - room.top - foot);
  const wide = (room.right - room.left - (joining.length - 1) * GAP) / joining.length;
  const beside = (1 - PICTURES.share) * wide - ASIDE;
  const needed = joining.map(({ text }) => paragraphHeight(pen, text, beside, LEAST_PT) + lineHeight(HEADING_PT));
  if (height < Math.max(PICTURES.lowest, ...needed)) return undefined;
  const boxes = joining.map((_, i): Box => {
    const left = room.left + i * (wide + GAP);
    return { left, right: left + PICTURES.share * wide, top: room.top, bottom: room.top + height };
  });
  drawJoining(pen, sheetsOf(draft), drawings, boxes);
  for (const [i, told] of joining.entries()) {
    const box = boxes[i] as Box;
    drawJoiningWords(pen, told, { ...box, left: box.right + ASIDE, right: box.left + wide });
  }
  const bottom = room.top + height;
  for (const [i, line] of lines.entries())
    pen.words(line, point(room.left, baseline(bottom + 2 + i * lineHeight(NOTE_PT), NOTE_PT)), {
      pt: NOTE_PT,
      colour: INK.words,
    });
  return bottom + foot;
}

function drawJoiningWords(pen: Pen, { title, text }: JoiningWords, room: Box): void {
  drawHeading(pen, title, room);
  const top = room.top + lineHeight(HEADING_PT);
  const fits = (pt: number) => paragraphHeight(pen, text, room.right - room.left, pt) <= room.bottom - top;
  drawParagraph(pen, text, { ...room, top }, WORDS_PT.filter((pt) => pt <= 9.5).find(fits) ?? LEAST_PT);
}

/** The key of the lines, and the parts of words below and beside it, as large as they fit; drawn when it is asked for. */
function keyAndColumns(
  pen: Pen,
  { words, drawings }: Matter,
  sections: readonly Section[],
  room: Box,
): { readonly left: readonly Section[]; readonly draw: () => void } {
  const width = room.right - room.left;
  const count = Math.max(2, Math.floor((width + GAP) / (NARROWEST + GAP)));
  if (room.bottom - room.top < LEAST_LINES * lineHeight(LEAST_PT)) return { left: sections, draw: () => {} };
  const wide = (width - (count - 1) * 2 * GAP) / count;
  const columns = (key: Mm) => (bottom: Mm) =>
    Array.from({ length: count }, (_, i): Box => {
      const left = room.left + i * (wide + 2 * GAP);
      return { left, right: left + wide, top: room.top + (i === 0 ? key : 0), bottom };
    });
  const tries = WORDS_PT.map((pt) => {
    const boxes = columns(words.key ? keyHeight(drawings, pt) + GAP : 0);
    return { pt, ...flowWhole(sections, boxes, room, pt, pen.widthOf) };
  });
  const best = tries.find(({ left }) => left.length === 0) ?? (tries.at(-1) as (typeof tries)[number]);
  return {
    left: best.left,
    draw: () => {
      if (words.key) drawLineKey(pen, drawings, { ...room, right: room.left + wide }, best.pt);
      drawLines(pen, best);
    },
  };
}

/** Set lines and their size of type. */
interface Flow {
  readonly lines: readonly SetLine[];
  readonly left: readonly Section[];
  readonly pt: number;
}

/** Sections in the largest type in which they fit; in the smallest where they don't. */
function flowFit(
  pen: Pen,
  sections: readonly Section[],
  columns: (bottom: Mm) => readonly Box[],
  top: Mm,
  bottom: Mm,
): Flow {
  const tries = WORDS_PT.filter((pt) => pt <= 9.5).map((pt) => ({
    pt,
    ...flowBalanced(sections, columns, top, bottom, pt, pen.widthOf),
  }));
  return tries.find(({ left }) => left.length === 0) ?? (tries.at(-1) as Flow);
}

/** What found no room, two columns a page. */
function drawRest(pen: Pen, page: FirstPage, inside: Box, words: FirstWords, rest: readonly Section[]): void {
  let left = rest;
  while (left.length > 0) {
    pen.newPage(page.width, page.height);
    const top = drawHead(pen, page, words.title, underAgain(words));
    const middle = (inside.left + inside.right) / 2;
    const columns = [
      { ...inside, top, right: middle - GAP },
      { ...inside, top, left: middle + GAP },
    ];
    const flow = flowSections(left, columns, LEAST_PT, pen.widthOf);
    drawLines(pen, { ...flow, pt: LEAST_PT });
    if (flow.lines.length === 0) return;
    left = flow.left;
  }
}

const drawHeading = (pen: Pen, text: string, room: Box): void =>
  pen.words(text, point(room.left, baseline(room.top, HEADING_PT)), { pt: HEADING_PT, bold: true, colour: INK.cut });

const paragraphHeight = (pen: Pen, text: string, width: Mm, pt: number): Mm =>
  wrapText(text, width, pt, pen.widthOf).length * lineHeight(pt);

/** A text broken into lines; returns where it ends. */
function drawParagraph(pen: Pen, text: string, room: Box, pt: number): Mm {
  let { top } = room;
  for (const line of wrapText(text, room.right - room.left, pt, pen.widthOf)) {
    pen.words(line, point(room.left, baseline(top, pt)), { pt, colour: INK.words });
    top += lineHeight(pt);
  }
  return top;
}

function drawLines(pen: Pen, { lines, pt }: Pick<Flow, 'lines' | 'pt'>): void {
  for (const { left, right, title, box } of lines) {
    const y = baseline(box.top, pt);
    pen.words(left, point(box.left, y), { pt, bold: title, colour: title ? INK.cut : INK.words });
    if (right !== '') pen.words(right, point(box.right, y), { pt, colour: INK.words, align: 'right' });
  }
}
