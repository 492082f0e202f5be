import type { Mm } from '../length';

// The figures from which the blocks are drafted, each once. "Practice" is what cutters commonly do, with no single
// source and from memory; what was tried on the survey was tried on the 6,068 adults of ANSUR II (NATICK/TR-15/007, 2014).

/** Below this hip the fixed figures shrink with the hip: k = hip ÷ 900, at most 1. @source practice */
export const SMALL_HIP: Mm = 900;

/**
 * Rise ease: ½ in for a hip below 36 in growing to 1 in above 38 in, evened out from 875 to 980 mm of hip; and 6 mm
 * more for a garment to lounge in.
 *
 * @source *Measurements for Fitting Pants*, New Mexico State University Extension, C-209, an older print as quoted; the
 *   6 mm practice
 */
export const RISE_EASE = { least: 13, more: 12, fromHip: 875, overHip: 105, loungePant: 6 } as const;
/** What a nappy takes. @source practice */
export const NAPPY_ROOM: Mm = 25;

/**
 * Forks as shares of the net widths at the hip: the front's between hip/16 and hip/12, the back's hip/8. `least` and
 * `most` are how far a measured crotch length may move them, `shifted` how long the front may become where the inseam
 * point is moved forwards.
 *
 * @source *The Practical Designer*, 1911, lesson 82, and 1918, lesson 411, for the front; a textbook rule, from memory,
 *   for the back (hip/16 + hip/18 on lesson slides); practice, tried on the 6,068 adults of ANSUR II, for how far they
 *   move (together 16 to 22 % of the hip)
 */
export const FORK = {
  front: { usual: 0.26, least: 0.22, most: 0.32, shifted: 0.34 },
  back: { usual: 0.45, least: 0.37, most: 0.5 },
} as const;
/** The inseam point moves by at most so many mm, and by this share of the front's fork. @source practice */
export const SHIFT = { most: 22, ofFront: 0.5 } as const;

/** How much the second stage of the crotch fit lowers or raises the crotch line, mm. @source practice, tried on the survey */
export const FIT_DEPTH = { down: 25, up: 10 } as const;

/** A belly that neither centre front's lean nor the usual spread gives room is shared out so, mostly to the front. @source practice */
export const ABDOMEN = { front: 0.7, back: 0.3 } as const;
/** The spread that most lounge pants are cut with: 1 in a leg, 2 in round the hip. @source practice */
export const USUAL_SPREAD: Mm = 25.4;

/** The hip line stays so far above the crotch line and below the waist, however short the rise. @source practice, tried on the survey */
export const HIP_LINE = { aboveCrotch: 45, belowWaist: 15 } as const;
/**
 * The crotch curve begins above the crotch line, at the hip line where that lies between these shares of the fork.
 *
 * @source practice, tried on the survey: the tightest bend is 18 mm on the smallest child, 43 mm behind on the median
 *   adult
 */
export const CURVE_RISE = { front: { least: 0.9, most: 1.2 }, back: { least: 0.66, most: 1.15 } } as const;

/** Without so much above the waist level at the side the back pulls down when sitting, however small the body. @source practice */
export const LEAST_BACK_RAISE: Mm = 15;
/**
 * Centre back rises by hip/28, more where the waist is narrow for the hip and less where it is wide: 0.04 of what hip − waist differs from 200 mm.
 * With a measured crotch length it goes from `lowest` to `highest`.
 *
 * @source practice, tried on the survey; hip/24 on lesson slides, with some millimetres kept free against pulling down
 *   when sitting
 */
export const BACK_RAISE = {
  ofHip: 1 / 28,
  ofCurve: 0.04,
  usualCurve: 200,
  less: 5,
  more: 8,
  most: 45,
  lowest: 18,
  highest: 65,
} as const;
/** Centre front drops by 8 mm as a rule; a full abdomen takes a fifth of its excess off that. @source *The Practical Designer*, 1918: ½ in; practice */
export const FRONT_DROP = { usual: 8, ofAbdomen: 0.2, mostForAbdomen: 14 } as const;
/**
 * Tilt, centre back over centre front: a straight fold meets an upright centre front within 6° only where the tilt is
 * less than tan 5.7° of the way across, and never more than `most`. With a measured crotch length it sinks
 * no lower than `least`, `curvy` more on a body with a narrow waist; where the front part was measured and
 * found longer than drafted, the waist is tipped no lower than `tipped`.
 *
 * @source geometry; practice, tried on the survey
 */
export const TILT = { most: 65, steepest: 5.7, least: 28, curvy: 9, tipped: 34.5 } as const;
/** From this share of the hip on, hip − waist is as curvy as counts. @source practice, tried on the survey */
export const CURVY = 0.2;

/**
 * Centre back leans by a share of what a quarter of the waist must lose, up to so many mm and degrees. Centre
 * front stands upright, since each degree of its lean would cost the straight waist edge one degree of tilt;
 * over a belly it leans outwards, so many degrees at most.
 *
 * @source practice (corpulent fronts run out above the hip); geometry for the front
 */
export const LEAN = { share: 0.48, most: 30, steepest: 8, outwards: 8 } as const;
/** Each side takes a fifth of what the leans leave, at most 25 mm. @source practice */
export const SIDE_SHAPING = { share: 0.2, most: 25 } as const;
/** A dart takes in 5 to 25 mm: a narrower one is no dart, and what it would take stays in the waist; two have room in front, three behind. @source practice */
export const DARTS = { narrowest: 5, widest: 25, front: 2, back: 3 } as const;

/** Ease round a fitted block's knee; from knee to hem it narrows by the second figure. @source practice */
export const KNEE_EASE: Mm = 110;
export const HEM_NARROWER: Mm = 20;
/** Knee and hem are divided about the creases: the back gets twice this more than the front. @source practice */
export const LEG_BALANCE: Mm = 10;
/** The back's crease lies this much nearer to the side than the middle of its crotch line. @source practice */
export const CREASE_TO_SIDE: Mm = 5;
/** The ankle lies this share of the inside leg above the floor. @source practice */
export const ANKLE_HEIGHT = 0.08;
