import { bothNet, type NetLeg, netLeg } from '../net';
import { type Case, defaultLength, dieBetween, withLeg } from './cases';
import type { Line } from './line';
import * as at from './places';
import { is, type Statement, still, within } from './statement';

// The contract's lines about the leg's own choices: waist, crotch, spread.

/** What stays where it is whatever is done to the waist. */
const below = (before: NetLeg, after: NetLeg): readonly Statement[] => [
  still('A', at.farthest(before, after, at.upperEnd)),
  still('crotch points', at.farthest(before, after, at.crotchPoint)),
  still('forks', at.change(before, after, at.fork)),
  still('inseams', at.seamMoved(before, after, 'inseam')),
  still('hem', at.farthest(before, after, at.hemCorner)),
];

/** Along a line that leans by 8° a way up is shorter by this share of it (geometry): so much the tilt may follow, 0.6 mm for 60. */
const LEANING = 1 - Math.cos((8 * Math.PI) / 180);

const raised = (one: Case, most: number) => dieBetween(one, 0, -most, most);

const raiseWaist: Line = {
  name: 'raiseWaist moves the waist edge and nothing below A',
  tried: (one) => {
    const r = raised(one, 60);
    const before = one.project.leg.raiseWaist;
    const pair = bothNet(one.project, withLeg(one.project, { raiseWaist: before + r }));
    if (!pair) return undefined;
    const [a, b] = pair;
    const wanted = [at.wantedCrotch(a), at.wantedCrotch(b)];
    return [
      is('front, waist to A', at.centreLength(b, 'front') - at.centreLength(a, 'front'), r),
      is('back, waist to A', at.centreLength(b, 'back') - at.centreLength(a, 'back'), r),
      is('crotch length', at.crotchLength(b) - at.crotchLength(a), 2 * r),
      ...(wanted[0] === undefined ? [] : [is('wanted crotch length', (wanted[1] ?? 0) - wanted[0], 2 * r)]),
      ...below(a, b),
      still('crotch curves', at.seamMoved(a, b, 'crotch')),
      still('tilt', at.tilt(b) - at.tilt(a), 0.05 + Math.abs(r) * LEANING),
    ];
  },
};

const raiseWaistAutomatic: Line = {
  name: 'raiseWaist, straightening found anew, moves no seam below A',
  tried: (one) => {
    const r = raised(one, 60);
    // Spread less than usual, more of the straightening is used up by what is raised.
    const spread = Math.max(25.4, one.automatic.leg.spread);
    const automatic = withLeg(one.automatic, { straighten: 'auto', spread });
    const pair = bothNet(automatic, withLeg(automatic, { raiseWaist: automatic.leg.raiseWaist + r }));
    return pair && [...below(...pair), still('crotch curves', at.seamMoved(...pair, 'crotch'), 1.25)];
  },
};

/** At a length at which the hem is the leg's own and no crop of it: the usual one, or one in figures. */
const long = ({ project }: Case): Case['project'] =>
  typeof project.leg.length === 'string' ? withLeg(project, { length: defaultLength(project) }) : project;

/** The inseams stay equally long, so that the hem's level gives way by a millimetre for every 20, on steep inseams a little more: on those that nobody of the surveys has 1.41 (2,000 draws). */
const per20 = ({ measured }: Case): number => (measured ? 1.25 : 1.5) / 20;

const lowerCrotch: Line = {
  name: 'lowerCrotch moves the crotch points straight down and nothing else',
  tried: (one) => {
    const l = dieBetween(one, 1, 0, 60);
    const project = long(one);
    const before = project.leg.lowerCrotch;
    // The field ends at 100.
    const pair = bothNet(project, withLeg(project, { lowerCrotch: Math.min(100, before + l) }));
    if (!pair) return undefined;
    const [a, b] = pair;
    const lowered = b.leg.front.crotchPoint.y - a.leg.front.crotchPoint.y;
    const grown = at.crotchLength(b) - at.crotchLength(a);
    const wanted = [at.wantedCrotch(a), at.wantedCrotch(b)];
    const level = at.hemCorner(b, 'front').y - at.hemCorner(a, 'front').y;
    const named = typeof project.leg.length === 'string';
    return [
      is('front crotch point', lowered, l),
      within('crotch length', grown, 1.4 * l - 0.5, 1.85 * l + 0.5),
      ...(wanted[0] === undefined ? [] : [is('wanted crotch length', (wanted[1] ?? 0) - wanted[0], grown)]),
      still(
        'crotch points’ x',
        Math.max(...at.PARTS.map((p) => Math.abs(b.leg[p].crotchPoint.x - a.leg[p].crotchPoint.x))),
      ),
      still('forks', at.change(a, b, at.fork)),
      still('A', at.farthest(a, b, at.upperEnd)),
      still('waist points', at.farthest(a, b, at.waistPoint)),
      ...(named
        ? [
            still('hem width', at.hem(b) - at.hem(a)),
            still('hem level', level, 0.5 + per20(one) * l),
            is('inseam', at.inseamLength(b, 'front') - at.inseamLength(a, 'front'), -l),
          ]
        : [
            still('inseam', at.inseamLength(b, 'front') - at.inseamLength(a, 'front')),
            is('hem level', level, l, 0.5 + per20(one) * l),
          ]),
    ];
  },
};

const lowerCrotchCropped: Line = {
  name: 'lowerCrotch shortens the inseam of every named length by as much',
  tried: (one) => {
    const l = dieBetween(one, 1, 0, 60);
    const { length, lowerCrotch: before } = one.project.leg;
    if (typeof length !== 'string') return undefined;
    const pair = bothNet(one.project, withLeg(one.project, { lowerCrotch: Math.min(100, before + l) }));
    return pair && [is('inseam', at.inseamLength(pair[1], 'front') - at.inseamLength(pair[0], 'front'), -l)];
  },
};

/** By how much a hip line in the crotch curve may widen beyond the promise: 6 mm at a spread of 50, 14 at 80, half as much again on a few of the surveys; twice that on rises that nobody of them has. */
const inTheCurve = (s: number): number => (s <= 50 ? (6 * s) / 50 : 6 + (8 * (s - 50)) / 30);

/** A hem is drawn at the ankle; a longer leg's lies below it, where the lines run on at another slant: mm. */
const BELOW_ANKLE = 1.5;

const spread: Line = {
  name: 'spread widens thigh and hip, and no fork',
  tried: (one) => {
    const s = dieBetween(one, 2, 0, 80);
    const before = one.project.leg.spread;
    const pair = bothNet(one.project, withLeg(one.project, { spread: before + s }));
    if (!pair) return undefined;
    const [a, b] = pair;
    const curved = at.PARTS.some((part) => a.leg.hipLevel > a.leg[part].curveEnd.y + 0.01);
    const { shape } = one.project.leg;
    const follows = shape === 'block' || shape === 'straight';
    return [
      is('thigh', at.thigh(b) - at.thigh(a), s),
      within(
        'hip',
        at.hip(b) - at.hip(a),
        2 * s - 0.5,
        2 * s + 0.5 + (curved ? inTheCurve(before + s) * (one.measured ? 1.5 : 2) : 0),
      ),
      still('forks', at.change(a, b, at.fork)),
      // A cropped leg's hem is a part of its way from the thigh to the ankle.
      ...(one.project.leg.length === defaultLength(one.project)
        ? [is('hem', at.hem(b) - at.hem(a), follows ? s : 0, BELOW_ANKLE)]
        : []),
      still('back rise', at.centreLength(b, 'back') - at.centreLength(a, 'back')),
      still('front rise', at.centreLength(b, 'front') - at.centreLength(a, 'front')),
      still('tilt', at.tilt(b) - at.tilt(a)),
    ];
  },
};

const straighten: Line = {
  name: 'straighten turns what leans inwards about A, and nothing else',
  tried: (one) => {
    const t = dieBetween(one, 3, 0, 1);
    const pair = bothNet(withLeg(one.project, { straighten: 0 }), withLeg(one.project, { straighten: t }));
    if (!pair) return undefined;
    const [a, b] = pair;
    const lean = (net: NetLeg, part: at.Part) => {
      const { waistPoint, curveEnd } = net.leg[part];
      const inwards = part === 'front' ? curveEnd.x - waistPoint.x : waistPoint.x - curveEnd.x;
      return (Math.atan2(inwards, curveEnd.y - waistPoint.y) * 180) / Math.PI;
    };
    // A hundredth of a degree is a few hundredths of a millimetre at the waist.
    const leans = at.PARTS.map((part) => {
      const before = lean(a, part);
      return is(`lean, ${part}, degrees`, lean(b, part), before > 0 ? before * (1 - t) : before, 0.02);
    });
    return [
      ...leans,
      ...below(a, b),
      still('crotch length', at.crotchLength(b) - at.crotchLength(a), 2),
      within('tilt', at.tilt(b) - at.tilt(a), -0.05, one.measured ? 2.05 : 2.1),
      // Straightened wholly, everybody of the surveys stays within 5.26.
      still('crotch curves', at.seamMoved(a, b, 'crotch'), one.measured ? 5.5 : 6),
    ];
  },
};

const straightenWhole: Line = {
  name: 'straightened wholly, the tilt is at least 34.5 k where the hip is the fullest part',
  fit: true,
  tried: (one) => {
    const { waistGirth = 0, hipGirth = 0, highHipGirth = 0, crotchLength } = one.project.body;
    if (crotchLength !== undefined || Math.max(waistGirth, highHipGirth) > hipGirth) return undefined;
    // A waist that was lowered or raised has its own line.
    const net = netLeg(withLeg(one.project, { straighten: 1, raiseWaist: 0 }));
    return net && [within('tilt', at.tilt(net), 34.5 * at.smallness(net) - 0.05, Number.POSITIVE_INFINITY)];
  },
};

export const legLines: readonly Line[] = [
  raiseWaist,
  raiseWaistAutomatic,
  lowerCrotch,
  lowerCrotchCropped,
  spread,
  straighten,
  straightenWhole,
];
