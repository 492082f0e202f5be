import type { Body } from '../body';
import type { FinishedLeg, Piece } from '../edges';
import {
  type JoinedBlocks,
  type Leg,
  type LegChoices,
  legFlaw,
  legOfSide,
  NO_DIFFERENCES,
  SIDE_NAMES,
  type Side,
  type SideDifferences,
  type Sides,
} from '../leg';
import { Refusal, say } from '../words';

/** The leg that fits both sides, and what it was made from. */
interface Fitted {
  readonly leg: Leg;
  readonly joined: JoinedBlocks;
  readonly choices: LegChoices;
  readonly body: Body;
}

/** A leg, net, and whose. */
export interface SideLeg {
  /** As it is worn; undefined where both legs are cut from one pattern. */
  readonly side: Side | undefined;
  readonly leg: Leg;
  /** The body as that side would have it. */
  readonly body: Body;
}

/** The same, with its edges finished; drawn as the wearer's right leg, whichever it is: its front on the right. */
export interface CutLeg extends SideLeg {
  readonly finished: FinishedLeg;
  /** The leg, and what is cut beside it, as if the other leg were like it. */
  readonly pieces: readonly Piece[];
}

export const SIDES = ['left', 'right'] as const;
const KEYS = Object.keys(NO_DIFFERENCES) as readonly (keyof SideDifferences)[];

/**
 * The legs of a project: one for both sides, or the left one and the right one where they differ.
 *
 * @param fitted the leg that fits both sides
 * @param sides what one of them has more
 * @param inseamsAsBrought inseams that were brought along may be unequal
 * @throws Refusal of a side with which the lines of its leg cross
 */
export function legsOf(
  fitted: Fitted,
  sides: Sides | null,
  inseamsAsBrought: boolean,
): readonly [SideLeg, ...SideLeg[]] {
  if (!sides || SIDES.every((side) => Object.values(sides[side] ?? {}).every((more) => !more)))
    return [{ side: undefined, leg: fitted.leg, body: fitted.body }];
  return [legFor('left', fitted, sides, inseamsAsBrought), legFor('right', fitted, sides, inseamsAsBrought)];
}

/** What one side has more, all of it in figures. */
export const differencesOf = (sides: Sides | null, side: Side): SideDifferences => ({
  ...NO_DIFFERENCES,
  ...sides?.[side],
});

function legFor(side: Side, { leg, joined, choices, body }: Fitted, sides: Sides, inseamsAsBrought: boolean): SideLeg {
  const more = differencesOf(sides, side);
  const own = legOfSide(leg, joined, choices, more);
  if (legFlaw(own, inseamsAsBrought) !== undefined) {
    const isDrawn = (less: Partial<SideDifferences>): boolean =>
      legFlaw(legOfSide(leg, joined, choices, { ...more, ...less }), inseamsAsBrought) === undefined;
    const cause = KEYS.find((key) => more[key] > 0 && isDrawn({ [key]: 0 }));
    const phrase = say`with this the lines of the ${SIDE_NAMES[side]} leg cross or turn back; less would do.`;
    throw new Refusal([
      cause
        ? { field: `sides.${side}.${cause}`, value: more[cause], phrase }
        : { field: `sides.${side}`, value: sides[side], phrase },
    ]);
  }
  return { side, leg: own, body: { ...body, insideLeg: body.insideLeg + more.longerLeg } };
}

/** Of both legs together, where one leg's figure stands for two that are alike: their mean. */
export const ofBoth = <L>(legs: readonly L[], of: (leg: L) => number): number =>
  legs.length === 1 && legs[0] ? of(legs[0]) : legs.reduce((sum, leg) => sum + of(leg), 0) / legs.length;
