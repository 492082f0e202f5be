import {
  type Curve,
  curveFrom,
  curveMeetsLine,
  curvePoint,
  curveTangent,
  distance,
  moved,
  type Outline,
  type Point,
  pathEnd,
  pathStart,
  point,
  straight,
  unit,
} from '../plane';
import { crotchCurve } from './crotch';
import { inseamLine, sideLine } from './leg-lines';
import type { Proportions } from './proportions';
import type { Block, BlockEdge, Dart } from './types';

/** What differs between the two parts; widths count outwards from the side line. */
interface PartFigures {
  readonly part: 'front' | 'back';
  readonly outwards: 1 | -1;
  readonly width: number;
  readonly extension: number;
  /** How far the centre leans inwards between the waist and where it is `width` from the side; negative outwards. */
  readonly lean: number;
  /** The waist level at the centre, and the level at which it is `width` from the side. */
  readonly centreTop: number;
  readonly widthLevel: number;
  /** How far above the crotch line the curve begins. */
  readonly curveRise: number;
  readonly crotchDrop: number;
  readonly crease: number;
  readonly knee: number;
  readonly hem: number;
  readonly darts: readonly number[];
}

/** Darts end this far above the hip line, as a share of the way down to it. @source practice */
const DART_LENGTH = { front: 0.5, back: 0.75 } as const;

export const frontBlock = (p: Proportions): Block => blockOf(p, frontFigures(p));

const frontFigures = (p: Proportions): PartFigures => ({
  part: 'front',
  outwards: 1,
  width: p.frontWidth,
  extension: p.extensionFront,
  lean: -p.leanOut,
  centreTop: p.frontDrop,
  widthLevel: p.crotchLevel - p.curveRiseFront,
  curveRise: p.curveRiseFront,
  crotchDrop: 0,
  crease: p.creaseFront,
  knee: p.kneeFront,
  hem: p.hemFront,
  darts: p.dartsFront,
});

/** @param drop how far the back crotch point lies below the front's */
export const backBlock = (p: Proportions, drop: number): Block => blockOf(p, backFigures(p, drop));

/** The back's inseam alone, for finding its drop: the rest of the block doesn't change its length. */
export const backInseam = (p: Proportions, drop: number): readonly Curve[] => partInseam(p, backFigures(p, drop));

const backFigures = (p: Proportions, drop: number): PartFigures => ({
  part: 'back',
  outwards: -1,
  width: p.backWidth,
  extension: p.extensionBack,
  lean: p.leanBack,
  centreTop: -p.backRaise,
  widthLevel: Math.min(p.hipLevel, p.crotchLevel - p.curveRiseBack),
  curveRise: p.curveRiseBack,
  crotchDrop: drop,
  crease: p.creaseBack,
  knee: p.kneeBack,
  hem: p.hemBack,
  darts: p.dartsBack,
});

/** The point at a distance outwards from the side line, at a level. */
type PointAt = (across: number, level: number) => Point;
const pointsOf =
  ({ outwards }: PartFigures): PointAt =>
  (across, level) =>
    point(outwards * across, level);

function partInseam(p: Proportions, f: PartFigures): readonly Curve[] {
  const at = pointsOf(f);
  return inseamLine(
    at(f.width + f.extension, p.crotchLevel + f.crotchDrop),
    at(f.crease + f.knee / 2, p.kneeLevel),
    at(f.crease + f.hem / 2, p.hemLevel),
    f.outwards,
  );
}

interface Centre {
  /** The centre line's direction, downwards. */
  readonly centreWay: Point;
  /** The centre line from the waist, and the crotch curve to the crotch point. */
  readonly crotch: readonly Curve[];
  readonly inseam: readonly Curve[];
}

/** The part of a block round its crotch point: centre line, crotch curve, inseam. */
function centreOf(p: Proportions, f: PartFigures): Centre {
  const at = pointsOf(f);
  const waistCentre = at(f.width - f.lean, f.centreTop);
  const fullCentre = at(f.width, f.widthLevel);
  const centreWay = unit({ x: fullCentre.x - waistCentre.x, y: fullCentre.y - waistCentre.y });
  const curveEnd = moved(fullCentre, centreWay, (p.crotchLevel - f.curveRise - f.widthLevel) / centreWay.y);
  const inseam = partInseam(p, f);
  const inseamWay = curveTangent(inseam[0] as Curve, 0);
  const curve = crotchCurve(curveEnd, centreWay, pathStart(inseam), inseamWay, f.outwards);
  return { centreWay, crotch: [straight(waistCentre, curveEnd), curve], inseam };
}

function blockOf(p: Proportions, f: PartFigures): Block {
  const at = pointsOf(f);
  const { centreWay, crotch, inseam } = centreOf(p, f);
  const side = sideLine(
    at(p.side, 0),
    at(0, p.hipLevel),
    at(f.crease - f.knee / 2, p.kneeLevel),
    at(f.crease - f.hem / 2, p.hemLevel),
  );
  const waist = waistLine(at(p.side, 0), pathStart(crotch), centreWay, f.outwards);
  const edges: Outline<BlockEdge> = [
    { name: 'waist', curves: [waist] },
    { name: 'centre', curves: crotch.slice(0, 1) },
    { name: 'crotch', curves: crotch.slice(1) },
    { name: 'inseam', curves: inseam },
    { name: 'hem', curves: [straight(pathEnd(inseam), at(f.crease - f.hem / 2, p.hemLevel))] },
    { name: 'side', curves: side },
  ];
  return {
    part: f.part,
    edges,
    grainline: [at(f.crease, p.hipLevel), at(f.crease, p.hemLevel - 0.1 * (p.hemLevel - p.kneeLevel))],
    hipLevel: p.hipLevel,
    crotchLevel: p.crotchLevel,
    kneeLevel: p.kneeLevel,
    darts: dartsOn(p, f, waist),
  };
}

/** The waist edge's handles, as a share of its chord. @source practice */
const WAIST_HANDLE = 0.33;

/** The block's waist edge: level at the side, square to the centre line. @source practice */
export function waistLine(side: Point, centre: Point, centreWay: Point, outwards: 1 | -1): Curve {
  const length = distance(side, centre);
  const square = { x: outwards * centreWay.y, y: -outwards * centreWay.x };
  return curveFrom(side, { x: outwards, y: 0 }, WAIST_HANDLE * length, centre, square, WAIST_HANDLE * length);
}

/** Darts evenly along the waist edge, both legs ending on it. @source practice */
function dartsOn(p: Proportions, f: PartFigures, waist: Curve): readonly Dart[] {
  const [from, to] = [p.side, f.width - f.lean];
  const onWaist = (x: number): Point => curvePoint(waist, curveMeetsLine(waist, point(x, 0), { x: 0, y: 1 })[0] ?? 0);
  return f.darts.map((width, i) => {
    const middle = f.outwards * (from + ((to - from) * (i + 1)) / (f.darts.length + 1));
    const top = onWaist(middle);
    return {
      left: onWaist(middle - width / 2),
      right: onWaist(middle + width / 2),
      tip: point(middle, top.y + (p.hipLevel - top.y) * DART_LENGTH[f.part]),
    };
  });
}
