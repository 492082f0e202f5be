import { CELLS, cellsOfMark, type GreyPicture, MARK_SHEET, marksOfSheet } from '../../../src/trace';

/** A place: of the floor in millimetres, or of the picture in pixels. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

/** A sheet of marks on the floor: where its first mark's corner lies, and by how much it is turned, radians. */
export interface LaidSheet extends Place {
  readonly sheet: number;
  readonly turn: number;
}

/** A drawn line on the floor, so wide, and so dark, 0 to 1. */
export interface DrawnLine {
  readonly points: readonly Place[];
  readonly width: number;
  readonly ink: number;
}

/** Everything that lies on the floor, and how it is photographed. */
export interface Scene {
  readonly width: number;
  readonly height: number;
  readonly sheets: readonly LaidSheet[];
  readonly lines: readonly DrawnLine[];
  /** From the picture to the floor, its own way. */
  readonly toFloor: (p: Place) => Place;
  readonly blur: number;
  readonly noise: number;
  /** How much darker one side of the picture is than the other, 0 to 1. */
  readonly shade: number;
  readonly quality?: number;
}

/** Grey of floor, paper, and print. */
const [FLOOR, PAPER, PRINT] = [150, 225, 35] as const;
const BORDER = 20;

/** The picture that is taken of a scene; nothing of the finder's own arithmetic is used. */
export function photographed(scene: Scene, random: () => number): GreyPicture {
  const { width, height } = scene;
  const seen = new Float32Array(width * height);
  const lines = scene.lines.flatMap(inPieces).map((line) => ({ ...line, box: boxOf(line) }));
  const sheets = scene.sheets.map((sheet) => ({ ...sheet, cos: Math.cos(sheet.turn), sin: Math.sin(sheet.turn) }));
  const shaking = Float32Array.from(
    { length: 1 << 16 },
    () => scene.noise * (random() + random() + random() + random() - 2) * Math.sqrt(3),
  );
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1) {
      const middle = scene.toFloor({ x: x + 0.5, y: y + 0.5 });
      let grey: number;
      if (isPlain(sheets, lines, middle)) grey = FLOOR;
      else {
        grey = 0;
        for (const [dx, dy] of [
          [0.25, 0.25],
          [0.75, 0.25],
          [0.25, 0.75],
          [0.75, 0.75],
        ] as const)
          grey += greyAt(sheets, lines, scene.toFloor({ x: x + dx, y: y + dy })) / 4;
      }
      seen[y * width + x] = grey * (1 - scene.shade * (x / width));
    }
  const soft = scene.blur > 0 ? blurred(seen, width, height, scene.blur) : seen;
  const data = new Uint8Array(width * height);
  for (let i = 0; i < data.length; i += 1) {
    // No run of it comes twice one below the other.
    const shaken = shaking[(i + 7919 * ((i / width) | 0)) & 0xffff] as number;
    data[i] = Math.max(0, Math.min(255, Math.round((soft[i] as number) + shaken)));
  }
  if (scene.quality !== undefined) pressed(data, width, height, scene.quality);
  return { width, height, data };
}

interface Boxed extends DrawnLine {
  readonly box: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };
}

/** A long line in short ones, whose boxes hold little else. */
const inPieces = (line: DrawnLine): readonly DrawnLine[] =>
  line.points.slice(1).flatMap((_, i) => (i % 8 === 0 ? [{ ...line, points: line.points.slice(i, i + 9) }] : []));

const boxOf = ({ points, width }: DrawnLine) => ({
  left: Math.min(...points.map(({ x }) => x)) - width,
  right: Math.max(...points.map(({ x }) => x)) + width,
  top: Math.min(...points.map(({ y }) => y)) - width,
  bottom: Math.max(...points.map(({ y }) => y)) + width,
});

interface Turned extends LaidSheet {
  readonly cos: number;
  readonly sin: number;
}

const onSheet = ({ x, y, cos, sin }: Turned, p: Place): Place => {
  const [dx, dy] = [p.x - x, p.y - y];
  return { x: dx * cos + dy * sin, y: -dx * sin + dy * cos };
};

const holds = ({ x, y }: Place, more: number) =>
  x > -more && y > -more && x < MARK_SHEET.width + more && y < MARK_SHEET.height + more;

/** Whether a place lies well off all sheets and lines. */
const isPlain = (sheets: readonly Turned[], lines: readonly Boxed[], p: Place): boolean =>
  !sheets.some((sheet) => holds(onSheet(sheet, p), BORDER + 3)) &&
  !lines.some(({ box }) => p.x > box.left - 3 && p.x < box.right + 3 && p.y > box.top - 3 && p.y < box.bottom + 3);

function greyAt(sheets: readonly Turned[], lines: readonly Boxed[], p: Place): number {
  for (const sheet of sheets) {
    const own = onSheet(sheet, p);
    if (!holds(own, BORDER)) continue;
    for (const { number, corners } of marksOfSheet(sheet.sheet)) {
      const cell = MARK_SHEET.side / CELLS;
      const [column, row] = [Math.floor((own.x - corners[0].x) / cell), Math.floor((own.y - corners[0].y) / cell)];
      if (column < 0 || row < 0 || column >= CELLS || row >= CELLS) continue;
      const framed = column === 0 || row === 0 || column === CELLS - 1 || row === CELLS - 1;
      return !framed && cellsOfMark(number)[(row - 1) * (CELLS - 2) + column - 1] ? PAPER : PRINT;
    }
    return PAPER;
  }
  for (const { points, width, ink, box } of lines) {
    if (p.x < box.left || p.x > box.right || p.y < box.top || p.y > box.bottom) continue;
    for (let i = 1; i < points.length; i += 1)
      if (offPiece(p, points[i - 1] as Place, points[i] as Place) < width / 2) return FLOOR * (1 - ink);
  }
  return FLOOR;
}

function offPiece(p: Place, a: Place, b: Place): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const t = Math.max(0, Math.min(1, ((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy)));
  return Math.hypot(p.x - a.x - t * dx, p.y - a.y - t * dy);
}

function blurred(data: Float32Array, width: number, height: number, sigma: number): Float32Array {
  const reach = Math.ceil(3 * sigma);
  const weights = Array.from({ length: 2 * reach + 1 }, (_, i) => Math.exp(-((i - reach) ** 2) / (2 * sigma * sigma)));
  const whole = weights.reduce((a, b) => a + b, 0);
  const along = (from: Float32Array, step: number, length: number, count: number, next: number) => {
    const to = new Float32Array(from.length);
    for (let line = 0; line < count; line += 1)
      for (let i = 0; i < length; i += 1) {
        let sum = 0;
        for (let k = -reach; k <= reach; k += 1) {
          const at = Math.max(0, Math.min(length - 1, i + k));
          sum += (weights[k + reach] as number) * (from[line * next + at * step] as number);
        }
        to[line * next + i * step] = sum / whole;
      }
    return to;
  };
  return along(along(data, 1, width, height, width), width, height, width, 1);
}

/** @source ITU-T T.81, 1992, table K.1: how coarsely each wave of a square of 8 by 8 is kept, from memory */
const COARSE = [
  16, 11, 10, 16, 24, 40, 51, 61, 12, 12, 14, 19, 26, 58, 60, 55, 14, 13, 16, 24, 40, 57, 69, 56, 14, 17, 22, 29, 51,
  87, 80, 62, 18, 22, 37, 56, 68, 109, 103, 77, 24, 35, 55, 64, 81, 104, 113, 92, 49, 64, 78, 87, 103, 121, 120, 101,
  72, 92, 95, 98, 112, 100, 103, 99,
];
const WAVES = Array.from({ length: 8 }, (_, u) =>
  Array.from({ length: 8 }, (_, x) => (u === 0 ? Math.SQRT1_2 : 1) * 0.5 * Math.cos(((2 * x + 1) * u * Math.PI) / 16)),
);

/** What keeping a picture as a JPEG of a quality leaves of it. */
function pressed(data: Uint8Array, width: number, height: number, quality: number): void {
  const share = quality < 50 ? 50 / quality : 2 - quality / 50;
  const steps = COARSE.map((step) => Math.max(1, Math.round(step * share)));
  const [block, half] = [new Float64Array(64), new Float64Array(64)];
  for (let top = 0; top + 8 <= height; top += 8)
    for (let left = 0; left + 8 <= width; left += 8) {
      let [least, most] = [255, 0];
      for (let i = 0; i < 64; i += 1) {
        const value = data[(top + (i >> 3)) * width + left + (i & 7)] as number;
        block[i] = value - 128;
        if (value < least) least = value;
        if (value > most) most = value;
      }
      // What is even stays as it is, and most of a picture is.
      if (most - least < 6) continue;
      waved(block, half, false);
      waved(half, block, false);
      for (let i = 0; i < 64; i += 1)
        block[i] = Math.round((block[i] as number) / (steps[i] as number)) * (steps[i] as number);
      waved(block, half, true);
      waved(half, block, true);
      for (let i = 0; i < 64; i += 1)
        data[(top + (i >> 3)) * width + left + (i & 7)] = Math.max(
          0,
          Math.min(255, Math.round((block[i] as number) + 128)),
        );
    }
}

/** One direction of the waves, and the square laid over so that the next call takes the other. */
function waved(from: Float64Array, to: Float64Array, back: boolean): void {
  for (let row = 0; row < 8; row += 1)
    for (let u = 0; u < 8; u += 1) {
      let sum = 0;
      for (let x = 0; x < 8; x += 1)
        sum += (back ? (WAVES[x]?.[u] as number) : (WAVES[u]?.[x] as number)) * (from[row * 8 + x] as number);
      to[u * 8 + row] = sum;
    }
}
