import type { KeyboardEvent } from 'react';
import type { ViewControl } from './use-view';

/** One press of plus or minus, or of a button for the same. */
export const NEARER = 1.25;
/** One press of an arrow key, pixels. */
const STEP = 60;

const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [STEP, 0],
  ArrowRight: [-STEP, 0],
  ArrowUp: [0, STEP],
  ArrowDown: [0, -STEP],
};

const ZOOMS: Readonly<Record<string, number>> = { '+': NEARER, '=': NEARER, '-': 1 / NEARER };

/**
 * Moves what is looked at by the arrow keys, zooms by plus and minus, and fits it by F.
 *
 * @param arrows false where the arrows are wanted for something else
 */
export function moveViewByKey(event: KeyboardEvent, { pan, zoom, showAll }: ViewControl, arrows = true): void {
  if (event.ctrlKey || event.metaKey || event.altKey) return;
  const arrow = arrows ? ARROWS[event.key] : undefined;
  const factor = ZOOMS[event.key];
  if (arrow) pan(...arrow);
  else if (factor) zoom(factor);
  else if (event.key.toLowerCase() === 'f') showAll();
  else return;
  event.preventDefault();
}
