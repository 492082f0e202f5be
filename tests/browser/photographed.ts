import type { Page } from 'playwright-core';
import type { Block } from '../../src/block';
import { add, flattenCurves, outlineCurves, type Point, point } from '../../src/plane';
import { draft, exampleProject } from '../../src/project';
import type { BlockMarks } from '../../src/trace';
import { marksMapped } from '../../src/trace';
import { type Camera, cameraOver } from '../plane/camera';
import { markedBlock } from '../trace/marks/marked-block';

const drafted = draft(exampleProject);
if (!drafted.ok) throw new Error('refused');
/** The blocks that are photographed. */
export const { blocks } = drafted.value;

/** The rectangle of the four marks, millimetres; both blocks lie within it. */
export const CARDS = { across: 1050, along: 1150 } as const;
const CORNERS = [point(0, 0), point(CARDS.across, 0), point(CARDS.across, CARDS.along), point(0, CARDS.along)];

/** The picture is half as large as the camera's, so that a test is quick. */
const HALF = 0.5;
export const SIZE = { width: 2000, height: 1500 } as const;

const onFloor = {
  back: (p: Point) => add(p, point(470, 60)),
  front: (p: Point) => add(p, point(580, 60)),
};

/** A camera 20° off the plumb line, held upright over blocks that lie across its picture. */
const large: Camera = cameraOver(CORNERS, point(525, 575), { tilt: 20, azimuth: 30, roll: -60 });
const camera: Camera = (p) => {
  const { x, y } = large(p);
  return point(x * HALF, y * HALF);
};

/** Where the marks of the rectangle are on the picture, pixels, and the marks of a block on the floor, millimetres. */
export const cornersSeen: readonly Point[] = CORNERS.map(camera);
export const marksOnFloor = (part: 'front' | 'back'): BlockMarks =>
  marksMapped(markedBlock(blocks[part]), onFloor[part]);

/** The photograph as a PNG: a dark floor, two white blocks with their lines, four marks. */
export async function photograph(page: Page): Promise<Buffer> {
  const run = (points: readonly Point[]) => points.map((p) => camera(p)).map(({ x, y }) => [x, y]);
  const papers = (['front', 'back'] as const).map((part) =>
    run(flattenCurves(outlineCurves(blocks[part].edges)).map(onFloor[part])),
  );
  const lines = (['front', 'back'] as const).flatMap((part) => [
    run(blocks[part].grainline.map(onFloor[part])),
    run(hipLine(blocks[part]).map(onFloor[part])),
  ]);
  const quarters = CORNERS.flatMap((corner) => [0, 2].map((turn) => run(quarter(corner, turn))));
  const rounds = CORNERS.map((corner) => run(round(corner)));
  const base64 = await page.evaluate(
    ({ papers, lines, quarters, rounds, size }) => {
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
      for (const [points, colour] of [
        ...papers.map((p) => [p, '#f7f5ef'] as const),
        ...rounds.map((p) => [p, '#ffffff'] as const),
        ...quarters.map((p) => [p, '#111111'] as const),
      ]) {
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
    { papers, lines, quarters, rounds, size: SIZE },
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
const round = (corner: Point) => Array.from({ length: 40 }, (_, i) => onCircle(corner, i / 40));
const quarter = (corner: Point, turn: number) => [
  corner,
  ...Array.from({ length: 11 }, (_, i) => onCircle(corner, (turn + i / 10) / 4)),
];
