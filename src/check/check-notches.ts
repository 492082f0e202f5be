import type { EdgeName, Notch } from '../edges';
import type { Mm } from '../length';
import { flattenCurves, TOLERANCE as PLANE, type Point, pathReverse } from '../plane';
import { mm, say, UNSAID } from '../words';
import type { Check, Subject } from './check';
import { alongPath, seamCurves } from './measuring';

/** As for the seams themselves. */
const TOLERANCE = 1;
/** Sampled finer than the seams are compared. */
const FINE = PLANE.chord / 4;

/** Notches that are sewn to each other lie equally far from the crotch point, on the seam itself. */
export function checkNotches({ finished: { piece } }: Subject): Check {
  const front = flattenCurves(seamCurves(piece, 'inseamFront'), FINE);
  const back = flattenCurves(pathReverse(seamCurves(piece, 'inseamBack')), FINE);
  const arcs = (edge: EdgeName, line: readonly Point[]) =>
    piece.notches.filter((notch) => notch.edge === edge).map((notch) => placeOf(notch, line));
  const [fronts, backs] = [sorted(arcs('inseamFront', front)), sorted(arcs('inseamBack', back))];
  const paired = fronts.length === backs.length;
  const off = fronts.map((one, i) =>
    Math.max(Math.abs(one.arc - (backs[i]?.arc ?? one.arc)), one.beside, backs[i]?.beside ?? 0),
  );
  const worst = Math.max(0, ...off);
  const good = paired && worst <= TOLERANCE;
  return {
    id: 'notches-meet',
    name: say`Notches meet`,
    verdict: good ? 'good' : 'wrong',
    measured: worst,
    wanted: 0,
    tolerance: TOLERANCE,
    unit: 'mm',
    reason: paired
      ? say`Sewn together, the notches of the inseams meet within ${mm(worst)}.`
      : say`One inseam has a notch that the other lacks.`,
    remedy: good ? UNSAID : say`Set the notches at equal lengths from the crotch point.`,
  };
}

const placeOf = (notch: Notch, line: readonly Point[]) => alongPath(line, notch.at);
const sorted = <T extends { readonly arc: Mm }>(places: readonly T[]): readonly T[] =>
  places.toSorted((a, b) => a.arc - b.arc);
