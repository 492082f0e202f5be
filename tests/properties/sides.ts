import { expect } from 'vitest';
import { type Leg, legOfSide, NO_DIFFERENCES, type SideDifferences } from '../../src/leg';
import { distance, type Point, pathEnd, pathLength, pathStart } from '../../src/plane';
import type { Project } from '../../src/project';
import { Refusal } from '../../src/words';
import { expectPlainRefusal, type NetLeg, netLeg } from './net';

// What each difference between left and right must move, and what it must not: its contract lines, ±0.5 mm unless said.
// Each property returns whether it could be compared: false where the leg is refused.

const CLOSE = 0.5;

const near = (found: number, wanted: number, within = CLOSE): void => {
  expect(Math.abs(found - wanted)).toBeLessThanOrEqual(within);
};
const still = (a: Point, b: Point): void => expect(distance(a, b)).toBeLessThanOrEqual(1e-9);

/** Undefined where a chosen hem can't be reached on a leg so much wider, which is refused. */
function sideOf({ leg, joined, choices }: NetLeg, more: Partial<SideDifferences>): Leg | undefined {
  try {
    return legOfSide(leg, joined, choices, { ...NO_DIFFERENCES, ...more });
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    expectPlainRefusal(error.problems);
    return undefined;
  }
}

const thigh = ({ front, back }: Leg) => front.crotchPoint.x - back.crotchPoint.x;
const hip = ({ front, back }: Leg) => front.hipPoint.x - back.hipPoint.x;
const fork = (leg: Leg, part: 'front' | 'back') => Math.abs(leg[part].crotchPoint.x - leg[part].curveEnd.x);
const tilt = ({ front, back }: Leg) => front.waistPoint.y - back.waistPoint.y;

/** Whatever differs, the seams between the legs are equally long, front to front and back to back: ±1 on every body. */
function seamsMeet(leg: Leg, own: Leg): void {
  for (const part of ['front', 'back'] as const) {
    near(distance(own[part].waistPoint, own[part].curveEnd), distance(leg[part].waistPoint, leg[part].curveEnd), 1e-9);
    near(pathLength(own[part].crotch), pathLength(leg[part].crotch), 1);
    near(fork(own, part), fork(leg, part));
  }
  near(tilt(own), tilt(leg), 1e-9);
}

/** Both inseams of a leg stay as equal as they were. */
function inseamsEqual(leg: Leg, own: Leg): void {
  const unequal = ({ front, back }: Leg) => pathLength(front.inseam) - pathLength(back.inseam);
  near(unequal(own), unequal(leg), 0.05);
}

/** The hem belongs to foot and knee, or was chosen: only the blocks' own inseams and straight ones widen it. */
function hemStays({ leg: { length, shape }, hem }: Project, leg: Leg, own: Leg): void {
  // A leg that ends higher, for a band or by its length, is narrower there by what it still has to narrow.
  const shown = (length === 'full' || length === 'ankle') && hem.finish !== 'ribCuff' && hem.finish !== 'contrastBand';
  if (typeof shape === 'object' || (shape === 'pyjama' && shown)) near(pathLength(own.hem), pathLength(leg.hem));
}

/** A fuller hip moves the leg's front and back apart by half each: hip and thigh + p; forks, tilt, inseam length stay. */
export function fullerHipSpreadsOneLeg(project: Project, more: number): boolean {
  const net = netLeg(project);
  if (!net) return false;
  const own = sideOf(net, { fullerHip: more });
  if (!own) return false;
  near(hip(own) - hip(net.leg), more);
  near(thigh(own) - thigh(net.leg), more);
  near(own.front.waistPoint.x - net.leg.front.waistPoint.x, more / 2);
  hemStays(project, net.leg, own);
  seamsMeet(net.leg, own);
  inseamsEqual(net.leg, own);
  return true;
}

/** A fuller seat moves the back alone: front waist, front fork and front crotch point stay where they were. */
export function fullerSeatMovesTheBack(project: Project, more: number): boolean {
  const net = netLeg(project);
  if (!net) return false;
  const own = sideOf(net, { fullerSeat: more });
  if (!own) return false;
  near(hip(own) - hip(net.leg), more);
  near(thigh(own) - thigh(net.leg), more);
  still(own.front.waistPoint, net.leg.front.waistPoint);
  still(own.front.curveEnd, net.leg.front.curveEnd);
  near(own.front.crotchPoint.x, net.leg.front.crotchPoint.x);
  hemStays(project, net.leg, own);
  seamsMeet(net.leg, own);
  inseamsEqual(net.leg, own);
  return true;
}

/** A higher hip moves the waist edge over the side up, and no other line: both its ends stay. */
export function higherHipRaisesTheSide(project: Project, more: number): boolean {
  const net = netLeg(project);
  if (!net) return false;
  const own = sideOf(net, { higherHip: more });
  if (!own) return false;
  expect(own.front).toBe(net.leg.front);
  expect(own.back).toBe(net.leg.back);
  still(pathStart(own.waistEdge), pathStart(net.leg.waistEdge));
  still(pathEnd(own.waistEdge), pathEnd(net.leg.waistEdge));
  const [back, front] = [net.leg.back.waistPoint, net.leg.front.waistPoint];
  const [toSide] = own.waistEdge;
  const side = toSide?.[3] ?? back;
  const level = back.y + ((side.x - back.x) / (front.x - back.x)) * (front.y - back.y);
  near(level - side.y, more, 1e-6);
  return true;
}

/** A longer leg moves both inseams' lower ends down by as much: hem girth, forks, crotch points and the waist stay. */
export function longerLegLengthensOneLeg(project: Project, more: number): boolean {
  const net = netLeg(project);
  if (!net) return false;
  const own = sideOf(net, { longerLeg: more });
  if (!own) return false;
  for (const part of ['front', 'back'] as const) {
    near(pathLength(own[part].inseam) - pathLength(net.leg[part].inseam), more, 0.05);
    still(own[part].crotchPoint, net.leg[part].crotchPoint);
    still(own[part].waistPoint, net.leg[part].waistPoint);
  }
  near(pathLength(own.hem), pathLength(net.leg.hem));
  if (own.kneeLevel !== undefined && net.leg.kneeLevel !== undefined) {
    const sank = own.kneeLevel - net.leg.kneeLevel;
    expect(sank).toBeGreaterThanOrEqual(0);
    // A slanting inseam that grows by so much reaches a little deeper.
    expect(sank).toBeLessThanOrEqual(1.1 * more + CLOSE);
  }
  seamsMeet(net.leg, own);
  inseamsEqual(net.leg, own);
  return true;
}

/** All of them together leave legs that can be sewn to each other. */
export function sidesCanBeSewn(project: Project, more: number): boolean {
  const net = netLeg(project);
  if (!net) return false;
  const own = sideOf(net, { fullerHip: more, fullerSeat: more / 2, higherHip: more / 2, longerLeg: more });
  if (!own) return false;
  seamsMeet(net.leg, own);
  inseamsEqual(net.leg, own);
  return true;
}
