import { baseline, INK, type LineStyle, lineHeight } from '../../drawing';
import type { Mm } from '../../length';
import { type Box, point } from '../../plane';
import type { Draft } from '../../project';
import { own, said, words } from '../../words';
import type { PdfOptions } from '../pen/options';
import { wordPaper } from '../pen/page-grid';
import { type Pen, startPdf } from '../pen/pen';
import { flowBalanced, type Section, wrapText } from '../pen/text-flow';
import { type Guide, type GuideStep, guideContent, PICTURE_KEY } from './content';
import { drawPicture } from './picture';

const RULE: LineStyle = { width: 0.2, colour: INK.frame, dash: [] };
const FRAME: LineStyle = { width: 0.15, colour: INK.frame, dash: [] };
const MARGIN: Mm = 14;
const GAP: Mm = 5;
const PICTURE_WIDTH: Mm = 82;
const TALLEST_PICTURE: Mm = 88;
const TALLEST_LAY: Mm = 150;
const [TITLE_PT, PART_PT, STEP_PT, WORDS_PT, SMALL_PT] = [16, 12.5, 10.5, 8.6, 7.4] as const;

/** One set line of a step's text. */
interface TextLine {
  readonly text: string;
  readonly pt: number;
  readonly colour: string;
  readonly indent: Mm;
  readonly above: Mm;
}

/** The guide's pages and where the pen is on them. */
interface Page {
  readonly pen: Pen;
  readonly width: Mm;
  readonly height: Mm;
  readonly guide: Guide;
  y: Mm;
  number: number;
}

/**
 * The sewing guide, the cloth and the shopping list as pages to print with the sheets: A4, or Letter in inch projects.
 *
 * @param draft the finished draft
 * @returns the bytes of the file; the same draft and options give the same bytes
 */
export function writeGuidePdf(draft: Draft, options: PdfOptions): Uint8Array {
  const guide = guideContent(draft);
  const { width, height } = wordPaper(guide.units === 'inch');
  const pen = startPdf(width, height, options.font, {
    title: words`${own(guide.title)}: how to sew it`,
    subject: guide.under,
    date: options.date,
  });
  const page: Page = { pen, width, height, guide, y: MARGIN, number: 1 };
  drawFront(page);
  drawCloth(page);
  turnOver(page);
  setLines(
    page,
    [
      line(guide.time, WORDS_PT),
      line(guide.timeSource, SMALL_PT, 0.4, INK.quietWords),
      line(said(PICTURE_KEY), WORDS_PT, 1.2),
    ],
    MARGIN,
    width - 2 * MARGIN,
  );
  for (const { name, steps } of guide.parts) {
    for (const [i, step] of steps.entries()) drawStep(page, step, i === 0 ? name : '');
  }
  drawFoot(page);
  return pen.bytes();
}

const line = (text: string, pt: number, above: Mm = 0, colour: string = INK.words, indent: Mm = 0): TextLine => ({
  text,
  pt,
  colour,
  indent,
  above,
});

/** Safety first, then what was chosen, what comes out, what to cut, what to buy. */
function drawFront(page: Page): void {
  const { pen, guide, width, height } = page;
  setLines(
    page,
    [line(guide.title, TITLE_PT, 0, INK.cut), line(guide.under, SMALL_PT, 0.5, INK.quietWords)],
    MARGIN,
    width - 2 * MARGIN,
  );
  pen.line(point(MARGIN, page.y + 1.5), point(width - MARGIN, page.y + 1.5), RULE);
  const top = page.y + 4;
  const middle = width / 2;
  const columns = (from: Mm, lower: Mm): readonly Box[] => [
    { left: MARGIN, right: middle - GAP / 2, top: from, bottom: lower },
    { left: middle + GAP / 2, right: width - MARGIN, top: from, bottom: lower },
  ];
  const listed = (all: readonly string[]) => all.map((sentence) => `• ${sentence}`);
  let sections: readonly Section[] = [
    { title: words`Safety`, sentences: listed(guide.safety) },
    { title: words`Chosen`, sentences: listed(guide.chosen) },
    {
      title: words`To buy`,
      sentences: listed(
        guide.shopping.map(({ name, value, note }) => `${name}: ${value}.${note === '' ? '' : ` ${note}`}`),
      ),
    },
    { title: words`Cut`, rows: guide.cut },
    { title: words`Finished measures`, rows: guide.finished },
  ];
  let from = top;
  for (;;) {
    const flow = flowBalanced(
      sections,
      (lower) => columns(from, lower),
      from,
      height - MARGIN - 6,
      WORDS_PT,
      pen.widthOf,
    );
    for (const { left, right, title, box } of flow.lines) {
      const at = baseline(box.top, WORDS_PT);
      pen.words(left, point(box.left, at), { pt: WORDS_PT, colour: title ? INK.mark : INK.words });
      if (right !== '') pen.words(right, point(box.right, at), { pt: WORDS_PT, colour: INK.words, align: 'right' });
    }
    page.y = Math.max(from, ...flow.lines.map(({ box }) => box.bottom));
    if (flow.left.length === 0 || flow.lines.length === 0) return;
    sections = flow.left;
    turnOver(page);
    from = page.y;
  }
}

/** The lay to scale, and other widths. */
function drawCloth(page: Page): void {
  const { pen, guide, width, height } = page;
  turnOver(page);
  setLines(page, [line(words`The lay`, PART_PT, 0, INK.mark)], MARGIN, width - 2 * MARGIN);
  const bottom = height - MARGIN - 6 - 5 * lineHeight(WORDS_PT) - guide.widths.length * lineHeight(WORDS_PT);
  const room: Box = {
    left: MARGIN,
    right: width - MARGIN,
    top: page.y + 3,
    bottom: Math.min(bottom, page.y + TALLEST_LAY),
  };
  if (guide.lay) page.y = drawPicture(pen, guide.lay, room, guide.units).bottom;
  else setLines(page, [line(guide.noLay, WORDS_PT, 2)], MARGIN, width - 2 * MARGIN);
  const widths = guide.widths.map(({ name, value }) => line(`${name}: ${value}`, WORDS_PT));
  setLines(page, [line(words`On other widths`, WORDS_PT, 4, INK.mark), ...widths], MARGIN, width - 2 * MARGIN);
}

/** One step: its picture at the left, its words at the right; never torn apart. */
function drawStep(page: Page, step: GuideStep, part: string): void {
  const { pen, guide, width, height } = page;
  const left = MARGIN + PICTURE_WIDTH + GAP;
  const lines = stepLines(step);
  const words = heightOf(pen, lines, width - MARGIN - left);
  const { box } = step.picture;
  const ratio = (box.bottom - box.top) / (box.right - box.left);
  const picture = Math.min(TALLEST_PICTURE, PICTURE_WIDTH * ratio);
  const head = part === '' ? 0 : lineHeight(PART_PT) + 5;
  if (page.y + head + Math.max(words, picture) + 6 > height - MARGIN - 6) turnOver(page);
  if (part !== '') {
    setLines(page, [line(part, PART_PT, 3, INK.mark)], MARGIN, width - 2 * MARGIN);
    pen.line(point(MARGIN, page.y + 0.8), point(width - MARGIN, page.y + 0.8), RULE);
    page.y += 1;
  }
  const top = page.y + 4;
  const room: Box = { left: MARGIN, right: MARGIN + PICTURE_WIDTH, top, bottom: top + picture };
  const drawn = drawPicture(pen, step.picture, room, guide.units);
  pen.frame(drawn, FRAME);
  page.y = top;
  setLines(page, lines, left, width - MARGIN - left);
  page.y = Math.max(page.y, drawn.bottom);
}

function stepLines(step: GuideStep): readonly TextLine[] {
  return [
    line(`${step.number}. ${step.title}`, STEP_PT, 0, INK.cut),
    ...step.tasks.map((task) => line(`• ${task}`, WORDS_PT, 0.8)),
    ...(step.why === '' ? [] : [line(words`Why: ${own(step.why)}`, WORDS_PT, 1.2, INK.quietWords)]),
    ...step.settings.map(({ name, value }, i) => line(`${name}: ${value}`, SMALL_PT, i === 0 ? 1.4 : 0.2)),
    line(words`See: ${own(step.check)}`, WORDS_PT, 1.4, INK.sewn),
    ...(step.care === '' ? [] : [line(words`Take care: ${own(step.care)}`, WORDS_PT, 1.2, '#8F322C')]),
  ];
}

const heightOf = (pen: Pen, lines: readonly TextLine[], width: Mm): Mm =>
  lines.reduce(
    (sum, { text, pt, indent, above }) =>
      sum + above + wrapText(text, width - indent, pt, pen.widthOf).length * lineHeight(pt),
    0,
  );

/** Sets lines from the pen's place down. */
function setLines(page: Page, lines: readonly TextLine[], left: Mm, width: Mm): void {
  for (const { text, pt, colour, indent, above } of lines) {
    page.y += above;
    for (const row of wrapText(text, width - indent, pt, page.pen.widthOf)) {
      page.pen.words(row, point(left + indent, baseline(page.y, pt)), { pt, colour });
      page.y += lineHeight(pt);
    }
  }
}

function turnOver(page: Page): void {
  drawFoot(page);
  page.pen.newPage(page.width, page.height);
  page.y = MARGIN;
  page.number += 1;
}

/** The page's number and whose guide it is. */
function drawFoot({ pen, guide, width, height, number }: Page): void {
  const y = height - MARGIN + 2;
  const style = { pt: SMALL_PT, colour: INK.quietWords } as const;
  pen.words(guide.title.slice(0, 70), point(MARGIN, y), style);
  pen.words(`${number}`, point(width - MARGIN, y), { ...style, align: 'right' });
}
