import type { Mm } from '../length';
import { mm, type Phrase, say } from '../words';
import type { FieldChange, Fix } from './check';
import { roundedDown, roundedUp } from './measuring';

// What no project takes is left out by the room that knows the fields' limits.

/** Remedies are whole half-millimetres: finer nobody cuts. */
const STEP: Mm = 0.5;

const fix = (label: Phrase, ...changes: readonly FieldChange[]): Fix => ({ label, changes });

/** Spreads by at least so much, and straightens as much as is needed where that helps. */
export function fixSpreadTo(least: Mm, straighten = false): Fix {
  const value = roundedUp(least, STEP);
  const spread: FieldChange = { path: 'leg.spread', value };
  if (!straighten) return fix(say`Spread by ${mm(value)}`, spread);
  return fix(say`Spread by ${mm(value)} and straighten`, spread, { path: 'leg.straighten', value: 'auto' });
}

/** Spreads by at most so much, nothing at the least; undefined where that is no less than before. */
export function fixSpreadDownTo(most: Mm, spread: Mm): Fix | undefined {
  const value = Math.max(0, roundedDown(most, STEP));
  if (value >= spread) return undefined;
  return fix(value === 0 ? say`Leave out the spread` : say`Spread by only ${mm(value)}`, { path: 'leg.spread', value });
}

export const fixStraightenAuto = (): Fix =>
  fix(say`Straighten as much as is needed`, { path: 'leg.straighten', value: 'auto' });

/** Straightens to a share 0…1. */
export const fixStraightenTo = (value: number): Fix =>
  fix(value >= 1 ? say`Straighten fully` : say`Straighten a little more`, { path: 'leg.straighten', value });

/** A finished hem of at least so much, in whole millimetres. */
export function fixHemTo(least: Mm): Fix {
  const hemGirth = roundedUp(least, 1);
  return fix(say`Make the hem ${mm(hemGirth)} round`, { path: 'leg.shape', value: { hemGirth } });
}

/** Lowers the crotch by at least so much. */
export function fixLowerCrotchTo(least: Mm): Fix {
  const value = roundedUp(least, STEP);
  return fix(say`Lower the crotch by ${mm(value)}`, { path: 'leg.lowerCrotch', value });
}

/** Lowers the crotch by at most so much, or not at all. */
export function fixLowerCrotchDownTo(most: Mm): Fix {
  const value = Math.max(0, roundedDown(most, STEP));
  const label = value === 0 ? say`Leave the crotch where it was` : say`Lower the crotch by only ${mm(value)}`;
  return fix(label, { path: 'leg.lowerCrotch', value });
}

export const fixRiseEaseTo = (value: Mm): Fix =>
  fix(say`Make the ease in the rise ${mm(value)}`, { path: 'block.riseEase', value });

export const fixTurnOfCloth = (value: Mm): Fix =>
  fix(say`Allow ${mm(value)} for the turn of the cloth`, { path: 'waist.turnOfCloth', value });

/** Elastic of at least so much, in whole millimetres. */
export function fixElasticLength(least: Mm): Fix {
  const value = roundedUp(least, 1);
  return fix(say`Cut the elastic ${mm(value)} long`, { path: 'waist.elasticLength', value });
}

/** Elastic in the place of a cord. */
export const fixElasticCasing = (at: 'waist' | 'hem'): Fix =>
  fix(at === 'waist' ? say`Hold the waist with elastic` : say`Hold the hems with elastic`, {
    path: `${at}.finish`,
    value: 'elasticCasing',
  });

/** Raises the centre back waist by at least so much. */
export function fixSittingPullTo(least: Mm): Fix {
  const value = roundedUp(least, STEP);
  return fix(say`Raise centre back by ${mm(value)}`, { path: 'fit.sittingPull', value });
}

/** A waist that is faced with a piece of its own shape. */
export const fixFacedCasing = (): Fix => fix(say`Face the waist`, { path: 'waist.finish', value: 'facedCasing' });

export const fixPyjamaShape = (): Fix => fix(say`Choose the pyjama shape`, { path: 'leg.shape', value: 'pyjama' });

export const fixWholeFork = (): Fix => fix(say`Leave the back fork whole`, { path: 'cloth.piecedTip', value: 0 });

/** A check's `fix` field, where there is one: left out, not undefined. */
export const withFix = (found: Fix | undefined): { readonly fix?: Fix } => (found ? { fix: found } : {});
