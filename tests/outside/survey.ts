import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Project } from '../../src/project';
import { checkedProject } from '../../src/project/schema';

/** One measured person, in the program's keys, millimetres. */
export interface SurveyBody {
  readonly id: string;
  readonly sex: 'f' | 'm';
  readonly body: Project['body'];
  /** The front part of the crotch length; kept apart, so that a body is drafted by it only where that is asked for. */
  readonly frontCrotchLength?: number;
  /** How deep the body is at the seat, front to back. */
  readonly seatDepth?: number;
}

const FILE = fileURLToPath(new URL('../../../shared/data/ansur2_pants.csv', import.meta.url));

/** Whether the survey lies beside this checkout. */
export const surveyIsHere = existsSync(FILE);

/**
 * The 6,068 people of ANSUR II (*2012 Anthropometric Survey of U.S. Army Personnel*, NATICK/TR-15/007, 2014), waist at
 * the navel: rise = waist height − crotch height, hip depth = waist height − hip height, mid-knee = 0.95 × lower thigh.
 * Where the file is not beside the checkout: the percentile bodies below.
 */
export function surveyBodies(): readonly SurveyBody[] {
  return surveyIsHere ? measuredBodies(FILE) : percentileBodies;
}

function measuredBodies(file: string): readonly SurveyBody[] {
  const [head = '', ...lines] = readFileSync(file, 'utf8').trim().split('\n');
  const columns = head.split(',');
  return lines.map((line) => {
    const cells = line.split(',');
    const at = (name: string): number => Number(cells[columns.indexOf(name)]);
    return {
      id: cells[0] ?? '',
      sex: cells[columns.indexOf('sex')] as 'f' | 'm',
      body: {
        label: cells[0] ?? '',
        waistGirth: at('waist_girth'),
        hipGirth: at('hip_girth'),
        bodyRise: at('waist_height') - at('crotch_height'),
        hipDepth: at('waist_height') - at('hip_height'),
        insideLeg: at('crotch_height'),
        crotchLength: at('crotch_length_total'),
        thighGirth: at('thigh_girth'),
        kneeGirth: 0.95 * at('knee_girth'),
        calfGirth: at('calf_girth'),
        ankleGirth: at('ankle_girth'),
        footEntryGirth: at('heel_ankle_girth'),
        height: at('stature'),
      },
      frontCrotchLength: at('crotch_length_total') - at('crotch_length_posterior'),
      seatDepth: at('buttock_depth'),
    };
  });
}

// Percentiles 5, 25, 50, 75, 95 of each measurement on its own (ANSUR II, as above): no real persons, but the file's spread.
const PERCENTILES = {
  f: {
    waistGirth: [710, 790, 852, 925, 1040],
    hipGirth: [901, 969, 1018, 1069, 1156],
    bodyRise: [164, 184, 198, 212, 232],
    hipDepth: [105, 131, 147, 164, 185],
    insideLeg: [712, 753, 780, 812, 857],
    crotchLength: [553, 591, 619, 649, 692],
    thighGirth: [527, 579, 613, 651, 711],
    kneeGirth: [330, 358, 378, 401, 442],
    footEntryGirth: [287, 300, 310, 320, 337],
    height: [1525, 1586, 1626, 1672, 1740],
  },
  m: {
    waistGirth: [768, 857, 937, 1016, 1131],
    hipGirth: [899, 967, 1017, 1068, 1149],
    bodyRise: [176, 197, 211, 224, 246],
    hipDepth: [123, 151, 170, 187, 210],
    insideLeg: [771, 814, 845, 876, 925],
    crotchLength: [549, 590, 620, 652, 701],
    thighGirth: [532, 586, 624, 662, 723],
    kneeGirth: [341, 368, 388, 408, 440],
    footEntryGirth: [317, 333, 343, 354, 372],
    height: [1648, 1710, 1755, 1802, 1870],
  },
} as const;

const percentileBodies: readonly SurveyBody[] = (['f', 'm'] as const).flatMap((sex) =>
  [0, 1, 2, 3, 4].map((i) => ({
    id: `${sex}-percentile-${[5, 25, 50, 75, 95][i]}`,
    sex,
    body: {
      label: `${sex} ${[5, 25, 50, 75, 95][i]} %`,
      ...Object.fromEntries(Object.entries(PERCENTILES[sex]).map(([key, values]) => [key, values[i]])),
    },
  })),
);

/** A project for a body, with everything else left at its default unless said otherwise. */
export function projectFor(body: object, rest: object = {}): Project {
  return checkedProject({ format: 'legwork-project', version: 2, name: 'A body', body, ...rest }).project;
}

/** One large sheet: for tests that look at the leg and not at the paper, which is laid quickly then. */
export const ONE_SHEET = { paper: { sheet: 'A0' } } as const;

/** Prints how a figure is distributed, so that a reader of the log sees more than a pass. */
export function distribution(name: string, values: readonly number[], decimals = 2): string {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (share: number) =>
    (sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN).toFixed(decimals);
  return `${name.padEnd(34)} min ${at(0)}  1 % ${at(0.01)}  5 % ${at(0.05)}  50 % ${at(0.5)}  95 % ${at(0.95)}  99 % ${at(0.99)}  max ${at(1)}`;
}
