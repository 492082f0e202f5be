import { lineHeight, type PieceDrawing } from '../../drawing';
import type { Mm } from '../../length';
import type { Box } from '../../plane';
import { type Draft, sheetsOf } from '../../project';
import { own, said, say } from '../../words';
import { gridColumns, type PageGrid, pageGrid } from '../pen/page-grid';
import { drawHead } from '../pen/page-head';
import { headedWhole, type PagePicture, type Passage } from '../pen/passage';
import { passageStrips } from '../pen/passage-strips';
import type { Pen } from '../pen/pen';
import { besideInset } from '../pen/picture-strips';
import { type PageRun, setRuns } from '../pen/set-pages';
import { drawStrips, type Strip, stripsHeight } from '../pen/strip';
import { SPACE, TYPE } from '../pen/type-scale';
import type { FirstPage } from './first-paper';
import type { FirstWords } from './first-words';
import { joiningPictures } from './joining-pictures';
import { lineKey } from './line-key';
import { mapRatio, placedMap } from './map';
import { drawSquare, squareAt, TEST_SQUARES } from './squares';

/** Between the squares, and from them to what stands beside and below. */
const GAP: Mm = 4;
/** The map has at least this share of the column beside the squares. */
const MAP_SHARE = 0.42;
/** Where its labels find no room there it is drawn larger further on, and takes this share of the page's height. */
const LARGE_MAP_SHARE = 0.62;
/** The pictures of joining stand beside their words, and are no higher than this and no lower than that. */
const PICTURES = { highest: 54, lowest: 26, share: 0.42 } as const;
/** A column of words is no narrower. */
const NARROWEST: Mm = 80;
/** Beside the squares there are two where they are no narrower than this. */
const NARROWEST_BESIDE: Mm = 70;

/** What else belongs to a pattern, in as many columns as the page holds: the key of its lines first. */
export function otherWords(
  { width, margin }: FirstPage,
  { others }: FirstWords,
  drawings: readonly PieceDrawing[],
): PageRun {
  const columns = ([3, 2] as const).find((count) => (width - 2 * margin) / count > NARROWEST) ?? 1;
  return { columns, passages: [...headedWhole(said(say`What the lines mean`), lineKey(drawings)), ...others] };
}

/**
 * Draws the first page on the current one: both squares, how to print, the map, and cutting, laying and taping in
 * pictures. What else belongs to the pattern follows beside and below where the paper is large, else on further pages: so no sheet
 * of the pattern lies on the back of the squares where a printer prints on both sides.
 *
 * @param others what else belongs to the pattern
 * @param lit labels of the sheets that stand out on the map
 */
export function drawFirst(
  pen: Pen,
  page: FirstPage,
  words: FirstWords,
  others: readonly PageRun[],
  draft: Draft,
  drawings: readonly PieceDrawing[],
  lit: readonly string[] = [],
): void {
  const bottom = page.height - page.margin;
  const grid: PageGrid = { ...page, gutter: pageGrid(false).gutter, bottom };
  const top = drawHead(pen, grid, words.title, words.under);
  const correct = { x: draft.project.paper.correctX, y: draft.project.paper.correctY };
  const metric = squareAt(page.margin, top, TEST_SQUARES[0].side, correct);
  const inch = squareAt(page.margin, metric.bottom + GAP, TEST_SQUARES[1].side, correct);
  drawSquare(pen, metric, TEST_SQUARES[0].label);
  drawSquare(pen, inch, TEST_SQUARES[1].label);
  const { beside, second } = columnsBeside(grid, Math.max(metric.right, inch.right) + GAP, top, inch.bottom);
  const room = (1 - MAP_SHARE) * (inch.bottom - top);
  const stripsOf = (passages: readonly Passage[]) => passageStrips(passages, beside.right - beside.left, pen.widthOf);
  const all = stripsOf([...words.print, ...words.exchange]);
  const fits = stripsHeight(all) <= room;
  const below = drawStrips(pen, fits ? all : stripsOf(words.print), beside.left, top);
  const mapRoom = { ...beside, top: below + SPACE.head, bottom: inch.bottom };
  const largerMap = drawMapPart(pen, grid, words, draft, drawings, mapRoom, lit);

  const { placed, left } = placedIn(second, others, pen);
  drawStrips(pen, placed, second?.left ?? 0, top);

  const under = inch.bottom + GAP;
  const afterwards: PageRun = {
    columns: 1,
    passages: words.afterwards.map((text) => ({ kind: 'paragraph', text })),
  };
  const runs: readonly PageRun[] = [
    ...joiningRuns(pen, grid, words, draft, drawings, under, afterwards),
    afterwards,
    ...(fits ? [] : [{ columns: 1, passages: words.exchange } as const]),
    ...largerMap,
    ...left,
  ];
  let turned = false;
  setRuns(pen, grid, runs, under - SPACE.run, () => {
    pen.newPage(page.width, page.height);
    const first = drawHead(pen, grid, words.title, said(say`${own(words.under)} · first page, continued`));
    if (turned || words.twoSided === '') return first;
    turned = true;
    // It may have come out on the back of the squares.
    const told = passageStrips(
      [{ kind: 'paragraph', text: words.twoSided }],
      page.width - 2 * page.margin,
      pen.widthOf,
    );
    return drawStrips(pen, told, page.margin, first) + SPACE.run;
  });
}

/** The column beside the squares, and on large paper a second one. */
function columnsBeside(
  { width, margin, gutter }: PageGrid,
  left: Mm,
  top: Mm,
  bottom: Mm,
): { readonly beside: Box; readonly second: Box | undefined } {
  const right = width - margin;
  const half = (right - left - gutter) / 2;
  return half < NARROWEST_BESIDE
    ? { beside: { left, right, top, bottom }, second: undefined }
    : {
        beside: { left, right: left + half, top, bottom },
        second: { left: right - half, right, top, bottom },
      };
}

/** As much of the first run as a column holds without parting a passage, and what is left of the runs. */
function placedIn(
  column: Box | undefined,
  [first, ...others]: readonly PageRun[],
  { widthOf }: Pen,
): { readonly placed: readonly Strip[]; readonly left: readonly PageRun[] } {
  if (!first || !column) return { placed: [], left: first ? [first, ...others] : [] };
  const stripsOf = (count: number) =>
    passageStrips(first.passages.slice(0, count), column.right - column.left, widthOf);
  const holds = (count: number) => stripsHeight(stripsOf(count)) <= column.bottom - column.top;
  let count = 0;
  while (count < first.passages.length && holds(count + 1)) count += 1;
  const rest = first.passages.slice(count);
  return {
    placed: stripsOf(count),
    left: [...(rest.length > 0 ? [{ ...first, passages: rest }] : []), ...others],
  };
}

/** Heading, note and map in a box; where its labels have no room, it has none of them, and what is returned follows further on. */
function drawMapPart(
  pen: Pen,
  grid: PageGrid,
  words: FirstWords,
  draft: Draft,
  drawings: readonly PieceDrawing[],
  room: Box,
  lit: readonly string[],
): readonly PageRun[] {
  const plan = sheetsOf(draft);
  const told = (note: string): readonly Passage[] => [
    { kind: 'heading', size: 'head', text: words.mapTitle },
    { kind: 'paragraph', text: note },
  ];
  const stripsOf = (note: string) => passageStrips(told(note), room.right - room.left, pen.widthOf);
  // The note belongs above the map, and what it says is known once the map is laid out.
  const most = [...[true, false].map((ordered) => words.mapNote({ ordered, whole: true })), words.mapFurtherOn];
  const top = room.top + Math.max(...most.map((note) => stripsHeight(stripsOf(note)))) + SPACE.picture;
  const small = placedMap(plan, drawings, { ...room, top }, pen.widthOf);
  small.draw(pen, small.whole, lit);
  drawStrips(pen, stripsOf(small.whole ? words.mapNote(small) : words.mapFurtherOn), room.left, room.top);
  if (small.whole) return [];
  const ratio = mapRatio(plan);
  const height = Math.min((grid.bottom - grid.margin) * LARGE_MAP_SHARE, (grid.width - 2 * grid.margin) * ratio);
  const shown = placedMap(plan, drawings, { left: 0, top: 0, right: height / ratio, bottom: height }, pen.widthOf);
  const picture: PagePicture = {
    ratio,
    tallest: height,
    draw: (on, box) => placedMap(plan, drawings, box, on.widthOf).draw(on, true, lit),
  };
  return [{ columns: 1, passages: [...told(words.mapNote(shown)), { kind: 'picture', picture }] }];
}

/** Cutting, laying and taping side by side, each picture with its words beside it, as high as the page lets them be. */
function joiningRuns(
  pen: Pen,
  grid: PageGrid,
  { joining }: FirstWords,
  draft: Draft,
  drawings: readonly PieceDrawing[],
  top: Mm,
  below: PageRun,
): readonly PageRun[] {
  const [column] = gridColumns(grid, 3, top, grid.bottom);
  if (!column || joining.length === 0) return [];
  const wide = column.right - column.left;
  const foot = passageStrips(below.passages, grid.width - 2 * grid.margin, pen.widthOf);
  const all = grid.bottom - top;
  const words = joining.map(({ text }) => [{ kind: 'paragraph', text }] as const);
  const narrow = wide - besideInset(wide, PICTURES.share);
  const lowest = Math.max(
    PICTURES.lowest,
    ...words.map((told) => stripsHeight(passageStrips(told, narrow, pen.widthOf)) + lineHeight(TYPE.head.pt)),
  );
  // What follows them may go overleaf; where there is no room for them alone they go there too, as high as at best.
  const height = [all - stripsHeight(foot) - SPACE.run, all].find((room) => room >= lowest) ?? PICTURES.highest;
  const size = { width: PICTURES.share * wide, height: Math.min(PICTURES.highest, height) };
  const pictures = joiningPictures(sheetsOf(draft), drawings, size);
  const passages = pictures.flatMap((picture, i): readonly Passage[] => {
    const told = joining[i];
    return told
      ? [
          {
            kind: 'beside',
            share: PICTURES.share,
            picture,
            passages: [
              { kind: 'heading', size: 'head', text: told.title },
              { kind: 'paragraph', text: told.text },
            ],
          },
        ]
      : [];
  });
  return [{ columns: 3, passages }];
}
