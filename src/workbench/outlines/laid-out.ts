import type { Mm } from '../../length';
import { type Box, curvesBounds, type Point, turned } from '../../plane';
import { type BlockReading, uprightTurn } from '../../trace';
import { PARTS, type Part, type PickedPart } from './outlines-store';

/** Between two blocks and round them, as a share of their height. */
const GAP = 0.15;

/** Where a block stands on the screen: upright, beside the other one. */
export interface StandingPart {
  readonly part: Part;
  readonly reading: BlockReading;
  readonly toScreen: (p: Point) => Point;
  readonly fromScreen: (p: Point) => Point;
}

/** Both blocks upright, beside each other: the back on the left, as on every drawing here. */
export function standing(work: Readonly<Record<Part, PickedPart | undefined>>): {
  readonly parts: readonly StandingPart[];
  readonly width: Mm;
  readonly height: Mm;
} {
  const ORIGIN = { x: 0, y: 0 };
  const shown = PARTS.flatMap((part) => {
    const reading = work[part]?.reading;
    if (!reading) return [];
    const angle = uprightTurn(reading);
    const box = curvesBounds(
      reading.way.curves.map((curve) => curve.map((p) => turned(p, ORIGIN, angle)) as [Point, Point, Point, Point]),
    );
    return [{ part, reading, angle, box }];
  });
  const tall = ({ top, bottom }: Box) => bottom - top;
  const height = Math.max(1, ...shown.map(({ box }) => tall(box)));
  const gap = GAP * height;
  let left = gap;
  const parts = shown.map(({ part, reading, angle, box }): StandingPart => {
    const [dx, dy] = [left - box.left, gap - box.top];
    left += box.right - box.left + gap;
    return {
      part,
      reading,
      toScreen: (p) => {
        const { x, y } = turned(p, ORIGIN, angle);
        return { x: x + dx, y: y + dy };
      },
      fromScreen: ({ x, y }) => turned({ x: x - dx, y: y - dy }, ORIGIN, -angle),
    };
  });
  return { parts, width: left, height: height + 2 * gap };
}

/** Where a press lies on a drawing in its own units, and how many of these a pixel is. */
export function pressedAt(svg: SVGSVGElement, event: { readonly clientX: number; readonly clientY: number }) {
  const matrix = svg.getScreenCTM();
  if (!matrix) return undefined;
  const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
  return { at: { x, y }, pixel: 1 / matrix.a };
}
