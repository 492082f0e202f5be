import type { Leg } from '../leg';
import type { Mm } from '../length';
import { type Curve, curveLength, curveMeetsLine, leftOf, type Point, pathAt, pathEnd, pathLength } from '../plane';
import { words } from '../words';
import { letterFitting, TALLEST } from './lettering';
import type { Notch, PieceText, TextMeaning } from './piece';
import { countedWords, KIND_NAMES } from './piece-names';

/** The upper inseam notch lies this far below the crotch point, by arc length. @source practice */
const BELOW_CROTCH = 150;
/** Notches nearer than this to each other or to an end would be cut into one another. */
const APART = 25;

/**
 * The notches: one on the front centre seam, two on the back, at the crotch curve's upper end; singles on the inseams,
 * 150 mm below the crotch and at the knee, by arc length, so that front and back meet.
 *
 * @param leg the leg
 * @param allowances of the crotch and the inseam seam: the ticks reach to the cut line
 */
export function notchesOf(leg: Leg, allowances: { readonly crotch: Mm; readonly inseam: Mm }): readonly Notch[] {
  const centre = (part: 'front' | 'back'): Notch => {
    const { curveEnd, waistPoint } = leg[part];
    const down = { x: curveEnd.x - waistPoint.x, y: curveEnd.y - waistPoint.y };
    const length = Math.hypot(down.x, down.y);
    const side = part === 'front' ? 1 : -1;
    return {
      edge: part === 'front' ? 'centreFront' : 'centreBack',
      at: curveEnd,
      outward: { x: (side * down.y) / length, y: (-side * down.x) / length },
      length: allowances.crotch,
      count: part === 'front' ? 1 : 2,
    };
  };
  const inseam = (part: 'front' | 'back', arc: Mm): Notch => {
    const { at, way } = pathAt(leg[part].inseam, arc);
    const outward = part === 'front' ? leftOf(way) : leftOf({ x: -way.x, y: -way.y });
    return { edge: part === 'front' ? 'inseamFront' : 'inseamBack', at, outward, length: allowances.inseam, count: 1 };
  };
  const arcs = inseamArcs(leg);
  return [
    centre('front'),
    centre('back'),
    ...arcs.map((arc) => inseam('front', arc)),
    ...arcs.map((arc) => inseam('back', arc)),
  ];
}

function inseamArcs(leg: Leg): readonly Mm[] {
  const whole = pathLength(leg.front.inseam);
  const knee = leg.kneeLevel === undefined ? undefined : arcAtLevel(leg.front.inseam, leg.kneeLevel);
  const arcs = [BELOW_CROTCH, ...(knee !== undefined && Math.abs(knee - BELOW_CROTCH) > APART ? [knee] : [])];
  return arcs.filter((arc) => arc < whole - APART);
}

function arcAtLevel(path: readonly Curve[], level: Mm): Mm | undefined {
  let before = 0;
  for (const curve of path) {
    const t = curveMeetsLine(curve, { x: 0, y: level }, { x: 1, y: 0 })[0];
    if (t !== undefined) return before + curveLength(curve, t);
    before += curveLength(curve);
  }
  return undefined;
}

/** What is written on the leg. */
export interface LegWords {
  readonly title: string;
  readonly label: string;
}

/** What share of its room a line may fill. */
const FILL = 0.72;

/**
 * The words on the leg, between waist edge and hip line, where every length has its full width and no line crosses
 * them. Letters shrink with the piece.
 *
 * @param leg the leg
 * @param names of the project and of the body
 */
export function textsOf(leg: Leg, { title, label }: LegWords): readonly PieceText[] {
  const sideWords = words`side – no seam here`;
  const top = Math.max(leg.front.waistPoint.y, leg.back.waistPoint.y);
  const height = leg.hipLevel - top;
  const half = {
    front: Math.min(leg.front.hipPoint.x, leg.front.waistPoint.x),
    back: -Math.max(leg.back.hipPoint.x, leg.back.waistPoint.x),
  };
  const tallest = Math.min(TALLEST.onLeg, height / 9, half.front / 24);
  const fitting = (text: string, width: Mm) => Math.min(tallest, letterFitting(text, FILL * width));
  const level = (share: number) => top + share * height;
  const line = (says: TextMeaning, text: string, at: Point, width: Mm, factor = 1): PieceText => ({
    at,
    text,
    size: factor * fitting(text, width / factor),
    turn: 0,
    says,
  });
  const frontX = half.front * 0.53;
  const sideEnd = Math.min(pathEnd(leg.front.inseam).y, pathEnd(leg.back.inseam).y);
  return [
    line('title', title, { x: frontX, y: level(0.27) }, half.front),
    line('piece', countedWords(KIND_NAMES.leg, 2, true), { x: frontX, y: level(0.44) }, half.front, 0.8),
    line('label', label, { x: frontX, y: level(0.6) }, half.front, 0.8),
    line('half', words`front`, { x: frontX, y: level(0.86) }, half.front, 1.3),
    line('half', words`back`, { x: -half.back * 0.5, y: level(0.86) }, half.back, 1.3),
    {
      at: { x: -tallest * 0.5, y: (leg.crotchLevel + sideEnd) / 2 },
      text: sideWords,
      size: Math.min(0.7 * tallest, letterFitting(sideWords, FILL * (sideEnd - leg.crotchLevel))),
      turn: -90,
      says: 'side',
    },
  ];
}

/**
 * The grainline: on the back, clear of the lettering, parallel to the side.
 *
 * @param leg the leg
 */
export function grainlineOf(leg: Leg): readonly [Point, Point] {
  const hem = Math.min(pathEnd(leg.front.inseam).y, pathEnd(leg.back.inseam).y);
  const x = 0.14 * leg.back.hipPoint.x;
  const top = leg.crotchLevel - 0.55 * (leg.crotchLevel - leg.back.waistPoint.y);
  return [
    { x, y: top },
    { x, y: hem - 0.08 * (hem - top) },
  ];
}
