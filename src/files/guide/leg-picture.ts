import {
  drawingInk,
  INK,
  inkBounds,
  type LineStyle,
  placedDrawings,
  printedStyle,
  type StyleOf,
  uprightPlaces,
} from '../../drawing';
import type { Mm } from '../../length';
import type { Draft } from '../../project';
import { mm, printPhrase, say } from '../../words';
import { drawPaths, pictureLook } from '../pen/draw-paths';
import { frameAt } from '../pen/page-frame';
import type { PagePicture } from '../pen/passage';

const THIN: LineStyle = { width: 0.15, colour: INK.level, dash: [] };
const CUT: LineStyle = { width: 0.35, colour: INK.cut, dash: [] };
const SHOWN = new Set(['cut', 'stitching', 'fold', 'grain']);
const TALLEST: Mm = 95;

/** The leg, small: cut lines, folds and stitching, to know it by; no signs, which would be too small to read. */
export function legPicture(draft: Draft): PagePicture {
  const leg = draft.pieces.slice(0, 1);
  const drawings = placedDrawings(leg, uprightPlaces(leg)).map((drawing) => ({
    ...drawing,
    paths: drawing.paths.filter(({ stroke }) => SHOWN.has(stroke)),
  }));
  const box = inkBounds(drawingInk(drawings));
  const [width, height] = [box.right - box.left, box.bottom - box.top];
  return {
    ratio: height / width,
    tallest: TALLEST,
    caption: printPhrase(say`each leg, ${mm(height)} long as cut`, draft.project.units),
    draw: (pen, { left, top, right }) => {
      const scale = (right - left) / width;
      const styleOf: StyleOf = (path) => {
        const { width, colour } = printedStyle(path);
        return path.stroke === 'cut' ? CUT : { ...THIN, width: Math.min(width, THIN.width), colour };
      };
      drawPaths(pen, drawings, box, frameAt(left, top, box, { x: scale, y: scale }), scale, pictureLook(styleOf));
    },
  };
}
