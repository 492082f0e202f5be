import { expect } from 'vitest';
import { measuredOf } from '../../src/body';
import { pathLength } from '../../src/plane';
import type { Project } from '../../src/project';
import { bothNet, type NetLeg } from './net';
import { girthAt, thighLine } from './outlines';

// How the leg answers when one number grows. Each property returns whether it could be compared: false where either leg
// is refused.

const hipOf = ({ outline, leg }: NetLeg) => girthAt(outline, leg.hipLevel);

const withBody = (project: Project, change: Partial<Project['body']>): Project => ({
  ...project,
  body: { ...project.body, ...change },
});

/** A measured crotch length holds the crotch seam as it is; without it the shares of the hip decide alone. */
export function withoutCrotch(project: Project): Project {
  const { crotchLength: _, frontCrotchLength: __, ...body } = project.body;
  return { ...project, body };
}

/** The front is a quarter of the hip less 10 mm, less than that on small bodies (practice). */
const frontOf = (hip: number): number => hip / 4 - 10 * Math.min(1, hip / 900);

/**
 * A fuller hip gives a front wider by a quarter of it, and a wider thigh line; the seat is held to the hip, so that a
 * belly, which takes its own room, is left out of it.
 */
export function fullerHipIsWider(project: Project, more: number): boolean {
  const { hipGirth = 0, waistGirth: waist = 0, highHipGirth: highHip = 0 } = project.body;
  const flat = {
    ...withBody(project, {
      waistGirth: Math.min(waist, hipGirth),
      highHipGirth: Math.min(highHip || hipGirth, hipGirth),
    }),
  };
  const pair = bothNet(flat, withBody(flat, { hipGirth: hipGirth + more }));
  if (!pair) return false;
  const front = ({ leg }: NetLeg) => leg.front.curveEnd.x;
  expect(front(pair[1]) - front(pair[0])).toBeCloseTo(frontOf(hipGirth + more) - frontOf(hipGirth), 1);
  expect(thighLine(pair[1].outline)).toBeGreaterThan(thighLine(pair[0].outline));
  return true;
}

/** More spread widens the garment by twice as much at the hip, and each leg by exactly as much at the thigh line. */
export function spreadCountsTwice(project: Project, more: number): boolean {
  const pair = bothNet(project, { ...project, leg: { ...project.leg, spread: project.leg.spread + more } });
  if (!pair) return false;
  const { leg } = pair[0];
  const inCurve = [leg.front, leg.back].some(({ curveEnd }) => leg.hipLevel > curveEnd.y);
  const grown = hipOf(pair[1]) - hipOf(pair[0]);
  // A hip line in the crotch curve moves along it when the inseams take another slant; one above its upper end, where
  // straightening found anew turns the centre line less.
  if (inCurve || project.leg.straighten === 'auto')
    expect(Math.abs(grown - 2 * more)).toBeLessThan(1 + IN_CURVE * more);
  else expect(grown).toBeCloseTo(2 * more, 1);
  expect(thighLine(pair[1].outline) - thighLine(pair[0].outline)).toBeCloseTo(more, 6);
  return true;
}

/** By this share of the spread a hip line in the curve may miss twice it: the contract's 14 for 80 on measured bodies, twice that on bodies at the limits. */
const IN_CURVE = 0.35;

/** A longer rise hangs the crotch exactly as much deeper. */
export function longerRiseIsDeeper(project: Project, more: number): boolean {
  const pair = bothNet(project, withBody(project, { bodyRise: (measuredOf(project.body).bodyRise ?? 0) + more }));
  if (!pair) return false;
  expect(pair[1].leg.crotchLevel - pair[0].leg.crotchLevel).toBeCloseTo(more, 6);
  return true;
}

/** A measured crotch length is fitted on a leg of this length, so that its depth may answer a little too (tolerance). */
const MOST_OF_LEG = 1.05;

/** A longer inside leg gives a longer inseam in every length that has a name, but hardly by more than it grew itself. */
export function longerLegIsLonger(project: Project, more: number): boolean {
  const pair = bothNet(project, withBody(project, { insideLeg: (measuredOf(project.body).insideLeg ?? 0) + more }));
  if (!pair) return false;
  const grown = pathLength(pair[1].leg.front.inseam) - pathLength(pair[0].leg.front.inseam);
  if (typeof project.leg.length !== 'string') {
    expect(grown).toBeCloseTo(0, 4);
    return true;
  }
  expect(grown).toBeGreaterThan(0.1 * more);
  expect(grown).toBeLessThanOrEqual(MOST_OF_LEG * more);
  return true;
}
