import { drawingInk, inkBounds, LAYERS, placedDrawings, printedStyle, uprightPlaces } from '../../drawing';
import { boxGrown } from '../../plane';
import type { Draft } from '../../project';
import { own, words } from '../../words';
import { SVG_LINES, SVG_WORDS, svgFile, svgGroup, svgPath, svgText, withWords } from './parts';

/** White round the drawing. */
const BORDER = 10;

/**
 * The drawing as SVG 1.1 in true size: one unit is one millimetre, and the groups `levels`, `folds`, `stitch`, `cut`,
 * `marks` and `text` can be switched or cut one by one. Always full size: the paper's scale and correction belong to
 * paper.
 */
export function writeSvg(draft: Draft): string {
  const drawings = placedDrawings(draft.pieces, uprightPlaces(draft.pieces));
  const { project } = draft;
  const texts = drawings.flatMap((drawing) => drawing.texts);
  const frame = {
    title: project.name,
    about: words`Lounge pant for ${own(project.body.label)}. One unit is one millimetre.`,
    box: boxGrown(withWords(inkBounds(drawingInk(drawings)), texts), BORDER),
  };
  const groups = LAYERS.map((layer) => {
    if (layer === 'text') return svgGroup(layer, SVG_WORDS, texts.map(svgText));
    const paths = drawings.flatMap((drawing) => drawing.paths.filter((path) => path.layer === layer));
    return svgGroup(
      layer,
      SVG_LINES,
      paths.map((path) => svgPath(path, printedStyle)),
    );
  });
  return svgFile(frame, groups);
}
