import type { Page } from 'playwright-core';
import type { Block } from '../../src/block';
import { add, flattenCurves, mapTuple, outlineCurves, type Point, point, turned } from '../../src/plane';
import { draft, exampleProject } from '../../src/project';
import {
  type BlockMarks,
  CELLS,
  cellsOfMark,
  type FoundMark,
  MARK_SHEET,
  marksMapped,
  marksOfSheet,
} from '../../src/trace';
import { type Camera, cameraOver } from '../plane/camera';
import { markedBlock } from '../trace/marks/marked-block';

const drafted = draft(exampleProject);
if (!drafted.ok) throw new Error('refused');
/** The blocks that are photographed. */
export const { blocks } = drafted.value;

/** The rectangle of the four marks, millimetres; both blocks lie within it. */
const CARDS = { across: 1050, along: 1150 } as const;
const CORNERS = [point(0, 0), point(CARDS.across, 0), point(CARDS.across, CARDS.along), point(0, CARDS.along)];

/** The picture is half as large as the camera's, so that a test is quick. */
const HALF = 0.5;
export const SIZE = { width: 2000, height: 1500 } as const;

const onFloor = {
  back: (p: Point) => add(p, point(470, 60)),
  front: (p: Point) => add(p, point(580, 60)),
};

/** A camera over the floor on a picture of {@link SIZE}. */
const halfOf =
  (large: Camera): Camera =>
  (p) => {
    const { x, y } = large(p);
    return point(x * HALF, y * HALF);
  };

/** A camera 20° off the plumb line, held upright over blocks that lie across its picture. */
const camera = halfOf(cameraOver(CORNERS, point(525, 575), { tilt: 20, azimuth: 30, roll: -60 }));

/** Mark sheets beside both blocks: where the first mark of each lies, and how it is turned, radians. */
const LAID = [
  { sheet: 1, at: point(-165, 40), turn: 0.04 },
  { sheet: 2, at: point(955, 50), turn: -0.05 },
  { sheet: 3, at: point(1135, 1030), turn: Math.PI },
  { sheet: 4, at: point(-165, 790), turn: 0.02 },
] as const;
const SCENE = [point(-200, 0), point(1170, 0), point(1170, 1060), point(-200, 1060)];
/** A camera over blocks and sheets. */
export const sheetCamera = halfOf(cameraOver(SCENE, point(485, 530), { tilt: 20, azimuth: 30, roll: 34 }));

/** A place of a sheet on the floor. */
const ofSheet = ({ at, turn }: (typeof LAID)[number], p: Point): Point => add(at, turned(p, point(0, 0), turn));
const box = (x: number, y: number, width: number, height: number): readonly Point[] => [
  point(x, y),
  point(x + width, y),
  point(x + width, y + height),
  point(x, y + height),
];
const BORDER = 18;
const sheetsOnFloor = LAID.map((laid) => ({
  paper: box(-BORDER, -BORDER, MARK_SHEET.width + 2 * BORDER, MARK_SHEET.height + 2 * BORDER).map((p) =>
    ofSheet(laid, p),
  ),
  marks: marksOfSheet(laid.sheet).map(({ number, corners }) => {
    const cell = MARK_SHEET.side / CELLS;
    const { x, y } = corners[0];
    const white = cellsOfMark(number).flatMap((one, i) => {
      const [column, row] = [1 + (i % (CELLS - 2)), 1 + Math.floor(i / (CELLS - 2))];
      return one ? [box(x + column * cell, y + row * cell, cell, cell).map((p) => ofSheet(laid, p))] : [];
    });
    return { black: corners.map((p) => ofSheet(laid, p)), white };
  }),
}));
/** Where the corners of the printed marks are on that picture, as a finder should find them. */
export const marksSeen: readonly FoundMark[] = LAID.flatMap((laid) =>
  marksOfSheet(laid.sheet).map(({ number, corners }) => ({
    number,
    corners: mapTuple(corners, (p) => sheetCamera(ofSheet(laid, p))),
  })),
);

/** The marks of a block on the floor, millimetres. */
export const marksOnFloor = (part: 'front' | 'back'): BlockMarks =>
  marksMapped(markedBlock(blocks[part]), onFloor[part]);

/** The photograph as a PNG: a dark floor, two white blocks with their lines, and round them four marks, or four mark sheets. */
export async function photograph(page: Page, round: 'marks' | 'sheets'): Promise<Buffer> {
  const by = round === 'marks' ? camera : sheetCamera;
  const run = (points: readonly Point[]) => points.map((p) => by(p)).map(({ x, y }) => [x, y]);
  const papers = (['front', 'back'] as const).map((part) =>
    run(flattenCurves(outlineCurves(blocks[part].edges)).map(onFloor[part])),
  );
  const lines = (['front', 'back'] as const).flatMap((part) => [
    run(blocks[part].grainline.map(onFloor[part])),
    run(hipLine(blocks[part]).map(onFloor[part])),
  ]);
  const cards = round === 'marks' ? CORNERS : [];
  const sheets = round === 'sheets' ? sheetsOnFloor : [];
  const printed = [
    ...sheets.map(({ paper }) => [run(paper), '#f7f5ef'] as const),
    ...sheets.flatMap(({ marks }) => marks.map(({ black }) => [run(black), '#1f2a33'] as const)),
    ...sheets.flatMap(({ marks }) => marks.flatMap(({ white }) => white.map((one) => [run(one), '#f7f5ef'] as const))),
    ...cards.map((corner) => [run(roundOf(corner)), '#ffffff'] as const),
    ...cards.flatMap((corner) => [0, 2].map((turn) => [run(quarter(corner, turn)), '#111111'] as const)),
  ];
  const base64 = await page.evaluate(
    ({ papers, lines, printed, size }) => {
      const canvas = document.createElement('canvas');
      canvas.width = size.width;
      canvas.height = size.height;
      const pen = canvas.getContext('2d');
      if (!pen) throw new Error('no canvas');
      const trace = (points: number[][]) => {
        pen.beginPath();
        for (const [x, y] of points) pen.lineTo(x as number, y as number);
      };
      pen.fillStyle = '#7b6a58';
      pen.fillRect(0, 0, size.width, size.height);
      for (const [points, colour] of [...papers.map((p) => [p, '#f7f5ef'] as const), ...printed]) {
        trace(points);
        pen.fillStyle = colour;
        pen.fill();
      }
      pen.strokeStyle = '#333333';
      pen.lineWidth = 1.5;
      for (const points of lines) {
        trace(points);
        pen.stroke();
      }
      return canvas.toDataURL('image/png').split(',')[1] ?? '';
    },
    { papers, lines, printed, size: SIZE },
  );
  return Buffer.from(base64, 'base64');
}

function hipLine({ edges, hipLevel }: Block): readonly Point[] {
  const xs = flattenCurves(outlineCurves(edges))
    .filter((p) => Math.abs(p.y - hipLevel) < 3)
    .map((p) => p.x);
  return [point(Math.min(...xs), hipLevel), point(Math.max(...xs), hipLevel)];
}

const RADIUS = 18;
const onCircle = (corner: Point, turns: number): Point =>
  add(corner, point(RADIUS * Math.cos(turns * 2 * Math.PI), RADIUS * Math.sin(turns * 2 * Math.PI)));
const roundOf = (corner: Point) => Array.from({ length: 40 }, (_, i) => onCircle(corner, i / 40));
const quarter = (corner: Point, turn: number) => [
  corner,
  ...Array.from({ length: 11 }, (_, i) => onCircle(corner, (turn + i / 10) / 4)),
];
