import { beforeAll, describe, expect, it } from 'vitest';
import { crotchCorner, LEAST_BACK_RAISE, SMALL_HIP } from '../../src/block';
import { curvesOneWay } from '../../src/check';
import {
  type Curve,
  curveTangent,
  flattenCurves,
  outlineCrossings,
  outlineCurves,
  pathFoot,
  subtract,
  TOLERANCE,
  unit,
} from '../../src/plane';
import { checksOf, type Draft, draft } from '../../src/project';
import { childBodies, childrenAreHere } from './children';
import { share as someOf } from './every';
import { distribution, ONE_SHEET, projectFor } from './survey';

/** What is kept of each child's draft. */
interface Row {
  readonly id: string;
  readonly cornerFront: number;
  readonly cornerBack: number;
  readonly crotchEnd: number;
  readonly leanFront: number;
  readonly leanBack: number;
  readonly raise: number;
  /** What fixed figures are scaled by. */
  readonly small: number;
  readonly drop: number;
  readonly oneWay: boolean;
  readonly crossings: number;
  readonly hem: number;
  /** Hem less heel and instep: estimated by the program, or from the child's own ankle. */
  readonly footRoom: number;
  readonly ankleRoom: number | undefined;
  readonly thighEase: number | undefined;
  readonly notGood: readonly string[];
}

/** Heel and instep are 1.48 × the ankle (ANSUR II, README of the data, 2d, pooled median); for children an inference. */
const FOOT_OF_ANKLE = 1.483;

/** With `LEGWORK_EVERY=1` all of them. */
const children = someOf(childBodies(), 800);
const refused: string[] = [];
const rows: Row[] = [];

beforeAll(() => {
  if (!childrenAreHere)
    console.log('The children’s survey is left out, it is not beside this checkout: nine median children stand in.');
  for (const child of children) {
    const result = draft(projectFor(child.body, ONE_SHEET));
    if (result.ok) rows.push(rowOf(child.id, result.value));
    else refused.push(`${result.problems.map((p) => p.field).join()} ${child.id}`);
  }
}, 900_000);

function rowOf(id: string, d: Draft): Row {
  const corner = (part: 'front' | 'back'): number => {
    const { curveEnd, waistPoint, crotch } = d.leg[part];
    const at = crotchCorner(curveEnd, unit(subtract(curveEnd, waistPoint)), d.leg.crotchLevel);
    const extension = part === 'front' ? d.blocks.extensionFront : d.blocks.extensionBack;
    return pathFoot(flattenCurves(crotch, 0.01), at).distance / extension;
  };
  const end = (part: 'front' | 'back'): number => {
    const way = curveTangent(d.leg[part].crotch.at(-1) as Curve, 1);
    return (Math.abs(Math.atan2(way.y, Math.abs(way.x))) * 180) / Math.PI;
  };
  const { ankleGirth, thighGirth } = d.project.body;
  const hem = d.measures.hemGirthFinished;
  const piece = d.pieces[0] as Draft['pieces'][number];
  return {
    id,
    cornerFront: corner('front'),
    cornerBack: corner('back'),
    crotchEnd: Math.max(end('front'), end('back')),
    leanFront: d.measures.leanFront,
    leanBack: d.measures.leanBack,
    raise: -d.leg.back.waistPoint.y,
    small: Math.min(1, d.body.hipGirth / SMALL_HIP),
    drop: d.measures.backCrotchDrop,
    oneWay: [d.leg.front, d.leg.back].every((half) => curvesOneWay(half.crotch) && curvesOneWay(half.inseam)),
    crossings: [piece.stitchLine, piece.cutLine].flatMap((line) => outlineCrossings(outlineCurves(line))).length,
    hem,
    footRoom: hem - d.body.footEntryGirth,
    ankleRoom: ankleGirth === undefined ? undefined : hem - FOOT_OF_ANKLE * ankleGirth,
    thighEase: thighGirth === undefined ? undefined : d.measures.thighGirthFinished - thighGirth,
    notGood: checksOf(d)
      .filter((c) => c.verdict !== 'good')
      .map((c) => `${c.id} ${c.verdict}`),
  };
}

const share = (holds: (row: Row) => boolean): number => rows.filter(holds).length / rows.length;
const told = (name: string, of: (row: Row) => number | undefined, decimals = 1) =>
  console.log(
    distribution(
      name,
      rows.map(of).filter((v) => v !== undefined),
      decimals,
    ),
  );
const percent = (part: number) => `${(100 * part).toFixed(2)} %`;

// Source: UM-HSRI-77-17 (1977), crotch height inferred (see children.ts); the bounds are practice.
describe('every child of the survey is drafted', () => {
  it('refuses only rises and hip depths that inferred heights make impossible: at most 2 %', () => {
    console.log(`${children.length} children, ${refused.length} refused; ${refused.slice(0, 5).join('; ')}`);
    expect(refused.filter((line) => !/^body\.(bodyRise|hipDepth)/.test(line))).toEqual([]);
    expect(refused.length / children.length).toBeLessThanOrEqual(0.02);
    expect(rows.length + refused.length).toBe(children.length);
  });

  it('draws simple outlines that curve one way', () => {
    expect(rows.filter((r) => r.crossings > 0).map((r) => r.id)).toEqual([]);
    console.log(`crotch curves and inseams that bend one way: ${percent(share((r) => r.oneWay))}`);
    expect(share((r) => r.oneWay)).toBe(1);
  });

  it('leans at most 8° behind and upright or outwards in front, raises the back, ends the crotch at most 20° off the level', () => {
    told('lean front, °', (r) => r.leanFront);
    told('lean back, °', (r) => r.leanBack);
    told('back raise, mm', (r) => r.raise);
    told('steeper crotch end, °', (r) => r.crotchEnd);
    told('back crotch drop, mm', (r) => r.drop);
    console.log(`crotch ends within 20°: ${percent(share((r) => r.crotchEnd <= 20))}`);
    expect(share((r) => r.leanFront <= 0.001 && r.leanFront >= -8.001 && r.leanBack <= 8.001)).toBe(1);
    expect(share((r) => r.raise >= LEAST_BACK_RAISE * r.small - TOLERANCE.samePoint)).toBe(1);
    expect(share((r) => r.crotchEnd <= 20)).toBe(1);
  });

  it('keeps the crotch curves off their corners as a hand would', () => {
    told('corner ÷ extension, front', (r) => r.cornerFront, 3);
    told('corner ÷ extension, back', (r) => r.cornerBack, 3);
    expect(share((r) => r.cornerFront >= 0.42 && r.cornerFront <= 0.58)).toBe(1);
    expect(share((r) => r.cornerBack >= 0.32 && r.cornerBack <= 0.56)).toBe(1);
  });

  it('lets the foot pass the hem by 20 mm, the estimated one and the one told from the ankle', () => {
    told('hem, mm', (r) => r.hem);
    told('hem less estimated foot, mm', (r) => r.footRoom);
    told('hem less 1.48 × ankle, mm', (r) => r.ankleRoom);
    expect(share((r) => r.footRoom >= 20)).toBe(1);
    expect(share((r) => (r.ankleRoom ?? 20) >= 20)).toBeGreaterThanOrEqual(0.99);
  });

  it('gives the thigh at least 60 mm of ease on 99 %', () => {
    told('thigh ease, mm', (r) => r.thighEase);
    expect(share((r) => (r.thighEase ?? 60) >= 60)).toBeGreaterThanOrEqual(0.99);
  });

  it('finds nothing doubtful in the checks on 99 %, though nobody measured knee and foot on children', () => {
    const complaints = rows.flatMap((r) => r.notGood);
    const counted = [...new Set(complaints)].map((c) => `${c}: ${complaints.filter((o) => o === c).length}`);
    console.log(`of ${rows.length} drafts: ${counted.join(', ') || 'nothing doubtful'}`);
    // Hip and crotch height were never taken of the same child, so that one of them is inferred: their distance says little.
    const told = (r: Row) => r.notGood.filter((one) => one !== 'hip-line doubtful');
    expect(share((r) => told(r).length === 0)).toBeGreaterThanOrEqual(0.99);
    expect(share((r) => r.notGood.length === 0)).toBeGreaterThanOrEqual(0.97);
  });
});
