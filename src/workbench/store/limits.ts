import { measurements } from '../../body';

/** The least and the greatest value that can be drafted, in the units of the project file. */
export interface Limits {
  readonly lowest: number;
  readonly highest: number;
}

const within = (lowest: number, highest: number): Limits => ({ lowest, highest });

/** The limits of the project file for the fields on the screen; a test holds each against the draft. */
export const FIELD_LIMITS: Readonly<Record<string, Limits>> = {
  ...Object.fromEntries(measurements.map(({ key, lowest, highest }) => [`body.${key}`, within(lowest, highest)])),
  'cloth.stretch': within(0, 2),
  'cloth.width': within(300, 3200),
  'cloth.repeat': within(0, 1500),
  'cloth.repeatAcross': within(0, 1500),
  'cloth.grainTolerance': within(0, 5),
  'block.hipEase': within(-200, 400),
  'block.waistEase': within(0, 200),
  'block.riseEase': within(0, 100),
  'block.balance': within(-30, 40),
  'leg.spread': within(0, 250),
  'leg.raiseWaist': within(-120, 150),
  'leg.lowerCrotch': within(0, 100),
  'leg.shape.hemGirth': within(120, 2400),
  'leg.length.inseam': within(30, 1300),
  'waist.elasticWidth': within(3, 80),
  'waist.turnOfCloth': within(0, 12),
  'cloth.shrinkLength': within(0, 0.3),
  'cloth.shrinkWidth': within(0, 0.3),
  'fit.flatSeat': within(0, 40),
  'fit.fullThigh': within(0, 40),
  'fit.swayBack': within(0, 40),
  'fit.sittingPull': within(0, 40),
  'fit.knockKnees': within(-25, 25),
  'waist.cordWidth': within(2, 40),
  'waist.bandHeight': within(10, 150),
  'waist.bandStretch': within(0, 2),
  'waist.elasticLength': within(100, 3000),
  'hem.elasticWidth': within(3, 50),
  'hem.cordWidth': within(2, 20),
  'hem.bandHeight': within(10, 200),
  'hem.ribStretch': within(0, 2),
  'pocket.width': within(40, 300),
  'pocket.height': within(40, 350),
  'pocket.facing': within(10, 80),
  'allowances.waist': within(0, 40),
  'allowances.hem': within(0, 40),
  'hem.depth': within(5, 120),
  'hem.turnUnder': within(0, 30),
  'allowances.inseam': within(0, 40),
  'allowances.crotch': within(0, 40),
  'paper.margin': within(0, 40),
  'paper.overlap': within(0, 40),
  'paper.ownWidth': within(150, 5080),
  'paper.ownHeight': within(150, 5080),
  'paper.correctX': within(0.95, 1.05),
  'paper.correctY': within(0.95, 1.05),
  'projector.line': within(0.3, 6),
};
