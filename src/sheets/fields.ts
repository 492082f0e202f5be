import type { Mm } from '../length';

/**
 * The least box round what lies in each of many places, side by side: left, top, −right, −bottom, so that the least of two
 * places' numbers is the box round both; ∞ where nothing lies.
 */
export type Extents = Float32Array;

export const noExtents = (places: number): Extents => new Float32Array(4 * places).fill(Infinity);

/** Lines of a lattice across one way. */
export interface Lattice {
  /** Fields in a row. */
  readonly count: number;
  /** Fields from one window to the next: a window may begin at each of them. */
  readonly pitch: number;
  /** From one line to the next. */
  readonly step: Mm;
  /** Where the second line stands beyond a step: the first window shows what others leave to the one before. */
  readonly first: Mm;
}

/** A lattice that goes on until a window that begins at any of its lines has shown all of a length. */
export function latticeOver(length: Mm, pitch: Mm, overlap: Mm, shifts: number): Lattice {
  const count = (Math.ceil(length / pitch) + 1) * shifts;
  return { count, pitch: shifts, step: pitch / shifts, first: overlap };
}

const fieldAt = ({ count, step, first }: Lattice, at: Mm): number =>
  Math.max(0, Math.min(count - 1, Math.floor((at - first) / step)));

/**
 * What lies in each field of a lattice, in reading order.
 *
 * @param stretches x, y, x, y of every straight stretch
 * @param corner where the lattice begins; its fields are counted from there
 * @param hop points of a stretch are no further apart
 */
export function fieldExtents(
  stretches: Float64Array,
  corner: { readonly left: Mm; readonly top: Mm },
  across: Lattice,
  down: Lattice,
  hop: Mm,
): Extents {
  const extents = noExtents(across.count * down.count);
  for (let i = 0; i < stretches.length; i += 4) {
    const x = (stretches[i] as number) - corner.left;
    const y = (stretches[i + 1] as number) - corner.top;
    const dx = (stretches[i + 2] as number) - corner.left - x;
    const dy = (stretches[i + 3] as number) - corner.top - y;
    const hops = Math.max(1, Math.ceil(Math.hypot(dx, dy) / hop));
    for (let k = 0; k <= hops; k += 1) {
      const [px, py] = [x + (dx * k) / hops, y + (dy * k) / hops];
      const i = 4 * (fieldAt(down, py) * across.count + fieldAt(across, px));
      if (px < (extents[i] as number)) extents[i] = px;
      if (py < (extents[i + 1] as number)) extents[i + 1] = py;
      if (-px < (extents[i + 2] as number)) extents[i + 2] = -px;
      if (-py < (extents[i + 3] as number)) extents[i + 3] = -py;
    }
  }
  return extents;
}

/**
 * Answers for every run of `pitch` fields what they hold together, in two look-ups: all fields from the last multiple of
 * `pitch` up to each one are gathered beforehand, and all from each one to the next multiple. A run is the end of one
 * such block and the beginning of the next.
 *
 * @param fields are used up: what is gathered is written over them
 * @param lanes fields that lie side by side and are gathered apart: a field's place is its number × lanes + its lane
 * @returns gathers the run that begins at a field, which may lie before the first one, into places from 0: one a lane
 */
export function runsOf(
  fields: Extents,
  { count, pitch }: Lattice,
  lanes: number,
): (start: number, into: Extents) => void {
  const side = 4 * lanes;
  const [upTo, on] = [fields, fields.slice()];
  for (let at = 1; at < count; at += 1) if (at % pitch > 0) gather(upTo, at * side, upTo, (at - 1) * side, side);
  for (let at = count - 2; at >= 0; at -= 1) {
    if ((at + 1) % pitch > 0) gather(on, at * side, on, (at + 1) * side, side);
  }
  return (start, into) => {
    const end = (start + pitch - 1) * side;
    for (let i = 0; i < side; i += 1) into[i] = upTo[end + i] as number;
    if (start > 0 && start % pitch > 0) gather(into, 0, on, start * side, side);
  };
}

/** Makes each number the least of itself and another one. */
function gather(into: Extents, i: number, from: Extents, j: number, count: number): void {
  for (let k = 0; k < count; k += 1) {
    const other = from[j + k] as number;
    if (other < (into[i + k] as number)) into[i + k] = other;
  }
}
