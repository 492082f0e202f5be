import type { Mm } from '../../length';
import { between, distance, dot, type Point, subtract, unit } from '../../plane';
import type { BlockReading } from './block-reading';
import type { InnerLine } from './grain';
import { namesSay } from './names';
import { pointRound } from './way-round';

/** A level runs square to the grain, within this, radians. @source practice */
const OFF_SQUARE = 0.06;
/** A level crosses at least this share of the block there. @source practice */
const ACROSS = 0.4;
/** Nearer than this to the waist or to the crotch line, millimetres, lies no hip. @source practice */
const APART: Mm = 25;
/** The hip lies this share of the way from the waist to the crotch line. @source practice */
const USUAL_HIP = 0.68;

/**
 * The levels of hip and knee: drawn lines across the block, by their names or by where they lie. Where no hip line is
 * drawn it is proposed where the side is fullest, else where it usually lies.
 *
 * @param up along the grain
 */
export function levelsAmong(
  { way, places, lines }: Pick<BlockReading, 'way' | 'places' | 'lines'>,
  up: Point,
  grainline: InnerLine | undefined,
): { readonly hip: Point | undefined; readonly knee: Point | undefined; readonly sure: boolean } {
  const at = (name: 'waistSide' | 'waistCentre' | 'crotchPoint' | 'hemInseam' | 'hemSide') =>
    pointRound(way, places[name] ?? 0);
  const down = (p: Point): Mm => dot(subtract(at('waistSide'), p), up);
  const right = { x: -up.y, y: up.x };
  const width = Math.abs(dot(subtract(at('waistSide'), at('waistCentre')), right));
  const across = lines.filter(
    (line) =>
      line !== grainline &&
      Math.abs(dot(unit(subtract(line.ends[1], line.ends[0])), up)) < OFF_SQUARE &&
      distance(...line.ends) > ACROSS * width,
  );
  const middle = ({ ends }: InnerLine) => between(ends[0], ends[1], 0.5);
  const [crotch, hem] = [down(at('crotchPoint')), down(between(at('hemInseam'), at('hemSide'), 0.5))];
  const within = (line: InnerLine, from: Mm, to: Mm) => down(middle(line)) > from && down(middle(line)) < to;
  const named = (word: string) => across.find(({ names }) => namesSay(names, word));
  const knee = named('knee') ?? across.find((line) => within(line, crotch + APART, hem - APART));
  const hips = across.filter((line) => within(line, APART, crotch - APART));
  const drawn = named('hip') ?? hips[0];
  if (drawn)
    return { hip: middle(drawn), knee: knee && middle(knee), sure: named('hip') !== undefined || hips.length === 1 };
  const hip = fullest(way, places, right, crotch) ?? {
    x: at('waistSide').x - up.x * USUAL_HIP * crotch,
    y: at('waistSide').y - up.y * USUAL_HIP * crotch,
  };
  return { hip, knee: knee && middle(knee), sure: false };
}

/** So finely the side is looked at, millimetres. @source tolerance */
const STEP: Mm = 2;
/** The side is as full where it is by no more than this less far out, millimetres: a pencil line. @source tolerance */
const AS_FULL: Mm = 0.3;

/** The uppermost place of the side that reaches farthest out; undefined where the side only grows wider down to the crotch line. */
function fullest(
  way: BlockReading['way'],
  places: BlockReading['places'],
  right: Point,
  crotch: Mm,
): Point | undefined {
  const { waistSide, waistCentre, hemSide } = places;
  if (waistSide === undefined || waistCentre === undefined || hemSide === undefined) return undefined;
  const start = pointRound(way, waistSide);
  const out = Math.sign(dot(subtract(start, pointRound(way, waistCentre)), right));
  const round = (n: Mm) => ((n % way.length) + way.length) % way.length;
  const sign = round(hemSide - waistSide) < round(waistSide - hemSide) ? 1 : -1;
  const steps = Array.from({ length: Math.floor(crotch / STEP) }, (_, i) =>
    pointRound(way, waistSide + sign * i * STEP),
  );
  const far = steps.map((p) => out * dot(subtract(p, start), right));
  const most = Math.max(...far);
  const first = far.findIndex((one) => one >= most - AS_FULL);
  const found = steps[first];
  return found && first * STEP > 2 * APART && first < steps.length - APART / STEP ? found : undefined;
}
