import fc from 'fast-check';
import type { Project } from '../../src/project';
import { childMedians } from '../outside/children';
import { between } from './seed';

type Body = Project['body'];

const perhaps = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined });
/** A body as a file holds it: what nobody measured isn't there. */
const measuredOnly = (body: object): Body =>
  Object.fromEntries(Object.entries(body).filter(([, value]) => value !== undefined)) as unknown as Body;

/** Half as wide again as the survey of adults on both sides (ANSUR II, 2014): rise ÷ hip 0.096–0.295, waist ÷ hip 0.70–1.22. */
const RISE_OF_HIP = [0.11, 0.33] as const;

/** Adults from small to very large, each measurement drawn on its own within its limits. */
export const adultBody: fc.Arbitrary<Body> = fc
  .record({
    hip: between(780, 1350),
    waistOfHip: between(0.7, 1.2),
    rise: between(0, 1),
    insideLeg: between(620, 1000),
    depthOfRise: between(0.5, 0.95),
    depthAsked: fc.boolean(),
    crotchMiss: perhaps(between(-60, 60)),
    frontOfCrotch: perhaps(between(0.4, 0.47)),
    highHipOfHip: perhaps(between(0.8, 1.1)),
    thighOfHip: perhaps(between(0.54, 0.68)),
    kneeOfHip: perhaps(between(0.33, 0.46)),
    footEntryGirth: perhaps(between(280, 400)),
  })
  .map((one) => {
    const [least, most] = [Math.max(130, RISE_OF_HIP[0] * one.hip), Math.min(310, RISE_OF_HIP[1] * one.hip)];
    const bodyRise = least + one.rise * (most - least);
    // The survey's estimate of the crotch length (README of the data, 2c), missed by as much as people are.
    const crotchLength =
      one.crotchMiss === undefined ? undefined : 0.93 * bodyRise + 0.39 * one.hip + 33 + one.crotchMiss;
    return measuredOnly({
      label: 'an adult',
      hipGirth: one.hip,
      waistGirth: one.waistOfHip * one.hip,
      bodyRise,
      insideLeg: one.insideLeg,
      hipDepth: one.depthAsked ? one.depthOfRise * bodyRise : undefined,
      crotchLength,
      frontCrotchLength:
        crotchLength === undefined || one.frontOfCrotch === undefined ? undefined : one.frontOfCrotch * crotchLength,
      highHipGirth: one.highHipOfHip === undefined ? undefined : one.highHipOfHip * one.hip,
      thighGirth: one.thighOfHip === undefined ? undefined : one.thighOfHip * one.hip,
      kneeGirth: one.kneeOfHip === undefined ? undefined : one.kneeOfHip * one.hip,
      footEntryGirth: one.footEntryGirth,
    });
  });

/** Children from two years: the medians of one age, each measurement up to a tenth off on its own. */
const childBody: fc.Arbitrary<Body> = fc
  .record({
    median: fc.constantFrom(...childMedians),
    size: between(0.92, 1.08),
    waist: between(0.9, 1.15),
    hip: between(0.92, 1.15),
    rise: between(0.92, 1.1),
    depth: perhaps(between(0.9, 1.05)),
    crotchMiss: perhaps(between(-40, 40)),
    frontOfCrotch: perhaps(between(0.4, 0.47)),
  })
  .map(({ median, size, waist, hip, rise, depth, crotchMiss, frontOfCrotch }) => {
    const stature = median.stature * size;
    const bodyRise = (median.waistHeight - median.crotchHeight) * stature * rise;
    const crotchLength =
      crotchMiss === undefined ? undefined : 0.93 * bodyRise + 0.39 * median.hip * stature * hip + 33 + crotchMiss;
    return measuredOnly({
      label: 'a child',
      ageYears: median.age,
      height: stature,
      waistGirth: median.waist * stature * waist,
      hipGirth: median.hip * stature * hip,
      bodyRise,
      insideLeg: median.crotchHeight * stature,
      crotchLength,
      frontCrotchLength:
        crotchLength === undefined || frontOfCrotch === undefined ? undefined : frontOfCrotch * crotchLength,
      hipDepth:
        depth === undefined
          ? undefined
          : Math.min(0.95 * bodyRise, (median.waistHeight - median.hipHeight) * stature * depth),
    });
  });

export const anyBody = fc.oneof({ weight: 3, arbitrary: adultBody }, { weight: 1, arbitrary: childBody });
