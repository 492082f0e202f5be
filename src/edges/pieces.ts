import { fullestGirth } from '../body';
import type { Leg } from '../leg';
import type { Mm } from '../length';
import { distance } from '../plane';
import { bandLength, type CasingChoices, cordLength, elasticLength, waistOpening } from './casing';
import { cordPieces } from './cords';
import { hemFacing, waistFacing } from './facings';
import type { EdgeChoices, FinishedLeg } from './finish';
import { hemElasticLength, ribCuffGirth } from './hem';
import type { Piece } from './piece';
import { patchPocket } from './pocket';
import { rectanglePiece } from './rectangle';

/** What the other pieces need of the body. */
export interface BodyGirths {
  readonly waistGirth: Mm;
  readonly hipGirth: Mm;
  readonly highHipGirth: Mm | undefined;
  readonly ankleGirth: Mm;
  readonly footEntryGirth: Mm;
}

/** Bands and casings meet the legs at the centre seams and halfway between them. */
const QUARTERS = [0.25, 0.5, 0.75] as const;

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
const HEM_TIE = 140;

/** Lengths of elastics, cords and a knit band. */
export function notionsOf(finished: FinishedLeg, choices: EdgeChoices, body: BodyGirths): Notions {
  const opening = waistOpening(finished.casing);
  const hem = distance(...hemLine(finished));
  const holds = (what: 'elastic' | 'cord') => finished.heights.channels.some((channel) => channel.holds === what);
  return {
    elasticLength: holds('elastic') ? elasticCut(choices.waist, body.waistGirth, opening) : undefined,
    bandLength: choices.waist.finish === 'knitBand' ? bandRound(choices, body, opening) : undefined,
    cordLength: holds('cord') ? cordLength(opening) : undefined,
    hemElasticLength: choices.hem.finish === 'elasticCasing' ? hemElasticLength(body.ankleGirth, hem) : undefined,
    hemCordLength: choices.hem.finish === 'drawstringCasing' ? hem + 2 * HEM_TIE : undefined,
  };
}

/** By the rule, or as it was chosen; never longer than what it gathers. */
const elasticCut = ({ elasticLength: chosen }: CasingChoices, waistGirth: Mm, opening: Mm): Mm =>
  chosen === 'auto' ? elasticLength(waistGirth, opening) : Math.min(chosen, opening);

const bandRound = ({ waist }: EdgeChoices, body: BodyGirths, opening: Mm): Mm =>
  bandLength(body.waistGirth, fullestGirth(body), waist.bandStretch, opening);

const hemLine = (finished: FinishedLeg) =>
  finished.hemPlan.kind === 'folded' ? finished.hem.stitching : finished.hem.raw;

/**
 * The pieces beside the leg: separate casing, knit band, facings, bands, cuffs, pocket, cords sewn of the cloth. Each with its own allowances,
 * grain and count.
 *
 * @param leg the leg
 * @param finished the finished leg
 * @param choices about the edges
 * @param body girths for bands and cuffs
 */
export function otherPieces(leg: Leg, finished: FinishedLeg, choices: EdgeChoices, body: BodyGirths): readonly Piece[] {
  const { waist, hem, allowances, pocket } = choices;
  const { heights } = finished;
  const hemGirth = distance(...finished.hem.raw);
  const opening = waistOpening(finished.casing);
  const pieces: Piece[] = [];
  if (waist.finish === 'facedCasing') pieces.push(waistFacing(leg, finished, allowances));
  if (heights.kind === 'seamed') {
    const knit = waist.finish === 'knitBand';
    pieces.push(
      rectanglePiece({
        name: knit ? 'waist band' : 'casing',
        cut: 1,
        length: knit ? bandRound(choices, body, opening) : opening,
        height: heights.height,
        folded: true,
        allowances: { long: allowances.waist, ends: allowances.crotch },
        marks: QUARTERS,
        grain: knit ? 'across' : 'along',
        words: [`${knit ? 'waist band, of knit' : 'casing'} · cut 1`, 'ends meet at centre back'],
      }),
    );
  }
  if (hem.finish === 'facedHem') pieces.push(hemFacing(leg, finished, allowances));
  if (finished.hemPlan.kind === 'seamed') {
    const rib = hem.finish === 'ribCuff';
    pieces.push(
      rectanglePiece({
        name: rib ? 'cuff' : 'hem band',
        cut: 2,
        length: rib ? ribCuffGirth(body.ankleGirth, body.footEntryGirth, hem.ribStretch) : hemGirth,
        height: 2 * hem.bandHeight,
        folded: true,
        allowances: { long: allowances.hem, ends: allowances.inseam },
        marks: QUARTERS,
        grain: rib ? 'across' : 'along',
        words: [`${rib ? 'cuff, of rib' : 'hem band'} · cut 2`, 'ends meet at the inseam'],
      }),
    );
  }
  if (pocket) pieces.push(patchPocket(pocket, allowances.inseam));
  return [...pieces, ...cordPieces(choices, notionsOf(finished, choices, body))];
}
