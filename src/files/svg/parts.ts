import {
  ASCENT,
  capitalsOfPt,
  DESCENT,
  type DrawnPath,
  INK,
  type LineStyle,
  mmOfPt,
  type PlacedWord,
  ptOfCapitals,
  type StyleOf,
  type WidthOf,
} from '../../drawing';
import type { PieceText } from '../../edges';
import { type Mm, plain, plainLetters } from '../../length';
import { type Box, type Curve, curveIsStraight, type Point, point, pointsBounds } from '../../plane';
import { said } from '../../words';
import type { FileLayer } from '../content/layers';

/** Decimals of a millimetre that are written. */
const DECIMALS = 3;
/**
 * Room left for a letter, in parts of the font size: wider than all but a few, because the font that a program takes
 * instead of the one that is asked for is unknown.
 */
const LETTER_ROOM = 0.75;

/** What an SVG file says about itself, and what of the drawing it shows. */
export interface SvgFrame {
  readonly title: string;
  readonly about: string;
  /** On the drawing: one unit is one millimetre. */
  readonly box: Box;
}

/** An SVG 1.1 file in true size. */
export function svgFile({ title, about, box }: SvgFrame, groups: readonly string[]): string {
  const width = figure(box.right - box.left);
  const height = figure(box.bottom - box.top);
  const size = `width="${width}mm" height="${height}mm" viewBox="${figure(box.left)} ${figure(box.top)} ${width} ${height}"`;
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" version="1.1" ${size}>`,
    `<title>${escaped(title)}</title>`,
    `<desc>${escaped(about)}</desc>`,
    ...groups,
    '</svg>',
    '',
  ].join('\n');
}

/** A layer: a group by its id, and in its title what a list of layers shows. */
export const svgLayer = ({ id, name }: FileLayer, attributes: string, content: readonly string[]): string =>
  svgGroup(id, attributes, [`<title>${escaped(said(name))}</title>`, ...content]);

/** A named group: what a drawing program lists as a layer. */
export const svgGroup = (id: string, attributes: string, content: readonly string[]): string =>
  `<g id="${escaped(id)}"${attributes === '' ? '' : ` ${attributes}`}>\n${content.map((line) => `${line}\n`).join('')}</g>`;

/** The attributes of a group of lines, and of one of words. */
export const SVG_LINES = 'fill="none" stroke-linejoin="round"';
export const SVG_WORDS = `font-family="DejaVu Sans, sans-serif" text-anchor="middle" fill="${INK.words}"`;

/** One path: straight lines are L, curves are C with the pattern's own cubics. */
export function svgPath(path: DrawnPath, styleOf: StyleOf): string {
  const { name, stroke, curves, closed } = path;
  const style = styleOf(path);
  const look = stroke === 'solid' ? `fill="${style.colour}"` : strokeLook(style);
  return `<path data-name="${escaped(name)}" ${look} d="${pathData(curves, closed)}"/>`;
}

/** A run of curves under a name of its own, by which it can be found again. */
export const svgNamedPath = (id: string, style: LineStyle, curves: readonly Curve[]): string =>
  `<path id="${escaped(id)}" ${strokeLook(style)} d="${pathData(curves, false)}"/>`;

/** The attributes of a line that is drawn in a style. */
function strokeLook({ width, colour, dash }: LineStyle): string {
  const dashes = dash.length > 0 ? ` stroke-dasharray="${dash.map(figure).join(' ')}"` : '';
  return `stroke="${colour}" stroke-width="${figure(width)}"${dashes}`;
}

/** A word where it was placed. */
export const svgWord = ({ text, at: place, pt, turn }: PlacedWord): string =>
  svgText({ text, at: place, turn, size: capitalsOfPt(pt) });

/** A word: the middle of its baseline, as high as its capitals say. */
export function svgText({ at: place, text, size, turn }: Omit<PieceText, 'says'>): string {
  const turned = turn === 0 ? '' : ` transform="rotate(${figure(turn)} ${at(place)})"`;
  const fontSize = figure(mmOfPt(ptOfCapitals(size)));
  return `<text x="${figure(place.x)}" y="${figure(place.y)}" font-size="${fontSize}"${turned}>${escaped(text)}</text>`;
}

/** What a text takes in a font that is known only to the program that shows it: rather too much. */
export const svgWidthOf: WidthOf = (text, pt) => [...text].length * LETTER_ROOM * mmOfPt(pt);

/** The least box that holds a drawing's lines and, with room to spare, its words. */
export function withWords(lines: Box, texts: readonly PieceText[]): Box {
  const corners = texts.flatMap((text) => textCorners(text));
  return pointsBounds([point(lines.left, lines.top), point(lines.right, lines.bottom), ...corners]);
}

function textCorners({ at: { x, y }, text, size, turn }: PieceText): readonly Point[] {
  const em: Mm = mmOfPt(ptOfCapitals(size));
  const half = ([...text].length * LETTER_ROOM * em) / 2;
  const angle = (turn * Math.PI) / 180;
  return [-half, half].flatMap((along) =>
    [-ASCENT * em, DESCENT * em].map((down) =>
      point(x + along * Math.cos(angle) - down * Math.sin(angle), y + along * Math.sin(angle) + down * Math.cos(angle)),
    ),
  );
}

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

const figure = (value: number): string => plain(value, DECIMALS).replace('−', '-');
const at = ({ x, y }: Point): string => `${figure(x)} ${figure(y)}`;

/** XML's own signs, and blanks for the control characters that it forbids. */
function escaped(text: string): string {
  const signs: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
  return plainLetters(text).replace(/[&<>"]/g, (sign) => signs[sign] ?? sign);
}
