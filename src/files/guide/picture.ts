import { INK, type LineStyle, mmOfPt } from '../../drawing';
import type { Mm, Units } from '../../length';
import { type Box, type Curve, type Point, pathThrough, point, straight } from '../../plane';
import { type PictureItem, placedWords, type StepPicture } from '../../sewing';
import type { PagePicture } from '../pen/passage';
import type { PageMap, Pen } from '../pen/pen';
import { TYPE } from '../pen/type-scale';
import { FACE_LOOKS, PICTURE_LOOKS } from './looks';

/** Words are not smaller than this in print, however small the picture is. */
const LEAST_PT = TYPE.small.pt;
/** Lines of a small picture are at least as thick as if it were this large. */
const LEAST_SIDE: Mm = 45;
const FRAME: LineStyle = { width: 0.15, colour: INK.frame, dash: [] };

/** The longer side of a picture without words. */
const WORDLESS: Mm = 46;

/** A step's picture for a page, in a thin frame, as small as its words can be read. */
export const framedPicture = (picture: StepPicture, units: Units): PagePicture => ({
  ...shapeOf(picture),
  widest: readableWidth(picture),
  draw: (pen, box) => {
    drawPicture(pen, picture, box, units);
    pen.frame(box, FRAME);
  },
});

/** The same without a frame. */
export const barePicture = (picture: StepPicture, units: Units): PagePicture => ({
  ...shapeOf(picture),
  draw: (pen, box) => drawPicture(pen, picture, box, units),
});

/** The same very small: without its words and its hatching, which would be grey dust. */
export const smallPicture = ({ panels, ...picture }: StepPicture, units: Units): PagePicture =>
  barePicture(
    {
      ...picture,
      panels: panels.map(({ window, items }) => ({
        window,
        items: items.flatMap((item): readonly PictureItem[] => {
          if (item.kind === 'word') return [];
          return item.kind === 'area' ? [{ ...item, hatch: [] }] : [item];
        }),
      })),
    },
    units,
  );

const shapeOf = ({ box }: StepPicture) => ({ ratio: (box.bottom - box.top) / (box.right - box.left) });

/** How wide a picture is where its smallest words have the least size. */
function readableWidth({ box, panels }: StepPicture): Mm {
  const [width, height] = [box.right - box.left, box.bottom - box.top];
  const sizes = panels.flatMap(({ items }) => items.flatMap((item) => (item.kind === 'word' ? [item.size] : [])));
  const scale = sizes.length === 0 ? WORDLESS / Math.max(width, height) : mmOfPt(LEAST_PT) / Math.min(...sizes);
  return width * scale;
}

/** Draws a step's picture into a box of its shape. */
function drawPicture(pen: Pen, picture: StepPicture, room: Box, units: Units): void {
  const { box, panels } = picture;
  const scale = (room.right - room.left) / (box.right - box.left);
  const map: PageMap = (p) => point(room.left + (p.x - box.left) * scale, room.top + (p.y - box.top) * scale);
  const unit = Math.max(LEAST_SIDE, scale * Math.max(box.right - box.left, box.bottom - box.top)) / 100;
  for (const { window, items } of panels) {
    const [from, to] = [map(point(window.left, window.top)), map(point(window.right, window.bottom))];
    const shown: Box = { left: from.x, top: from.y, right: to.x, bottom: to.y };
    pen.within(shown, () => {
      for (const item of items) if (item.kind !== 'word') drawItem(pen, item, map, unit);
    });
  }
  const ptOf = (size: Mm) => (size * scale) / mmOfPt(1);
  const clear = CLEAR / scale;
  const words = placedWords(picture, {
    units,
    least: mmOfPt(LEAST_PT) / scale,
    width: (text, size) => pen.widthOf(text, ptOf(size)) / scale,
    room: { left: box.left + clear, right: box.right - clear, top: box.top + clear, bottom: box.bottom - clear },
  });
  for (const { text, left, baseline, size } of words)
    pen.words(text, map(point(left, baseline)), { pt: Math.max(LEAST_PT, ptOf(size)), colour: INK.words, rim: RIM });
}

/** Between words and the edge of their picture. */
const CLEAR: Mm = 0.4;

type Word = Extract<PictureItem, { kind: 'word' }>;

/** @param unit a hundredth of the picture's longer side, on the page */
function drawItem(pen: Pen, item: Exclude<PictureItem, Word>, map: PageMap, unit: Mm): void {
  switch (item.kind) {
    case 'area': {
      const { fill, hatch, width } = FACE_LOOKS[item.face];
      if (item.points.length > 2) pen.fill(closed(item.points), map, fill);
      const strokes = item.hatch.map(([a, b]): Curve => straight(a, b));
      pen.stroke(strokes, map, { width: width * unit, colour: hatch, dash: [] });
      return;
    }
    case 'line':
      pen.stroke(pathThrough(...item.points), map, styleOf(PICTURE_LOOKS[item.line], unit));
      return;
    case 'sign':
      pen.fill(closed(item.points), map, INK.sign);
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
