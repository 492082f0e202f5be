export { bodyProblems, prepareBody } from './body';
export { type Measurement, measurements } from './catalogue';
export { crotchLengthExpected, estimateMissing } from './estimate';
export { fullestGirth } from './fullest';
export { type LimbGirths, type LimbPlace, limbGirth, limbPlaces, passedBelow } from './limb';
export { bodyRemarks } from './plausibility';
export { STARTING_BODIES, type StartingBody, type StartingKind, startingSource } from './starting-bodies';
export type * from './types';
export { bodyWorking } from './working';
