import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Project } from '../../src/project';

/** One measured child, in the program's keys, millimetres. */
export interface ChildBody {
  readonly id: string;
  readonly body: Project['body'];
  /** Whether the height of the gluteal furrow was taken, so that the crotch's is less of a guess. */
  readonly furrowTaken?: boolean;
}

const FILE = fileURLToPath(new URL('../../../shared/data/anthrokids1977_pants.csv', import.meta.url));

/** Whether the children's survey lies beside this checkout. */
export const childrenAreHere = existsSync(FILE);

/** An adult's crotch lies 0.013–0.024 of the stature above the gluteal furrow; the middle of it. */
const CROTCH_ABOVE_FURROW = 0.018;

// The survey's own lines for a height that was not taken (README of the data, 2b, children, sexes together; SD 17, 22, 25).
const waistHeightOf = (waist: number, hip: number, stature: number) =>
  -132.2 - 0.0473 * waist - 0.0167 * hip + 0.7165 * stature;
const hipHeightOf = (waist: number, hip: number, stature: number) =>
  -148.5 + 0.0946 * waist - 0.2095 * hip + 0.6732 * stature;
const furrowHeightOf = (stature: number) => -133.4 + 0.5544 * stature;

/**
 * The children and youths of *Anthropometry of Infants, Children and Youths to Age 18 for Product Safety Design*
 * (UM-HSRI-77-17, 1977), as far as stature, waist and hip were taken.
 *
 * An inference, for nobody's crotch height was measured: crotch height = gluteal furrow height + 0.018 × stature, rise =
 * waist height − crotch height. Waist and furrow height were taken of different children, so that one of the two always
 * comes from the survey's lines, with their spread. Where the file is not beside the checkout: {@link childMedians}.
 */
export function childBodies(): readonly ChildBody[] {
  return childrenAreHere ? measuredChildren(FILE) : medianBodies;
}

function measuredChildren(file: string): readonly ChildBody[] {
  const [head = '', ...lines] = readFileSync(file, 'utf8').trim().split('\n');
  const columns = head.split(',');
  return lines.flatMap((row) => {
    const cells = row.split(',');
    const at = (name: string): number | undefined => {
      const cell = cells[columns.indexOf(name)];
      return cell ? Number(cell) : undefined;
    };
    const [stature, waist, hip] = [at('stature'), at('waist_girth'), at('hip_girth')];
    if (stature === undefined || waist === undefined || hip === undefined) return [];
    const age = at('age_years');
    const waistHeight = at('waist_height') ?? waistHeightOf(waist, hip, stature);
    const hipHeight = at('hip_height') ?? hipHeightOf(waist, hip, stature);
    const crotchHeight = (at('gluteal_furrow_height') ?? furrowHeightOf(stature)) + CROTCH_ABOVE_FURROW * stature;
    const optional = {
      ageYears: age,
      thighGirth: at('thigh_girth'),
      calfGirth: at('calf_girth'),
      ankleGirth: at('ankle_girth'),
    };
    return [
      {
        id: `${cells[0]} (${age ?? '?'} y)`,
        furrowTaken: at('gluteal_furrow_height') !== undefined,
        body: {
          label: cells[0] ?? '',
          height: stature,
          waistGirth: waist,
          hipGirth: hip,
          bodyRise: waistHeight - crotchHeight,
          hipDepth: waistHeight - hipHeight,
          insideLeg: crotchHeight,
          ...Object.fromEntries(Object.entries(optional).filter(([, value]) => value !== undefined)),
        },
      },
    ];
  });
}

/** The median child of an age: stature in millimetres, everything else as a share of it. */
interface ChildMedian {
  readonly age: number;
  readonly stature: number;
  readonly waistHeight: number;
  readonly hipHeight: number;
  readonly crotchHeight: number;
  readonly waist: number;
  readonly hip: number;
  readonly thigh: number;
}

// Medians of the same survey (README of the data, 2b); furrow height + 0.018 for the crotch. Ages in years.
const MEDIANS = [
  [2, 898, 0.531, 0.433, 0.388, 0.521, 0.562, 0.312],
  [3, 984, 0.544, 0.448, 0.402, 0.497, 0.535, 0.306],
  [4, 1053, 0.554, 0.464, 0.421, 0.476, 0.52, 0.302],
  [5, 1114, 0.564, 0.471, 0.432, 0.463, 0.511, 0.296],
  [7, 1209, 0.576, 0.487, 0.448, 0.444, 0.505, 0.295],
  [9, 1330, 0.591, 0.501, 0.464, 0.436, 0.505, 0.299],
  [11, 1431, 0.599, 0.509, 0.47, 0.429, 0.509, 0.303],
  [13, 1544, 0.607, 0.514, 0.474, 0.427, 0.516, 0.306],
  [15, 1634, 0.606, 0.51, 0.469, 0.427, 0.534, 0.315],
] as const;

/** The medians of nine ages from two to fifteen: the table for where the survey's file is not beside the checkout. */
export const childMedians: readonly ChildMedian[] = MEDIANS.map(
  ([age, stature, waistHeight, hipHeight, furrow, waist, hip, thigh]) => ({
    age,
    stature,
    waistHeight,
    hipHeight,
    crotchHeight: furrow + CROTCH_ABOVE_FURROW,
    waist,
    hip,
    thigh,
  }),
);

const medianBodies: readonly ChildBody[] = childMedians.map((m) => ({
  id: `median of ${m.age} y`,
  body: {
    label: `${m.age} y`,
    ageYears: m.age,
    height: m.stature,
    waistGirth: m.waist * m.stature,
    hipGirth: m.hip * m.stature,
    bodyRise: (m.waistHeight - m.crotchHeight) * m.stature,
    hipDepth: (m.waistHeight - m.hipHeight) * m.stature,
    insideLeg: m.crotchHeight * m.stature,
    thighGirth: m.thigh * m.stature,
  },
}));
