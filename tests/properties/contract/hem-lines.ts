import type { Project } from '../../../src/project';
import { bothNet, type NetLeg, netLeg } from '../net';
import { type Case, defaultLength, dieBetween, withLeg } from './cases';
import type { Line } from './line';
import * as at from './places';
import { is, type Statement, still, within } from './statement';

// The contract's lines about a chosen hem girth.

const hemmed = ({ project }: Case, h: number): Project =>
  withLeg(project, { shape: { hemGirth: h }, length: defaultLength(project) });

/** What a hem doesn't move, whatever the shape was before: all above the crotch line but the crotch curves' end direction. */
const above = (a: NetLeg, b: NetLeg): readonly Statement[] => [
  still('forks', at.change(a, b, at.fork)),
  still('thigh', at.thigh(b) - at.thigh(a)),
  still('A', at.farthest(a, b, at.upperEnd)),
  still('waist points', at.farthest(a, b, at.waistPoint)),
  still(
    'front crotch point',
    Math.hypot(
      b.leg.front.crotchPoint.x - a.leg.front.crotchPoint.x,
      b.leg.front.crotchPoint.y - a.leg.front.crotchPoint.y,
    ),
  ),
];

/** How far a hem corner lies inside the plumb line under its crotch point. */
const narrowed = (net: NetLeg, part: at.Part): number =>
  Math.abs(net.leg[part].crotchPoint.x) - Math.abs(at.hemCorner(net, part).x);

const hemGirth: Line = {
  name: 'hemGirth moves the hem and nothing above the crotch line',
  tried: (one) => {
    const h = dieBetween(one, 4, 360, 560);
    const pair = bothNet(one.project, hemmed(one, h));
    if (!pair) return undefined;
    const [a, b] = pair;
    const [front, back] = [narrowed(b, 'front'), narrowed(b, 'back')];
    const n = front + back;
    return [
      is('hem', at.hem(b), h),
      ...above(a, b),
      ...(n > 0 ? [within('front’s part of the narrowing', front, 0.44 * n - 0.5, 0.5 * n + 0.5)] : []),
    ];
  },
};

const flare: Line = {
  name: 'hemGirth above the thigh line flares front and back alike',
  tried: (one) => {
    const first = netLeg(one.project);
    if (!first) return undefined;
    const h = at.thigh(first) + dieBetween(one, 5, 10, 200);
    const pair = bothNet(one.project, hemmed(one, h));
    if (!pair) return undefined;
    const [a, b] = pair;
    return [
      is('hem', at.hem(b), h),
      ...above(a, b),
      still('flare, front − back', narrowed(b, 'front') - narrowed(b, 'back')),
    ];
  },
};

export const hemLines: readonly Line[] = [hemGirth, flare];
