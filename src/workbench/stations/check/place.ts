import { useEffect } from 'react';
import { type Check, checkPlace } from '../../../check';
import { uprightPlaces } from '../../../drawing';
import { type Curve, curveMap } from '../../../plane';
import { checksOf, type Draft } from '../../../project';
import { useBench } from '../../store/bench';
import { type LitPlace, lightPlace, useLitPlace } from '../../view/lit-place';

/** Where a check looks, as the pieces lie on the drawing; no curves where it has no place. */
export function placeOnDrawing({ pieces }: Draft, { id, side }: Pick<Check, 'id' | 'side'>): LitPlace {
  const places = uprightPlaces(pieces);
  const curves = pieces.flatMap((piece, i): readonly Curve[] => {
    if (side && piece.side && piece.side !== side) return [];
    const { x, y } = places[i]?.shift ?? { x: 0, y: 0 };
    return checkPlace(id, piece).map((curve) => curveMap(curve, (p) => ({ x: p.x + x, y: p.y + y })));
  });
  return { name: id, curves };
}

/** The check whose place is lit, as long as the station is open; it follows the draft. */
export function useLitCheck(): string | undefined {
  const lit = useLitPlace(({ place }) => place?.name);
  const draft = useBench((state) => state.draft);
  useEffect(() => {
    if (lit === undefined) return;
    const check = checksOf(draft).find(({ id }) => id === lit);
    lightPlace(check && placeOnDrawing(draft, check));
  }, [lit, draft]);
  useEffect(() => () => lightPlace(undefined), []);
  return lit;
}
