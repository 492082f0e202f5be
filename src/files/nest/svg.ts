import type { DrawnPath } from '../../drawing';
import { boxGrown, point, straight } from '../../plane';
import { number, words } from '../../words';
import { wholeWords } from '../content/whole-words';
import {
  SVG_LINES,
  SVG_WORDS,
  svgFile,
  svgGroup,
  svgLayer,
  svgPath,
  svgText,
  svgWidthOf,
  svgWord,
  withWords,
} from '../svg/parts';
import { keyRows } from './key';
import { nestLayers } from './layers';
import { type Nest, nestSideBySide, nestTitle } from './nest';
import { nestedStyle } from './styles';

/** White round the drawing. */
const BORDER = 10;
/** The key's rows, under the drawing. */
const ROW = 12;
const SAMPLE = 55;
const CAPITALS = 3.5;

/**
 * The nest as SVG 1.1 in true size: a group for each body, which can be switched or cut alone, one for what is common,
 * and the key under the drawing.
 */
export function writeNestedSvg(nest: Nest): string {
  const { drawings, look, box: lines, ink, wanted } = nestSideBySide(nest, 'pieces');
  const paths = drawings.flatMap((drawing) => drawing.paths);
  const placed = wholeWords(wanted, { box: lines, scale: { x: 1, y: 1 }, ink, widthOf: svgWidthOf });
  const of = (layer: string) =>
    paths.filter((path) => look.layerOf(path) === layer).map((path) => svgPath(path, look.styleOf));
  const rows = keyRows(nest);
  const key = rows.map((row, i) => {
    const y = lines.bottom + ROW * (i + 1);
    const sample: DrawnPath = {
      layer: 'notches',
      stroke: 'cut',
      name: row.name,
      curves: [straight(point(lines.left, y), point(lines.left + SAMPLE, y))],
      closed: false,
    };
    const text = `${row.name}: ${row.says}`;
    const at = point(lines.left + SAMPLE + BORDER / 2, y + CAPITALS / 2);
    return {
      sample: svgPath(sample, () => nestedStyle(row.body).cut),
      word: { text, at, size: CAPITALS, turn: 0, says: 'note' } as const,
    };
  });
  // The key's words start at their place, so that all their room is on its right.
  const keyRoom = key.map(({ word }) => ({ ...word, text: `${word.text}${word.text}` }));
  return svgFile(
    {
      title: nestTitle(nest),
      about: words`${number(nest.length)} bodies on one drawing. One unit is one millimetre.`,
      box: boxGrown(
        {
          ...lines,
          right: withWords(lines, keyRoom).right,
          bottom: lines.bottom + ROW * (rows.length + 0.5),
        },
        BORDER,
      ),
    },
    nestLayers(nest).map((layer) => {
      if (layer.id === 'text') return svgLayer(layer, SVG_WORDS, placed.map(svgWord));
      if (layer.id !== 'key') return svgLayer(layer, SVG_LINES, of(layer.id));
      return svgLayer(layer, '', [
        svgGroup(
          'key-lines',
          SVG_LINES,
          key.map(({ sample }) => sample),
        ),
        svgGroup(
          'key-text',
          SVG_WORDS.replace('"middle"', '"start"'),
          key.map(({ word }) => svgText(word)),
        ),
      ]);
    }),
  );
}
