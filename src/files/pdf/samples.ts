import {
  baseline,
  drawingInk,
  INK,
  inkBounds,
  inkCrosses,
  LEAST_PT,
  type LineStyle,
  lineHeight,
  type PieceDrawing,
  pieceDrawing,
  printedStyle,
} from '../../drawing';
import { isLeg, pieceName } from '../../edges';
import type { Mm, Units } from '../../length';
import { type Box, boxesMeet, boxGrown, curveMap, point } from '../../plane';
import type { Draft } from '../../project';
import { PAPER_SIZES, paperName, paperSize } from '../../sheets';
import { mm, number, own, printPhrase, Refusal, say, words } from '../../words';
import { drawPaths, pictureLook } from '../pen/draw-paths';
import type { PdfOptions } from '../pen/options';
import { frameAt, type PageFrame } from '../pen/page-frame';
import { type Packed, type Parcel, packedPages } from '../pen/page-packing';
import { type Pen, startPdf } from '../pen/pen';
import { type LongWork, type Progress, partOf } from '../work/long-work';
import type { FinishedFile } from '../zip/zip';

/** Of true size: a leg on half of an A3 sheet. */
const SAMPLE_SCALE = 1 / 4;
/** What the printer can't reach. */
const MARGIN: Mm = 7;
const GAP: Mm = 3;
const HEAD_PT = 8;
/** The line above the samples. */
const HEAD: Mm = lineHeight(HEAD_PT) + 1.5;
/** What the bar at the head of each page stands for. */
const BAR: Mm = 200;

/** One piece of one body, drawn small. */
interface Sample {
  readonly drawing: PieceDrawing;
  readonly turned: PieceDrawing;
  readonly says: readonly string[];
  readonly parcel: Parcel;
}

/**
 * The handouts of {@link samplesWork} as a file.
 *
 * @param name what the file is called, without its ending
 */
export async function* samplesFiles(
  drafts: readonly [Draft, ...Draft[]],
  name: string,
  options: PdfOptions,
): AsyncGenerator<Progress, readonly FinishedFile[]> {
  const content = yield* partOf(samplesWork(drafts, options), 0, 1, '');
  return [{ name: `${name}.samples.pdf`, content }];
}

/**
 * Quarter-scale handouts of one or more bodies, several to a page: every piece with its lines, and whose it is. A step
 * for each page.
 *
 * @param drafts at least one; the first one's paper and units count
 * @throws Refusal where a piece is too large for any paper
 */
export function* samplesWork(drafts: readonly [Draft, ...Draft[]], options: PdfOptions): LongWork<Uint8Array> {
  const { project } = drafts[0];
  const { correctX, correctY } = project.paper;
  const scale = { x: SAMPLE_SCALE * correctX, y: SAMPLE_SCALE * correctY };
  const samples = drafts.flatMap((one) => samplesOf(one, scale));
  const { page, packed } = laidPages(samples, project.paper, project.units);
  const pages = [...new Set(packed.map((place) => place.page))];
  const title = words`${own(project.name)}: samples at a quarter`;
  const sheets = say`${number(pages.length)} pages ${paperName(page.name)}`;
  const pen = startPdf(page.width, page.height, options.font, {
    title,
    subject:
      drafts.length === 1
        ? words`1 body, a quarter of true size, ${sheets}`
        : words`${number(drafts.length)} bodies, a quarter of true size, ${sheets}`,
    date: options.date,
  });
  for (const one of pages) {
    yield { share: one / pages.length, doing: words`page ${number(one + 1)}` };
    if (one > 0) pen.newPage(page.width, page.height);
    drawPageHead(
      pen,
      page,
      words`${own(title)}, to look at and not for cutting out · ${number(one + 1)} of ${number(pages.length)}`,
      scale.x,
      project.units,
    );
    for (const place of packed) if (place.page === one) drawSample(pen, place.sample, place, scale);
  }
  return pen.bytes();
}

function samplesOf(
  { pieces, project, legs, measures }: Draft,
  scale: { readonly x: number; readonly y: number },
): readonly Sample[] {
  return pieces.map((piece) => {
    const [drawing, turned] = [0, 90].map((turn) => plainDrawing(pieceDrawing(piece, point(0, 0), turn))) as [
      PieceDrawing,
      PieceDrawing,
    ];
    const box = inkBounds(drawingInk([drawing]));
    return {
      drawing,
      turned,
      says: [
        project.body.label,
        words`${pieceName(piece)}, cut ${number(piece.cut)}`,
        ...legs
          .filter(({ side }) => isLeg(piece) && (side === undefined || side === piece.side))
          .map((leg) =>
            printPhrase(
              say`hip ${mm(measures.hipGirthFinished)}, inseam ${mm(leg.measures.inseamFront)}`,
              project.units,
            ),
          ),
      ],
      parcel: { width: (box.right - box.left) * scale.x, height: (box.bottom - box.top) * scale.y },
    };
  });
}

/** What is still read at a quarter: no small signs, of the words only front and back. */
const plainDrawing = (drawing: PieceDrawing): PieceDrawing => ({
  ...drawing,
  paths: drawing.paths.filter(
    ({ stroke, name }) => (stroke !== 'solid' || name === 'grainline') && stroke !== 'lengthen',
  ),
  texts: drawing.texts.filter(({ says }) => says === 'half'),
});

/** A page of a size that has a name. */
interface NamedPage extends Parcel {
  readonly name: string;
}

/**
 * The pages: upright or lying, as takes fewest; of the paper that was chosen or, where that is a roll or does not hold the
 * largest piece, of A3 or Tabloid, or of the next size that does.
 */
function laidPages(
  samples: readonly Sample[],
  { sheet, ownWidth, ownHeight }: Draft['project']['paper'],
  units: Units,
): { readonly page: NamedPage; readonly packed: readonly (Packed & { readonly sample: Sample })[] } {
  const family = units === 'inch' ? /^(Tabloid|ANSI)/ : /^A[0-3]$/;
  const usual = PAPER_SIZES.filter(({ name }) => family.test(name)).sort((a, b) => a.height - b.height);
  const chosen = paperSize(sheet, { width: ownWidth, height: ownHeight });
  // In the order of the bodies; or the longest first, which often takes fewer pages.
  const given = samples.map((_, i) => i);
  const longest = ({ parcel }: Sample) => Math.max(parcel.width, parcel.height);
  const orders = [given, [...given].sort((a, b) => longest(samples[b] as Sample) - longest(samples[a] as Sample))];
  for (const { name, width, height } of [...(chosen.roll ? [] : [chosen]), ...usual]) {
    const ways = [
      { name, width, height },
      { name, width: height, height: width },
    ].flatMap((page) => {
      const room = { width: page.width - 2 * MARGIN, height: page.height - 2 * MARGIN - HEAD };
      return orders.flatMap((order) =>
        (['seldom', 'freely'] as const).flatMap((turn) => {
          const parcels = order.map((i) => (samples[i] as Sample).parcel);
          const laid = packedPages(parcels, room, GAP, turn);
          const packed = laid?.map((place, k) => ({ ...place, sample: samples[order[k] as number] as Sample }));
          return packed ? [{ page, packed }] : [];
        }),
      );
    });
    const pagesOf = ({ packed }: (typeof ways)[number]) => Math.max(...packed.map((place) => place.page));
    const [first, ...others] = ways;
    if (first) return others.reduce((best, one) => (pagesOf(one) < pagesOf(best) ? one : best), first);
  }
  const widest = Math.max(...samples.map(longest));
  throw new Refusal([
    {
      field: '--files',
      value: 'samples',
      phrase: say`a piece is ${mm(widest)} long even at a quarter, longer than any paper.`,
    },
  ]);
}

/** What the page is, and a bar by which its scale is proven. */
function drawPageHead(pen: Pen, page: Parcel, title: string, scale: number, units: Units): void {
  const y = baseline(MARGIN, HEAD_PT);
  pen.words(title, point(MARGIN, y), { pt: HEAD_PT, colour: INK.words });
  const right = page.width - MARGIN;
  const says = printPhrase(say`${mm(BAR)} of cloth`, units);
  const from = right - BAR * scale;
  pen.line(point(from, y), point(right, y), { width: 0.3, colour: INK.cut, dash: [] });
  for (const x of [from, right])
    pen.line(point(x, y - 1.2), point(x, y + 1.2), { width: 0.3, colour: INK.cut, dash: [] });
  pen.words(says, point(from - 2, y), { pt: HEAD_PT, colour: INK.quietWords, align: 'right' });
}

/** Lines at a quarter are thinner, or they would run into each other. */
const thin = (style: LineStyle): LineStyle => ({
  ...style,
  width: style.width * 0.6,
  dash: style.dash.map((part) => part * 0.5),
});
const NAME_PT = [9, LEAST_PT] as const;

function drawSample(
  pen: Pen,
  { drawing, turned, says }: Sample,
  place: Packed,
  scale: { readonly x: number; readonly y: number },
): void {
  const shown = place.turned ? turned : drawing;
  const box = inkBounds(drawingInk([shown]));
  const frame = frameAt(MARGIN + place.left, MARGIN + HEAD + place.top, box, scale);
  drawPaths(
    pen,
    [shown],
    box,
    frame,
    scale.x,
    pictureLook((path) => thin(printedStyle(path))),
  );
  const taken = shown.texts.map(({ text, at }) => {
    const { x, y } = frame.map(at);
    pen.words(text, point(x, y), { pt: LEAST_PT, colour: INK.words, align: 'middle', rim: '#FFFFFF' });
    const half = pen.widthOf(text, LEAST_PT) / 2 + 1;
    return { left: x - half, right: x + half, top: y - lineHeight(LEAST_PT), bottom: y + 1 };
  });
  const { lines, covers, pt, turn } = captionPlace(pen, shown, says, frame, taken);
  for (const [i, text] of lines.entries()) {
    const along = baseline((turn === 0 ? covers.top : covers.left) + i * lineHeight(pt), pt);
    const across = turn === 0 ? (covers.left + covers.right) / 2 : (covers.top + covers.bottom) / 2;
    const at = turn === 0 ? point(across, along) : point(along, across);
    pen.words(text, at, { pt, colour: i === 0 ? INK.cut : INK.words, align: 'middle', turn, rim: '#FFFFFF' });
  }
}

/** From the middle of a piece to its rim, in parts of the room, near ones first. */
const STEPS = Array.from({ length: 15 * 21 }, (_, i) => point((i % 15) / 7 - 1, Math.floor(i / 15) / 10 - 1)).sort(
  (a, b) => Math.hypot(a.x, a.y) - Math.hypot(b.x, b.y),
);

/** Where words stand on the page, and how. */
interface Caption {
  readonly lines: readonly string[];
  readonly covers: Box;
  readonly pt: number;
  /** Upright, or upwards along a narrow piece. */
  readonly turn: 0 | -90;
}

/** Where a piece's words stand: near its middle where no line runs, upwards where that helps; fewer rather than smaller. */
function captionPlace(
  pen: Pen,
  drawing: PieceDrawing,
  says: readonly string[],
  { box, map }: PageFrame,
  taken: readonly Box[],
): Caption {
  const middle = point((box.left + box.right) / 2, (box.top + box.bottom) / 2);
  const paths = drawing.paths.map((path) => ({ ...path, curves: path.curves.map((curve) => curveMap(curve, map)) }));
  const ink = drawingInk([{ ...drawing, paths, texts: [] }]);
  const [whose = '', piece = ''] = says;
  const ways = [says, [whose, piece], [`${whose} · ${piece}`], [piece]].flatMap((lines) =>
    NAME_PT.flatMap((pt) =>
      ([0, -90] as const).map((turn) => {
        const long = Math.max(...lines.map((text) => pen.widthOf(text, pt)));
        const high = lines.length * lineHeight(pt);
        const size = turn === 0 ? { width: long, height: high } : { width: high, height: long };
        return { lines, pt, turn, ...size };
      }),
    ),
  );
  const covered = ({ width, height }: (typeof ways)[number], x: number, y: number): Box => {
    const at = point(
      middle.x + (x * Math.max(0, box.right - box.left - width)) / 2,
      middle.y + (y * Math.max(0, box.bottom - box.top - height)) / 2,
    );
    return { left: at.x - width / 2, right: at.x + width / 2, top: at.y - height / 2, bottom: at.y + height / 2 };
  };
  for (const way of ways) {
    for (const { x, y } of STEPS) {
      const covers = covered(way, x, y);
      if (!inkCrosses(ink, boxGrown(covers, 0.6)) && !taken.some((other) => boxesMeet(other, covers)))
        return { ...way, covers };
    }
  }
  const least = ways.at(-2) as (typeof ways)[number];
  return { ...least, covers: covered(least, 0, 0) };
}
