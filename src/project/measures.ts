import type { Blocks } from '../block';
import type { Body } from '../body';
import { riseEaseOf } from '../check';
import type { CasingHeights, FinishedLeg, Notions } from '../edges';
import { type Leg, legCrotchLength } from '../leg';
import type { Mm } from '../length';
import { distance, edgeLength, outlineEdge, pathEnd, pathStart } from '../plane';
import type { Measures } from './draft-types';

/** What the finished measures are taken from. */
interface Finished {
  readonly body: Body;
  readonly notions: Notions;
  readonly blocks: Blocks;
  readonly leg: Leg;
  readonly finished: FinishedLeg;
  readonly heights: CasingHeights;
  readonly opening: Mm;
  readonly needed: Mm;
}

/** The finished measures, all taken from the printed lines. */
export function measuresOf({ body, blocks, leg, finished, notions, heights, opening, needed }: Finished): Measures {
  const outline = finished.sewn.stitchLine;
  const hip = finished.sewn.lines.find((line) => line.name === 'hip');
  const crotchLength = legCrotchLength(leg.front, leg.back);
  const wanted = blocks.crotchWanted;
  const [back, front] = [pathStart(leg.waistEdge), pathEnd(leg.waistEdge)];
  const sideLevel = back.y + ((0 - back.x) / (front.x - back.x)) * (front.y - back.y);
  return {
    hipGirthFinished: 2 * (hip ? edgeLength(hip) : leg.front.hipPoint.x - leg.back.hipPoint.x),
    waistOpening: opening,
    pullOnNeeded: needed,
    hemGirthFinished: distance(pathStart(leg.hem), pathEnd(leg.hem)),
    inseamFront: edgeLength(outlineEdge(outline, 'inseamFront')),
    inseamBack: edgeLength(outlineEdge(outline, 'inseamBack')),
    crotchLengthFinished: crotchLength,
    crotchDepthFinished: leg.crotchLevel - sideLevel,
    riseEase: riseEaseOf({ body, finished }),
    thighGirthFinished: leg.front.crotchPoint.x - leg.back.crotchPoint.x,
    gapAtWaist: leg.gapAtWaist,
    gapAtKnee: leg.gapAtKnee,
    gapAtHem: leg.gapAtHem,
    spread: leg.spread,
    straighten: leg.straighten,
    leanFront: leg.front.lean,
    leanBack: leg.back.lean,
    casingHeight: heights.height,
    catch: heights.catch,
    elasticLength: notions.elasticLength ?? 0,
    crotchFit: wanted === undefined ? 0 : crotchLength - wanted,
    backCrotchDrop: leg.backCrotchDrop,
  };
}
