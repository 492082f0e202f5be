export { exactMap } from './exact-map';
export { exactnessAt, HAND_OFF } from './exactness';
export { type Exactness, exactnessOf, type Flat, type FloorShot, flatsOf, floorBox } from './flats';
export { glassOf } from './glass';
export { type Joined, joinShots } from './join';
export { lengthFound } from './lengths';
export { bentTable, type Lens, TRUE_LENS } from './lens';
export { straightPixels, viewToPicture, viewToPlane } from './shot-view';
export type { MarkSeen, Sheet, Sight, Sightings } from './sightings';
