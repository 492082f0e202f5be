import type { Body, MeasurementKey } from '../../../body';

/** The figure's half widths are these shares of the girths: a picture of a body, not a measure of it. */
const PICTURE = { trunk: 0.175, limb: 0.17 } as const;

/** What the figure is drawn by: levels are the body's own, widths only look right. */
export interface FigureShape {
  readonly waist: number;
  readonly hip: number;
  readonly thigh: number;
  readonly knee: number;
  readonly ankle: number;
  readonly hipLevel: number;
  readonly crotchLevel: number;
  readonly kneeLevel: number;
  readonly floor: number;
}

export function figureShape(body: Body): FigureShape {
  return {
    waist: body.waistGirth * PICTURE.trunk,
    hip: body.hipGirth * PICTURE.trunk,
    thigh: body.thighGirth * PICTURE.limb,
    knee: body.kneeGirth * PICTURE.limb,
    ankle: body.kneeGirth * PICTURE.limb * 0.66,
    hipLevel: body.hipDepth,
    crotchLevel: body.bodyRise,
    kneeLevel: body.waistToKnee,
    floor: body.bodyRise + body.insideLeg,
  };
}

/** Where the tape goes: round the body at a level, or along it from one place to another. */
export type TapePath =
  | { readonly round: { readonly x: number; readonly y: number; readonly half: number } }
  | { readonly along: readonly [from: readonly [number, number], to: readonly [number, number]] };

/** The tape's path for a measurement; undefined where it lies outside the figure. */
export function tapePath(key: MeasurementKey, f: FigureShape): TapePath | undefined {
  const leg = legMiddle(f);
  const side = f.hip + 34;
  const calf = f.kneeLevel + (f.floor - f.kneeLevel) * 0.3;
  const limb = (y: number, half: number): TapePath => ({ round: { x: leg, y, half } });
  const down = (to: number): TapePath => ({
    along: [
      [side, 0],
      [side, to],
    ],
  });
  switch (key) {
    case 'waistGirth':
      return { round: { x: 0, y: 0, half: f.waist } };
    case 'highHipGirth':
      return { round: { x: 0, y: f.hipLevel / 2, half: (f.waist + f.hip) / 2 } };
    case 'hipGirth':
      return { round: { x: 0, y: f.hipLevel, half: f.hip } };
    case 'thighGirth':
      return limb(f.crotchLevel + 45, f.thigh);
    case 'kneeGirth':
      return limb(f.kneeLevel, f.knee);
    case 'calfGirth':
      return limb(calf, f.knee);
    case 'ankleGirth':
      return limb(f.floor - 70, f.ankle);
    case 'footEntryGirth':
      return limb(f.floor - 40, f.ankle * 1.3);
    case 'hipDepth':
      return down(f.hipLevel);
    case 'bodyRise':
      return down(f.crotchLevel);
    case 'waistToKnee':
      return down(f.kneeLevel);
    case 'outsideLeg':
      return down(f.floor);
    case 'insideLeg':
      return {
        along: [
          [0, f.crotchLevel],
          [0, f.floor],
        ],
      };
    case 'crotchLength':
    case 'frontCrotchLength':
      return {
        along: [
          [0, 0],
          [0, f.crotchLevel],
        ],
      };
    default:
      return undefined;
  }
}

/** The middle of the figure's leg. */
export const legMiddle = (f: FigureShape): number => f.hip * 0.5 + 4;
