import type { Mm } from '../../length';
import { between, type Curve, curveMap, dot, type Point, subtract, unit } from '../../plane';
import { type BlockReading, type ReadPart, ROUND_PLACES } from './block-reading';
import { centreEnd } from './centre-end';
import { cornersOf } from './corners';
import type { DrawnOutline } from './drawn';
import { grainlineAmong, innerLines } from './grain';
import { levelsAmong } from './levels';
import { BLOCK_CORNERS, cornerReadings } from './places';
import { turningOf } from './turning';
import { pointRound, wayRound } from './way-round';

/** Readings that are less like a block than the likeliest by no more than this are as likely. @source practice */
const AS_LIKELY = 2;
/** What is so unlike a block is no reading of one that anybody should take unseen. @source practice */
const TOO_UNLIKE = 6;

/** An outline and all that lies within it, so many times as large. */
export function outlineScaled(outline: DrawnOutline, by: number): DrawnOutline {
  const larger = (curve: Curve) => curveMap(curve, ({ x, y }) => ({ x: x * by, y: y * by }));
  return {
    ...outline,
    curves: outline.curves.map(larger),
    lines: outline.lines.map((line) => ({ ...line, curves: line.curves.map(larger) })),
    gap: outline.gap * by,
  };
}

/**
 * What an outline shows of a block by its shape alone: its corners, where the centre line ends, the grainline, the levels
 * of hip and knee. What could as well be otherwise is among the doubts.
 *
 * @param outline in millimetres
 */
export function readingOf(outline: DrawnOutline): BlockReading {
  const way = wayRound(outline.curves);
  const turning = turningOf(way);
  const corners = cornersOf(way, turning);
  const lines = innerLines(outline.lines);
  const readings = cornerReadings(way, turning, corners);
  const [best] = readings;
  if (!best) {
    const doubts = new Set<ReadPart>([...ROUND_PLACES, 'grain', 'hip']);
    return { way, corners, lines, places: {}, grain: undefined, hip: undefined, knee: undefined, doubts };
  }
  const others = readings.filter(({ unlike }) => unlike < best.unlike + AS_LIKELY);
  const open = BLOCK_CORNERS.filter(
    (name) => best.unlike > TOO_UNLIKE || others.some(({ places }) => places[name] !== best.places[name]),
  );
  const end = centreEnd(way, best.places.waistCentre, best.places.crotchPoint, best.forward);
  const places = { ...best.places, crotchTop: end.at };
  const doubts = new Set<ReadPart>(open);
  if (!end.seen) doubts.add('crotchTop');
  return withLines({ way, corners, lines, places, grain: undefined, hip: undefined, knee: undefined, doubts });
}

/** The same reading with its grainline and its levels looked for among the lines inside. */
function withLines(reading: BlockReading): BlockReading {
  const up = upOf(reading);
  if (!up) return reading;
  const found = grainlineAmong(reading.lines, up);
  const grain = found && upright(found.line.ends, up);
  const levels = levelsAmong(reading, grain ? unit(subtract(grain[0], grain[1])) : up, found?.line);
  const doubts = new Set(reading.doubts);
  if (!found?.sure) doubts.add('grain');
  if (!levels.sure) doubts.add('hip');
  return { ...reading, grain, hip: levels.hip, knee: levels.knee, doubts };
}

const upright = (ends: readonly [Point, Point], up: Point): readonly [Point, Point] =>
  dot(subtract(ends[0], ends[1]), up) > 0 ? ends : [ends[1], ends[0]];

/** The way up, as far as the corners tell: from the middle of the hem to the middle of the waist. */
export function upOf({ way, places }: Pick<BlockReading, 'way' | 'places'>): Point | undefined {
  const { waistSide, waistCentre, hemInseam, hemSide } = places;
  if (waistSide === undefined || waistCentre === undefined || hemInseam === undefined || hemSide === undefined)
    return undefined;
  const at = (place: Mm) => pointRound(way, place);
  return unit(subtract(between(at(waistSide), at(waistCentre), 0.5), between(at(hemInseam), at(hemSide), 0.5)));
}
