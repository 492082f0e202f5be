import { type KeyboardEvent, useRef, useState } from 'react';
import { useBench } from '../../store/bench';
import { length, stepped } from '../../store/quantity';
import type { BenchState } from '../../store/state';
import { useDrag } from '../../view/use-drag';
import { inWindow, outOfWindow, type View } from '../../view/view';
import { useTable } from '../table-state';
import type { Handle } from './handle';
import { pulledValue, putBack, setHandle } from './set-handle';

const KEYS: Readonly<Record<string, number>> = {
  ArrowRight: 1,
  ArrowUp: 1,
  PageUp: 10,
  ArrowLeft: -1,
  ArrowDown: -1,
  PageDown: -10,
};

/**
 * Drags a button by mouse, pen or finger, and moves it by keys. Each frame drafts once; a whole drag is one change to
 * undo, and so is what keys do until the button is left. Escape puts back what was.
 */
export function useHandle(handle: Handle, view: View) {
  const [held, setHeld] = useState(false);
  const [stopped, setStopped] = useState(false);
  /** What there was before it was taken hold of. */
  const before = useRef<BenchState | undefined>(undefined);

  const drop = () => {
    before.current = undefined;
    setHeld(false);
    setStopped(false);
    useTable.getState().hold(undefined);
    useBench.getState().leave(handle.path);
  };

  const { letGo, handlers } = useDrag({
    middle: () => inWindow(handle.at(useBench.getState().draft), view),
    onTake() {
      before.current = useBench.getState();
      setHeld(true);
      useTable.getState().hold(handle.key);
    },
    onMove({ to, fine }) {
      const { draft, project } = useBench.getState();
      const wanted = pulledValue(handle, draft, outOfWindow(to, view));
      const step = fine ? handle.step[project.units] / 2 : handle.step[project.units];
      setStopped(!setHandle(handle, Math.round(wanted / step) * step));
    },
    onDrop: drop,
  });

  const onKeyDown = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.key === 'Escape' && before.current) {
      const { current: was } = before;
      letGo();
      drop();
      putBack(was);
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

  return { held, stopped, ...handlers, onKeyDown, onBlur };
}
