import { type ReactNode, useEffect, useRef } from 'react';
import { type Box, homographyAfter, type Point } from '../../plane';
import { own, words } from '../../words';
import { useView, type ViewControl } from '../view/use-view';
import { useWindowDrag } from '../view/use-window-drag';
import { useWindowSize } from '../view/use-window-size';
import { outOfWindow, type View, windowMap } from '../view/view';
import { moveViewByKey, NEARER } from '../view/view-keys';
import type { Board, Mark } from './board';
import { Loupe } from './Loupe';
import { MarkButton } from './MarkButton';
import { type Picture, seenPixels } from './picture';
import { type MarkId, markKey } from './work';

export interface PhotoViewProps {
  readonly picture: Picture;
  readonly board: Board;
  /** What is shown, so that another view of it is fitted anew. */
  readonly name: string;
  readonly box: () => Box;
  /** Whether it stays as it is fitted while marks are moved. */
  readonly still?: boolean;
  readonly about: string;
  readonly marks: readonly Mark[];
  readonly selected: MarkId | undefined;
  /** One press of an arrow key, in the board's unit. */
  readonly step: number;
  /** A press on the picture itself. */
  readonly onPress?: ((at: Point) => void) | undefined;
  /** Whether a press close beside a mark is one on the picture, too: places may lie close to each other. */
  readonly besideMarks?: boolean;
  /** Told of the middle of what is seen, for what is placed by keys. */
  readonly onMiddle: (middle: Point) => void;
  readonly lines: (view: View) => ReactNode;
}

const ROOM = { left: 16, top: 16, right: 16, bottom: 56 };

/** The photograph in its window, with its marks over it: dragged, zoomed and marked by hand or by keys. */
export function PhotoView(props: PhotoViewProps) {
  const { picture, board, name, box, still, about, marks, selected, step, onPress, besideMarks, onMiddle, lines } =
    props;
  const element = useRef<HTMLElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const size = useWindowSize(element);
  const control = useView(name, box, size, ROOM, still);
  const { view } = control;
  const drag = useWindowDrag(element, control, (at) => onPress?.(outOfWindow(at, view)));

  const middle = outOfWindow({ x: size.width / 2, y: size.height / 2 }, view);
  useEffect(() => onMiddle(middle));

  useEffect(() => {
    const [width, height] = [Math.round(size.width), Math.round(size.height)];
    const context = canvas.current?.getContext('2d');
    if (!context || width === 0 || height === 0) return;
    const image = context.createImageData(width, height);
    image.data.set(seenPixels(picture, homographyAfter(board.straight, windowMap(view)), board.lens, width, height));
    context.putImageData(image, 0, 0);
  }, [picture, board, view, size]);

  const chosen = selected && marks.find(({ id }) => markKey(id) === markKey(selected));
  return (
    <div className="photo-window">
      <section
        ref={element}
        className="photo-picture"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the picture is moved by keys as well as by hand
        tabIndex={0}
        aria-label={words`${own(about)} Arrow keys move it, plus and minus zoom, F fits it.`}
        data-placing={onPress ? true : undefined}
        onKeyDown={(event) => moveViewByKey(event, control)}
        {...drag}
        onPointerDown={(event) => {
          // After a finger the browser sends a mouse to the same place, where by then another mark may lie and would take the focus.
          if (event.pointerType === 'touch') event.preventDefault();
          drag.onPointerDown(event);
        }}
      >
        <canvas ref={canvas} width={Math.round(size.width)} height={Math.round(size.height)} />
        <svg className="photo-lines" width={size.width} height={size.height} aria-hidden="true">
          {lines(view)}
        </svg>
        {marks.map((mark) => (
          <MarkButton
            key={markKey(mark.id)}
            mark={mark}
            view={view}
            step={step}
            selected={mark === chosen}
            onBeside={besideMarks ? (at) => onPress?.(outOfWindow(at, view)) : undefined}
          />
        ))}
      </section>
      {chosen && <Loupe picture={picture} board={board} mark={chosen} view={view} size={size} />}
      <ZoomTools control={control} />
    </div>
  );
}

function ZoomTools({ control }: { readonly control: ViewControl }) {
  return (
    <div className="photo-tools tools-zoom">
      <button
        type="button"
        className="tool tool-round"
        aria-label={words`Zoom out`}
        onClick={() => control.zoom(1 / NEARER)}
      >
        −
      </button>
      <button
        type="button"
        className="tool tool-round"
        aria-label={words`Zoom in`}
        onClick={() => control.zoom(NEARER)}
      >
        +
      </button>
      <button type="button" className="tool" onClick={control.showAll}>
        {words`Fit`}
      </button>
    </div>
  );
}
