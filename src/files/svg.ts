import type { PieceText } from '../edges';
import { plain } from '../length';
import { type Curve, curveIsStraight, type Point } from '../plane';
import type { Draft } from '../project';
import {
  type Box,
  boxGrown,
  type DrawnPath,
  drawingInk,
  inkBounds,
  LAYERS,
  type Layer,
  placedDrawings,
} from '../sheets';
import { INK, LINE_STYLES, SIGN_COLOUR } from './line-styles';
import { mmOfPt, ptOfCapitals } from './print-type';

/** White round the drawing. */
const BORDER = 10;
/** Decimals of a millimetre that are written. */
const DECIMALS = 3;

/**
 * The drawing as SVG 1.1 in true size: one unit is one millimetre, and the groups `levels`, `folds`, `stitch`, `cut`,
 * `marks` and `text` can be switched or cut one by one. Always full size: the paper's scale and correction belong to
 * paper.
 *
 * Straight lines are L, curves are C with the pattern's own cubics.
 */
export function writeSvg(draft: Draft): string {
  const drawings = placedDrawings(draft.pieces, draft.sheets.places);
  const box = boxGrown(inkBounds(drawingInk(drawings)), BORDER);
  const { project } = draft;
  const groups = LAYERS.map((layer) => {
    const paths = drawings.flatMap((drawing) => drawing.paths.filter((path) => path.layer === layer)).map(pathElement);
    const texts = layer === 'text' ? drawings.flatMap((drawing) => drawing.texts.map(textElement)) : [];
    return `<g id="${layer}"${groupStyle(layer)}>\n${[...paths, ...texts].map((line) => `${line}\n`).join('')}</g>`;
  });
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" version="1.1" ${size(box)}>`,
    `<title>${escaped(project.name)}</title>`,
    `<desc>${escaped(`Lounge pant for ${project.body.label}. One unit is one millimetre.`)}</desc>`,
    ...groups,
    '</svg>',
    '',
  ].join('\n');
}

function size({ left, top, right, bottom }: Box): string {
  const width = figure(right - left);
  const height = figure(bottom - top);
  return `width="${width}mm" height="${height}mm" viewBox="${figure(left)} ${figure(top)} ${width} ${height}"`;
}

const groupStyle = (layer: Layer): string =>
  layer === 'text'
    ? ` font-family="DejaVu Sans, sans-serif" text-anchor="middle" fill="${INK.words}"`
    : ' fill="none" stroke-linejoin="round"';

function pathElement({ name, stroke, curves, closed }: DrawnPath): string {
  return `<path data-name="${escaped(name)}" ${look(stroke)} d="${pathData(curves, closed)}"/>`;
}

function look(stroke: DrawnPath['stroke']): string {
  if (stroke === 'solid') return `fill="${SIGN_COLOUR}"`;
  const { width, colour, dash } = LINE_STYLES[stroke];
  const dashes = dash.length > 0 ? ` stroke-dasharray="${dash.map(figure).join(' ')}"` : '';
  return `stroke="${colour}" stroke-width="${figure(width)}"${dashes}`;
}

/** SVG path data for a run of curves. */
function pathData(curves: readonly Curve[], closed: boolean): string {
  const parts: string[] = [];
  let pen = '';
  for (const curve of curves) {
    const [a, b, c, d] = curve;
    if (at(a) !== pen) parts.push(`M${at(a)}`);
    parts.push(curveIsStraight(curve) ? `L${at(d)}` : `C${at(b)} ${at(c)} ${at(d)}`);
    pen = at(d);
  }
  return parts.join('') + (closed ? 'Z' : '');
}

function textElement({ at: place, text, size: capitals, turn }: PieceText): string {
  const turned = turn === 0 ? '' : ` transform="rotate(${figure(turn)} ${at(place)})"`;
  const fontSize = figure(mmOfPt(ptOfCapitals(capitals)));
  return `<text x="${figure(place.x)}" y="${figure(place.y)}" font-size="${fontSize}"${turned}>${escaped(text)}</text>`;
}

const figure = (value: number): string => plain(value, DECIMALS).replace('−', '-');
const at = ({ x, y }: Point): string => `${figure(x)} ${figure(y)}`;

/** XML's own signs, and blanks for the control characters that it forbids. */
function escaped(text: string): string {
  const signs: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
  return text.replace(/[\p{Cc}\ufffe\uffff]/gu, ' ').replace(/[&<>"]/g, (sign) => signs[sign] ?? sign);
}
