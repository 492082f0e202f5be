import { cutCurves, legPieces, type Piece } from '../edges';
import type { Mm } from '../length';
import { type Curve, curvesBounds } from '../plane';
import { mm, say, UNSAID } from '../words';
import type { Check, Subject } from './check';
import { fixSpreadDownTo, withFix } from './fixes';

/** The selvedge and the holes beside it are not cut into: this much stays on each side. @source practice */
export const SELVEDGE: Mm = 10;

/**
 * One leg, its grain along the selvedge, is no wider than the cloth in a single layer. Cloth that is washed first is
 * counted as it comes out of the wash; else the leg itself is drawn larger.
 */
export function checkClothWidth({ cloth, leg, choices: { shape }, finished }: Subject): Check {
  const width = Math.max(...legPieces(finished).map((piece) => widthOf(cutCurves(piece))));
  const room = (cloth.washFirst ? cloth.width * (1 - cloth.shrinkWidth) : cloth.width) - 2 * SELVEDGE;
  const over = width - room;
  const good = over <= 0;
  // A hem that was chosen wider than the cloth, allowances and all, stays wide, whatever the spread.
  const hemFits = typeof shape === 'string' || widthOf(hemCurves(finished.piece)) <= room;
  return {
    id: 'leg-fits-cloth',
    name: say`Leg fits the cloth`,
    verdict: good ? 'good' : 'wrong',
    measured: width,
    wanted: room,
    tolerance: 0,
    unit: 'mm',
    reason:
      cloth.washFirst && cloth.shrinkWidth > 0
        ? say`One leg is cut ${mm(width)} wide; the cloth has ${mm(room)} after its first wash, without the selvedges.`
        : say`One leg is cut ${mm(width)} wide; the cloth has ${mm(room)}, without the selvedges.`,
    remedy: good ? UNSAID : say`Use a wider cloth, or spread ${mm(over)} less.`,
    ...withFix(good || !hemFits ? undefined : fixSpreadDownTo(leg.spread - over, leg.spread)),
  };
}

function widthOf(curves: readonly Curve[]): Mm {
  const { left, right } = curvesBounds(curves);
  return right - left;
}

const hemCurves = (piece: Piece): readonly Curve[] =>
  piece.cutLine.filter((edge) => edge.name === 'hem').flatMap((edge) => edge.curves);
