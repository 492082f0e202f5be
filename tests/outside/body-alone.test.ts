import { describe, expect, it } from 'vitest';
import { estimateLines } from '../../.house/estimate-lines';
import { surveysAreHere } from '../../.house/surveys';
import {
  type Estimate,
  estimateAlone,
  estimateRange,
  type Known,
  type MeasurementKey,
  prepareBody,
} from '../../src/body';
import { ADULTS, CHILDREN } from '../../src/body/estimate-lines';
import { adults, adultsAreHere, children, childrenAreHere, sayLeftOut } from './body-people';

if (!surveysAreHere) sayLeftOut('the lines of the estimates computed again, and their ranges against everybody');

type Asked = Parameters<typeof estimateAlone>[0];

/** What people know who were not measured for this: bases as they come, the sewist's first. */
const KNOWN: readonly (readonly MeasurementKey[])[] = [
  ['waistGirth', 'hipGirth', 'insideLeg'],
  ['waistGirth', 'hipGirth'],
  ['waistGirth', 'hipGirth', 'height'],
  ['waistGirth', 'hipGirth', 'height', 'insideLeg'],
  ['waistGirth', 'hipGirth', 'insideLeg', 'crotchLength'],
];

const only = (person: Known, keys: readonly MeasurementKey[]): Known =>
  Object.fromEntries(keys.map((key) => [key, person[key]]));

/** The share of people whose own measurement lies within the range that is told for it. */
function shareWithin(people: readonly Known[], key: Asked, known: readonly MeasurementKey[]): number {
  const found = people.map((person) => {
    const estimate = estimateAlone(key, {
      ...only(
        person,
        known.filter((one) => one !== key),
      ),
      ageYears: person.ageYears,
    });
    const [least, most] = estimateRange(estimate as Estimate);
    const own = person[key] ?? Number.NaN;
    return own >= least && own <= most;
  });
  return found.filter(Boolean).length / found.length;
}

// Sources: ANSUR II, NATICK/TR-15/007 (2014); UM-HSRI-77-17 (1977).
describe('estimates of one measurement alone', () => {
  it.runIf(surveysAreHere)('stand on lines that are what the surveys give today', () => {
    expect({ adults: ADULTS, children: CHILDREN }).toEqual(estimateLines());
  });

  const grown = adultsAreHere ? adults().filter(({ ageYears = 0 }) => ageYears >= 18) : [];

  it.runIf(adultsAreHere).each(['bodyRise', 'insideLeg', 'hipDepth', 'crotchLength'] as const)(
    'of the %s hold nine adults in ten, women and men alike, by whatever is known',
    (key) => {
      expect(grown.length).toBeGreaterThan(6000);
      for (const known of KNOWN) {
        const [women, men] = ['f', 'm'].map((sex) =>
          shareWithin(
            grown.filter((one) => one.sex === sex),
            key,
            known,
          ),
        );
        console.log(`${key} by ${known.join(', ')}: ${women?.toFixed(3)} of women, ${men?.toFixed(3)} of men`);
        // Women and men differ in what no line knows: whoever sews is told one range for both.
        for (const share of [women, men]) {
          expect(share).toBeGreaterThan(0.84);
          expect(share).toBeLessThan(0.96);
        }
      }
    },
  );

  it.runIf(childrenAreHere)(
    'of a child’s rise and inside leg lie as near as they say, by height, age or the leg',
    () => {
      const taken = childrenAreHere ? children() : [];
      for (const known of [['height'], ['ageYears'], []] as const) {
        const leg = shareWithin(taken, 'insideLeg', ['waistGirth', 'hipGirth', 'ageYears', ...known]);
        console.log(`children’s inside leg, ${known.join() || 'nothing more'}: ${leg.toFixed(3)}`);
        expect(leg).toBeGreaterThan(0.86);
      }
      const rise = shareWithin(taken, 'bodyRise', ['waistGirth', 'hipGirth', 'height', 'insideLeg']);
      console.log(`children’s rise: ${rise.toFixed(3)}`);
      expect(rise).toBeGreaterThan(0.86);
    },
  );

  it.runIf(adultsAreHere)(
    'widen what leans on them: hip depth and foot entry hold nine in ten where the rise is estimated',
    () => {
      for (const key of ['hipDepth', 'footEntryGirth', 'waistToKnee'] as const) {
        const within = grown.filter(({ waistGirth, hipGirth, insideLeg, [key]: own }) => {
          const body = prepareBody({ label: '', waistGirth, hipGirth, insideLeg, bodyRise: 'estimated', ageYears: 30 });
          const [least, most] = estimateRange(body.estimates.find((one) => one.key === key) as Estimate);
          return own !== undefined && own >= least && own <= most;
        });
        console.log(`${key} beside an estimated rise: ${(within.length / grown.length).toFixed(3)}`);
        expect(within.length / grown.length).toBeGreaterThan(0.86);
      }
    },
  );
});
