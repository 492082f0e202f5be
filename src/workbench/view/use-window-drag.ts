import { type RefObject, useEffect } from 'react';
import { between, distance, type Point } from '../../plane';
import { useDrag } from './use-drag';
import type { ViewControl } from './use-view';
import { wheelFactor } from './wheel';

/** Fingers nearer to each other than this can't be told to draw anything apart, pixels. */
const CLOSE = 10;

/**
 * Dragging a window's drawing with one pointer, pinching with two, and the wheel.
 *
 * @param onPress told of a press that was none to move the drawing
 * @returns the handlers for the window's element
 */
export function useWindowDrag(
  element: RefObject<HTMLElement | null>,
  { pan, zoom }: Pick<ViewControl, 'pan' | 'zoom'>,
  onPress?: (at: Point) => void,
) {
  // React listens to wheels passively, which would scroll the page under the drawing.
  useEffect(() => {
    const target = element.current;
    if (!target) return;
    const onWheel = (event: WheelEvent) => {
      event.preventDefault();
      const box = target.getBoundingClientRect();
      const about = { x: event.clientX - box.left, y: event.clientY - box.top };
      zoom(wheelFactor(event), about);
    };
    target.addEventListener('wheel', onWheel, { passive: false });
    return () => target.removeEventListener('wheel', onWheel);
  }, [element, zoom]);

  return useDrag({
    onMove({ to, from, other }) {
      // Held by two, half of it goes with each.
      const half = other ? 2 : 1;
      pan((to.x - from.x) / half, (to.y - from.y) / half);
      if (!other) return;
      const [was, is] = [distance(from, other), distance(to, other)];
      if (was > CLOSE && is > CLOSE) zoom(is / was, between(to, other, 0.5));
    },
    onDrop: ({ at, pressed }) => pressed && onPress?.(at),
  }).handlers;
}
