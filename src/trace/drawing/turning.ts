import type { Mm } from '../../length';
import { cross, curveIsStraight, curveLength, curveTangent, dot, type Point } from '../../plane';
import type { WayRound } from './way-round';

/** How far an outline has turned on its way round: so much clockwise and so much back, up to each place. Radians. */
export interface Turning {
  readonly places: readonly Mm[];
  readonly onward: readonly number[];
  readonly back: readonly number[];
}

/** A curve that isn’t straight is looked at so often. @source tolerance */
const LOOKS = 24;

/** The turning of an outline that runs clockwise: outer corners turn onward, hollow curves back. */
export function turningOf({ curves, ends }: WayRound): Turning {
  const [places, onward, back]: [Mm[], number[], number[]] = [[], [], []];
  let [forth, to, last]: [number, number, Point | undefined] = [0, 0, undefined];
  const note = (at: Mm, way: Point) => {
    const turn = last ? Math.atan2(cross(last, way), dot(last, way)) : 0;
    if (turn > 0) forth += turn;
    else to -= turn;
    last = way;
    places.push(at);
    onward.push(forth);
    back.push(to);
  };
  const closing = curves.at(-1);
  if (closing) last = curveTangent(closing, 1);
  curves.forEach((curve, i) => {
    const before = i === 0 ? 0 : (ends[i - 1] as Mm);
    const looks = curveIsStraight(curve) ? 1 : LOOKS;
    for (let k = 0; k <= looks; k += 1)
      note(k === looks ? (ends[i] as Mm) : before + curveLength(curve, k / looks), curveTangent(curve, k / looks));
  });
  return { places, onward, back };
}

/** What was turned up to a place, what happens there included; lengths beyond the whole go on. */
function upTo({ places }: Turning, sums: readonly number[], whole: Mm, at: Mm): number {
  const rounds = Math.floor(at / whole);
  const place = at - rounds * whole;
  let [low, high] = [0, places.length];
  while (low < high) {
    const half = (low + high) >> 1;
    if ((places[half] as number) <= place) low = half + 1;
    else high = half;
  }
  return rounds * (sums.at(-1) ?? 0) + (low === 0 ? 0 : (sums[low - 1] as number));
}

/** How much an outline turns onward and back from one place to a later one, radians. */
export function turnedBetween(turning: Turning, whole: Mm, from: Mm, to: Mm) {
  const of = (sums: readonly number[]) => upTo(turning, sums, whole, to) - upTo(turning, sums, whole, from);
  return { onward: of(turning.onward), back: of(turning.back) };
}
