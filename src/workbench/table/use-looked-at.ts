import { useState } from 'react';
import { type Box, boxGrown, curvesBounds } from '../../plane';
import type { Draft } from '../../project';
import { useBench } from '../store/bench';
import { lightPlace, useLitPlace } from '../view/lit-place';
import { boxAround } from './asked-place';
import type { StationDrawing } from './station-drawings';

/** So much of what lies round a lit place is seen with it, millimetres. */
const ROUND_PLACE = 60;

/** What is looked at of a drawing. */
export interface LookedAt {
  /** By which it is told from other places and drawings. */
  readonly name: string;
  readonly box: () => Box;
  /** Back to the whole drawing, until another place is asked about. */
  readonly leave: () => void;
}

/**
 * The place of a drawing that somebody asks about, by a check that is pressed or a field that is in hand; the whole of it
 * where nobody does.
 *
 * @param shown the drawing's name
 */
export function useLookedAt(
  shown: string,
  { box, asked }: Pick<StationDrawing, 'box' | 'asked'>,
  draft: Draft,
): LookedAt {
  const lit = useLitPlace(({ place }) => (place?.curves.length ? place : undefined));
  const field = useBench((state) => state.field);
  const [left, setLeft] = useState<string>();
  if (lit)
    return {
      name: `${shown} ${lit.name}`,
      box: () => boxGrown(curvesBounds(lit.curves), ROUND_PLACE),
      leave: () => lightPlace(undefined),
    };
  const place = field === undefined ? undefined : asked?.(draft, field);
  const near = place && place.key !== left ? boxAround(place.box, box(draft)) : undefined;
  return {
    name: near ? `${shown} ${place?.key}` : shown,
    box: () => near ?? box(draft),
    leave: () => setLeft(place?.key),
  };
}
