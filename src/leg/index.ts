export { centreStands } from './centre-stands';
export { type Centre, type Centres, centresOf, leastStraightening, type Straightening } from './centres';
export { legCurves } from './curves';
export { fittedBlocks, referenceLeg, tiltRoom } from './fit';
export { type LegFlaw, legFlaw } from './flaw';
export { type Growth, growthFor, legGrown } from './growth';
export { blockMoved, type JoinedBlocks, joinBlocks, spreadLeg } from './join';
export { centreLean, type LeanRange, leanRange, straighteningFor } from './lean';
export { type LegChoices, legCrotchLength, legDrawn, legFrom, refuseLeg } from './leg';
export { finishedInseam, LENGTH_NAMES, type LengthName } from './lengths';
export {
  type BlocksOnTheWay,
  blocksOnTheWay,
  type Gap,
  type LegOnTheWay,
  legOnTheWay,
  spreadOnTheWay,
} from './on-the-way';
export { overSide, riseAt } from './over-side';
export type { Shape } from './shape';
export {
  joinedOfSide,
  legOfSide,
  NO_DIFFERENCES,
  SIDE_NAMES,
  type Side,
  type SideDifferences,
  type Sides,
} from './sides';
export { sideWorking } from './sides-working';
export type * from './types';
export { type LegStory, legWorking } from './working';
