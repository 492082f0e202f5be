import { checksOf } from '../../../src/project';
import { bothNet, type NetLeg, netLeg } from '../net';
import { draftOrRefusal } from '../outlines';
import { type Case, dieBetween, withBody, withLeg } from './cases';
import type { Line } from './line';
import * as at from './places';
import { is, type Statement, still, within } from './statement';

// The contract's lines about a measured crotch length, its front part, and a growing waist. “λ” is how far the fit had to
// go: to ±1 by rise and tilt, to ±2 by depth, to ±3 by the forks.

const lambda = ({ drafted }: NetLeg): number => drafted.blocks.crotchFit;

/** The hip and its ease. */
const seat = ({ body }: NetLeg, { project }: Case): number =>
  body.hipGirth + (project.block.source === 'drafted' ? project.block.hipEase : 0);

/** The widths that forks are shares of. */
const widths = (net: NetLeg, one: Case): Readonly<Record<at.Part, number>> => {
  const balance = (one.project.block.source === 'drafted' ? one.project.block.balance : 0) * at.smallness(net);
  const quarter = seat(net, one) / 4;
  return { front: quarter - balance, back: quarter + balance };
};

/** Before and after the crotch length grew by a millimetre or many; the front part told apart has its own line. */
function longer(one: Case): { readonly pair: readonly [NetLeg, NetLeg]; readonly x: number } | undefined {
  const { crotchLength, frontCrotchLength } = one.project.body;
  if (crotchLength === undefined || frontCrotchLength !== undefined) return undefined;
  const x = dieBetween(one, 9, 1, 70);
  // From below, so that all three stages are met.
  const start = crotchLength + dieBetween(one, 10, -90, 90);
  const pair = bothNet(
    withBody(one.project, { crotchLength: start }),
    withBody(one.project, { crotchLength: start + x }),
  );
  return pair && { pair, x };
}

const crotchByRise: Line = {
  name: 'crotchLength, as far as rise and tilt go, moves centre back and front alone',
  fit: true,
  tried: (one) => {
    const { pair, x } = longer(one) ?? {};
    if (!pair || !x || pair.some((net) => Math.abs(lambda(net)) >= 1)) return undefined;
    const [a, b] = pair;
    const up = (part: at.Part) => at.centreLength(b, part) - at.centreLength(a, part);
    const { waistPoint: f } = b.leg.front;
    const { waistPoint: k } = b.leg.back;
    const across = f.x - k.x - b.choices.spread;
    return [
      within('centre front', up('front'), -0.5, up('back') + 0.5),
      within('centre back', up('back'), -0.5, x + 0.5),
      is('crotch length', at.crotchLength(b) - at.crotchLength(a), x),
      within('tilt', at.tilt(b), -100, Math.min(65 * at.smallness(b), Math.tan((5.72 * Math.PI) / 180) * across) + 0.5),
      still('crotch line', b.leg.front.crotchPoint.y - a.leg.front.crotchPoint.y),
      still('forks', at.change(a, b, at.fork)),
      still('thigh', at.thigh(b) - at.thigh(a)),
      still('hem', at.hem(b) - at.hem(a)),
    ];
  },
};

const unfitted = (one: Case): NetLeg | undefined => {
  const { crotchLength: _, frontCrotchLength: __, ...body } = one.project.body;
  return netLeg({ ...one.project, body });
};

const crotchByDepth: Line = {
  name: 'crotchLength, as far as the depth goes, moves no fork',
  fit: true,
  tried: (one) => {
    const { pair } = longer(one) ?? {};
    const plain = unfitted(one);
    if (!pair || !plain) return undefined;
    const [a, b] = pair;
    const deep = pair.filter((net) => Math.abs(lambda(net)) >= 1 && Math.abs(lambda(net)) < 2);
    if (deep.length === 0 || pair.some((net) => Math.abs(lambda(net)) >= 2)) return undefined;
    const k = at.smallness(plain);
    const moved = (net: NetLeg) => net.leg.front.crotchPoint.y - plain.leg.front.crotchPoint.y;
    return [
      ...deep.map((net) => within('crotch line', moved(net), -10 * k - 0.5, 25 * k + 0.5)),
      // A slides along a leaning back when it lies deeper, so that both forks are looked at where they show.
      still('thigh, both forks together', at.thigh(b) - at.thigh(a)),
      still('front fork', at.fork(b, 'front') - at.fork(a, 'front')),
    ];
  },
};

const crotchByForks: Line = {
  name: 'crotchLength, where the forks move, keeps them in their bounds and moves neither waist edge nor crotch line',
  fit: true,
  tried: (one) => {
    const { pair } = longer(one) ?? {};
    if (!pair?.every((net) => Math.abs(lambda(net)) >= 2)) return undefined;
    const [a, b] = pair;
    const bounds = pair.flatMap((net) => {
      const w = widths(net, one);
      return [
        within('front fork', at.fork(net, 'front'), 0.22 * w.front - 0.5, 0.32 * w.front + 0.5),
        within('back fork', backExtension(net), 0.37 * w.back - 0.5, 0.5 * w.back + 0.5),
      ];
    });
    const sameSide = lambda(a) > 0 === lambda(b) > 0;
    const kept: readonly Statement[] = sameSide
      ? [
          still('waist points', at.farthest(a, b, at.waistPoint)),
          still('crotch line', b.leg.front.crotchPoint.y - a.leg.front.crotchPoint.y),
        ]
      : [];
    return [...bounds, ...kept];
  },
};

/** The fork beyond the block's width: what the fit bounds. A lean carries A inwards of it or, below the hip line, out. */
const backExtension = ({ drafted }: NetLeg): number => drafted.blocks.extensionBack;

const crotchRest: Line = {
  name: 'crotchLength that no fit reaches is told',
  fit: true,
  tried: (one) => {
    const { crotchLength } = one.project.body;
    if (crotchLength === undefined) return undefined;
    const far = withBody(one.project, { crotchLength: crotchLength + (one.dice[11] ?? 0) * 200 - 100 });
    const net = netLeg(far);
    if (!net || Math.abs(lambda(net)) < 2.9999) return undefined;
    const { crotchRest: rest } = net.drafted.blocks;
    if (Math.abs(rest) <= 15.5) return [within('rest', Math.abs(rest), 0.0001, Number.POSITIVE_INFINITY)];
    const drafted = draftOrRefusal(far);
    const check = drafted && checksOf(drafted).find(({ id }) => id === 'crotch-length');
    return [
      within('rest', Math.abs(rest), 0.0001, Number.POSITIVE_INFINITY),
      is('a check says so', check && check.verdict !== 'good' ? 1 : 0, 1),
    ];
  },
};

/** So far the inseam point may go, mm (2b-contract: 15; 22 reaches the front part of four bodies in five). */
const MOST_SHIFT = 22.01;

const frontPart: Line = {
  name: 'frontCrotchLength moves the inseam point by 22 at most and keeps the forks’ sum',
  fit: true,
  tried: (one) => {
    const { crotchLength } = one.project.body;
    if (crotchLength === undefined) return undefined;
    const { frontCrotchLength: _, ...body } = one.project.body;
    const without = { ...one.project, body };
    const part = crotchLength * dieBetween(one, 12, 0.36, 0.5);
    const pair = bothNet(without, withBody(without, { frontCrotchLength: part }));
    if (!pair) return undefined;
    const [a, b] = pair;
    const w = widths(b, one);
    const thirdStage = pair.some((net) => Math.abs(lambda(net)) > 2);
    return [
      ...(thirdStage
        ? []
        : [
            still('inseam point', at.fork(b, 'front') - at.fork(a, 'front'), MOST_SHIFT),
            // A moves along a leaning centre line when its fork changes, so that the sum is looked at where it shows.
            still('thigh, both forks together', at.thigh(b) - at.thigh(a)),
          ]),
      within('front fork', at.fork(b, 'front'), 0.22 * w.front - 0.5, 0.34 * w.front + 0.5),
    ];
  },
};

const growingWaist: Line = {
  name: 'waistGirth beyond the hip leans centre front out before it widens the seat',
  fit: true,
  tried: (one) => {
    const { hipGirth = 0 } = one.project.body;
    const start = hipGirth * dieBetween(one, 13, 1, 1.1);
    const end = start + dieBetween(one, 14, 5, 0.12 * hipGirth);
    // A high hip that is fuller than either would decide instead, and an estimated hip depth would follow the waist.
    const hipDepth = netLeg(one.project)?.body.hipDepth;
    const grown = (waistGirth: number) =>
      withBody(one.project, {
        waistGirth,
        highHipGirth: Math.min(waistGirth, hipGirth),
        ...(hipDepth === undefined ? {} : { hipDepth }),
      });
    // How far the front leans out is asked at the waist edge itself, and the hip before a centre line is turned.
    const asDrafted = { raiseWaist: 0, straighten: 0 };
    const pair = bothNet(withLeg(grown(start), asDrafted), withLeg(grown(end), asDrafted));
    if (!pair) return undefined;
    const [a, b] = pair;
    const out = (net: NetLeg) => {
      const { waistPoint, curveEnd } = net.leg.front;
      return { by: waistPoint.x - curveEnd.x, degrees: angle(waistPoint.x - curveEnd.x, curveEnd.y - waistPoint.y) };
    };
    const waistEase = one.project.block.source === 'drafted' ? one.project.block.waistEase : 0;
    const missing = (end + waistEase - seat(b, one)) / 2 - out(b).by;
    const lean = out(b).degrees;
    if (missing > 25.4) return [within('lean of centre front, degrees', lean, out(a).degrees - 0.2, 8.02)];
    // A hip line above A crosses the line that leans out: there the garment is wider by so much, and told as ease.
    // One in the crotch curve follows the curve, which leaves a leaning line in another direction.
    const curved = at.PARTS.some((part) => b.leg.hipLevel > b.leg[part].curveEnd.y + 0.01);
    const leaning =
      2 * Math.max(0, b.leg.front.curveEnd.y - b.leg.hipLevel) * Math.tan((Math.max(0, lean) * Math.PI) / 180);
    return [
      within('lean of centre front, degrees', lean, out(a).degrees - 0.2, 8.02),
      still('front width', b.leg.front.curveEnd.x - a.leg.front.curveEnd.x),
      ...(pair.every((net) => lambda(net) === 0)
        ? [within('finished hip', at.hip(b) - at.hip(a), curved ? -6 : -0.5, leaning + 0.5)]
        : []),
    ];
  },
};

const angle = (across: number, down: number): number => (Math.atan2(across, down) * 180) / Math.PI;

export const fitLines: readonly Line[] = [
  crotchByRise,
  crotchByDepth,
  crotchByForks,
  crotchRest,
  frontPart,
  growingWaist,
];
