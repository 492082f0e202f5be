import type { Mm } from '../length';
import { type Edge, pathLength, pathThrough, type WorkingStep } from '../plane';
import { inTurn, mm, type Phrase, say, UNSAID } from '../words';
import { SIDE_NAMES, type Side, type SideDifferences } from './sides';
import type { Leg } from './types';

/** A leg before and after its side's differences. */
interface SideStory {
  readonly before: Leg;
  readonly after: Leg;
}

/**
 * How a leg was made different from the other, a step for each difference; one step that says so where this side is as
 * the measurements say.
 *
 * @param side as it is worn
 * @param more what this side has more
 * @param legs the leg that fits both sides, and this one
 */
export function sideWorking(side: Side, more: SideDifferences, { before, after }: SideStory): readonly WorkingStep[] {
  const step = (id: string, sentence: Phrase, lines: readonly Edge[], formula: Phrase = UNSAID): WorkingStep => ({
    id: `leg.${side}.${id}`,
    station: 'leg',
    sentence,
    formula,
    lines,
  });
  const { front, back } = after;
  const centreLines: readonly Edge[] = [
    { name: 'centre front', curves: pathThrough(front.waistPoint, front.curveEnd) },
    { name: 'centre back', curves: pathThrough(back.waistPoint, back.curveEnd) },
  ];
  const inseams: readonly Edge[] = [
    { name: 'front inseam', curves: front.inseam },
    { name: 'back inseam', curves: back.inseam },
  ];
  const crotch: readonly Edge[] = [
    { name: 'front crotch', curves: front.crotch },
    { name: 'back crotch', curves: back.crotch },
  ];
  const steps = [
    more.fullerHip > 0 &&
      step(
        'fullerHip',
        say`The ${SIDE_NAMES[side]} hip is fuller by ${mm(more.fullerHip)}: this leg is spread by that much more, parallel to the grain, half in front and half behind.`,
        centreLines,
      ),
    more.fullerSeat > 0 &&
      step(
        'fullerSeat',
        say`The ${SIDE_NAMES[side]} seat is fuller by ${mm(more.fullerSeat)}: the back of this leg is moved out by so much, parallel to the grain.`,
        [...centreLines.slice(1), ...crotch.slice(1)],
      ),
    more.higherHip > 0 &&
      step(
        'higherHip',
        say`The ${SIDE_NAMES[side]} hip is higher by ${mm(more.higherHip)}: the waist edge of this leg lies that much higher over the side, and as before at both centres, in one smooth line.`,
        [{ name: 'waist edge', curves: after.waistEdge }],
      ),
    more.longerLeg > 0 &&
      step(
        'longerLeg',
        say`The ${SIDE_NAMES[side]} leg is longer by ${mm(more.longerLeg)}: both its inseams are, stretched along the grain, so that no width changes; the knee goes down by its share.`,
        [...inseams, { name: 'hem', curves: after.hem }],
      ),
  ].filter((one) => one !== false);
  if (steps.length === 0) return [step('alike', say`The ${SIDE_NAMES[side]} leg is as the measurements say.`, [])];
  return [
    ...steps,
    step(
      'sewn',
      say`Centre lines and crotch curves of the ${SIDE_NAMES[side]} leg stay as long as those of the other, front and back, so that the two can be sewn to each other and their notches meet.`,
      crotch,
      changesOfOne(before, after),
    ),
  ];
}

/** What one leg alone is measured by. */
const FIGURES: readonly (readonly [Phrase, (leg: Leg) => Mm])[] = [
  [say`waist`, (leg) => pathLength(leg.waistEdge)],
  [say`hip`, (leg) => leg.front.hipPoint.x - leg.back.hipPoint.x],
  [say`thigh`, (leg) => leg.front.crotchPoint.x - leg.back.crotchPoint.x],
  [say`hem`, (leg) => pathLength(leg.hem)],
  [say`inseam`, (leg) => pathLength(leg.front.inseam)],
  [say`crotch seam`, (leg) => pathLength(leg.front.crotch) + pathLength(leg.back.crotch)],
];

/** What is less is told as 0. @source tolerance */
const TOLD: Mm = 0.05;

/** This leg's lines beside those of one without differences, as far as they differ. */
const changesOfOne = (before: Leg, after: Leg): Phrase =>
  say`This leg alone: ${inTurn(
    FIGURES.map(([name, of]) => {
      const by = of(after) - of(before);
      if (Math.abs(by) < TOLD) return UNSAID;
      return by < 0 ? say`${name} −${mm(-by)}` : say`${name} +${mm(by)}`;
    }),
    ', ',
  )}`;
