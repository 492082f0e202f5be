import { type KeyboardEvent, type PointerEvent, useEffect, useRef } from 'react';
import type { Point } from '../../plane';
import type { View } from '../view/view';
import type { Mark } from './board';
import { moveMark } from './move-mark';
import { endRun, placeOnMark, removeMark, usePhoto } from './photo-store';
import { markKey } from './work';

interface MarkButtonProps {
  readonly mark: Mark;
  readonly view: View;
  readonly step: number;
  readonly selected: boolean;
}

/** One hold of a mark: which pointer, from its middle to where it was taken, and whether it was in hand before. */
interface Grip {
  readonly pointer: number;
  readonly dx: number;
  readonly dy: number;
  readonly before: boolean;
  readonly from: Point;
  moved: boolean;
}

/** A tap moves a finger by so much without meaning to, pixels. */
const STILL = 3;

const KEYS: Readonly<Record<string, Point>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

/** A mark that is dragged, or moved by arrow keys; Delete takes it away. Its middle is left open, so that what it marks is seen. */
export function MarkButton({ mark, view, step, selected }: MarkButtonProps) {
  const key = markKey(mark.id);
  const button = useRef<HTMLButtonElement>(null);
  const wanted = usePhoto((state) => state.focus === key);
  const grip = useRef<Grip | undefined>(undefined);
  const removable = mark.id.kind === 'landmark' || mark.id.kind === 'point';

  useEffect(() => {
    if (!wanted) return;
    button.current?.focus();
    usePhoto.setState({ focus: undefined });
  }, [wanted]);

  const onPointerDown = (event: PointerEvent<HTMLButtonElement>) => {
    if (event.button !== 0) return;
    event.stopPropagation();
    event.currentTarget.setPointerCapture(event.pointerId);
    grip.current = {
      pointer: event.pointerId,
      dx: event.clientX - (mark.at.x * view.scale + view.left),
      dy: event.clientY - (mark.at.y * view.scale + view.top),
      before: selected,
      from: { x: event.clientX, y: event.clientY },
      moved: false,
    };
    usePhoto.setState({ selected: mark.id });
  };

  const onPointerMove = (event: PointerEvent<HTMLButtonElement>) => {
    const { current: held } = grip;
    if (held?.pointer !== event.pointerId) return;
    event.stopPropagation();
    if (!held.moved && Math.hypot(event.clientX - held.from.x, event.clientY - held.from.y) < STILL) return;
    held.moved = true;
    const x = (event.clientX - held.dx - view.left) / view.scale;
    const y = (event.clientY - held.dy - view.top) / view.scale;
    moveMark(mark.id, { x, y }, `drag ${key}`);
  };

  const onPointerUp = (event: PointerEvent<HTMLButtonElement>) => {
    const { current: held } = grip;
    if (held?.pointer !== event.pointerId) return;
    event.stopPropagation();
    grip.current = undefined;
    endRun();
    if (!held.moved && !held.before) placeOnMark(mark.id);
  };

  const onKeyDown = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const way = KEYS[event.key];
    if (way) {
      const by = step * (event.shiftKey ? 10 : 1);
      moveMark(mark.id, { x: mark.at.x + way.x * by, y: mark.at.y + way.y * by }, `keys ${key}`);
    } else if (removable && (event.key === 'Delete' || event.key === 'Backspace')) removeMark(mark.id);
    else return;
    event.preventDefault();
    event.stopPropagation();
  };

  return (
    <button
      ref={button}
      type="button"
      className="photo-mark"
      aria-label={mark.name}
      aria-pressed={selected}
      aria-describedby="photo-mark-help"
      data-kind={mark.id.kind}
      data-corner={mark.id.kind === 'point' && mark.letter ? true : undefined}
      style={{
        transform: `translate(${mark.at.x * view.scale + view.left}px, ${mark.at.y * view.scale + view.top}px)`,
      }}
      onPointerDown={onPointerDown}
      onPointerMove={onPointerMove}
      onPointerUp={onPointerUp}
      onPointerCancel={onPointerUp}
      onKeyDown={onKeyDown}
      onFocus={() => usePhoto.setState({ selected: mark.id })}
      onBlur={endRun}
    >
      <svg viewBox="-14 -14 28 28" aria-hidden="true">
        <circle r="8" />
        <path d="M-13 0H-4M4 0H13M0-13V-4M0 4V13" />
      </svg>
      {mark.letter && mark.id.kind !== 'point' && <span aria-hidden="true">{mark.letter}</span>}
    </button>
  );
}
