import type { Mm } from '../length';

// The figures of the blocks' recipe, each once. "Practice" is what cutters commonly do, with no single source and from
// memory; what was tried on the survey was tried on the 6,068 adults of ANSUR II (NATICK/TR-15/007, 2014).

/** Below this hip the fixed figures shrink with the hip: k = hip ÷ 900, at most 1 (practice). */
export const SMALL_HIP: Mm = 900;

/**
 * Rise ease: ½ in for a hip below 36 in growing to 1 in above 38 in (*Measurements for Fitting Pants*, New Mexico State
 * University Extension, C-209, an older print as quoted), evened out from 875 to 980 mm of hip; and 6 mm more for a
 * garment to lounge in (practice).
 */
export const RISE_EASE = { least: 13, more: 12, fromHip: 875, overHip: 105, loungePant: 6 } as const;
/** What a nappy takes (practice). */
export const NAPPY_ROOM: Mm = 25;

/**
 * Extensions as shares of the net widths: the front's between hip/16 and hip/12 (*The Practical Designer*, 1911, lesson
 * 82, and 1918, lesson 411), the back's about twice that (a widely taught rule, from memory; tried on the survey).
 */
export const EXTENSION = { front: 0.28, back: 0.54 } as const;
/** Where the abdomen's excess over the hip goes, as shares of it in each half: mostly to the front (practice). */
export const ABDOMEN = { front: 0.35, back: 0.15 } as const;

/**
 * What λ = ±1 changes: crotch depth, back raise and front drop in mm, extensions as shares (practice). Most of a missing
 * length is found in depth and front extension, little in the raise: so the waist edge stays level at the side, and
 * 98.7 % of the survey's bodies reach their measured crotch length (with 18, 15, 6, 0.45, 0.35, as first tried: 93.6 %).
 */
export const FIT = { depth: 29, raise: 6, drop: 3, front: 0.8, back: 0.52 } as const;

/** The back curve needs this share of its extension below the hip line, or it turns too sharply to be sewn smoothly (practice, tried on the survey). */
export const ROOM_FOR_BACK_CURVE = 0.7;
/** However short the rise, the hip line stays this far below the waist: the centre lines turn about it (practice). */
export const HIGHEST_HIP: Mm = 15;

/** Without so much above the waist level at the side the back pulls down when sitting, however small the body (practice). */
export const LEAST_BACK_RAISE: Mm = 15;
/** Centre back rises by 30 mm as a rule, at most by 45 (practice; a lesson's hip/24 is 42 at a hip of 1 m). */
export const BACK_RAISE = { usual: 30, most: 45 } as const;
/** Centre front drops by 8 mm as a rule; over a full abdomen it rises by a quarter of the excess, at most 16 (practice). */
export const FRONT_DROP = { usual: 8, least: 2, most: 14, ofAbdomen: 0.25, mostForAbdomen: 16 } as const;

/** A centre leans by a share of what a quarter of the waist must lose, up to so many mm and degrees (practice). */
export const LEAN = {
  front: { share: 0.16, most: 10, steepest: 4 },
  back: { share: 0.48, most: 30, steepest: 8 },
} as const;
/** Each side takes a fifth of what the leans leave, at most 25 mm (practice). */
export const SIDE_SHAPING = { share: 0.2, most: 25 } as const;
/** A dart takes in 5 to 25 mm: a narrower one is no dart, and what it would take stays in the waist; two have room in front, three behind (practice). */
export const DARTS = { narrowest: 5, widest: 25, front: 2, back: 3 } as const;

/** Ease round a fitted block's knee (practice); from knee to hem it narrows by the second figure. */
export const KNEE_EASE: Mm = 110;
export const HEM_NARROWER: Mm = 20;
/** Knee and hem are divided about the creases: the back gets twice this more than the front (practice). */
export const LEG_BALANCE: Mm = 10;
/** The back's crease lies this much nearer to the side than the middle of its crotch line (practice). */
export const CREASE_TO_SIDE: Mm = 5;
/** The ankle lies this share of the inside leg above the floor (practice). */
export const ANKLE_HEIGHT = 0.08;
