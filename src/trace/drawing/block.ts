import { type Curve, curveMap, dot, type Point, straight, subtract, turned, unit } from '../../plane';
import { Refusal, say } from '../../words';
import { BLOCK_EDGES, type TracedBlock, traceFromLines } from '../marks';
import { type BlockReading, ROUND_PLACES, type RoundPlace, runsForward } from './block-reading';
import type { DrawnOutline } from './drawn';
import { namesSay } from './names';
import { curvesBetween, pointRound } from './way-round';

/**
 * A block from an outline and what was read in it: upright, its edges cut at its places.
 *
 * @param part which block; problems name its places so
 * @throws Refusal naming each place that is missing, and what else keeps it from being a block
 */
export function blockFromReading(part: 'front' | 'back', reading: BlockReading): TracedBlock {
  const { places, grain, hip, knee } = reading;
  const missing = ROUND_PLACES.filter((name) => places[name] === undefined);
  const lacking = [...missing, ...(grain ? [] : ['grain']), ...(hip ? [] : ['hip'])];
  if (lacking.length > 0 || !grain || !hip)
    throw new Refusal(
      lacking.map((name) => ({ field: `${part}-${name}`, value: undefined, phrase: say`must be marked.` })),
    );
  if (runsForward(reading) === undefined)
    throw new Refusal([
      {
        field: `${part}-outline`,
        value: undefined,
        phrase: say`must have its places one after another: waist, centre, crotch, inseam, hem and side, all the way round.`,
      },
    ]);
  const [top, bottom] = grain;
  const angle = Math.atan2(bottom.x - top.x, bottom.y - top.y);
  const place = (p: Point): Point => turned(p, top, angle);
  const edge = (i: number): readonly Curve[] => edgeRead(reading, i).map((curve) => curveMap(curve, place));
  const level = (p: Point) => [[straight(place(p), place(p))]];
  return traceFromLines(part, {
    ...Object.fromEntries(BLOCK_EDGES.map((name, i) => [name, [edge(i)]])),
    grainline: [[straight(place(top), place(bottom))]],
    hip: level(hip),
    ...(knee && { knee: level(knee) }),
  });
}

/** The curves of an edge as it was read, by its number from the waist on; none where its places are missing or out of order. */
export function edgeRead(reading: BlockReading, i: number): readonly Curve[] {
  const [from, to] = [i, i + 1].map((k) => reading.places[ROUND_PLACES[k % ROUND_PLACES.length] as RoundPlace]);
  const forward = runsForward(reading);
  return forward === undefined || from === undefined || to === undefined
    ? []
    : curvesBetween(reading.way, from, to, forward);
}

/** The back’s fork is wider than the front’s by more than this share of it, or nobody can tell which is which. @source practice */
const WIDER = 0.2;

/** Which of two outlines is the front: by the words on them, else by the width of the fork, which is wider at the back. */
export function frontOfTwo(
  outlines: readonly [DrawnOutline, DrawnOutline],
  readings: readonly [BlockReading, BlockReading],
): { readonly front: 0 | 1; readonly sure: boolean } {
  const says = (i: 0 | 1, word: string) => namesSay([...outlines[i].words, ...outlines[i].names], word);
  for (const i of [0, 1] as const) {
    const other = i === 0 ? 1 : 0;
    if ((says(i, 'front') && !says(i, 'back')) || (says(other, 'back') && !says(other, 'front')))
      return { front: i, sure: !(says(other, 'front') && !says(other, 'back')) };
  }
  const [one, other] = readings.map(forkWidth) as [number, number];
  return { front: one <= other ? 0 : 1, sure: Math.abs(one - other) > WIDER * Math.min(one, other) };
}

/** How far the crotch point lies from the lower end of the centre line, square to the grain. */
function forkWidth({ way, places, grain }: BlockReading): number {
  const { crotchTop, crotchPoint } = places;
  if (crotchTop === undefined || crotchPoint === undefined || !grain) return 0;
  const along = unit(subtract(grain[1], grain[0]));
  return Math.abs(dot(subtract(pointRound(way, crotchPoint), pointRound(way, crotchTop)), { x: -along.y, y: along.x }));
}
