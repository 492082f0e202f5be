import { type KeyboardEvent, useEffect, useRef } from 'react';
import { add, type Point } from '../../plane';
import { useDrag } from '../view/use-drag';
import { inWindow, outOfWindow, standingAt, type View } from '../view/view';
import { isRemovable, type Mark } from './board';
import { moveMark } from './move-mark';
import { endRun, place, placeOnMark, removeMark, usePhoto } from './photo-store';
import { likelyPixel } from './shown-place';
import { markKey } from './work';

interface MarkButtonProps {
  readonly mark: Mark;
  readonly view: View;
  readonly step: number;
  readonly selected: boolean;
  /** A press within the button's reach but beside its mark, while another place is to be marked: told where in the window. */
  readonly onBeside?: ((at: Point) => void) | undefined;
}

/** A press within so much of a mark means the mark itself, pixels. */
const ON_MARK = 8;

const KEYS: Readonly<Record<string, Point>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

/** A mark that is dragged, or moved by arrow keys; Delete takes it away. Its middle is left open, so that what it marks is seen. */
export function MarkButton({ mark, view, step, selected, onBeside }: MarkButtonProps) {
  const key = markKey(mark.id);
  const button = useRef<HTMLButtonElement>(null);
  const wanted = usePhoto((state) => state.focus === key);
  const inHandBefore = useRef(false);
  /** How far beside its middle it was pressed. */
  const beside = useRef<Point>({ x: 0, y: 0 });
  const removable = isRemovable(mark.id);

  useEffect(() => {
    if (!wanted) return;
    button.current?.focus();
    usePhoto.setState({ focus: undefined });
  }, [wanted]);

  const { handlers } = useDrag({
    middle: () => inWindow(mark.at, view),
    onTake() {
      inHandBefore.current = selected;
      usePhoto.setState({ selected: mark.id });
    },
    onMove: ({ to }) => moveMark(mark.id, outOfWindow(to, view), `drag ${key}`),
    onDrop({ pressed }) {
      endRun();
      if (!pressed) return;
      const { x, y } = beside.current;
      if (onBeside && Math.hypot(x, y) > ON_MARK) onBeside(add(inWindow(mark.at, view), beside.current));
      else if (!inHandBefore.current) placeOnMark(mark.id);
    },
  });

  const onKeyDown = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const way = KEYS[event.key];
    if (way) {
      const by = step * (event.shiftKey ? 10 : 1);
      moveMark(mark.id, { x: mark.at.x + way.x * by, y: mark.at.y + way.y * by }, `keys ${key}`);
    } else if (event.key === 'Enter' && mark.id.kind === 'landmark') {
      const { work } = usePhoto.getState();
      const next = likelyPixel(work, mark.id.part);
      if (!next) return;
      endRun();
      place(mark.id.part, next, true);
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
      style={standingAt(mark.at, view)}
      {...handlers}
      onPointerDown={(event) => {
        const { left, top, width, height } = event.currentTarget.getBoundingClientRect();
        beside.current = { x: event.clientX - left - width / 2, y: event.clientY - top - height / 2 };
        handlers.onPointerDown(event);
      }}
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
