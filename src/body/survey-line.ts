import { inside, inTurn, mm, number, type Phrase, say } from '../words';
import { measurementName } from './catalogue';
import type { MeasurementKey } from './types';

/** One measurement as a straight line of others: millimetres, an age in years. */
export interface SurveyLine {
  readonly intercept: number;
  readonly by: Readonly<Partial<Record<MeasurementKey, number>>>;
  /** Standard deviation of what people measure beyond it. */
  readonly spread: number;
  /** How many were measured for it. */
  readonly people: number;
}

/** Lines by what they tell, the surest first. */
export interface SurveyLines {
  readonly adults: Readonly<Record<'bodyRise' | 'insideLeg' | 'hipDepth' | 'crotchLength', readonly SurveyLine[]>>;
  readonly children: Readonly<Record<'height' | 'waistHeight' | 'insideLeg', readonly SurveyLine[]>>;
}

/** A figure that a line leans on: measured, or an estimate with its own spread. */
export interface Figure {
  readonly value: number;
  readonly spread: number;
}

/** What is known of a body. */
export type Figures = Readonly<Partial<Record<MeasurementKey, Figure>>>;

/** What a line comes to. */
export interface LineTold extends Figure {
  readonly from: readonly MeasurementKey[];
  readonly sum: Phrase;
}

/**
 * What the surest of some lines comes to, among those whose measurements are all known; what is itself an estimate
 * widens the spread by its own.
 *
 * @returns undefined where each of them lacks something
 */
export function surestLine(lines: readonly SurveyLine[], known: Figures): LineTold | undefined {
  const told = lines.flatMap((line) => lineTold(line, known) ?? []);
  return told.reduce<LineTold | undefined>((best, one) => (best && best.spread <= one.spread ? best : one), undefined);
}

function lineTold({ intercept, by, spread }: SurveyLine, known: Figures): LineTold | undefined {
  const from = Object.keys(by) as MeasurementKey[];
  let value = intercept;
  let wide = spread;
  const terms: Phrase[] = [];
  for (const key of from) {
    const [figure, part] = [known[key], by[key]];
    if (figure === undefined || part === undefined) return undefined;
    value += part * figure.value;
    wide = Math.hypot(wide, part * figure.spread);
    const [size, name] = [number(Math.abs(part), 3), inside(measurementName(key))];
    const of = key === 'ageYears' ? number(figure.value, 1) : mm(figure.value);
    terms.push(part < 0 ? say`− ${size} × ${name} ${of}` : say`+ ${size} × ${name} ${of}`);
  }
  return { value, spread: wide, from, sum: inTurn([say`${mm(intercept)}`, ...terms]) };
}
