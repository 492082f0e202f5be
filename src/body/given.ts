import type {
  AskedKey,
  BlockTold,
  BlockToldKey,
  Body,
  BodyGiven,
  BodyInput,
  Estimate,
  EstimateFigures,
  Known,
  MeasurementKey,
} from './types';

/** What stands in the place of a number where its estimate was asked for. */
export const ESTIMATED = 'estimated';

/** The measurements whose estimate may be asked for. */
export const ASKED_KEYS: readonly AskedKey[] = ['bodyRise', 'insideLeg'];

/** The measurements that brought blocks tell, in the order of the catalogue. */
export const BLOCK_TOLD_KEYS: readonly BlockToldKey[] = ['waistGirth', 'hipGirth', 'hipDepth', 'bodyRise', 'insideLeg'];

/** What of a body was measured: its numbers alone. */
export function measuredOf({ bodyRise, insideLeg, fromBlock: _, ...others }: BodyGiven): BodyInput {
  return {
    ...others,
    ...(typeof bodyRise === 'number' ? { bodyRise } : {}),
    ...(typeof insideLeg === 'number' ? { insideLeg } : {}),
  };
}

/** What is taken from brought blocks, as far as they tell it: never over a number of a tape. */
export const takenFromBlock = (given: BodyGiven, told: BlockTold): readonly Estimate[] =>
  (given.fromBlock ?? []).flatMap((key) => (typeof given[key] === 'number' ? [] : (told[key] ?? [])));

/** Figures without those that are estimates. */
export const takenIn = ({ asked = [], ...from }: EstimateFigures): Known =>
  Object.fromEntries(Object.entries(from).filter(([name]) => asked.every(({ key }) => key !== name)));

/**
 * The estimates that a drawing rests on: of waist, hip, hip depth, rise and inside leg. Girths of the leg are only compared with it,
 * and an inside leg that trousers told was measured on those.
 */
export const restsOn = ({ estimates }: Pick<Body, 'estimates'>): readonly Estimate[] =>
  estimates.filter(({ key, basis }) => LOAD_BEARING.includes(key) && basis !== 'trousers');

/** What blocks and leg are drawn from; the two girths are never estimated, but blocks may tell them. */
const LOAD_BEARING: readonly MeasurementKey[] = BLOCK_TOLD_KEYS;

/** The spread of a figure that is an estimate itself; 0 where it was measured. */
export const spreadOf = ({ asked = [] }: EstimateFigures, key: MeasurementKey): number =>
  asked.find((one) => one.key === key)?.spread ?? 0;
