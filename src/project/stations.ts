import type { WorkingStep } from '../plane';
import { type Phrase, say } from '../words';

/** Where something is worked on, and where its working is told. */
export type Station = WorkingStep['station'];

/** What each station is called, in the order of the work. */
export const STATION_NAMES: Readonly<Record<Station, Phrase>> = {
  body: say`Body`,
  blocks: say`Blocks`,
  leg: say`Leg`,
  edges: say`Edges`,
  check: say`Check`,
  cloth: say`Cloth`,
  paper: say`Paper`,
  sew: say`Sew`,
};

/** The stations, in the order of the work. */
export const STATIONS = Object.keys(STATION_NAMES) as readonly Station[];
