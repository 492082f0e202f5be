import type { Body } from '../../../body';

/** From which side the figure is seen; `seated` from the side, `whole` from head to foot. */
export type FigureView = 'front' | 'side' | 'back' | 'seated' | 'whole';

/**
 * What the figure is drawn by. Levels count down from the waist and are the body's own; widths and depths are shares of
 * its girths that look right: a picture of a body, never a measure of it.
 */
export interface FigureShape {
  /** Grows with the figure: what would be a millimetre on an adult. */
  readonly unit: number;
  /** How far it is drawn above the waist. */
  readonly ribs: number;
  readonly hipLevel: number;
  readonly crotchLevel: number;
  readonly thighLevel: number;
  readonly kneeLevel: number;
  readonly calfLevel: number;
  readonly ankleLevel: number;
  readonly floor: number;
  readonly height: number;
  /** Half widths seen from the front, and where the middle of the leg is. */
  readonly half: Readonly<Record<'waist' | 'hip' | 'thigh' | 'knee' | 'calf' | 'ankle', number>>;
  readonly legAt: Readonly<Record<'thigh' | 'knee' | 'ankle', number>>;
  /** Front and back seen from the side, the front to the right. */
  readonly fore: Readonly<Record<'waist' | 'hip' | 'thigh' | 'knee' | 'calf' | 'ankle', number>>;
  readonly aft: Readonly<Record<'waist' | 'hip' | 'thigh' | 'knee' | 'calf' | 'ankle', number>>;
  readonly heel: number;
  readonly toe: number;
  /** How high the seat of the chair is over the floor, and how far before the axis the knee is when sitting. */
  readonly chair: number;
  readonly seatedKnee: number;
}

/** An adult's waist height at the navel, by which the fixed figures are meant. @source ANSUR II, median */
const ADULT = 1031;

/** @param body the drafted body; @param height standing height where it was measured */
export function figureShape(body: Body, height?: number): FigureShape {
  const { bodyRise: crotchLevel, insideLeg, waistGirth, hipGirth, thighGirth, kneeGirth, calfGirth, ankleGirth } = body;
  const floor = crotchLevel + insideLeg;
  const unit = floor / ADULT;
  const kneeLevel = body.waistToKnee;
  const hip = 0.171 * hipGirth;
  const thigh = Math.min(0.137 * thighGirth, (hip - 4 * unit) / 2);
  const legAt = thigh + 3 * unit;
  const ankleBack = -0.19 * ankleGirth - 10 * unit;
  return {
    unit,
    ribs: 150 * unit,
    hipLevel: Math.min(body.hipDepth, crotchLevel - 12 * unit),
    crotchLevel,
    thighLevel: crotchLevel + 0.14 * (kneeLevel - crotchLevel),
    kneeLevel,
    calfLevel: kneeLevel + 0.3 * (floor - kneeLevel),
    ankleLevel: floor - 78 * unit,
    floor,
    height: Math.max(height ?? floor / 0.602, 1.4 * floor),
    half: {
      waist: 0.174 * waistGirth,
      hip,
      thigh,
      knee: 0.15 * kneeGirth,
      calf: 0.152 * calfGirth,
      ankle: 0.16 * ankleGirth,
    },
    legAt: { thigh: legAt, knee: 0.93 * legAt, ankle: 0.87 * legAt },
    fore: {
      waist: 0.137 * waistGirth,
      hip: Math.max(0.1 * hipGirth, 0.115 * waistGirth),
      thigh: 0.147 * thighGirth,
      knee: 0.165 * kneeGirth + 4 * unit,
      calf: 0.115 * calfGirth,
      ankle: 0.19 * ankleGirth - 10 * unit,
    },
    aft: {
      waist: -0.105 * waistGirth,
      hip: -0.138 * hipGirth,
      thigh: -0.158 * thighGirth,
      knee: -0.15 * kneeGirth,
      calf: -0.2 * calfGirth,
      ankle: ankleBack,
    },
    heel: ankleBack - 14 * unit,
    toe: ankleBack + 0.24 * floor,
    chair: 0.52 * insideLeg,
    seatedKnee: 0.55 * insideLeg,
  };
}

/** Where the waist of each view stands on the table: x of its axis, and how far it sits down. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

/** The widest that a front or back view is on either side of its axis. */
export const widest = ({ half }: FigureShape): number => Math.max(1.1 * half.waist, half.hip);

export function figurePlaces(f: FigureShape): Readonly<Record<FigureView, Place>> {
  const gap = 150 * f.unit;
  const side = widest(f) + gap - Math.min(f.heel, f.aft.hip, f.aft.thigh, 1.25 * f.aft.waist);
  // The names of the lengths taken down the side stand between side and back.
  const back = side + Math.max(f.toe + 0.4 * gap, Math.max(f.fore.waist, f.fore.hip) + 1.75 * gap) + widest(f);
  const sunk = f.floor - f.crotchLevel - f.chair;
  return {
    front: { x: 0, y: 0 },
    side: { x: side, y: 0 },
    back: { x: back, y: 0 },
    seated: { x: side, y: sunk },
    whole: { x: (side + back) / 2, y: 0 },
  };
}

/** The box that holds every view. */
export function figureBox(f: FigureShape) {
  const right = figurePlaces(f).back.x + widest(f);
  return { left: -widest(f) - 30 * f.unit, right, top: -f.ribs, bottom: f.floor + 60 * f.unit };
}
