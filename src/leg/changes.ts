import type { Mm } from '../length';
import { distance, pathEnd, pathLength, pathStart } from '../plane';
import { inTurn, mm, type Phrase, say } from '../words';
import { type JoinedBlocks, spreadLeg } from './join';
import { type LegChoices, legCrotchLength, legDrawn } from './leg';
import type { Leg } from './types';

/** The operations that make a leg of two joined blocks, in the order of work. */
export type LegOperation = 'join' | 'spread' | 'rise' | 'straighten' | 'shape' | 'length';

/** What every operation can change, by the trade's names; girths of the garment. @source geometry */
const FIGURES: readonly (readonly [Phrase, (leg: Leg) => Mm])[] = [
  [say`hip`, (leg) => 2 * (leg.front.hipPoint.x - leg.back.hipPoint.x)],
  [say`waist`, (leg) => 2 * pathLength(leg.waistEdge)],
  [say`crotch length`, (leg) => legCrotchLength(leg.front, leg.back)],
  [say`thigh`, (leg) => leg.front.crotchPoint.x - leg.back.crotchPoint.x],
  [say`hem`, (leg) => distance(pathStart(leg.hem), pathEnd(leg.hem))],
  [say`inseam`, (leg) => pathLength(leg.front.inseam)],
];

/** Smaller changes than this aren't told: nobody could sew them. @source tolerance */
const TOLD = 0.5;

/**
 * The leg after each operation, each on top of those before it.
 *
 * @param joined the joined and spread blocks
 * @param choices all that was chosen
 */
export function legStages(joined: JoinedBlocks, choices: LegChoices): Readonly<Record<LegOperation, Leg>> {
  const together = spreadLeg(joined, -choices.spread);
  const bare: LegChoices = {
    ...choices,
    spread: 0,
    straighten: 0,
    raiseWaist: 0,
    lowerCrotch: 0,
    inseam: choices.ankleInseam,
    shape: 'block',
  };
  const spread = { ...bare, spread: choices.spread };
  const rise = { ...spread, raiseWaist: choices.raiseWaist, lowerCrotch: choices.lowerCrotch };
  const straighten = { ...rise, straighten: choices.straighten };
  // A hem girth is chosen for the finished length, so there shape and length are one operation.
  const shape = {
    ...straighten,
    shape: choices.shape,
    inseam: typeof choices.shape === 'string' ? choices.ankleInseam : choices.inseam,
  };
  return {
    join: legDrawn(together, bare),
    spread: legDrawn(joined, spread),
    rise: legDrawn(joined, rise),
    straighten: legDrawn(joined, straighten),
    shape: legDrawn(joined, shape),
    length: legDrawn(joined, choices),
  };
}

/**
 * What an operation changed in the finished measures, as a sentence.
 *
 * @param before the leg before it
 * @param after the leg after it
 */
export function changesTold(before: Leg, after: Leg): Phrase {
  const changes = FIGURES.map(([name, of]) => ({ name, by: of(after) - of(before) })).filter(
    ({ by }) => Math.abs(by) >= TOLD,
  );
  if (changes.length === 0) return say`No finished measure changes.`;
  return say`It changes ${inTurn(
    changes.map(({ name, by }) => (by > 0 ? say`${name} by +${mm(by)}` : say`${name} by ${mm(by)}`)),
    ', ',
  )}.`;
}
