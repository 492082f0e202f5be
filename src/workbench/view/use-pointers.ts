import { type PointerEvent, type RefObject, useEffect, useRef } from 'react';
import type { Point } from '../../plane';
import type { ViewControl } from './use-view';

type Move = Pick<ViewControl, 'pan' | 'zoom'>;

/** Dragging with one pointer, pinching with two, and the wheel. Returns the handlers for the window's element. */
export function usePointers(element: RefObject<HTMLElement | null>, { pan, zoom }: Move) {
  const held = useRef(new Map<number, Point>());

  const place = (event: { clientX: number; clientY: number }): Point => {
    const box = element.current?.getBoundingClientRect();
    return { x: event.clientX - (box?.left ?? 0), y: event.clientY - (box?.top ?? 0) };
  };

  // React listens to wheels passively, which would scroll the page under the drawing.
  useEffect(() => {
    const target = element.current;
    if (!target) return;
    const onWheel = (event: WheelEvent) => {
      event.preventDefault();
      const box = target.getBoundingClientRect();
      const about = { x: event.clientX - box.left, y: event.clientY - box.top };
      // A pinch on a touchpad comes as a wheel with the control key, in much smaller steps.
      const lines = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 16 : 1;
      zoom(Math.exp(-event.deltaY * lines * (event.ctrlKey ? 0.01 : 0.0015)), about);
    };
    target.addEventListener('wheel', onWheel, { passive: false });
    return () => target.removeEventListener('wheel', onWheel);
  }, [element, zoom]);

  const onPointerDown = (event: PointerEvent<HTMLElement>) => {
    if (event.button > 1) return;
    held.current.set(event.pointerId, place(event));
    event.currentTarget.setPointerCapture?.(event.pointerId);
  };

  const onPointerMove = (event: PointerEvent<HTMLElement>) => {
    const before = held.current.get(event.pointerId);
    if (!before) return;
    const now = place(event);
    const other = [...held.current].find(([id]) => id !== event.pointerId)?.[1];
    held.current.set(event.pointerId, now);
    if (!other) {
      pan(now.x - before.x, now.y - before.y);
      return;
    }
    const was = Math.hypot(before.x - other.x, before.y - other.y);
    const is = Math.hypot(now.x - other.x, now.y - other.y);
    pan((now.x - before.x) / 2, (now.y - before.y) / 2);
    if (was > 10 && is > 10) zoom(is / was, { x: (now.x + other.x) / 2, y: (now.y + other.y) / 2 });
  };

  const onPointerUp = (event: PointerEvent<HTMLElement>) => {
    held.current.delete(event.pointerId);
  };

  return { onPointerDown, onPointerMove, onPointerUp, onPointerCancel: onPointerUp };
}
