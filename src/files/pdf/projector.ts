import {
  ASCENT,
  DESCENT,
  drawingInk,
  type Ink,
  inkBounds,
  inkCrosses,
  type LineStyle,
  mmOfPt,
  type PieceDrawing,
  placedDrawings,
  printedStyle,
  ptOfCapitals,
  type StyleOf,
  uprightPlaces,
  type WidthOf,
} from '../../drawing';
import { MM_PER_INCH, type Mm, type Units } from '../../length';
import { type Box, boxesMeet, pathThrough, point } from '../../plane';
import type { Draft } from '../../project';
import { LARGEST_PAGE } from '../../sheets';
import { number, own, say, words } from '../../words';
import { drawPaths } from '../pen/draw-paths';
import type { PdfOptions } from '../pen/options';
import { frameAt, type PageFrame } from '../pen/page-frame';
import { type Pen, startPdf } from '../pen/pen';
import type { LongWork } from '../work/long-work';
import { refuseLargerThanPage } from './large-sheet';

/** The grid's squares: they show on the cutting mat whether the projector is set right. */
const GRID: Readonly<Record<Units, { readonly side: Mm; readonly name: string }>> = {
  cm: { side: 50, name: '5 cm' },
  inch: { side: 2 * MM_PER_INCH, name: '2 in' },
};
/** The printed cut line's width: the other lines and their dashes keep their proportion to it. */
const PRINTED_CUT: Mm = 0.5;
/** Lines other than the cut line are drawn this much thicker than their printed proportion: light is coarser than ink. */
const THIN_LINES = 1.3;
/** Words are read from where the cutter stands. */
const LARGER_WORDS = 1.25;
const NOTE_CAPITALS: Mm = 7;
const NOTE_STEP: Mm = 10;

/** What is seen where; on a dark ground the cloth shows between the lines of light. */
interface Ground {
  readonly paper: string | undefined;
  readonly cut: string;
  readonly sewn: string;
  readonly sign: string;
  readonly level: string;
  readonly grid: string;
  readonly words: string;
}

const GROUNDS: Readonly<Record<'dark' | 'light', Ground>> = {
  dark: {
    paper: '#000000',
    cut: '#FFFFFF',
    sewn: '#8FE388',
    sign: '#FFD24A',
    level: '#9FB4C0',
    grid: '#33424B',
    words: '#FFFFFF',
  },
  light: {
    paper: undefined,
    cut: '#000000',
    sewn: '#2F6B2A',
    sign: '#8A4B00',
    level: '#4B5560',
    grid: '#C9C4B8',
    words: '#000000',
  },
};

/**
 * The pattern to be thrown on the cloth by a projector: true size, no margins, thick lines, a grid whose squares are
 * known. One page as large as the pieces side by side; where that is more than a PDF page can be, a page for each piece.
 *
 * @param draft the finished draft; always full size, for the paper's scale and its printer's correction belong to paper
 * @throws Refusal where a piece alone is larger than a page can be (5,080 mm)
 */
export function* projectorWork(draft: Draft, options: PdfOptions): LongWork<Uint8Array> {
  const { project } = draft;
  const drawings = placedDrawings(draft.pieces, uprightPlaces(draft.pieces));
  const pages = projectorPages(drawings, project.projector.line);
  const { units } = project;
  const ground = GROUNDS[project.projector.ground];
  const styleOf = projectedStyle(project.projector.line, ground);
  const [first] = pages as [ProjectorPage, ...ProjectorPage[]];
  const pen = startPdf(first.width, first.height, options.font, {
    title: project.name,
    subject: words`Lounge pant for ${own(project.body.label)}, to be projected at true size`,
    date: options.date,
  });
  for (const [i, page] of pages.entries()) {
    yield { share: i / pages.length, doing: words`page ${number(i + 1)}` };
    if (i > 0) pen.newPage(page.width, page.height);
    drawGround(pen, page, ground, GRID[units].side, project.projector.line);
    drawPaths(pen, page.drawings, page.box, page.frame, 1, styleOf);
    drawWords(pen, page, ground);
    const whose = own(`${project.name} · ${project.body.label}`);
    const told =
      pages.length > 1 ? words`${whose} · page ${number(i + 1)} of ${number(pages.length)}` : words`${whose}`;
    const note = [words`1 square = ${own(GRID[units].name)}`, told];
    drawNote(pen, page, ground, note);
  }
  return pen.bytes();
}

interface ProjectorPage {
  readonly drawings: readonly PieceDrawing[];
  readonly ink: Ink;
  /** What it shows, on the drawing. */
  readonly box: Box;
  readonly width: Mm;
  readonly height: Mm;
  readonly frame: PageFrame;
}

function projectorPages(drawings: readonly PieceDrawing[], line: Mm): readonly ProjectorPage[] {
  const whole = projectorPage(drawings, line);
  if (fits(whole)) return [whole];
  const single = drawings.map((drawing) => projectorPage([drawing], line));
  for (const { width, height } of single)
    refuseLargerThanPage(width, height, say`the piece`, { field: 'files', value: 'projector' });
  return single;
}

const fits = ({ width, height }: ProjectorPage): boolean => Math.max(width, height) <= LARGEST_PAGE;

function projectorPage(drawings: readonly PieceDrawing[], line: Mm): ProjectorPage {
  const ink = drawingInk(drawings);
  const { left, top, right, bottom } = inkBounds(ink);
  // No margin, but the whole width of the outermost line.
  const box = { left: left - line / 2, top: top - line / 2, right: right + line / 2, bottom: bottom + line / 2 };
  const frame = frameAt(0, 0, box, { x: 1, y: 1 });
  return { drawings, ink, box, width: box.right - box.left, height: box.bottom - box.top, frame };
}

/** The printed line types, as thick as was chosen, in colours of light. */
function projectedStyle(line: Mm, ground: Ground): StyleOf {
  const colours: Readonly<Record<string, string>> = { cut: ground.cut, stitching: ground.sewn, solid: ground.sign };
  const signs = ['fold', 'notch', 'grain'];
  return (path) => {
    const { width, dash } = printedStyle(path);
    const thicker = line / PRINTED_CUT;
    return {
      width: path.stroke === 'cut' ? line : width * thicker * THIN_LINES,
      dash: dash.map((part) => part * thicker),
      colour: colours[path.stroke] ?? (signs.includes(path.stroke) ? ground.sign : ground.level),
    };
  };
}

function drawGround(pen: Pen, { width, height }: ProjectorPage, ground: Ground, side: Mm, line: Mm): void {
  if (ground.paper !== undefined) {
    const corners = [point(0, 0), point(width, 0), point(width, height), point(0, height)] as const;
    pen.fill(pathThrough(...corners, corners[0]), (p) => p, ground.paper);
  }
  const style: LineStyle = { width: line / 2, colour: ground.grid, dash: [] };
  for (let x = side; x < width; x += side) pen.line(point(x, 0), point(x, height), style);
  for (let y = side; y < height; y += side) pen.line(point(0, y), point(width, y), style);
}

function drawWords(pen: Pen, { drawings, frame }: ProjectorPage, ground: Ground): void {
  for (const { text, at, size, turn } of drawings.flatMap((drawing) => drawing.texts)) {
    const pt = ptOfCapitals(size * LARGER_WORDS);
    pen.words(text, frame.map(at), { pt, colour: ground.words, align: 'middle', turn });
  }
}

/** What the page is and how large its squares are: where no line or word is, first from the top. */
function drawNote(pen: Pen, page: ProjectorPage, ground: Ground, lines: readonly string[]): void {
  const pt = ptOfCapitals(NOTE_CAPITALS);
  const line = mmOfPt(pt) * 1.3;
  const width = Math.max(...lines.map((text) => pen.widthOf(text, pt)));
  const at = freePlace(page, width + NOTE_CAPITALS, lines.length * line + NOTE_CAPITALS, pen.widthOf);
  if (!at) return;
  const { x, y } = page.frame.map(point(at.left + NOTE_CAPITALS / 2, at.top + NOTE_CAPITALS / 2));
  for (const [i, text] of lines.entries()) {
    pen.words(text, point(x, y + i * line + mmOfPt(pt) * ASCENT), { pt, colour: ground.words });
  }
}

function freePlace({ box, ink, drawings }: ProjectorPage, width: Mm, height: Mm, widthOf: WidthOf): Box | undefined {
  const words = drawings
    .flatMap((drawing) => drawing.texts)
    .map(({ text, at, size, turn }) => {
      const pt = ptOfCapitals(size * LARGER_WORDS);
      const half = widthOf(text, pt) / 2;
      const em = mmOfPt(pt) * (ASCENT + DESCENT);
      const lies = Math.abs(turn) < 45;
      return {
        left: at.x - (lies ? half : em),
        right: at.x + (lies ? half : em),
        top: at.y - (lies ? em : half),
        bottom: at.y + (lies ? em : half),
      };
    });
  for (let top = box.top; top + height <= box.bottom; top += NOTE_STEP) {
    for (let left = box.left; left + width <= box.right; left += NOTE_STEP) {
      const tried = { left, top, right: left + width, bottom: top + height };
      if (!inkCrosses(ink, tried) && !words.some((word) => boxesMeet(word, tried))) return tried;
    }
  }
  return undefined;
}
