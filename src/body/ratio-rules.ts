import { type Phrase, say } from '../words';
import type { MeasurementKey } from './types';

const ADULTS = say`ANSUR II (NATICK/TR-15/007, 2014), least and most of 6,068 adults`;
const CHILDREN = say`AnthroKids (UM-HSRI-77-17, 1977), 998 of 1,000 children of 2–20 years`;

/** One measurement as a share of another, and between which shares people were found. */
export interface RatioRule {
  readonly id: string;
  readonly people: 'adults' | 'children' | 'all';
  /** The one more likely misread. */
  readonly part: MeasurementKey;
  readonly of: MeasurementKey;
  readonly lowest: number;
  readonly highest: number;
  readonly source: Phrase;
}

/**
 * The ratios of the surveys. Where a survey's waist is the navel and the trade's lies some 45 mm higher, the limit on
 * that side is wider by as much, and the source says so. A mid-knee is 0.95 of the survey's lower thigh. A waist up to
 * 1.25 of the hip is an ordinary body: the most among 8,302 adults of NHANES 2017–2020 is 1.24.
 */
export const RATIO_RULES: readonly RatioRule[] = [
  {
    id: 'waist-hip',
    people: 'all',
    part: 'waistGirth',
    of: 'hipGirth',
    lowest: 0.62,
    highest: 1.25,
    source: say`${ADULTS} (0.70–1.22 at the navel; a natural waist is narrower); NHANES 2017–2020 (CDC), 8,302 adults; ${CHILDREN}`,
  },
  {
    id: 'thigh-hip',
    people: 'adults',
    part: 'thighGirth',
    of: 'hipGirth',
    lowest: 0.52,
    highest: 0.69,
    source: ADULTS,
  },
  {
    id: 'thigh-hip',
    people: 'children',
    part: 'thighGirth',
    of: 'hipGirth',
    lowest: 0.48,
    highest: 0.74,
    source: CHILDREN,
  },
  {
    id: 'knee-thigh',
    people: 'adults',
    part: 'kneeGirth',
    of: 'thighGirth',
    lowest: 0.513,
    highest: 0.75,
    source: say`${ADULTS}; knee = 0.95 × lower thigh`,
  },
  {
    id: 'calf-knee',
    people: 'adults',
    part: 'calfGirth',
    of: 'kneeGirth',
    lowest: 0.8,
    highest: 1.18,
    source: say`${ADULTS}; knee = 0.95 × lower thigh`,
  },
  {
    id: 'calf-thigh',
    people: 'children',
    part: 'calfGirth',
    of: 'thighGirth',
    lowest: 0.53,
    highest: 0.8,
    source: CHILDREN,
  },
  {
    id: 'ankle-calf',
    people: 'children',
    part: 'ankleGirth',
    of: 'calfGirth',
    lowest: 0.54,
    highest: 0.84,
    source: CHILDREN,
  },
  {
    id: 'foot-ankle',
    people: 'adults',
    part: 'footEntryGirth',
    of: 'ankleGirth',
    lowest: 1.12,
    highest: 1.75,
    source: ADULTS,
  },
  {
    id: 'hip-height',
    people: 'all',
    part: 'hipGirth',
    of: 'height',
    lowest: 0.4,
    highest: 1,
    source: say`practice, wider than ${ADULTS} (0.45–0.82)`,
  },
  {
    id: 'rise-height',
    people: 'all',
    part: 'bodyRise',
    of: 'height',
    lowest: 0.066,
    highest: 0.19,
    source: say`${ADULTS}; 0.165 at the navel, 0.19 at a natural waist`,
  },
  {
    id: 'rise-hip',
    people: 'all',
    part: 'bodyRise',
    of: 'hipGirth',
    lowest: 0.11,
    highest: 0.4,
    source: say`${ADULTS} (0.096–0.295, 998 in 1,000 above 0.117), wider for a natural waist`,
  },
  {
    id: 'depth-rise',
    people: 'all',
    part: 'hipDepth',
    of: 'bodyRise',
    lowest: 0.29,
    highest: 1.17,
    source: ADULTS,
  },
  {
    id: 'inside-height',
    people: 'adults',
    part: 'insideLeg',
    of: 'height',
    lowest: 0.42,
    highest: 0.54,
    source: ADULTS,
  },
  {
    id: 'inside-height',
    people: 'children',
    part: 'insideLeg',
    of: 'height',
    lowest: 0.37,
    highest: 0.54,
    source: say`${CHILDREN}: the fold of the seat, with the crotch 0.018 of the stature above it (inferred)`,
  },
  {
    id: 'crotch-hip',
    people: 'adults',
    part: 'crotchLength',
    of: 'hipGirth',
    lowest: 0.47,
    highest: 0.83,
    source: say`${ADULTS}; 0.74 at the navel, 0.83 at a natural waist`,
  },
  {
    id: 'crotch-rise',
    people: 'adults',
    part: 'crotchLength',
    of: 'bodyRise',
    lowest: 2.1,
    highest: 5.5,
    source: say`${ADULTS} (2.29–5.4), wider for a rise taken sitting`,
  },
  {
    id: 'front-crotch',
    people: 'adults',
    part: 'frontCrotchLength',
    of: 'crotchLength',
    lowest: 0.29,
    highest: 0.58,
    source: say`${ADULTS}; the back part is 0.42–0.71`,
  },
];
