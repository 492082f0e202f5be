import type { Mm } from '../../length';
import { between, type Curve, curveMap, distance, dot, type Point, pathFoot, subtract } from '../../plane';
import { type BlockReading, type ReadPart, ROUND_PLACES, type RoundPlace } from './block-reading';
import type { InnerLine } from './grain';
import { upOf } from './reading';
import { nearestRound, pointRound, roundTo, wayRound } from './way-round';

/** What of a block can be set by a press. */
export const READ_PLACES = [...ROUND_PLACES, 'grain', 'hip', 'knee'] as const;
export type ReadPlace = (typeof READ_PLACES)[number];

const sure = (reading: BlockReading, part: ReadPart): ReadonlySet<ReadPart> =>
  new Set([...reading.doubts].filter((one) => one !== part));

/** The reading with a place round the outline where somebody says that it is. */
export const withRoundPlace = (reading: BlockReading, name: RoundPlace, at: Mm): BlockReading => ({
  ...reading,
  places: { ...reading.places, [name]: roundTo(reading.way, at) },
  doubts: sure(reading, name),
});

/** The reading with one thing set by a press: a place to the corner near it, a level or the grainline to the line near it. */
export function withPressed(reading: BlockReading, name: ReadPlace, p: Point, near: Mm): BlockReading {
  if (name === 'grain') {
    const line = nearestLine(reading, p);
    return line ? { ...reading, grain: upright(reading, line.ends), doubts: sure(reading, 'grain') } : reading;
  }
  if (name === 'hip' || name === 'knee') {
    const line = nearestLine(reading, p);
    const at = line && away(line, p) <= near ? between(...line.ends, 0.5) : p;
    return { ...reading, [name]: at, doubts: name === 'hip' ? sure(reading, 'hip') : reading.doubts };
  }
  const corner = reading.corners
    .map(({ at }) => ({ at, far: distance(pointRound(reading.way, at), p) }))
    .sort((a, b) => a.far - b.far)[0];
  const at = corner && corner.far <= near ? corner.at : nearestRound(reading.way, p);
  return withRoundPlace(reading, name, at);
}

/** The reading with a grainline that stands upright as the drawing lies: for a block on which none is drawn. */
export function withGrainAsDrawn(reading: BlockReading): BlockReading {
  const points = reading.way.curves.map(([a]) => a);
  const [top, bottom] = [Math.min(...points.map(({ y }) => y)), Math.max(...points.map(({ y }) => y))];
  const x = points.reduce((sum, one) => sum + one.x, 0) / points.length;
  const grain = upright(reading, [
    { x, y: top },
    { x, y: bottom },
  ]);
  return { ...reading, grain, doubts: sure(reading, 'grain') };
}

/** The reading with a place at the next corner of the outline, one way round or the other. */
export function withNextCorner(reading: BlockReading, name: RoundPlace, onward: boolean): BlockReading {
  const { corners, places, way } = reading;
  const here = places[name] ?? 0;
  const far = ({ at }: { readonly at: Mm }) => roundTo(way, onward ? at - here : here - at);
  const next = corners.filter((corner) => far(corner) > NEXT).sort((a, b) => far(a) - far(b))[0];
  return next ? withRoundPlace(reading, name, next.at) : reading;
}

/** A corner so near, millimetres, is the one where a place lies already. @source tolerance */
const NEXT: Mm = 0.5;

/** The reading with the edge between a place and the next one called by another name: all names move round with it. */
export function withEdgeNamed(reading: BlockReading, edge: number, name: number): BlockReading {
  const count = ROUND_PLACES.length;
  const places = Object.fromEntries(
    ROUND_PLACES.map((place, k) => [
      place,
      reading.places[ROUND_PLACES[(k - name + edge + count) % count] as RoundPlace],
    ]),
  );
  return { ...reading, places, doubts: new Set([...reading.doubts].filter((one) => one === 'grain' || one === 'hip')) };
}

/** The reading with its names the other way round, for an outline that was read mirrored. */
export function withNamesReversed(reading: BlockReading): BlockReading {
  const count = ROUND_PLACES.length;
  // The waist stays where it is; its ends change.
  const places = Object.fromEntries(
    ROUND_PLACES.map((place, k) => [place, reading.places[ROUND_PLACES[(1 - k + count) % count] as RoundPlace]]),
  );
  return { ...reading, places };
}

/** The reading so many times as large. */
export function readingScaled(reading: BlockReading, by: number): BlockReading {
  const point = ({ x, y }: Point): Point => ({ x: x * by, y: y * by });
  const ends = ([a, b]: readonly [Point, Point]) => [point(a), point(b)] as const;
  return {
    ...reading,
    way: wayRound(reading.way.curves.map((curve: Curve) => curveMap(curve, point))),
    corners: reading.corners.map((corner) => ({ ...corner, at: corner.at * by })),
    lines: reading.lines.map((line) => ({ ...line, ends: ends(line.ends) })),
    places: Object.fromEntries(Object.entries(reading.places).map(([name, at]) => [name, at * by])),
    grain: reading.grain && ends(reading.grain),
    hip: reading.hip && point(reading.hip),
    knee: reading.knee && point(reading.knee),
  };
}

/** By how much a block has to be turned to stand upright, clockwise, radians: by its grainline, else by its corners. */
export function uprightTurn(reading: BlockReading): number {
  const up = reading.grain ? subtract(reading.grain[0], reading.grain[1]) : (upOf(reading) ?? { x: 0, y: -1 });
  return Math.atan2(-up.x, -up.y);
}

const away = ({ ends }: InnerLine, p: Point): Mm => pathFoot(ends, p).distance;

const nearestLine = ({ lines }: BlockReading, p: Point): InnerLine | undefined =>
  [...lines].sort((a, b) => away(a, p) - away(b, p))[0];

const upright = (reading: BlockReading, [a, b]: readonly [Point, Point]): readonly [Point, Point] =>
  dot(subtract(a, b), upOf(reading) ?? { x: 0, y: -1 }) >= 0 ? [a, b] : [b, a];
