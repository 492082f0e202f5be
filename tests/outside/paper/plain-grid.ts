import type { ReportPiece } from '../../../src/files/report/report';

type Pair = readonly [number, number];

/** The sheet a plain grid is laid with, millimetres of drawing: what it shows, and how far two lie on each other. */
export interface PlainSheet {
  readonly width: number;
  readonly height: number;
  readonly overlap: number;
}

/** Half the cut line: a sheet that ends in the middle of a line doesn't show it. */
const HALF_LINE = 0.25;

/**
 * How many sheets anybody would print who lays a grid over one piece: the better of upright and across, the corner of the
 * piece's box at the corner of the grid, sheets without any line left out. A line that reaches into an overlap asks for
 * no further sheet.
 */
function plainGridCount(lines: readonly (readonly Pair[])[], { width, height, overlap }: PlainSheet): number {
  const points = lines.flatMap(everyMillimetre);
  const left = least(points.map(([x]) => x)) - HALF_LINE;
  const top = least(points.map(([, y]) => y)) - HALF_LINE;
  const sides = [
    [width, height],
    [height, width],
  ] as const;
  const counts = sides.map(([w, h]) => {
    const sheets = (places: readonly number[], pitch: number) => {
      const length = -least(places.map((place) => -place)) + HALF_LINE;
      const last = Math.max(1, Math.ceil((length - overlap) / pitch)) - 1;
      return places.map((place) => Math.min(last, Math.floor(place / pitch)));
    };
    const columns = sheets(
      points.map(([x]) => x - left),
      w - overlap,
    );
    const rows = sheets(
      points.map(([, y]) => y - top),
      h - overlap,
    );
    return new Set(columns.map((column, i) => `${column}/${rows[i]}`)).size;
  });
  return least(counts);
}

const least = (values: readonly number[]): number => values.reduce((a, b) => Math.min(a, b));

function everyMillimetre(line: readonly Pair[]): readonly Pair[] {
  return line.flatMap(([x, y], i): readonly Pair[] => {
    const next = line[i + 1];
    if (!next) return [[x, y]];
    const count = Math.max(1, Math.ceil(Math.hypot(next[0] - x, next[1] - y)));
    return Array.from(
      { length: count },
      (_, k) => [x + ((next[0] - x) * k) / count, y + ((next[1] - y) * k) / count] as const,
    );
  });
}

/** Every line that is drawn of a piece, as the report has it. */
const drawnLines = ({ cutLine, stitchLine, lines, folds, grainline }: ReportPiece) => [
  ...[...cutLine, ...stitchLine, ...lines, ...folds].map(({ points }) => points),
  grainline,
];

/** What plain grids of their own ask for, all pieces of a report together. */
export const plainCount = (pieces: readonly ReportPiece[], sheet: PlainSheet): number =>
  pieces.reduce((sum, piece) => sum + plainGridCount(drawnLines(piece), sheet), 0);
