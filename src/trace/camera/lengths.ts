import type { Mm } from '../../length';
import { distance } from '../../plane';
import type { Joined } from './join';
import { viewToPlane } from './shot-view';
import type { Sight } from './sightings';

/** A length that somebody measured, as it comes out on the joined pictures, millimetres. */
export interface LengthFound {
  readonly found: Mm;
  readonly measured: Mm;
  /** What was found less what was measured. */
  readonly difference: Mm;
}

/** How long a measured length comes out; undefined where one of its ends can't be seen. */
export function lengthFound({ views }: Joined, ends: readonly [Sight, Sight], measured: Mm): LengthFound | undefined {
  const [a, b] = ends.map(({ shot, at }) => {
    const view = views[shot];
    return view && viewToPlane(view, at);
  });
  const found = a && b && distance(a, b);
  return found === undefined ? undefined : { found, measured, difference: found - measured };
}
