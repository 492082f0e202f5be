import { fullestGirth, type LimbGirths, limbGirth } from '../body';
import type { Leg } from '../leg';
import type { Mm } from '../length';
import { distance, pathLength } from '../plane';
import { bandLength, type CasingChoices, cordLength, elasticLength, waistOpening } from './casing';
import type { EdgeChoices, FinishedLeg } from './finish';
import { type HemPlan, hemElasticLength } from './hem';

/** What the other pieces need of the body. */
export interface BodyGirths extends LimbGirths {
  readonly waistGirth: Mm;
  readonly hipGirth: Mm;
  readonly highHipGirth: Mm | undefined;
}

/** What has to be cut or bought to length beside the cloth, each in mm; undefined where the finish needs none. */
export interface Notions {
  readonly elasticLength: Mm | undefined;
  /** Finished girth of a knit band at the waist. */
  readonly bandLength: Mm | undefined;
  readonly cordLength: Mm | undefined;
  /** For each hem. */
  readonly hemElasticLength: Mm | undefined;
  readonly hemCordLength: Mm | undefined;
}

/** From the opening at the side: the hem once round, and two ends to tie (half of a waist's). */
export const HEM_TIE = 140;

/**
 * Lengths of elastics, cords and a knit band.
 *
 * @param leg one leg
 * @param finished the same leg, finished
 * @param choices about the edges
 * @param body its girths
 * @param opening of both legs
 */
export function notionsOf(
  leg: Leg,
  finished: FinishedLeg,
  choices: EdgeChoices,
  body: BodyGirths,
  opening: Mm = waistOpening(finished.casing),
): Notions {
  const hem = distance(...hemLine(finished));
  const holds = (what: 'elastic' | 'cord') => finished.heights.channels.some((channel) => channel.holds === what);
  return {
    elasticLength: holds('elastic') ? elasticCut(choices.waist, body.waistGirth, opening) : undefined,
    bandLength: choices.waist.finish === 'knitBand' ? bandRound(choices, body, opening) : undefined,
    cordLength: holds('cord') ? cordCut(choices.waist, cordLength(opening)) : undefined,
    hemElasticLength:
      choices.hem.finish === 'elasticCasing'
        ? hemElasticLength(limbGirth(body, hemHeight(leg, finished.hemPlan, body)), hem)
        : undefined,
    hemCordLength: choices.hem.finish === 'drawstringCasing' ? cordCut(choices.hem, hem + 2 * HEM_TIE) : undefined,
  };
}

/**
 * How high above the floor a hem ends on the body, band or cuff included. The crotch of the leg counts as the body's, though
 * it hangs a little lower: a hem that is taken for higher than it is errs to the wide side.
 */
export const hemHeight = ({ front }: Leg, { added }: HemPlan, { insideLeg }: BodyGirths): Mm =>
  Math.max(0, insideLeg - pathLength(front.inseam) - added);

/** By the rule, or as it was chosen; never longer than what it gathers. */
const elasticCut = ({ elasticLength: chosen }: CasingChoices, waistGirth: Mm, opening: Mm): Mm =>
  chosen === 'auto' ? elasticLength(waistGirth, opening) : Math.min(chosen, opening);

/** By the rule, or as it was chosen. */
const cordCut = ({ cordLength: chosen }: { readonly cordLength: Mm | 'auto' }, usual: Mm): Mm =>
  chosen === 'auto' ? usual : chosen;

/** How long the knit band is round, for this body. */
export const bandRound = ({ waist }: EdgeChoices, body: BodyGirths, opening: Mm): Mm =>
  bandLength(body.waistGirth, fullestGirth(body), waist.bandStretch, opening);

const hemLine = (finished: FinishedLeg) =>
  finished.hemPlan.kind === 'folded' ? finished.hem.stitching : finished.hem.raw;
