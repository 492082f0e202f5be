import { cutCurves } from '../edges';
import { mm, say } from '../length';
import { curveBounds } from '../plane';
import type { Check, Subject } from './check';
import { fixSpreadDownTo, withFix } from './fixes';

/**
 * One leg, its grain along the selvedge, is no wider than the cloth in a single layer. Cloth that is washed first is
 * counted as it comes out of the wash; else the leg itself is drawn larger.
 */
export function checkClothWidth({ cloth, leg, choices: { shape }, finished }: Subject): Check {
  const bounds = cutCurves(finished.piece).map(curveBounds);
  const width = Math.max(...bounds.map((b) => b.right)) - Math.min(...bounds.map((b) => b.left));
  const room = cloth.washFirst ? cloth.width * (1 - cloth.shrinkWidth) : cloth.width;
  const over = width - room;
  const good = over <= 0;
  // A hem that was chosen wider than the cloth stays wide, whatever the spread.
  const hemFits = typeof shape === 'string' || shape.hemGirth < room;
  return {
    id: 'leg-fits-cloth',
    name: 'Leg fits the cloth',
    verdict: good ? 'good' : 'wrong',
    measured: width,
    wanted: room,
    tolerance: 0,
    unit: 'mm',
    reason: say`One leg is cut ${mm(width)} wide; the cloth has ${mm(room)}${cloth.washFirst && cloth.shrinkWidth > 0 ? ' after its first wash' : ''}.`,
    remedy: good ? [] : say`Take a wider cloth, or spread ${mm(over)} less.`,
    ...withFix(good || !hemFits ? undefined : fixSpreadDownTo(leg.spread - over, leg.spread)),
  };
}
