import type { LegHalf } from '../../src/leg';
import {
  type Curve,
  curveMeetsLine,
  curvePoint,
  distance,
  pathEnd,
  pathLength,
  pathStart,
  straight,
} from '../../src/plane';
import type { Draft } from '../../src/project';
import type { Person } from './people';

/** What is kept of one draft: figures, millimetres and degrees, taken from the drawn curves alone. */
export type Figures = Readonly<Record<FigureName, number | undefined>>;

/** The figures in the order of the table, each with what it is for people. */
export const FIGURES = {
  forkFront: 'fork, front',
  forkBack: 'fork, back',
  forkSum: 'forks together',
  forkFrontOfHip: 'fork, front, % of hip',
  forkBackOfHip: 'fork, back, % of hip',
  forkSumOfHip: 'forks together, % of hip',
  forkSumOfSeat: 'forks together, % of hip + ease',
  forkSumOfDepth: 'forks together, % of the seat’s depth',
  thighEase: 'thigh − body’s thigh',
  hem: 'hem',
  knee: 'knee',
  tilt: 'tilt: centre back over centre front',
  hipLessWaist: 'hip − waist of the body',
  straighten: 'straightened, %',
  crotchMiss: 'crotch length − wanted',
  crotchOverBody: 'crotch length − body’s',
  frontMiss: 'its front part − wanted',
  hipOver: 'finished hip − hip',
  hipLineOff: 'drawn hip line below the measured',
  slantFront: 'inseam’s slant, front, °',
  slantBack: 'inseam’s slant, back, °',
  slantsApart: 'slants, back − front, °',
  openingRoom: 'waist opening − needed',
} as const;

export type FigureName = keyof typeof FIGURES;

/** The figures of a draft. What a body doesn't have is undefined. */
export function figuresOf(d: Draft, { seatDepth }: Person): Figures {
  const { front, back } = d.leg;
  const { hipGirth: hip, waistGirth: waist, thighGirth, crotchLength, frontCrotchLength } = d.project.body;
  const ease = d.project.block.source === 'drafted' ? d.project.block.hipEase : 0;
  const [forkFront, forkBack] = [front, back].map((half) => Math.abs(half.crotchPoint.x - half.curveEnd.x)) as [
    number,
    number,
  ];
  const forkSum = forkFront + forkBack;
  const share = (part: number, whole: number | undefined) => (whole === undefined ? undefined : (100 * part) / whole);
  const [frontLength, drawn] = [seamLength(front), seamLength(front) + seamLength(back)];
  const wanted = d.blocks.crotchWanted;
  const crotchEase = wanted === undefined || crotchLength === undefined ? undefined : wanted - crotchLength;
  const [slantFront, slantBack] = [slant(front), slant(back)];
  const less = (value: number | undefined, other: number | undefined) =>
    value === undefined || other === undefined ? undefined : value - other;
  return {
    forkFront,
    forkBack,
    forkSum,
    forkFrontOfHip: share(forkFront, hip),
    forkBackOfHip: share(forkBack, hip),
    forkSumOfHip: share(forkSum, hip),
    forkSumOfSeat: share(forkSum, hip === undefined ? undefined : hip + ease),
    forkSumOfDepth: share(forkSum, seatDepth),
    thighEase: less(front.crotchPoint.x - back.crotchPoint.x, thighGirth),
    hem: distance(pathStart(d.leg.hem), pathEnd(d.leg.hem)),
    knee: d.leg.kneeLevel === undefined ? undefined : legWidth(d, d.leg.kneeLevel),
    tilt: front.waistPoint.y - back.waistPoint.y,
    hipLessWaist: less(hip, waist),
    straighten: 100 * d.leg.straighten,
    crotchMiss: less(drawn, wanted),
    crotchOverBody: less(drawn, crotchLength),
    // Half of the ease belongs to each part.
    frontMiss:
      frontCrotchLength === undefined || crotchEase === undefined
        ? undefined
        : frontLength - frontCrotchLength - crotchEase / 2,
    hipOver: less(hipWidth(d), hip),
    hipLineOff: d.leg.hipLevel - d.body.hipDepth,
    slantFront,
    slantBack,
    slantsApart: slantBack - slantFront,
    openingRoom: d.measures.waistOpening - d.measures.pullOnNeeded,
  };
}

/** From the waist along the centre and the crotch curve to the crotch point. */
const seamLength = (half: LegHalf): number => distance(half.waistPoint, half.curveEnd) + pathLength(half.crotch);

/** From the crotch to the hem, degrees off upright; positive where the leg narrows. */
function slant({ part, inseam }: LegHalf): number {
  const [top, hem] = [pathStart(inseam), pathEnd(inseam)];
  return (Math.atan2((part === 'front' ? 1 : -1) * (top.x - hem.x), hem.y - top.y) * 180) / Math.PI;
}

const crossings = (curves: readonly Curve[], level: number): readonly number[] =>
  curves.flatMap((curve) =>
    curveMeetsLine(curve, { x: 0, y: level }, { x: 1, y: 0 }).map((t) => curvePoint(curve, t).x),
  );

/** How wide the leg is between its inseams at a level. */
function legWidth({ leg: { front, back } }: Draft, level: number): number | undefined {
  const [right, left] = [crossings(front.inseam, level)[0], crossings(back.inseam, level)[0]];
  return right === undefined || left === undefined ? undefined : right - left;
}

/** How wide both legs are at the drawn hip line, wherever it meets centre line, crotch curve or inseam. */
function hipWidth({ leg: { front, back, hipLevel } }: Draft): number | undefined {
  const along = (half: LegHalf) =>
    crossings([straight(half.waistPoint, half.curveEnd), ...half.crotch, ...half.inseam], hipLevel);
  const [right, left] = [along(front), along(back)];
  return right.length === 0 || left.length === 0 ? undefined : 2 * (Math.max(...right) - Math.min(...left));
}
