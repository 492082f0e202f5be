import { INK, type LineStyle, mmOfPt } from '../../drawing';
import type { Mm, Units } from '../../length';
import { type Box, type Curve, type Point, pathThrough, point, straight } from '../../plane';
import type { PictureItem, StepPicture } from '../../sewing';
import { printPhrase } from '../../words';
import type { PageMap, Pen } from '../pen/pen';
import { FACE_LOOKS, HATCH_WIDTH, PICTURE_LOOKS } from './looks';

/**
 * Draws a step's picture into a room of the page, as large as it fits, in the middle across.
 *
 * @returns what it takes of the page
 */
export function drawPicture(pen: Pen, { box, panels }: StepPicture, room: Box, units: Units): Box {
  const [width, height] = [box.right - box.left, box.bottom - box.top];
  const scale = Math.min((room.right - room.left) / width, (room.bottom - room.top) / height);
  const left = room.left + (room.right - room.left - width * scale) / 2;
  const map: PageMap = (p) => point(left + (p.x - box.left) * scale, room.top + (p.y - box.top) * scale);
  const unit = (Math.max(width, height) / 100) * scale;
  for (const { window, items } of panels) {
    const [from, to] = [map(point(window.left, window.top)), map(point(window.right, window.bottom))];
    pen.within({ left: from.x, top: from.y, right: to.x, bottom: to.y }, () => {
      for (const item of items) drawItem(pen, item, map, { unit, scale, units });
    });
  }
  const end = map(point(box.right, box.bottom));
  return { left, top: room.top, right: end.x, bottom: end.y };
}

interface Scales {
  /** A hundredth of the picture's longer side, on the page. */
  readonly unit: Mm;
  readonly scale: number;
  readonly units: Units;
}

function drawItem(pen: Pen, item: PictureItem, map: PageMap, { unit, scale, units }: Scales): void {
  switch (item.kind) {
    case 'area': {
      const { fill, hatch } = FACE_LOOKS[item.face];
      if (item.points.length > 2) pen.fill(closed(item.points), map, fill);
      const strokes = item.hatch.map(([a, b]): Curve => straight(a, b));
      pen.stroke(strokes, map, { width: HATCH_WIDTH * unit, colour: hatch, dash: [] });
      return;
    }
    case 'line':
      pen.stroke(pathThrough(...item.points), map, styleOf(PICTURE_LOOKS[item.line], unit));
      return;
    case 'sign':
      pen.fill(closed(item.points), map, INK.sign);
      return;
    case 'word':
      pen.words(printPhrase(item.text, units), map(item.at), {
        pt: (item.size * scale) / mmOfPt(1),
        colour: INK.words,
        align: item.align,
        rim: RIM,
      });
  }
}

/** The paper's own colour. */
const RIM = '#FFFFFF';

const closed = (points: readonly Point[]): readonly Curve[] => (points[0] ? pathThrough(...points, points[0]) : []);

const styleOf = ({ width, colour, dash }: LineStyle, unit: Mm): LineStyle => ({
  width: width * unit,
  colour,
  dash: dash.map((part) => part * unit),
});
