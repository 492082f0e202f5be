import { bothNet, type NetLeg, netLeg } from '../net';
import { type Case, defaultLength, dieBetween, withFit, withLeg } from './cases';
import type { Line } from './line';
import * as at from './places';
import { is, type Statement, still, within } from './statement';

// The contract's lines about what was seen when the trousers were worn.

type Worn = 'sittingPull' | 'swayBack' | 'flatSeat' | 'fullSeat' | 'prominentAbdomen' | 'seated';

/** Before and after a correction of p; on the leg as it is chosen. */
function corrected(one: Case, kind: Worn, p: number): readonly [NetLeg, NetLeg] | undefined {
  return bothNet(one.project, withFit(one.project, { [kind]: p }));
}

/**
 * How far centre back went, against how far it was told to: a straight fold has to meet both seams within 6° of square, so
 * that the edge may have had to be turned about centre front, and says so; then the back gives less.
 */
const lowered = (a: NetLeg, b: NetLeg, p: number): Statement => {
  const by = at.centreLength(b, 'back') - at.centreLength(a, 'back');
  return b.leg.waistTurned === 0 ? is('centre back', by, -p) : within('centre back, turned', by, -p - 0.5, 0.5);
};

const front = (a: NetLeg, b: NetLeg): readonly Statement[] => [
  still('centre front, waist to A', at.centreLength(b, 'front') - at.centreLength(a, 'front')),
  still('centre front’s level', b.leg.front.waistPoint.y - a.leg.front.waistPoint.y),
  still('front fork', at.fork(b, 'front') - at.fork(a, 'front')),
];

/** How far a straight waist edge may still tilt on the leg on which all fits are made: tan 5.95° of the way across, less the tilt. */
function roomFor(one: Case): number | undefined {
  const known = rooms.get(one) ?? { room: roomFound(one) };
  rooms.set(one, known);
  return known.room;
}

/** Three lines ask the same of each case. */
const rooms = new WeakMap<Case, { readonly room: number | undefined }>();

function roomFound(one: Case): number | undefined {
  const reference = netLeg(
    withLeg(one.project, {
      spread: 25.4,
      straighten: 0,
      raiseWaist: 0,
      lowerCrotch: 0,
      shape: 'pyjama',
      length: 'ankle',
    }),
  );
  if (!reference) return undefined;
  const { front: f, back: b } = reference.leg;
  return Math.tan((5.95 * Math.PI) / 180) * (f.waistPoint.x - b.waistPoint.x) - at.tilt(reference);
}

/** A hem is drawn at the ankle; a longer leg's lies below it, where the lines run on at another slant: mm. */
const BELOW_ANKLE = 1.5;

const sittingPull: Line = {
  name: 'sittingPull raises centre back as far as the edge may tilt, and lengthens the back fork by the rest',
  tried: (one) => {
    const p = dieBetween(one, 6, 0, 40);
    const pair = corrected(one, 'sittingPull', p);
    const room = roomFor(one);
    if (!pair || room === undefined) return undefined;
    const [a, b] = pair;
    const up = at.centreLength(b, 'back') - at.centreLength(a, 'back');
    const out = at.fork(b, 'back') - at.fork(a, 'back');
    const hem = still('hem', at.hem(b) - at.hem(a), BELOW_ANKLE);
    return [
      // Room of blocks brought along is what it is.
      ...(one.traced ? [] : [within('room', room, 2, Number.POSITIVE_INFINITY)]),
      ...(b.leg.waistTurned === 0
        ? [is('centre back', up, Math.min(p, Math.max(0, room))), is('both together', up + out, p)]
        : [within('centre back, turned', up, -0.5, p + 0.5), within('back fork', out, -0.5, p + 0.5)]),
      ...front(a, b),
      ...(heldByTheThigh(b) || !ownHem(one) ? [] : [hem]),
    ];
  },
};

/** Neither a crop of the leg nor the block's. */
const ownHem = ({ project }: Case): boolean =>
  project.leg.shape === 'pyjama' && project.leg.length === defaultLength(project);

/** On large bodies the thigh decides the hem: then a longer fork widens it. */
function heldByTheThigh({ body, leg, choices }: NetLeg): boolean {
  const k = Math.min(1, body.hipGirth / 900);
  const limbs = Math.max(0.45 * body.footEntryGirth + 0.5 * body.kneeGirth + 130 * k, body.footEntryGirth + 40);
  const usualThigh = leg.front.crotchPoint.x - leg.back.crotchPoint.x - choices.spread + 25.4;
  return usualThigh - 0.56 * choices.ankleInseam > limbs;
}

const swayBack: Line = {
  name: 'swayBack lowers centre back alone',
  tried: (one) => {
    const p = dieBetween(one, 7, 0, 40);
    const pair = corrected(one, 'swayBack', p);
    if (!pair) return undefined;
    const [a, b] = pair;
    return [lowered(a, b, p), ...front(a, b), still('back fork', at.fork(b, 'back') - at.fork(a, 'back'))];
  },
};

const flatSeat: Line = {
  name: 'flatSeat lowers centre back and shortens the back fork',
  tried: (one) => {
    const p = dieBetween(one, 8, 0, 40);
    const pair = corrected(one, 'flatSeat', p);
    if (!pair) return undefined;
    const [a, b] = pair;
    return [lowered(a, b, p), is('back fork', at.fork(b, 'back') - at.fork(a, 'back'), -p), ...front(a, b)];
  },
};

/** How far centre back went up and the back fork out: as far as the edge may tilt behind, the rest at the fork. */
function backGrown(a: NetLeg, b: NetLeg, up: number, out: number): readonly Statement[] {
  const [rise, fork] = [at.centreLength, at.fork].map((figure) => figure(b, 'back') - figure(a, 'back')) as [
    number,
    number,
  ];
  if (b.leg.waistTurned === 0) return [is('centre back', rise, up), is('back fork', fork, out)];
  // Spread less than usual the edge is steeper: turned about centre front it may take back more than was raised.
  return [within('centre back, turned', rise, -up - out - 0.5, up + 0.5), is('back fork', fork, out)];
}

const fullSeat: Line = {
  name: 'fullSeat raises centre back as far as the edge may tilt, and lengthens the back fork by the rest of twice as much',
  tried: (one) => {
    const p = dieBetween(one, 21, 0, 40);
    const pair = corrected(one, 'fullSeat', p);
    const room = roomFor(one);
    if (!pair || room === undefined) return undefined;
    const up = Math.min(p, Math.max(0, room));
    return [...backGrown(...pair, up, 2 * p - up), ...front(...pair)];
  },
};

const prominentAbdomen: Line = {
  name: 'prominentAbdomen raises centre front alone',
  tried: (one) => {
    const p = dieBetween(one, 22, 0, 40);
    const pair = corrected(one, 'prominentAbdomen', p);
    if (!pair) return undefined;
    const [a, b] = pair;
    const back = at.centreLength(b, 'back') - at.centreLength(a, 'back');
    return [
      is('centre front', at.centreLength(b, 'front') - at.centreLength(a, 'front'), p),
      // An edge that tilts too little for a leaning centre back is turned, and there the back follows.
      b.leg.waistTurned === 0 ? still('centre back', back) : within('centre back, turned', back, -0.5, p + 0.5),
      still('forks', at.change(a, b, at.fork)),
    ];
  },
};

const seated: Line = {
  name: 'seated lowers centre front as far as the edge may tilt, lengthens the back by half and the leg by half',
  tried: (one) => {
    const p = dieBetween(one, 23, 0, 40);
    const pair = corrected(one, 'seated', p);
    const room = roomFor(one);
    if (!pair || room === undefined) return undefined;
    const [a, b] = pair;
    const down = Math.min(p / 2, Math.max(0, room));
    const up = Math.min(p / 2, Math.max(0, room - down));
    const inseam = at.inseamLength(b, 'front') - at.inseamLength(a, 'front');
    return [
      // An edge that had to be lifted after it was turned says so, and takes the front up with it.
      is(
        'centre front',
        at.centreLength(b, 'front') - at.centreLength(a, 'front'),
        -down,
        0.5 + b.leg.waistLifted + a.leg.waistLifted,
      ),
      still('front fork', at.fork(b, 'front') - at.fork(a, 'front')),
      ...backGrown(a, b, up, p / 2 - up),
      is('inseam', inseam, typeof one.project.leg.length === 'string' ? p / 2 : 0),
    ];
  },
};

export const wornLines: readonly Line[] = [sittingPull, swayBack, flatSeat, fullSeat, prominentAbdomen, seated];
