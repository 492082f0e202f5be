import { type Phrase, say } from '../words';
import { isChild } from './estimate-children';
import { ADULTS, CHILDREN } from './estimate-lines';
import { type Figures, type LineTold, surestLine } from './survey-line';
import { insideLegFrom } from './trousers';
import type { AskedKey, Estimate, Known, MeasurementKey } from './types';

const OF_ADULTS = say`ANSUR II (NATICK/TR-15/007, 2014), least squares over 6,068 adults, women and men counted alike, the waist at the navel`;
const OF_CHILDREN = say`inferred from heights of the waist and of the fold of the seat (UM-HSRI-77-17, 1977); no child’s crotch height was measured`;

/**
 * Estimates one measurement alone, from whatever else was measured: by the line of the survey that is surest for that.
 * Waist and hip are needed; height, inside leg, body rise and crotch length make it surer.
 *
 * @param key which
 * @param measured of the body, millimetres and years
 * @returns undefined without waist and hip, and for what no child was measured for
 * @source ANSUR II, 2014; UM-HSRI-77-17, 1977
 */
export function estimateAlone(key: AskedKey | 'hipDepth' | 'crotchLength', measured: Known): Estimate | undefined {
  const known = figuresOf(measured, key);
  if (isChild(measured)) {
    return key === 'bodyRise' || key === 'insideLeg' ? childHeight(key, known) : undefined;
  }
  const told = surestLine(ADULTS[key], known);
  return told && made(key, { ...told, from: told.from.map((one) => takenFor(one, measured)) }, OF_ADULTS, 'survey');
}

/** What may be leaned on for a measurement: all others that were taken, and an inside leg that trousers tell. */
function figuresOf(measured: Known, but: MeasurementKey): Figures {
  const keys = ['waistGirth', 'hipGirth', 'height', 'ageYears', 'bodyRise', 'insideLeg', 'crotchLength'] as const;
  const taken = keys.flatMap((key) => {
    const value = measured[key];
    return value === undefined ? [] : [[key, { value, spread: 0 }] as const];
  });
  const { insideLeg, trouserInseam } = measured;
  const told =
    insideLeg === undefined && trouserInseam !== undefined
      ? [['insideLeg', insideLegFrom(trouserInseam)] as const]
      : [];
  return Object.fromEntries([...taken, ...told].filter(([key]) => key !== but));
}

/** What was measured for a figure: trousers for an inside leg that they tell. */
const takenFor = (key: MeasurementKey, { insideLeg }: Known): MeasurementKey =>
  key === 'insideLeg' && insideLeg === undefined ? 'trouserInseam' : key;

/** A child's rise is what is left of the height of its waist above the crotch; both by the stature, measured or estimated. */
function childHeight(key: AskedKey, known: Figures): Estimate | undefined {
  const stature = known.height ?? surestLine(CHILDREN.height, known);
  if (!stature) return undefined;
  const tall = { ...known, height: stature };
  // What a stature is estimated from stands in its place.
  const measured = (from: LineTold['from']): LineTold['from'] => [
    ...new Set(from.flatMap((one) => (one === 'height' && 'from' in stature ? (stature as LineTold).from : [one]))),
  ];
  const leg = surestLine(CHILDREN.insideLeg, tall);
  if (key === 'insideLeg') return leg && made(key, { ...leg, from: measured(leg.from) }, OF_CHILDREN, 'inference');
  const waist = surestLine(CHILDREN.waistHeight, tall);
  const crotch = known.insideLeg ?? leg;
  if (!waist || !crotch) return undefined;
  const from = measured([...waist.from, ...(known.insideLeg ? (['insideLeg'] as const) : [])]);
  const rise = { value: waist.value - crotch.value, spread: Math.hypot(waist.spread, crotch.spread), from };
  return made(key, rise, OF_CHILDREN, 'inference');
}

function made(
  key: MeasurementKey,
  { value, spread, from, sum }: Omit<LineTold, 'sum'> & { readonly sum?: LineTold['sum'] },
  source: Phrase,
  basis: Estimate['basis'],
): Estimate {
  return { key, value, spread, from, ...(sum ? { sum } : {}), source, basis };
}
