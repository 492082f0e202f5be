import { curvesOneWay } from '../../../src/check';
import {
  type Point,
  pathEnd,
  pathEndWay,
  pathLength,
  pathStart,
  pathStartWay,
  subtract,
  unit,
} from '../../../src/plane';
import { type NetLeg, netLeg } from '../net';
import { dieBetween, withLeg } from './cases';
import type { Line } from './line';
import * as at from './places';
import { is, still, within } from './statement';

// What the contract says of every leg.

const degreesOf = (radians: number): number => (radians * 180) / Math.PI;

/** The angle from one direction to another, degrees, −180…180. */
const turn = (a: Point, b: Point): number => degreesOf(Math.atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y));

/** The corner inside the outline at a crotch point: between the crotch curve's end and the inseam's start. */
const crotchCorner = ({ leg }: NetLeg, part: at.Part): number =>
  180 - Math.abs(turn(pathEndWay(leg[part].crotch), pathStartWay(leg[part].inseam)));

const seamsMeet: Line = {
  name: 'always: equal inseams, a smooth crotch, square hem and waist',
  tried: ({ project, traced }) => {
    const net = netLeg(project);
    if (!net) return undefined;
    const { leg } = net;
    const edge = unit(subtract(pathEnd(leg.waistEdge), pathStart(leg.waistEdge)));
    const hem = unit(subtract(pathStart(leg.hem), pathEnd(leg.hem)));
    return [
      // Blocks brought along may have unequal inseams of their own, and a block's shape keeps them.
      is('front inseam − back', pathLength(leg.front.inseam) - pathLength(leg.back.inseam), 0, 0.01),
      within('crotch, degrees', crotchCorner(net, 'front') + crotchCorner(net, 'back'), 178, 182),
      is('curvature changes its sign', at.PARTS.every((part) => curvesOneWay(leg[part].crotch)) ? 0 : 1, 0),
      is('parts of the waist edge', leg.waistEdge.length, 1),
      // Centre back leans in by 8° at most, centre front out by as much.
      ...(traced
        ? []
        : [
            within('lean of centre front, degrees', leg.front.lean, -8.02, 0.02),
            within('lean of centre back', leg.back.lean, -0.02, 8.06),
          ]),
      ...at.PARTS.flatMap((part) => [
        still(`waist edge off square, ${part}`, 90 - Math.abs(turn(centreWay(net, part), edge)), 6.001),
        still(`hem off square, ${part}`, 90 - Math.abs(turn(pathEndWay(leg[part].inseam), hem)), 6.001),
      ]),
      ...(traced
        ? []
        : [
            is(
              'rise ease as told',
              net.drafted.blocks.riseEase - (leg.crotchLevel - project.leg.lowerCrotch - net.body.bodyRise),
              0,
              0.01,
            ),
          ]),
    ];
  },
};

const centreWay = ({ leg }: NetLeg, part: at.Part): Point => unit(subtract(leg[part].curveEnd, leg[part].waistPoint));

const opening: Line = {
  name: 'always: a woven at the usual spread passes everybody of the surveys, nothing lowered',
  fit: true,
  // A random body may have a belly that nobody of the surveys has.
  tried: ({ automatic, measured }) => {
    if (!measured) return undefined;
    const net = netLeg(
      withLeg(automatic, { spread: 25.4, straighten: 'auto', raiseWaist: Math.max(0, automatic.leg.raiseWaist) }),
    );
    return net && [within('opening − needed', net.opening - net.needed, -0.005, Number.POSITIVE_INFINITY)];
  },
};

const choicesAlone: Line = {
  name: 'always: leg, hem and waist change neither λ nor forks nor blocks',
  fit: true,
  tried: (one) => {
    const before = netLeg(one.project);
    const after = netLeg({
      ...withLeg(one.project, {
        spread: dieBetween(one, 15, 0, 80),
        straighten: dieBetween(one, 16, 0, 1),
        raiseWaist: dieBetween(one, 17, -10, 40),
        lowerCrotch: dieBetween(one, 18, 0, 40),
        length: 'midCalf',
        shape: 'straight',
      }),
      hem: { ...one.project.hem, depth: dieBetween(one, 19, 10, 50) },
      waist: { ...one.project.waist, finish: 'drawstringCasing', elasticWidth: dieBetween(one, 20, 10, 40) },
    });
    if (!before || !after) return undefined;
    const [a, b] = [before.drafted.blocks, after.drafted.blocks];
    const edges = at.PARTS.flatMap((part) =>
      a[part].edges.map((edge, i) => at.runMoved(edge.curves, b[part].edges[i]?.curves ?? [])),
    );
    return [
      is('λ', b.crotchFit - a.crotchFit, 0, 1e-9),
      still('forks', at.change(before, after, at.fork), 0.001),
      still('blocks', Math.max(...edges), 0.001),
    ];
  },
};

export const alwaysLines: readonly Line[] = [seamsMeet, opening, choicesAlone];
