import { baseline, INK, type LineStyle, lineHeight } from '../../drawing';
import { MM_PER_INCH, type Mm, plain } from '../../length';
import { type Curve, curveMap, type Point, point, straight } from '../../plane';
import type { Draft } from '../../project';
import { REFERENCE, referenceSheet } from '../../sheets';
import { own, type Phrase, type PhraseValue, said, say, words } from '../../words';
import type { PdfOptions } from '../pen/options';
import { type Pen, startPdf } from '../pen/pen';
import { wrapText } from '../pen/wrap-text';

const FINE: LineStyle = { width: 0.2, colour: INK.cut, dash: [] };
const BAR: LineStyle = { width: 0.3, colour: INK.cut, dash: [] };
const CUT: LineStyle = { width: 0.25, colour: INK.join, dash: [3, 1.5] };
/** Radius of a mark: over a floor's length it still covers a dozen pixels. */
const RADIUS: Mm = 9;
/** Of the marks that end the fifth length. */
const SMALL: Mm = 4;
/** How far the strokes reach in from the paper's edges where the sheet may be cut in four. */
const CUT_STROKE: Mm = 14;
const LETTER_PT = 16;
const TITLE_PT = 15;
const WORDS_PT = 10.5;
/** Between the words and the marks round them. */
const CLEAR: Mm = 6;
/** A quarter of a circle as a cubic: its handles are this share of the radius long, 4/3·(√2 − 1). @source memory */
const ROUND = 0.5523;

/**
 * The reference sheet: four marks at known distances to photograph beside a paper block, a fifth length to check by, and
 * how to use it. It is corrected for the printer like the pattern.
 *
 * @param draft its project's paper and units are used; Letter where its paper is measured in inches, else A4
 */
export function writeReferencePdf({ project }: Pick<Draft, 'project'>, options: PdfOptions): Uint8Array {
  const { paper: settings, units } = project;
  const { paper, left, top } = referenceSheet(settings, units);
  const { correctX, correctY } = settings;
  const pen = startPdf(paper.width, paper.height, options.font, {
    title: words`Reference sheet`,
    subject: words`Four marks to photograph beside a paper block`,
    date: options.date,
  });
  const { width, height, check } = REFERENCE;
  const place = (x: Mm, y: Mm): Point => point(left + x * correctX, top + y * correctY);
  const corners = [place(0, 0), place(width, 0), place(width, height), place(0, height)];
  const middle = place(width / 2, height / 2);
  corners.forEach((at, i) => {
    drawMark(pen, at, RADIUS);
    const inwards = at.x < middle.x ? 1 : -1;
    const letter = point(at.x + inwards * (RADIUS + 4), at.y + 2.2);
    pen.words('ABCD'.charAt(i), letter, { pt: LETTER_PT, colour: INK.cut, align: 'middle' });
  });
  const aside = width - RADIUS;
  const [e, f] = [place(aside, (height - check) / 2), place(aside, (height + check) / 2)];
  pen.line(e, f, BAR);
  for (const [end, letter] of [[e, 'E'] as const, [f, 'F'] as const]) {
    drawMark(pen, end, SMALL);
    pen.words(letter, point(end.x - SMALL - 3, end.y + 1.6), { pt: 11, colour: INK.cut, align: 'middle' });
  }
  for (const [from, to] of [
    [point(middle.x, 10), point(middle.x, 10 + CUT_STROKE)],
    [point(middle.x, paper.height - 10), point(middle.x, paper.height - 10 - CUT_STROKE)],
    [point(10, middle.y), point(10 + CUT_STROKE, middle.y)],
    [point(paper.width - 10, middle.y), point(paper.width - 10 - CUT_STROKE, middle.y)],
  ] as const)
    pen.line(from, to, CUT);

  const start = left + RADIUS + CLEAR;
  let y = top + RADIUS + CLEAR;
  const set = (text: string, pt: number) => {
    for (const line of wrapText(text, e.x - SMALL - 8 - start, pt, pen.widthOf)) {
      pen.words(line, point(start, baseline(y, pt)), { pt, colour: INK.words });
      y += lineHeight(pt);
    }
    y += 2.5;
  };
  set(words`Reference sheet`, TITLE_PT);
  for (const sentence of SENTENCES) set(said(sentence), WORDS_PT);
  return pen.bytes();
}

/** Exact in both units: these are typed, not read off a tape. */
const both = (value: Mm): PhraseValue => own(`${value} mm (${plain(value / MM_PER_INCH, 2)} in)`);

const SENTENCES: readonly Phrase[] = [
  say`It is photographed beside a block on paper, so that Legwork can flatten the picture and draw the block at its true size.`,
  say`1. Print it at 100 %, without fit to page. From mark to mark A to B measures ${both(REFERENCE.width)}, A to D ${both(REFERENCE.height)}, E to F ${both(REFERENCE.check)}.`,
  say`2. Cut it in four where the broken strokes at its edges meet. Lay the block flat on an even floor and the four parts round it, A, B, C and D as they stood here, at the corners of a rectangle as large as the block.`,
  say`3. Measure from mark to mark: A to B and D to C alike, A to D and B to C alike, and both diagonals alike, or it is no rectangle. Write the two lengths down, and one more on the block itself, its grainline perhaps, to check by.`,
  say`4. Or leave the sheet whole and lay it close beside the block. That is quicker and much less exact: whatever lies far from the marks is off by many times more than a mark on the picture.`,
  say`5. Photograph from as straight above as you can, from far enough away that no lens bends the edges, with everything on the picture and the four marks sharp. Front and back may lie on one photograph.`,
  say`6. At Blocks choose the photograph, and mark the middle of each mark on it.`,
];

/** A circle whose quarters are filled by turns: its middle is a point, however large the mark is seen. */
function drawMark(pen: Pen, at: Point, radius: Mm): void {
  const quarter = (turn: number): readonly Curve[] => {
    const spin = ({ x, y }: Point): Point => {
      const [cos, sin] = [Math.round(Math.cos(turn)), Math.round(Math.sin(turn))];
      return point(at.x + x * cos - y * sin, at.y + x * sin + y * cos);
    };
    const handle = radius * ROUND;
    const arc: Curve = [point(radius, 0), point(radius, handle), point(handle, radius), point(0, radius)];
    const [o, a, b] = [point(0, 0), point(radius, 0), point(0, radius)];
    return [straight(o, a), arc, straight(b, o)].map((curve) => curveMap(curve, spin));
  };
  const asIs = (p: Point) => p;
  for (const turn of [0, 1, 2, 3]) {
    const curves = quarter((turn * Math.PI) / 2);
    if (turn % 2 === 0) pen.fill(curves, asIs, INK.cut);
    pen.stroke(curves.slice(1, 2), asIs, FINE);
  }
  pen.line(point(at.x - radius, at.y), point(at.x + radius, at.y), FINE);
  pen.line(point(at.x, at.y - radius), point(at.x, at.y + radius), FINE);
}
