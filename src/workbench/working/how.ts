import type { WorkingStep } from '../../plane';
import type { Measures } from '../../project';

/** The step of the working that says how a finished measure came about. */
const OF_MEASURES: Partial<Readonly<Record<keyof Measures, string>>> = {
  hipGirthFinished: 'leg.spread',
  waistOpening: 'leg.straighten',
  elasticLength: 'edges.elastic',
  thighGirthFinished: 'leg.shape',
  hemGirthFinished: 'leg.length',
  crotchLengthFinished: 'blocks.crotch-fit',
  crotchDepthFinished: 'blocks.crotch-line',
  inseamFront: 'leg.length',
};

/** The step in which a field's number is used. */
const OF_FIELDS: Readonly<Record<string, string>> = {
  'block.hipEase': 'blocks.widths',
  'block.waistEase': 'blocks.waist',
  'block.riseEase': 'blocks.crotch-line',
  'block.balance': 'blocks.widths',
  'leg.spread': 'leg.spread',
  'leg.straighten': 'leg.straighten',
  'leg.raiseWaist': 'leg.rise',
  'leg.lowerCrotch': 'leg.rise',
  'leg.shape': 'leg.shape',
  'leg.shape.hemGirth': 'leg.shape',
  'leg.length': 'leg.length',
  'leg.length.inseam': 'leg.length',
  'waist.finish': 'edges.casing',
  'waist.elasticWidth': 'edges.elastic',
  'waist.turnOfCloth': 'edges.casing',
  'hem.depth': 'edges.hem',
  'allowances.inseam': 'edges.allowance leg inseamFront',
  'allowances.crotch': 'edges.allowance leg crotchFront',
  'body.hipDepth': 'blocks.hip-line',
  'body.hipGirth': 'blocks.widths',
  'body.waistGirth': 'blocks.waist',
  'body.bodyRise': 'blocks.crotch-line',
  'body.crotchLength': 'blocks.crotch-fit',
};

const among = (working: readonly WorkingStep[], id: string | undefined): string | undefined =>
  working.some((step) => step.id === id) ? id : undefined;

/** The step that tells how a measure came about; undefined where the present draft has none. */
export const measureStep = (working: readonly WorkingStep[], measure: keyof Measures): string | undefined =>
  among(working, OF_MEASURES[measure]);

/** The step that tells what is made of a field of the project: how its estimate was found, or where its number goes. */
export const fieldStep = (working: readonly WorkingStep[], path: string): string | undefined =>
  among(working, path.replace(/^body\./, 'body.estimate.')) ?? among(working, OF_FIELDS[path]);
