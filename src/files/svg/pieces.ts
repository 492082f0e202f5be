import { drawingInk, inkBounds, placedDrawings, printedStyle, uprightPlaces } from '../../drawing';
import { boxGrown } from '../../plane';
import type { Draft } from '../../project';
import { own, words } from '../../words';
import { DRAWING_LAYERS } from '../content/layers';
import { patternWords } from '../content/piece-words';
import { wholeWords } from '../content/whole-words';
import { SVG_LINES, SVG_WORDS, svgFile, svgLayer, svgPath, svgWidthOf, svgWord } from './parts';

/** White round the drawing. */
const BORDER = 10;

/**
 * The drawing as SVG 1.1 in true size: one unit is one millimetre, and the layers, the same as a PDF's, can be switched or
 * cut one by one. Always full size: the paper's scale and correction belong to
 * paper.
 */
export function writeSvg(draft: Draft): string {
  const { pieces, project } = draft;
  const places = uprightPlaces(pieces);
  const drawings = placedDrawings(pieces, places);
  const ink = drawingInk(drawings);
  const box = inkBounds(ink);
  const placed = wholeWords(patternWords(pieces, places, { project, scale: 1 }), {
    box,
    scale: { x: 1, y: 1 },
    ink,
    widthOf: svgWidthOf,
  });
  const frame = {
    title: project.name,
    about: words`Lounge pant for ${own(project.body.label)}. One unit is one millimetre.`,
    box: boxGrown(box, BORDER),
  };
  const groups = DRAWING_LAYERS.map((layer) => {
    if (layer.id === 'text') return svgLayer(layer, SVG_WORDS, placed.map(svgWord));
    const paths = drawings.flatMap((drawing) => drawing.paths.filter((path) => path.layer === layer.id));
    return svgLayer(
      layer,
      SVG_LINES,
      paths.map((path) => svgPath(path, printedStyle)),
    );
  });
  return svgFile(frame, groups);
}
