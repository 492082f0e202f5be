import { type Curve, cross, curveIsStraight, curvesAlong, curveTangent, distance, dot, type Point } from '../../plane';

/** So many short straight lines in a row, at least, are a curve that was cut into them. @source practice */
const LEAST_ROW = 4;
/** From one line to the next a cut curve turns by less than this, radians; more is a corner. @source practice */
const LARGEST_TURN = 0.21;
/** From one line to the next of a cut curve their lengths differ by no more than this. @source practice */
const UNLIKE = 6;

/**
 * A run with as few curves as draw it: rows of short straight lines that turn a little from one to the next come back as
 * the smooth curve that was cut into them. Corners stay where they are.
 *
 * @param curves that follow one another
 * @param within how near to their ends the new curves lie
 * @param closed whether the last one leads to the first
 */
export function fewerCurves(curves: readonly Curve[], within: number, closed = false): readonly Curve[] {
  const from = closed ? firstBreak(curves) : 0;
  const all = from > 0 ? [...curves.slice(from), ...curves.slice(0, from)] : curves;
  const fewer: Curve[] = [];
  let row: Curve[] = [];
  const endRow = () => {
    const points = [row[0]?.[0], ...row.map((curve) => curve[3])] as Point[];
    const straightOn =
      row.length > 1 && row.every((curve, i) => i === 0 || turn(row[i - 1] as Curve, curve) < SAME_WAY);
    fewer.push(...(row.length >= LEAST_ROW || straightOn ? curvesAlong(points, within) : row));
    row = [];
  };
  for (const curve of all) {
    const last = row.at(-1);
    if (last && (breaks(last, curve) || straightEnds(row, curve))) endRow();
    if (curveIsStraight(curve)) row.push(curve);
    else fewer.push(curve);
  }
  if (row.length > 0) endRow();
  return fewer;
}

/** Lines that turn by less, radians, are one. @source tolerance */
const SAME_WAY = 1e-4;

const turn = (a: Curve, b: Curve): number => {
  const [from, to] = [curveTangent(a, 1), curveTangent(b, 0)];
  return Math.abs(Math.atan2(cross(from, to), dot(from, to)));
};

function breaks(a: Curve, b: Curve): boolean {
  if (!curveIsStraight(a) || !curveIsStraight(b) || turn(a, b) > LARGEST_TURN) return true;
  const [one, other] = [distance(a[0], a[3]), distance(b[0], b[3])];
  // A long straight line that runs on into a curve is none of its pieces.
  return turn(a, b) > SAME_WAY && Math.max(one, other) > UNLIKE * Math.min(one, other);
}

/** Whether a row that was straight so far begins to turn: there the straight line ends, and a curve begins. */
function straightEnds(row: readonly Curve[], next: Curve): boolean {
  const last = row.slice(-LEAST_ROW);
  return (
    last.length === LEAST_ROW &&
    turn(last.at(-1) as Curve, next) > SAME_WAY &&
    last.every((curve, i) => i === 0 || turn(last[i - 1] as Curve, curve) <= SAME_WAY)
  );
}

/** Where a closed run can be opened without cutting a curve. */
function firstBreak(curves: readonly Curve[]): number {
  const found = curves.findIndex((curve, i) => breaks(curves.at(i - 1) as Curve, curve));
  return Math.max(0, found);
}
