import { expect } from 'vitest';
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

/** A fuller hip gives a wider hip, by as much as the fullest part grew, and a wider thigh line. */
export function fullerHipIsWider(project: Project, more: number): boolean {
  const wider = withBody(project, { hipGirth: (project.body.hipGirth ?? 0) + more });
  const pair = bothNet(project, wider);
  if (!pair) return false;
  const fullest = ({ body: b }: Project) => Math.max(b.waistGirth ?? 0, b.hipGirth ?? 0, b.highHipGirth ?? 0);
  expect(hipOf(pair[1]) - hipOf(pair[0])).toBeCloseTo(fullest(wider) - fullest(project), 1);
  expect(thighLine(pair[1].outline)).toBeGreaterThan(thighLine(pair[0].outline));
  return true;
}

/** More spread widens the garment by exactly twice as much at the hip, and each leg by as much at the thigh line. */
export function spreadCountsTwice(project: Project, more: number): boolean {
  const pair = bothNet(project, { ...project, leg: { ...project.leg, spread: project.leg.spread + more } });
  if (!pair) return false;
  expect(hipOf(pair[1]) - hipOf(pair[0])).toBeCloseTo(2 * more, 1);
  const hipLine = ({ leg }: NetLeg) => 2 * (leg.front.hipPoint.x - leg.back.hipPoint.x);
  expect(hipLine(pair[1]) - hipLine(pair[0])).toBeCloseTo(2 * more, 6);
  // Where the crotch length is held, automatic straightening changes with the spread, and the extensions with it.
  if (project.body.crotchLength === undefined)
    expect(thighLine(pair[1].outline) - thighLine(pair[0].outline)).toBeCloseTo(more, 6);
  return true;
}

/** A longer rise hangs the crotch exactly as much deeper. */
export function longerRiseIsDeeper(project: Project, more: number): boolean {
  const pair = bothNet(project, withBody(project, { bodyRise: (project.body.bodyRise ?? 0) + more }));
  if (!pair) return false;
  expect(pair[1].leg.crotchLevel - pair[0].leg.crotchLevel).toBeCloseTo(more, 6);
  return true;
}

/** A longer inside leg gives a longer inseam in every length that has a name, but less than it grew itself. */
export function longerLegIsLonger(project: Project, more: number): boolean {
  const pair = bothNet(project, withBody(project, { insideLeg: (project.body.insideLeg ?? 0) + more }));
  if (!pair) return false;
  const grown = pathLength(pair[1].leg.front.inseam) - pathLength(pair[0].leg.front.inseam);
  if (typeof project.leg.length !== 'string') {
    expect(grown).toBeCloseTo(0, 4);
    return true;
  }
  expect(grown).toBeGreaterThan(0.1 * more);
  expect(grown).toBeLessThan(more);
  return true;
}
