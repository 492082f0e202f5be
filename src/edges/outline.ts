import type { Leg } from '../leg';
import type { Mm } from '../length';
import { type Edge, type Outline, parallelOutline, pathReverse, pathThrough } from '../plane';
import { type CasingHeights, type CasingLines, casingCurves } from './casing';
import type { EdgeName } from './edge-names';
import type { HemTurning } from './hem';
import type { CutEdge } from './piece';

/**
 * The leg's stitching line, closed and clockwise from the waist at centre back. Turnings are edges of their own and
 * stand only where something is turned.
 */
export function legOutline(
  leg: Leg,
  casing: CasingLines,
  waist: CasingHeights['kind'],
  hem: HemTurning,
): Outline<EdgeName> {
  const [rawBack, rawFront] = casing.raw;
  const [topBack, topFront] = casing.fold;
  const folded = waist === 'folded';
  const turned = hem.front.length > 0;
  const edges: (Edge<EdgeName> | undefined)[] = [
    { name: 'waist', curves: casingCurves(casing, casing.raw) },
    folded ? { name: 'centreFrontTurning', curves: pathThrough(rawFront, topFront) } : undefined,
    { name: 'centreFront', curves: pathThrough(topFront, leg.front.curveEnd) },
    { name: 'crotchFront', curves: leg.front.crotch },
    { name: 'inseamFront', curves: leg.front.inseam },
    turned ? { name: 'inseamFrontTurning', curves: hem.front } : undefined,
    { name: 'hem', curves: pathThrough(...hem.raw) },
    turned ? { name: 'inseamBackTurning', curves: pathReverse(hem.back) } : undefined,
    { name: 'inseamBack', curves: pathReverse(leg.back.inseam) },
    { name: 'crotchBack', curves: pathReverse(leg.back.crotch) },
    { name: 'centreBack', curves: pathThrough(leg.back.curveEnd, topBack) },
    folded ? { name: 'centreBackTurning', curves: pathThrough(topBack, rawBack) } : undefined,
  ];
  return edges.filter((edge) => edge !== undefined);
}

/** What a cut line promises to be true to: an allowance below it can't be drawn, and is none. */
const LEAST_DRAWN: Mm = 0.05;

/** An allowance as wide as it is drawn. */
export const drawnAllowance = (allowance: Mm): Mm => (allowance < LEAST_DRAWN ? 0 : allowance);

/** A cut line: the parallel of a stitching line, each edge at its own allowance. */
export function cutLineOf<Name extends EdgeName>(
  stitchLine: Outline<Name>,
  allowance: (edge: Name) => Mm,
): readonly CutEdge[] {
  return parallelOutline(stitchLine, (name) => drawnAllowance(allowance(name))).map((edge) => ({
    ...edge,
    allowance: allowance(edge.name),
  }));
}
