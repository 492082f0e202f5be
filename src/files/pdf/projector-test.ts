import { baseline, type LineStyle, lineHeight, ptOfCapitals } from '../../drawing';
import type { Mm } from '../../length';
import { between, type Point, point } from '../../plane';
import type { Draft, Project } from '../../project';
import { correctionTold, type ProjectorTest, projectorRemarks, projectorTest } from '../../sheets';
import { mm, type Phrase, printPhrase, say, words } from '../../words';
import type { PdfOptions } from '../pen/options';
import { type Pen, startPdf } from '../pen/pen';
import { TYPE, type Type } from '../pen/type-scale';
import { wrapText } from '../pen/wrap-text';
import {
  correctionOf,
  drawGround,
  GROUNDS,
  type ProjectedFrame,
  projectedFrame,
  TRUE_PROJECTOR,
} from './projector-ground';

/** Capitals, and the letters at the corners with their places, as parts of the line A to B: the small test is the large one at half. */
const CAPITALS = 1 / 80;
const LETTERS = { capitals: 1 / 40, aside: 0.04, below: 0.1 } as const;
/** Where on a diagonal its length stands. */
const DIAGONAL_LABEL = 0.28;
/** The sentences' capitals as parts of the labels', the largest that finds room between the diagonals. */
const SMALLER = [1, 0.9, 0.8, 0.7, 0.6, 0.5, 0.4] as const;
/** From a side of the test to its sentences: its label stands between, in capitals' heights. */
const BEYOND_LABEL = 3.5;
/** White between the sentences and the diagonals, on either side, as a part of the line A to B. */
const CLEAR = 0.03;

interface TestLine {
  readonly name: Phrase;
  readonly from: Point;
  readonly to: Point;
  readonly length: Mm;
  /** How far along it its label stands. */
  readonly label: number;
  /** On which side of it: below as a rule, as the words run. */
  readonly above?: boolean;
}

/**
 * The projector's test: a rectangle with its diagonals to measure on the cutting table, without any correction; and on a
 * second page, where one is set, the same with it, true if it is right.
 *
 * @param draft its project's projector and units are used
 * @throws Refusal where the lengths that were measured can't belong to one picture
 */
export function writeProjectorTestPdf({ project }: Pick<Draft, 'project'>, options: PdfOptions): Uint8Array {
  const { projector, units } = project;
  const test = projectorTest(projector.test, units);
  const { line } = projector;
  const box = { left: -line / 2, top: -line / 2, right: test.across + line / 2, bottom: test.down + line / 2 };
  const correction = correctionOf(project);
  const plain = projectedFrame(box, TRUE_PROJECTOR);
  const pen = startPdf(plain.width, plain.height, options.font, {
    title: words`Projector test`,
    subject: words`Four lines to measure on the cutting table`,
    date: options.date,
  });
  drawTest(pen, project, test, plain, {
    title: say`Projector test`,
    above: [
      say`1. Hang or set the projector square to the table, with its own keystone setting off or as its maker says. Show this page at 100 % and zoom until A to B is near ${mm(test.across)}.`,
      say`2. Measure with a steel rule or a good tape, flat on the table, from the middle of a corner’s lines to the middle of the other’s.`,
    ],
    below: [
      say`3. D to C must be as long as A to B, and B to C as long as A to D. If they are not, the picture is wider at one end (a keystone), which four lengths can’t put right: set the projector square first.`,
      say`4. At Paper, type what A to B, A to D, A to C and B to D measure. In a project file each is its true length divided by what it measures.`,
    ],
  });
  if (correction) {
    const frame = projectedFrame(box, correction);
    pen.newPage(frame.width, frame.height);
    drawTest(pen, project, test, frame, {
      title: say`Projector test, corrected`,
      above: [
        say`If the correction is right every line measures what is written beside it.`,
        correctionTold(correction),
      ],
      below: projectorRemarks(correction),
    });
  }
  return pen.bytes();
}

function drawTest(
  pen: Pen,
  { projector, units }: Project,
  test: ProjectorTest,
  frame: ProjectedFrame,
  told: { readonly title: Phrase; readonly above: readonly Phrase[]; readonly below: readonly Phrase[] },
): void {
  const ground = GROUNDS[projector.ground];
  drawGround(pen, frame, ground);
  const { across, down, diagonal } = test;
  const [a, b, c, d] = [point(0, 0), point(across, 0), point(across, down), point(0, down)];
  const style = (colour: string): LineStyle => ({ width: projector.line, colour, dash: [] });
  const lines: readonly TestLine[] = [
    { name: say`A to B`, from: a, to: b, length: across, label: 1 / 2 },
    { name: say`D to C`, from: d, to: c, length: across, label: 1 / 2, above: true },
    { name: say`A to D`, from: d, to: a, length: down, label: 1 / 2 },
    { name: say`B to C`, from: b, to: c, length: down, label: 1 / 2 },
    { name: say`A to C`, from: a, to: c, length: diagonal, label: DIAGONAL_LABEL },
    { name: say`B to D`, from: d, to: b, length: diagonal, label: 1 - DIAGONAL_LABEL },
  ];
  const capitals = across * CAPITALS;
  for (const line of lines) {
    const [from, to] = [frame.map(line.from), frame.map(line.to)];
    pen.line(from, to, style(line.length === diagonal ? ground.sewn : ground.cut));
    const turn = Math.atan2(to.y - from.y, to.x - from.x);
    const off = capitals * (line.above ? -1 : 2) + (projector.line / 2) * (line.above ? -1 : 1);
    const middle = between(from, to, line.label);
    pen.words(
      printPhrase(say`${line.name}: ${mm(line.length)}`, units),
      point(middle.x - off * Math.sin(turn), middle.y + off * Math.cos(turn)),
      { pt: ptOfCapitals(capitals), colour: ground.words, align: 'middle', turn: (turn * 180) / Math.PI },
    );
  }
  const [x, y, high] = [across * LETTERS.aside, across * LETTERS.below, across * LETTERS.capitals];
  const letters = { A: point(x, y), B: point(across - x, y), C: point(across - x, down - y), D: point(x, down - y) };
  for (const [letter, { x, y }] of Object.entries(letters))
    pen.words(letter, frame.map(point(x, y + high / 2)), {
      pt: ptOfCapitals(high),
      colour: ground.words,
      align: 'middle',
    });
  const write = (phrases: readonly Phrase[], type: Type): readonly TestText[] =>
    phrases.map((phrase) => ({ text: printPhrase(phrase, units), type }));
  const texts = [
    { upper: true, lines: [...write([told.title], TYPE.title), ...write(told.above, TYPE.words)] },
    { upper: false, lines: write(told.below, TYPE.words) },
  ];
  // Above and below in one scale of type: the largest in which either finds room.
  const set = SMALLER.map((part) =>
    texts.map(({ upper, lines }) => ({ upper, lines: linesBetween(lines, test, part, pen.widthOf) })),
  ).find((tried) => tried.every(({ lines }) => lines !== undefined));
  for (const { upper, lines = [] } of set ?? []) drawTexts(pen, lines, test, frame, ground.words, upper);
}

/** A text of the test: its type says how large it is beside the others. */
interface TestText {
  readonly text: string;
  readonly type: Type;
}

interface TestLineOfText {
  readonly text: string;
  readonly pt: number;
  readonly bold: boolean;
}

/** Between a side and its sentences, where its label stands. */
const labelRoom = ({ across }: ProjectorTest): Mm => across * CAPITALS * BEYOND_LABEL;

/**
 * Texts broken into lines that find room between the upper or the lower side and the diagonals, as wide as may be.
 *
 * @param part the sentences' capitals as a part of the labels'
 * @returns undefined where they find none
 */
function linesBetween(
  texts: readonly TestText[],
  test: ProjectorTest,
  part: number,
  widthOf: Pen['widthOf'],
): readonly TestLineOfText[] | undefined {
  const { across, down } = test;
  const linesIn = (width: Mm) =>
    texts.flatMap(({ text, type }) => {
      const pt = (ptOfCapitals(across * CAPITALS * part) * type.pt) / TYPE.words.pt;
      return wrapText(text, width, pt, widthOf).map((line) => ({ text: line, pt, bold: type.bold === true }));
    });
  // The wider the lines the fewer, and the sooner they meet the diagonals.
  const widths = Array.from({ length: 40 }, (_, i) => across * (1 - 2 * CLEAR) * (1 - i / 40));
  return widths
    .map((width) => ({ width, lines: linesIn(width) }))
    .find(({ width, lines }) => labelRoom(test) + heightOf(lines) <= (down / 2) * (1 - width / across - 2 * CLEAR))
    ?.lines;
}

/** Lines below the upper side or above the lower one, in the middle. */
function drawTexts(
  pen: Pen,
  lines: readonly TestLineOfText[],
  test: ProjectorTest,
  { map }: ProjectedFrame,
  colour: string,
  upper: boolean,
): void {
  const { across, down } = test;
  let top = upper ? labelRoom(test) : down - labelRoom(test) - heightOf(lines);
  for (const { text, pt, bold } of lines) {
    pen.words(text, map(point(across / 2, baseline(top, pt))), { pt, bold, colour, align: 'middle' });
    top += lineHeight(pt);
  }
}

const heightOf = (lines: readonly { readonly pt: number }[]): Mm =>
  lines.reduce((sum, { pt }) => sum + lineHeight(pt), 0);
