import {
  type BodyInput,
  crotchLengthExpected,
  type MeasurementKey,
  measurements,
  prepareBody,
  STARTING_BODIES,
} from '../../src/body';
import type { Chance } from './random';

/** Measurements by their keys, as a project file holds them. */
export type Measured = Readonly<Partial<Record<MeasurementKey, number>>>;

/** How far measurements of one body scatter round what goes with each other, as a share. */
const SCATTER = 0.05;
/** Beyond the starting bodies' own sizes. */
const SMALLEST = 0.75;
const LARGEST = 1.35;
/** The front part of a crotch length. */
const FRONT_PART = 0.44;
/** Where neither survey nor rule says what goes with a body, the middle of the limits scatters by this. */
const UNKNOWN_SCATTER = 0.15;

/** The four that every body brings, and what a starting body has beside them. */
function startingFigures({ oneOf, between, bell }: Chance): Measured {
  const { figures } = oneOf(STARTING_BODIES[oneOf(['woman', 'man', 'child'] as const)]);
  const [size, build] = [between(SMALLEST, LARGEST), Math.exp(0.08 * bell())];
  const scaled = Object.entries(figures).map(([key, value]) => {
    if (key === 'ageYears') return [key, value];
    const wide = key.endsWith('Girth') ? build : 1;
    return [key, value * size * wide * Math.exp(SCATTER * bell())];
  });
  return Object.fromEntries(scaled);
}

/**
 * A body whose measurements go with each other, as people's do: a starting body scaled and scattered, and of the rest of
 * the catalogue as much as was taken, scattered round what is estimated for that body.
 *
 * @param chance of this draw
 * @param taken how often a measurement that may be left out was taken
 */
export function plausibleBody(chance: Chance, taken: number): Measured {
  const figures = limited(startingFigures(chance));
  const likely = likelyFigures({ label: '', ...figures });
  const whole = chance.happens(0.5);
  const all = measurements.flatMap(({ key, required, lowest, highest, unit }) => {
    if (!required && !chance.happens(taken)) return [];
    const middle = figures[key] ?? likely[key];
    const value =
      middle === undefined
        ? (lowest + highest) / 2 + chance.bell() * UNKNOWN_SCATTER * (highest - lowest)
        : figures[key] === undefined
          ? middle * Math.exp(SCATTER * chance.bell())
          : middle;
    return [[key, whole || unit === 'years' ? Math.round(value) : value] as const];
  });
  return limited(Object.fromEntries(all));
}

/** What the surveys say goes with a body. */
function likelyFigures(input: BodyInput): Measured {
  const { waistGirth = 0, bodyRise = 0, insideLeg = 0, hipGirth = 0 } = input;
  // The rule for adults serves for children here, too: a measured one is near it.
  const crotchLength = crotchLengthExpected({ waistGirth, bodyRise, insideLeg, hipGirth })?.value ?? 0;
  const { label: _label, ...estimated } = prepareBody(input);
  return {
    ...(Object.fromEntries(Object.entries(estimated).filter(([, value]) => typeof value === 'number')) as Measured),
    outsideLeg: bodyRise + insideLeg,
    highHipGirth: (waistGirth + hipGirth) / 2,
    crotchLength,
    frontCrotchLength: FRONT_PART * crotchLength,
  };
}

/** Each measurement within the catalogue's own limits. */
function limited(body: Measured): Measured {
  const within = measurements.flatMap(({ key, lowest, highest }) => {
    const value = body[key];
    return value === undefined ? [] : [[key, Math.min(highest, Math.max(lowest, value))] as const];
  });
  return Object.fromEntries(within);
}
