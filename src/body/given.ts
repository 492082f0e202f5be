import type { AskedKey, Body, BodyGiven, BodyInput, Estimate, EstimateFigures, Known, MeasurementKey } from './types';

/** What stands in the place of a number where its estimate was asked for. */
export const ESTIMATED = 'estimated';

/** The measurements whose estimate may be asked for. */
export const ASKED_KEYS: readonly AskedKey[] = ['bodyRise', 'insideLeg'];

/** What of a body was measured: its numbers alone. */
export function measuredOf({ bodyRise, insideLeg, ...others }: BodyGiven): BodyInput {
  return {
    ...others,
    ...(typeof bodyRise === 'number' ? { bodyRise } : {}),
    ...(typeof insideLeg === 'number' ? { insideLeg } : {}),
  };
}

/** Figures without those that are estimates. */
export const takenIn = ({ asked = [], ...from }: EstimateFigures): Known =>
  Object.fromEntries(Object.entries(from).filter(([name]) => asked.every(({ key }) => key !== name)));

/**
 * The estimates that a drawing rests on: of rise, hip depth and inside leg. Girths of the leg are only compared with it,
 * and an inside leg that trousers told was measured on those.
 */
export const restsOn = ({ estimates }: Pick<Body, 'estimates'>): readonly Estimate[] =>
  estimates.filter(({ key, basis }) => LOAD_BEARING.includes(key) && basis !== 'trousers');

/** What blocks and leg are drawn from, beside the two girths that are always measured. */
const LOAD_BEARING: readonly MeasurementKey[] = ['bodyRise', 'hipDepth', 'insideLeg'];

/** The spread of a figure that is an estimate itself; 0 where it was measured. */
export const spreadOf = ({ asked = [] }: EstimateFigures, key: MeasurementKey): number =>
  asked.find((one) => one.key === key)?.spread ?? 0;
