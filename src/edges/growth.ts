import type { Growth } from '../leg';
import type { CasingHeights } from './casing';
import type { HemPlan } from './hem';
import type { PocketChoices } from './pocket';

// What is cut of the leg's own cloth grows with it where that is not washed first, as is practice. What runs up and down the
// leg lies along the grain; a straight strip is cut with its length along the grain, so its height lies across.

/** A casing's heights, as they are cut. A knit band is of another cloth, and stays. */
export function heightsGrown(heights: CasingHeights, { lengthwise, crosswise }: Growth): CasingHeights {
  if (heights.kind === 'seamed')
    return heights.channels.length === 0 ? heights : { ...heights, height: heights.height * crosswise };
  return {
    ...heights,
    height: heights.height * lengthwise,
    fold: heights.fold * lengthwise,
    catch: heights.catch * lengthwise,
    channels: heights.channels.map((one) => ({ ...one, from: one.from * lengthwise, to: one.to * lengthwise })),
  };
}

/** A hem's turning, as it is cut. */
export const planGrown = (plan: HemPlan, { lengthwise }: Growth): HemPlan => ({
  ...plan,
  depth: plan.depth * lengthwise,
  beyond: plan.beyond * lengthwise,
});

/** A pocket, as it is cut. */
export const pocketGrown = (pocket: PocketChoices, { lengthwise, crosswise }: Growth): PocketChoices => ({
  ...pocket,
  width: pocket.width * crosswise,
  height: pocket.height * lengthwise,
  facing: pocket.facing * lengthwise,
});
