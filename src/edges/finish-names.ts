import { type Phrase, say } from '../words';
import type { WaistFinish } from './casing';
import type { HemFinish } from './hem';

/** What each finish of the hem is called where one is chosen, in the order in which they are offered. */
export const HEM_FINISH_NAMES: Readonly<Record<HemFinish, Phrase>> = {
  turned: say`turned`,
  elasticCasing: say`casing, elastic`,
  drawstringCasing: say`casing, drawstring`,
  contrastBand: say`contrast band`,
  ribCuff: say`rib cuff`,
  facedHem: say`faced`,
};

/** The same for the waist. */
export const WAIST_FINISH_NAMES: Readonly<Record<WaistFinish, Phrase>> = {
  elasticCasing: say`fold-over casing, elastic`,
  drawstringCasing: say`fold-over casing, drawstring`,
  elasticAndDrawstring: say`elastic and drawstring`,
  separateCasing: say`separate casing`,
  facedCasing: say`faced casing`,
  knitBand: say`knit band`,
};
