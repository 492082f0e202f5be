import type { Mm } from '../length';
import {
  type Curve,
  curveMeetsLine,
  curvePart,
  curvePoint,
  curveSplit,
  distance,
  type Edge,
  type Outline,
  type Point,
  pathEnd,
  pathLength,
  pathReverse,
  pathStart,
  pathThrough,
} from '../plane';
import { mm, number, Refusal, say } from '../words';
import type { EdgeName } from './edge-names';
import { forkTipCutLine } from './fork-tip-cut-line';
import { grainlineInTip, textsOfTip } from './fork-tip-marks';
import type { PieceLine } from './line-names';
import { cutLineOf } from './outline';
import type { Notch, Piece } from './piece';
import type { Allowances } from './seams';

/** A leg whose back fork is cut off along the grain: what is left of it, and the tip that is sewn on again. */
export interface PiecedLeg {
  readonly leg: Piece;
  readonly tip: Piece;
}

/** A narrower one is no piece of cloth. */
const NARROWEST: Mm = 3;
/** One below this is hardly wider than its own allowances, and saves no cloth worth a seam. @source practice */
export const WORTH_PIECING: Mm = 15;
/** So much of the inseam and of the crotch curve stays with the leg: as far as notches stay apart. */
const STAYS: Mm = 25;
/** In what steps a tip that would do is looked for. */
const STEP: Mm = 5;
/** The notch of the new seam lies here, from the crotch down: off its middle, so that no tip is sewn on end for end. */
const NOTCH_AT = 0.4;

/**
 * Cuts the back fork's tip off along the grain; it is sewn on again before anything else. Both pieces together are the
 * leg, to the last curve: their outlines are its own, parted.
 *
 * @param piece the whole leg, its grain along y
 * @param inside how far inside the back crotch point the cut runs, as the leg is cut
 * @param allowances of the seams; the new one bears the inseam's
 * @throws RangeError where {@link refuseTip} would have refused it
 * @source practice
 */
export function legPieced(piece: Piece, inside: Mm, allowances: Allowances): PiecedLeg {
  const parted = partedAt(piece, inside);
  if (!parted) throw new RangeError('this leg has no such tip');
  const { inseam, crotch } = parted;
  const [lower, upper] = [pathEnd(inseam.before), pathStart(crotch.after)];
  const seam: Edge<EdgeName> = { name: 'piecing', curves: pathThrough(lower, upper) };
  const isTips = (p: Point): boolean => p.x < lower.x;
  const legLine = piece.stitchLine.flatMap((edge): Outline<EdgeName> => {
    if (edge.name === 'inseamBack') return [{ ...edge, curves: inseam.before }, seam];
    return [edge.name === 'crotchBack' ? { ...edge, curves: crotch.after } : edge];
  });
  const tipLine: Outline<EdgeName> = [
    { name: 'inseamBack', curves: inseam.after },
    { name: 'crotchBack', curves: crotch.before },
    { name: 'piecing', curves: pathReverse(seam.curves) },
  ];
  const drawn = new Map(piece.cutLine.map((edge) => [edge.name, edge.allowance]));
  const notch = (way: 1 | -1): readonly Notch[] =>
    allowances.inseam > 0
      ? [
          {
            edge: 'piecing',
            at: { x: lower.x, y: upper.y + NOTCH_AT * (lower.y - upper.y) },
            outward: { x: way, y: 0 },
            length: allowances.inseam,
            count: 1,
          },
        ]
      : [];
  const [left, right] = [linesBeside(piece, lower.x, isTips), linesBeside(piece, lower.x, (p) => !isTips(p))];
  return {
    leg: {
      ...piece,
      stitchLine: legLine,
      cutLine: cutLineOf(legLine, (name) => drawn.get(name) ?? allowances.inseam),
      lines: right,
      notches: [...piece.notches.filter(({ at }) => !isTips(at)), ...notch(-1)],
    },
    tip: {
      kind: 'forkTip',
      side: piece.side,
      cut: piece.cut,
      mirrored: piece.mirrored,
      stitchLine: tipLine,
      cutLine: forkTipCutLine({ inseam: inseam.after, crotch: crotch.before }, allowances),
      lines: left,
      folds: [],
      notches: [...piece.notches.filter(({ at }) => isTips(at)), ...notch(1)],
      grainline: grainlineInTip(tipLine, lower.x, inside),
      texts: textsOfTip(tipLine, lower.x, inside),
    },
  };
}

/** A path on both sides of where it was parted. */
interface Parted {
  readonly before: readonly Curve[];
  readonly after: readonly Curve[];
}

/** The back inseam and the back crotch curve, parted by the line along the grain; undefined where it isn't one cut through both. */
function partedAt({ stitchLine }: Piece, inside: Mm): { readonly inseam: Parted; readonly crotch: Parted } | undefined {
  const path = (name: EdgeName) => stitchLine.find((edge) => edge.name === name)?.curves ?? [];
  const [inseamBack, crotchBack] = [path('inseamBack'), path('crotchBack')];
  if (inseamBack.length === 0 || crotchBack.length === 0) return undefined;
  const x = pathEnd(inseamBack).x + inside;
  const others = stitchLine.filter(({ name }) => name !== 'inseamBack' && name !== 'crotchBack');
  if (others.some(({ curves }) => meetings(curves, x).length > 0)) return undefined;
  const [inseam, crotch] = [parted(inseamBack, x), parted(crotchBack, x)];
  if (!inseam || !crotch || pathLength(inseam.before) < STAYS || pathLength(crotch.after) < STAYS) return undefined;
  return { inseam, crotch };
}

/** @returns undefined where the upright through x isn't met exactly once */
function parted(path: readonly Curve[], x: Mm): Parted | undefined {
  const [meeting, second] = meetings(path, x);
  if (!meeting || second) return undefined;
  const [before, after] = curveSplit(path[meeting.index] as Curve, meeting.t);
  const isDrawn = ([a, , , d]: Curve): boolean => distance(a, d) > SAME;
  return {
    before: [...path.slice(0, meeting.index), before].filter(isDrawn),
    after: [after, ...path.slice(meeting.index + 1)].filter(isDrawn),
  };
}

/** Where two curves join, both meet the line at what is one place. */
const SAME: Mm = 1e-6;

function meetings(path: readonly Curve[], x: Mm): readonly { readonly index: number; readonly t: number }[] {
  const all = path.flatMap((curve, index) =>
    curveMeetsLine(curve, { x, y: 0 }, { x: 0, y: 1 }).map((t) => ({ index, t, at: curvePoint(curve, t) })),
  );
  return all.filter(({ at }, i) => i === 0 || distance(at, (all[i - 1] as { at: Point }).at) > SAME);
}

/**
 * Refuses a tip that some leg of a pair doesn't have, with the widest that all of them have.
 *
 * @param legs each leg, as it is worn and as it is cut, with what it grew by across
 * @param chosen how far inside the back crotch point the cut runs, as the leg is worn
 * @throws Refusal of the field `cloth.piecedTip`
 */
export function refuseTip(legs: readonly { readonly piece: Piece; readonly crosswise: number }[], chosen: Mm): void {
  const has = (tip: Mm): boolean =>
    tip >= NARROWEST && legs.every(({ piece, crosswise }) => partedAt(piece, tip * crosswise));
  if (has(chosen)) return;
  const below = Math.ceil(chosen / STEP) - 1;
  const most = Array.from({ length: Math.max(0, below) }, (_, i) => STEP * (below - i)).find(has);
  const advice =
    chosen < NARROWEST
      ? say`it must be ${number(0)} for none, or at least ${mm(NARROWEST)}.`
      : most === undefined
        ? say`this leg has no room for one: set it to ${number(0)}.`
        : say`here at most ${mm(most)} would do.`;
  const phrase = say`the tip is cut off by a line along the grain that must run from the back crotch curve to the inseam, above the hem; ${advice}`;
  throw new Refusal([{ field: 'cloth.piecedTip', value: chosen, phrase }]);
}

/** The lines of a piece, or what of them lies on one side of an upright. */
function linesBeside({ lines }: Piece, x: Mm, keeps: (p: Point) => boolean): readonly PieceLine[] {
  return lines.flatMap((line) => {
    const runs = line.curves.flatMap((curve) => {
      const times = [0, ...curveMeetsLine(curve, { x, y: 0 }, { x: 0, y: 1 }), 1];
      return times.slice(1).flatMap((to, i) => {
        const part = partBetween(curve, times[i] as number, to);
        return distance(part[0], part[3]) > SAME && keeps(curvePoint(part, 0.5)) ? [part] : [];
      });
    });
    return runs.length === 0 ? [] : [{ ...line, curves: runs }];
  });
}

const partBetween = (curve: Curve, from: number, to: number): Curve =>
  from === 0 && to === 1 ? curve : curvePart(curve, from, to);
