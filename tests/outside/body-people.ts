import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { BodyInput } from '../../src/body';

const file = (name: string) => fileURLToPath(new URL(`../../../shared/data/${name}`, import.meta.url));
const ADULTS = file('ansur2_pants.csv');
const CHILDREN = file('anthrokids1977_pants.csv');

/** Whether the two surveys lie beside this checkout. */
export const adultsAreHere = existsSync(ADULTS);
export const childrenAreHere = existsSync(CHILDREN);

/** Says plainly in the log what was left out. */
export function sayLeftOut(what: string): void {
  console.log(`Left out: ${what}; the survey's file is not beside this checkout.`);
}

/** A body with the required figures, so that estimates can be asked of it. */
export type Measured = BodyInput & Required<Pick<BodyInput, 'waistGirth' | 'hipGirth' | 'bodyRise' | 'insideLeg'>>;

/**
 * Everybody of ANSUR II (NATICK/TR-15/007, 2014) with every measurement that the survey has, waist at the navel:
 * rise = waist height − crotch height, mid-knee = 0.95 × lower thigh, waist to knee = waist height − knee height.
 */
export function adults(): readonly (Measured & { readonly sex: string })[] {
  return rows(ADULTS).map(({ at, text }) => {
    const n = (name: string) => at(name) ?? Number.NaN;
    return {
      label: text('subject_id'),
      sex: text('sex'),
      ageYears: n('age'),
      height: n('stature'),
      waistGirth: n('waist_girth'),
      hipGirth: n('hip_girth'),
      bodyRise: n('waist_height') - n('crotch_height'),
      hipDepth: n('waist_height') - n('hip_height'),
      insideLeg: n('crotch_height'),
      crotchLength: n('crotch_length_total'),
      frontCrotchLength: n('crotch_length_total') - n('crotch_length_posterior'),
      thighGirth: n('thigh_girth'),
      kneeGirth: 0.95 * n('knee_girth'),
      calfGirth: n('calf_girth'),
      ankleGirth: n('ankle_girth'),
      footEntryGirth: n('heel_ankle_girth'),
      waistToKnee: n('waist_height') - n('knee_height'),
      outsideLeg: n('waist_height'),
    };
  });
}

/**
 * The children and youths of UM-HSRI-77-17 (1977) whose stature, waist and hip were taken, with what else was. Nobody's
 * crotch height was: where the gluteal furrow's was taken, inside leg = furrow + 0.018 × stature, an inference. Waist
 * and furrow height were taken of different children, so that the missing one comes from the survey's line.
 */
export function children(): readonly Measured[] {
  return rows(CHILDREN).flatMap(({ at, text }) => {
    const [stature, waist, hip, age] = [at('stature'), at('waist_girth'), at('hip_girth'), at('age_years')];
    if (stature === undefined || waist === undefined || hip === undefined || age === undefined) return [];
    if (age >= 18) return [];
    const waistHeight = at('waist_height') ?? -132.2 - 0.0473 * waist - 0.0167 * hip + 0.7165 * stature;
    const insideLeg = (at('gluteal_furrow_height') ?? -133.4 + 0.5544 * stature) + 0.018 * stature;
    const [hipHeight, measuredWaist] = [at('hip_height'), at('waist_height')];
    const taken = {
      thighGirth: at('thigh_girth'),
      calfGirth: at('calf_girth'),
      ankleGirth: at('ankle_girth'),
      hipDepth: hipHeight === undefined || measuredWaist === undefined ? undefined : measuredWaist - hipHeight,
    };
    return [
      {
        label: text('person'),
        ageYears: age,
        height: stature,
        waistGirth: waist,
        hipGirth: hip,
        bodyRise: waistHeight - insideLeg,
        insideLeg,
        ...Object.fromEntries(Object.entries(taken).filter(([, value]) => value !== undefined)),
      },
    ];
  });
}

interface Row {
  readonly at: (column: string) => number | undefined;
  readonly text: (column: string) => string;
}

function rows(path: string): readonly Row[] {
  const [head = '', ...lines] = readFileSync(path, 'utf8').trim().split('\n');
  const columns = head.trim().split(',');
  return lines.map((line) => {
    const cells = line.trim().split(',');
    const text = (column: string) => cells[columns.indexOf(column)] ?? '';
    return { text, at: (column) => (text(column) === '' ? undefined : Number(text(column))) };
  });
}
