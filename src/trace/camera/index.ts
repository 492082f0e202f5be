export { exactMap } from './exact-map';
export { exactnessAt, HAND_OFF } from './exactness';
export { glassOf } from './glass';
export { type Joined, joinShots } from './join';
export { lengthFound } from './lengths';
export { viewToPicture, viewToPlane } from './shot-view';
export type { MarkSeen, Sheet, Sight, Sightings } from './sightings';
