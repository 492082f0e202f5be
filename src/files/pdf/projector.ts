import {
  ASCENT,
  drawingInk,
  type Ink,
  inkBounds,
  inkCrosses,
  type LineStyle,
  mmOfPt,
  type PaperScale,
  type PieceDrawing,
  type PiecePlace,
  placedDrawings,
  printedStyle,
  ptOfCapitals,
  type StyleOf,
  uprightPlaces,
  wordBoxes,
} from '../../drawing';
import type { Piece } from '../../edges';
import type { Mm } from '../../length';
import { type Box, boxesMeet, point } from '../../plane';
import type { Draft } from '../../project';
import { correctionTold, LARGEST_PAGE, type ProjectorCorrection, projectorRemarks } from '../../sheets';
import { number, own, printPhrase, say, words } from '../../words';
import { patternWords } from '../content/piece-words';
import { wholeWords } from '../content/whole-words';
import { drawPaths } from '../pen/draw-paths';
import { drawWords } from '../pen/draw-words';
import type { PdfOptions } from '../pen/options';
import { type Pen, startPdf } from '../pen/pen';
import { wrapText } from '../pen/wrap-text';
import type { LongWork } from '../work/long-work';
import { refuseLargerThanPage } from './large-sheet';
import {
  correctionOf,
  drawGround,
  GRID,
  GROUNDS,
  type Ground,
  type ProjectedFrame,
  projectedFrame,
  TRUE_PROJECTOR,
  type Undoing,
} from './projector-ground';
import { LEAST_PROJECTED_PT, projectedWords } from './projector-words';

/** The printed cut line's width: the other lines and their dashes keep their proportion to it. */
const PRINTED_CUT: Mm = 0.5;
/** Lines other than the cut line are drawn this much thicker than their printed proportion: light is coarser than ink. */
const THIN_LINES = 1.3;
const NOTE_CAPITALS: Mm = 7;
const NOTE_STEP: Mm = 10;
/** How wide the note may be, the better first; each leaves more height between the lines. */
const NOTE_WIDTHS: readonly Mm[] = [480, 320, 200, 120];

/**
 * The pattern to be thrown on the cloth by a projector: true size, no margins, thick lines, a grid whose squares are
 * known. One page as large as the pieces side by side; where that is more than a PDF page can be, a page for each piece.
 * What was measured of the projector's test is undone, lines and grid alike, and told beside the grid's size. Kinds of
 * lines, words, grid and notes are layers, so that a reader shows what the work at hand needs.
 *
 * @param draft the finished draft; always full size, for the paper's scale and its printer's correction belong to paper
 * @throws Refusal where a piece alone is larger than a page can be (5,080 mm), or the projector can't be corrected
 */
export function* projectorWork(draft: Draft, options: PdfOptions): LongWork<Uint8Array> {
  const { project } = draft;
  const correction = correctionOf(project);
  const pages = projectorPages(draft.pieces, project.projector.line, correction ?? TRUE_PROJECTOR);
  const { units } = project;
  const ground = GROUNDS[project.projector.ground];
  const styleOf = projectedStyle(project.projector.line, ground);
  const [first] = pages as [ProjectorPage, ...ProjectorPage[]];
  const pen = startPdf(first.frame.width, first.frame.height, options.font, {
    title: project.name,
    subject: words`Lounge pant for ${own(project.body.label)}, to be projected at true size`,
    date: options.date,
  });
  for (const [i, page] of pages.entries()) {
    yield { share: i / pages.length, doing: words`page ${number(i + 1)}` };
    if (i > 0) pen.newPage(page.frame.width, page.frame.height);
    drawGround(pen, page.frame, ground);
    const gridLine = { width: project.projector.line / 2, colour: ground.grid, dash: [] };
    pen.onLayer('grid', () => drawGrid(pen, page, GRID[units].side, gridLine));
    drawPaths(pen, page.drawings, page.box, page.frame, 1, { styleOf });
    const wanted = projectedWords(patternWords(page.pieces, page.places, { project, scale: 1, date: options.date }));
    const placed = wholeWords(wanted, {
      ...page,
      widthOf: pen.widthOf,
      least: LEAST_PROJECTED_PT,
      halfLine: project.projector.line / 2,
    });
    drawWords(pen, placed, page.frame, { colour: ground.words });
    const whose = own(`${project.name} · ${project.body.label}`);
    const told =
      pages.length > 1 ? words`${whose} · page ${number(i + 1)} of ${number(pages.length)}` : words`${whose}`;
    const note = [
      words`1 square = ${own(GRID[units].name)}`,
      told,
      ...correctionSentences(correction).map((phrase) => printPhrase(phrase, units)),
    ];
    const taken = placed.flatMap((word) => wordBoxes(word, page.scale));
    pen.onLayer('notes', () => drawNote(pen, page, ground, note, taken));
  }
  return pen.bytes();
}

/** What the file says of its projector: how it is corrected, and what is worth a look first. */
const correctionSentences = (correction: ProjectorCorrection | undefined) =>
  correction ? [correctionTold(correction), ...projectorRemarks(correction)] : [];

interface ProjectorPage {
  readonly pieces: readonly Piece[];
  readonly places: readonly PiecePlace[];
  readonly drawings: readonly PieceDrawing[];
  readonly ink: Ink;
  /** What it shows, on the drawing. */
  readonly box: Box;
  readonly frame: ProjectedFrame;
  /** Page for a millimetre of drawing, at least: what words take up there. */
  readonly scale: PaperScale;
}

function projectorPages(pieces: readonly Piece[], line: Mm, undoing: Undoing): readonly ProjectorPage[] {
  const places = uprightPlaces(pieces);
  const whole = projectorPage(pieces, places, line, undoing);
  if (fits(whole)) return [whole];
  const single = pieces.map((piece, i) => projectorPage([piece], places.slice(i, i + 1), line, undoing));
  for (const { frame } of single)
    refuseLargerThanPage(frame.width, frame.height, say`the piece`, { field: 'files', value: 'projector' });
  return single;
}

const fits = ({ frame }: ProjectorPage): boolean => Math.max(frame.width, frame.height) <= LARGEST_PAGE;

function projectorPage(
  pieces: readonly Piece[],
  places: readonly PiecePlace[],
  line: Mm,
  undoing: Undoing,
): ProjectorPage {
  const drawings = placedDrawings(pieces, places);
  const ink = drawingInk(drawings);
  const { left, top, right, bottom } = inkBounds(ink);
  // No margin, but the whole width of the outermost line.
  const box = { left: left - line / 2, top: top - line / 2, right: right + line / 2, bottom: bottom + line / 2 };
  const frame = projectedFrame(box, undoing);
  const least = Math.min(undoing.across, undoing.down);
  return { pieces, places, drawings, ink, box, frame, scale: { x: least, y: least } };
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

/** The grid is changed as the drawing is: on the table its squares are square. */
function drawGrid(pen: Pen, { box, frame: { map } }: ProjectorPage, side: Mm, style: LineStyle): void {
  const { left, top, right, bottom } = box;
  for (let x = left + side; x < right; x += side) pen.line(map(point(x, top)), map(point(x, bottom)), style);
  for (let y = top + side; y < bottom; y += side) pen.line(map(point(left, y)), map(point(right, y)), style);
}

/** What the page is and how large its squares are: where no line or word is, first from the top, as wide as finds room. */
function drawNote(
  pen: Pen,
  page: ProjectorPage,
  ground: Ground,
  sentences: readonly string[],
  taken: readonly Box[],
): void {
  const pt = ptOfCapitals(NOTE_CAPITALS);
  const line = mmOfPt(pt) * 1.3;
  for (const widest of NOTE_WIDTHS) {
    const lines = sentences.flatMap((text) => wrapText(text, widest, pt, pen.widthOf));
    const width = Math.max(...lines.map((text) => pen.widthOf(text, pt)));
    const at = freePlace(page, width + NOTE_CAPITALS, lines.length * line + NOTE_CAPITALS, taken);
    if (!at) continue;
    const { x, y } = page.frame.map(point(at.left + NOTE_CAPITALS / 2, at.top + NOTE_CAPITALS / 2));
    for (const [i, text] of lines.entries())
      pen.words(text, point(x, y + i * line + mmOfPt(pt) * ASCENT), { pt, colour: ground.words });
    return;
  }
}

/** @param width on the page, as `height` is */
function freePlace({ box, ink, scale }: ProjectorPage, width: Mm, height: Mm, taken: readonly Box[]): Box | undefined {
  const [wide, high] = [width / scale.x, height / scale.y];
  for (let top = box.top; top + high <= box.bottom; top += NOTE_STEP) {
    for (let left = box.left; left + wide <= box.right; left += NOTE_STEP) {
      const tried = { left, top, right: left + wide, bottom: top + high };
      if (!inkCrosses(ink, tried) && !taken.some((word) => boxesMeet(word, tried))) return tried;
    }
  }
  return undefined;
}
