import { useEffect, useRef } from 'react';
import { homographyAfter } from '../../plane';
import { inWindow, type Size, type View, windowMap } from '../view/view';
import type { Board, Mark } from './board';
import { type Picture, pixelsAcross, seenPixels } from './picture';

/** Its side, pixels of the screen. */
const SIDE = 132;
/** How many of them a pixel of the picture takes. */
const LARGE = 3;

interface LoupeProps {
  readonly picture: Picture;
  readonly board: Board;
  readonly mark: Mark;
  readonly view: View;
  readonly size: Size;
}

/** What lies under the mark in hand, pixel by pixel: in the corner that is away from it. */
export function Loupe({ picture, board, mark, view, size }: LoupeProps) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const { x, y } = mark.at;
  useEffect(() => {
    const context = canvas.current?.getContext('2d');
    if (!context) return;
    const scale = LARGE * pixelsAcross(board.straight, { x, y });
    const back = windowMap({ scale, left: SIDE / 2 - x * scale, top: SIDE / 2 - y * scale });
    const image = context.createImageData(SIDE, SIDE);
    image.data.set(seenPixels(picture, homographyAfter(board.straight, back), board.lens, SIDE, SIDE));
    context.putImageData(image, 0, 0);
  }, [picture, board, x, y]);
  const right = inWindow(mark.at, view).x < size.width / 2;
  return (
    <div className="photo-loupe" data-side={right ? 'right' : 'left'} aria-hidden="true">
      <canvas ref={canvas} width={SIDE} height={SIDE} />
      <svg viewBox="-66 -66 132 132" aria-hidden="true">
        <path d="M-66 0H-3M3 0H66M0-66V-3M0 3V66" />
      </svg>
      <span>{mark.name.split(',')[0]}</span>
    </div>
  );
}
