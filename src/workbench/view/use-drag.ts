import { type PointerEvent, useEffect, useRef } from 'react';
import { add, distance, type Point, subtract } from '../../plane';

/** A press moves a hand by so much without meaning to, pixels. */
const STILL = 4;

/** What a hand can do with what is dragged. Points are pixels of the window. */
export interface Dragged {
  /**
   * Where the middle of a thing in the window lies, which follows one pointer from where it was taken. Left out where the
   * window itself is dragged: that follows at once, and two pointers pull it apart.
   */
  readonly middle?: () => Point;
  readonly onTake?: () => void;
  /** Once in a frame at most, whatever the pointer sends. */
  readonly onMove: (move: Move) => void;
  /** Let go of, by the hand or by the browser. */
  readonly onDrop?: (drop: Drop) => void;
}

export interface Move {
  /** For a thing, where its middle is to lie; for a window, where the pointer is. */
  readonly to: Point;
  readonly from: Point;
  /** Where another pointer holds it, too. */
  readonly other: Point | undefined;
  /** Whether the Shift key asks for smaller steps. */
  readonly fine: boolean;
}

export interface Drop {
  readonly at: Point;
  /** Whether it was no drag but a press: one pointer alone, let go where it was set down. */
  readonly pressed: boolean;
}

/** One pointer's hold. */
interface Hold {
  /** What is added to a place on the page, asked for once: each time the browser has to lay out the page to answer. */
  readonly shift: Point;
  readonly start: Point;
  /** The last place that was told of, and the newest. */
  told: Point;
  at: Point;
  fine: boolean;
  press: boolean;
}

const onPage = ({ clientX, clientY }: PointerEvent): Point => ({ x: clientX, y: clientY });

/** Drags a thing in a window, or the window's drawing, by mouse, pen or finger: the handlers for its element. */
export function useDrag(dragged: Dragged) {
  const holds = useRef(new Map<number, Hold>());
  const frame = useRef(0);
  const latest = useRef(dragged);
  latest.current = dragged;
  const isThing = dragged.middle !== undefined;

  const tell = () => {
    frame.current = 0;
    for (const [id, hold] of holds.current) {
      const { at: to, told: from, fine } = hold;
      if (to === from) continue;
      const other = [...holds.current].find(([one]) => one !== id)?.[1].told;
      hold.told = to;
      latest.current.onMove({ to, from, other, fine });
    }
  };

  /** Lets go at once of what is held; what was not told of yet never is. */
  const letGo = () => {
    cancelAnimationFrame(frame.current);
    frame.current = 0;
    holds.current.clear();
  };
  // What is taken off the page while it is held is let go of.
  const leave = useRef(() => {
    const held = [...holds.current.values()].at(-1);
    letGo();
    if (held) latest.current.onDrop?.({ at: held.told, pressed: false });
  });
  useEffect(() => leave.current, []);

  const onPointerDown = (event: PointerEvent<HTMLElement>) => {
    const others = [...holds.current.values()];
    if (isThing ? event.button !== 0 || others.length > 0 : event.button > 1) return;
    // The paper under a thing stays where it is.
    if (isThing) event.stopPropagation();
    const { currentTarget: element } = event;
    const box = (isThing ? element.parentElement : element)?.getBoundingClientRect();
    const corner = { x: box?.left ?? 0, y: box?.top ?? 0 };
    const pointer = subtract(onPage(event), corner);
    const start = latest.current.middle?.() ?? pointer;
    for (const other of others) other.press = false;
    const press = event.button === 0 && others.length === 0;
    const shift = subtract(start, onPage(event));
    holds.current.set(event.pointerId, { shift, start, told: start, at: start, fine: false, press });
    element.setPointerCapture?.(event.pointerId);
    latest.current.onTake?.();
  };

  const onPointerMove = (event: PointerEvent<HTMLElement>) => {
    const hold = holds.current.get(event.pointerId);
    if (!hold) return;
    if (isThing) event.stopPropagation();
    const at = add(onPage(event), hold.shift);
    if (distance(at, hold.start) > STILL) hold.press = false;
    else if (isThing && hold.press) return;
    Object.assign(hold, { at, fine: event.shiftKey });
    if (frame.current === 0) frame.current = requestAnimationFrame(tell);
  };

  const drop = (event: PointerEvent<HTMLElement>, isPress: boolean) => {
    const hold = holds.current.get(event.pointerId);
    if (!hold) return;
    if (isThing) event.stopPropagation();
    if (frame.current !== 0) {
      cancelAnimationFrame(frame.current);
      tell();
    }
    holds.current.delete(event.pointerId);
    latest.current.onDrop?.({ at: hold.at, pressed: isPress && hold.press });
  };

  return {
    letGo,
    handlers: {
      onPointerDown,
      onPointerMove,
      onPointerUp: (event: PointerEvent<HTMLElement>) => drop(event, true),
      onPointerCancel: (event: PointerEvent<HTMLElement>) => drop(event, false),
    },
  };
}
