import type { Body } from '../body';
import { type FinishedLeg, isWorn, type Notions } from '../edges';
import { curvesBounds, outlineCurves } from '../plane';
import { type Caution, cautions } from '../sewing';
import type { Project } from './types';

/** The cautions that a project raises: its choices and its finished leg, as the sewing room asks for them. */
export function cautionsOf(
  project: Project,
  body: Body,
  legs: readonly { readonly finished: FinishedLeg }[],
  notions: Notions,
  opening: number,
): readonly Caution[] {
  const { elasticLength, cordLength, hemElasticLength, hemCordLength } = notions;
  return cautions(
    {
      body: { ...body, ageYears: project.body.ageYears },
      forSleeping: project.use.forSleeping,
      cordEnds: cordLength === undefined ? undefined : (cordLength - opening) / 2,
      hemCords: hemCordLength !== undefined,
      elastic: elasticLength !== undefined,
      hemElastic: hemElasticLength !== undefined,
    },
    { largestExtent: Math.max(...legs.map(({ finished }) => extentOf(finished))), waistOpening: opening },
  );
}

/** The longest side of the leg as it is worn: turnings folded in. */
function extentOf({ sewn }: FinishedLeg): number {
  const worn = sewn.stitchLine.filter(({ name }) => isWorn(name));
  const { left, right, top, bottom } = curvesBounds(outlineCurves(worn));
  return Math.max(right - left, bottom - top);
}
