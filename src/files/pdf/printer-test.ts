import { baseline, INK, type LineStyle, lineHeight } from '../../drawing';
import type { Mm } from '../../length';
import { point } from '../../plane';
import type { Draft } from '../../project';
import { correctionRemarks, edgeLines, paperName, printerTest } from '../../sheets';
import { mm, number, printPhrase, say, words } from '../../words';
import type { PdfOptions } from '../pen/options';
import { type Pen, startPdf } from '../pen/pen';
import { wrapText } from '../pen/wrap-text';
import { drawEdgeLadders, LADDER_DEPTH } from './edge-ladder';

const BAR: LineStyle = { width: 0.3, colour: INK.cut, dash: [] };
const FINE: LineStyle = { width: 0.15, colour: INK.cut, dash: [] };
/** Half of the strokes that end a bar, and of those that divide it. */
const END: Mm = 6;
const DIVISION: Mm = 1.5;
const TITLE_PT = 15;
const WORDS_PT = 9.5;
const SQUARE: Mm = 100;

/**
 * The printer's test page: a bar along each side of the paper, as long as it holds, printed without any correction; and
 * beside them, where a correction is set, a square that comes out true with it.
 *
 * @param draft its project's paper and units are used
 */
export function writePrinterTestPdf({ project }: Pick<Draft, 'project'>, options: PdfOptions): Uint8Array {
  const { paper: settings, units } = project;
  const { paper, across, along } = printerTest(settings, units);
  const pen = startPdf(paper.width, paper.height, options.font, {
    title: words`Printer test`,
    subject: words`Two bars to measure, ${paperName(settings.sheet)}`,
    date: options.date,
  });
  const left = (paper.width - across) / 2;
  const top = (paper.height - along) / 2;
  const step = units === 'inch' ? 25.4 : 10;
  const upright = left + 2 * END;
  const level = top + 2 * END;
  drawBar(pen, { x: left, y: level }, across, 'across', step);
  drawBar(pen, { x: upright, y: top }, along, 'along', step);
  const bar = { pt: WORDS_PT, colour: INK.words, align: 'middle' } as const;
  pen.words(printPhrase(say`short bar: ${mm(across)}`, units), point(left + across / 2, level - 2.5), bar);
  pen.words(printPhrase(say`long bar: ${mm(along)}`, units), point(upright - 2.5, top + along / 2), {
    ...bar,
    turn: -90,
  });

  drawEdgeLadders(pen, paper, edgeLines(units));

  const right = paper.width - LADDER_DEPTH - 2;
  const bottom = paper.height - LADDER_DEPTH - 2;
  let y = level + 2 * END;
  // On small paper what finds no room stands on a further page.
  const next = () => {
    pen.newPage(paper.width, paper.height);
    y = top;
  };
  const set = (text: string, pt: number) => {
    for (const line of wrapText(text, right - upright - 2 * END, pt, pen.widthOf)) {
      if (y + lineHeight(pt) > bottom) next();
      pen.words(line, point(upright + 2 * END, baseline(y, pt)), { pt, colour: INK.words });
      y += lineHeight(pt);
    }
    y += 2;
  };
  set(words`Printer test`, TITLE_PT);
  for (const sentence of sentences(project, across, along)) set(sentence, WORDS_PT);
  const { correctX, correctY } = settings;
  if (correctX !== 1 || correctY !== 1) {
    y += 4;
    const [width, height] = [SQUARE * correctX, SQUARE * correctY];
    if (y + height > bottom || upright + 2 * END + width > right) next();
    const from = y === top ? (paper.width - width) / 2 : upright + 2 * END;
    const box = { left: from, top: y, right: from + width, bottom: y + height };
    pen.frame(box, FINE);
    const told = words`100 mm with the correction × ${number(correctX, 4)}, × ${number(correctY, 4)}`;
    pen.words(told, point((box.left + box.right) / 2, (box.top + box.bottom) / 2), bar);
  }
  return pen.bytes();
}

function sentences({ paper, units }: Draft['project'], across: Mm, along: Mm): readonly string[] {
  const remarks = correctionRemarks(paper).map((remark) => printPhrase(remark, units));
  const { correctX, correctY } = paper;
  const set =
    correctX === 1 && correctY === 1
      ? []
      : [
          words`The bars are printed without the correction that is set; the square is printed with it, and measures 100 mm both ways if it is right.`,
        ];
  return [
    words`1. Print this page as you will print the pattern: on the same printer and paper, at 100 %, without fit to page.`,
    words`2. Measure both bars with a steel rule, from the middle of one end stroke to the middle of the other. A tape may be longer or shorter than it says.`,
    words`3. At Paper, type what the two bars measure. In a project file, correctX is the short bar’s length divided by what it measures, correctY the long bar’s.`,
    words`4. At each edge of the paper find the lowest number whose short line is printed whole. Choose the highest of the four at Paper: it becomes the margin.`,
    printPhrase(
      say`5. If a bar is off by more than ${{ number: 3, decimals: 0 }} %, look for a setting that fits the page to the paper first.`,
      units,
    ),
    printPhrase(say`The short bar is ${mm(across)}, the long bar ${mm(along)}.`, units),
    ...set,
    ...remarks,
  ];
}

/** A bar, a stroke at each end, a short one at each step. */
function drawBar(
  pen: Pen,
  from: { readonly x: Mm; readonly y: Mm },
  length: Mm,
  runs: 'across' | 'along',
  step: Mm,
): void {
  const at = (along: Mm, aside: Mm) =>
    runs === 'across' ? point(from.x + along, from.y + aside) : point(from.x + aside, from.y + along);
  pen.line(at(0, 0), at(length, 0), BAR);
  for (const end of [0, length]) pen.line(at(end, -END), at(end, END), FINE);
  for (let s = step; s < length - 1; s += step) pen.line(at(s, -DIVISION), at(s, DIVISION), FINE);
}
