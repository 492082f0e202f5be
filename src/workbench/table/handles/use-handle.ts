import { type KeyboardEvent, type PointerEvent, useEffect, useRef, useState } from 'react';
import type { Point } from '../../../plane';
import { useBench } from '../../store/bench';
import { length, stepped } from '../../store/quantity';
import type { BenchState } from '../../store/state';
import type { View } from '../../view/view';
import { useTable } from '../table-state';
import type { Handle } from './handle';
import { pulledValue, putBack, setHandle } from './set-handle';

/** A tap moves a finger by so much without meaning to, pixels. */
const STILL = 3;

/** One hold of a button: which pointer, where it started, and what there was before. */
interface Hold {
  readonly pointer: number;
  readonly start: Point;
  /** The window's corner on the page, asked for once: each time the browser has to lay out the page to answer. */
  readonly corner: Point;
  /** From the button's middle to where it was taken, pixels. */
  readonly grip: Point;
  readonly before: BenchState;
  moved: boolean;
}

const KEYS: Readonly<Record<string, number>> = {
  ArrowRight: 1,
  ArrowUp: 1,
  PageUp: 10,
  ArrowLeft: -1,
  ArrowDown: -1,
  PageDown: -10,
};

/**
 * Drags a button by mouse, pen or finger, and moves it by keys. Each frame drafts once, whatever the pointer sends; a
 * whole drag is one change to undo, and so is what keys do until the button is left. Escape puts back what was.
 */
export function useHandle(handle: Handle, view: View) {
  const [held, setHeld] = useState(false);
  const [stopped, setStopped] = useState(false);
  const hold = useRef<Hold | undefined>(undefined);
  const last = useRef<{ readonly at: Point; readonly fine: boolean }>(undefined);
  const frame = useRef(0);
  const seen = useRef(view);
  seen.current = view;
  useEffect(() => () => cancelAnimationFrame(frame.current), []);

  const apply = () => {
    frame.current = 0;
    const { current: holding } = hold;
    const to = last.current;
    if (!holding || !to) return;
    const { draft, project } = useBench.getState();
    const middle = { x: to.at.x - holding.grip.x, y: to.at.y - holding.grip.y };
    const wanted = pulledValue(handle, draft, onPaper(middle, seen.current));
    const step = to.fine ? handle.step[project.units] / 2 : handle.step[project.units];
    setStopped(!setHandle(handle, Math.round(wanted / step) * step));
  };

  const letGo = () => {
    cancelAnimationFrame(frame.current);
    frame.current = 0;
    hold.current = undefined;
    setHeld(false);
    setStopped(false);
    useTable.getState().hold(undefined);
    useBench.getState().leave(handle.path);
  };

  const onPointerDown = (event: PointerEvent<HTMLElement>) => {
    if (event.button !== 0 || hold.current) return;
    // The paper under the button stays where it is.
    event.stopPropagation();
    const { left, top } = event.currentTarget.parentElement?.getBoundingClientRect() ?? { left: 0, top: 0 };
    const corner = { x: left, y: top };
    const at = inWindow(event, corner);
    const button = onScreen(handle.at(useBench.getState().draft), seen.current);
    hold.current = {
      pointer: event.pointerId,
      start: at,
      corner,
      grip: { x: at.x - button.x, y: at.y - button.y },
      before: useBench.getState(),
      moved: false,
    };
    event.currentTarget.setPointerCapture(event.pointerId);
    setHeld(true);
    useTable.getState().hold(handle.key);
  };

  const onPointerMove = (event: PointerEvent<HTMLElement>) => {
    const { current: holding } = hold;
    if (holding?.pointer !== event.pointerId) return;
    event.stopPropagation();
    const at = inWindow(event, holding.corner);
    if (!holding.moved && Math.hypot(at.x - holding.start.x, at.y - holding.start.y) < STILL) return;
    holding.moved = true;
    last.current = { at, fine: event.shiftKey };
    if (frame.current === 0) frame.current = requestAnimationFrame(apply);
  };

  const onPointerUp = (event: PointerEvent<HTMLElement>) => {
    if (hold.current?.pointer !== event.pointerId) return;
    event.stopPropagation();
    if (frame.current !== 0) apply();
    letGo();
  };

  const onKeyDown = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.key === 'Escape' && hold.current) {
      const { before } = hold.current;
      letGo();
      putBack(before);
    } else if (event.key in KEYS || event.key === 'Home' || event.key === 'End') {
      const { draft, project } = useBench.getState();
      const { lowest, highest } = handle.limits(draft);
      const count = (KEYS[event.key] ?? 0) * (event.shiftKey ? 10 : 1);
      const next = count === 0 ? undefined : stepped(handle.value(draft), length.step(project.units), count);
      setStopped(!setHandle(handle, next ?? (event.key === 'Home' ? lowest : highest)));
    } else return;
    event.preventDefault();
    event.stopPropagation();
  };

  const onBlur = () => {
    setStopped(false);
    useBench.getState().leave(handle.path);
  };

  return { held, stopped, onPointerDown, onPointerMove, onPointerUp, onPointerCancel: onPointerUp, onKeyDown, onBlur };
}

const inWindow = ({ clientX, clientY }: PointerEvent, { x, y }: Point): Point => ({ x: clientX - x, y: clientY - y });
const onScreen = (p: Point, { scale, left, top }: View): Point => ({ x: p.x * scale + left, y: p.y * scale + top });
const onPaper = (p: Point, { scale, left, top }: View): Point => ({ x: (p.x - left) / scale, y: (p.y - top) / scale });
