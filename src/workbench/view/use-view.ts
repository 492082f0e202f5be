import { useCallback, useMemo, useState } from 'react';
import type { Box, Point } from '../../plane';
import { fitView, panView, type Room, type Size, type View, zoomView } from './view';

export interface ViewControl {
  readonly view: View;
  readonly showAll: () => void;
  readonly pan: (dx: number, dy: number) => void;
  readonly zoom: (factor: number, about?: Point) => void;
}

interface Frame {
  readonly name: string;
  readonly box: Box;
  /** Undefined while the frame's box is fitted to the window. */
  readonly own: View | undefined;
}

/**
 * The view of the drawing: fitted until someone pans or zooms. A drawing that changes under a keystroke keeps its view,
 * so that the change is seen as a change; only one that outgrows its frame, or shrinks far into it, is fitted anew.
 *
 * @param name what is shown: another name is fitted anew
 * @param box what there is to see, asked for only where the view may change
 * @param still whether the paper must not move, because something on it is held
 */
export function useView(name: string, box: () => Box, size: Size, room: Room, still = false): ViewControl {
  const [frame, setFrame] = useState<Frame>(() => ({ name, box: box(), own: undefined }));
  let present = frame;
  if (frame.name !== name || (!frame.own && !still && leaves(box(), frame.box))) {
    present = { name, box: box(), own: undefined };
    setFrame(present);
  }
  const fitted = useMemo(() => fitView(present.box, size, room), [present.box, size, room]);
  const view = present.own ?? fitted;
  const move = useCallback(
    (change: (view: View) => View) =>
      setFrame((old) => ({ ...old, own: change(old.own ?? fitView(old.box, size, room)) })),
    [size, room],
  );
  return {
    view,
    showAll: () => setFrame({ name, box: box(), own: undefined }),
    pan: useCallback((dx, dy) => move((old) => panView(old, dx, dy)), [move]),
    zoom: useCallback(
      (factor, about) => move((old) => zoomView(old, factor, about ?? { x: size.width / 2, y: size.height / 2 })),
      [move, size],
    ),
  };
}

function leaves(box: Box, frame: Box): boolean {
  const width = frame.right - frame.left;
  const height = frame.bottom - frame.top;
  const grown = 0.03;
  const outside =
    box.left < frame.left - grown * width ||
    box.right > frame.right + grown * width ||
    box.top < frame.top - grown * height ||
    box.bottom > frame.bottom + grown * height;
  return outside || (box.right - box.left < 0.8 * width && box.bottom - box.top < 0.8 * height);
}
