import { INK } from '../../drawing';
import { plain, plainLetters, type Units } from '../../length';
import type { Point } from '../../plane';
import type { PictureItem, StepPicture } from '../../sewing';
import { printPhrase } from '../../words';
import { FACE_LOOKS, PICTURE_LOOKS } from './looks';

const ANCHORS = { left: 'start', middle: 'middle', right: 'end' } as const;

/**
 * A step's picture as an SVG element for a web page.
 *
 * @param picture the picture
 * @param id unique on the page: its own, and the windows' clips are named after it
 * @param units in which its words are printed
 */
export function pictureSvg(picture: StepPicture, id: string, units: Units): string {
  const { box, panels, says } = picture;
  const [width, height] = [box.right - box.left, box.bottom - box.top];
  const unit = Math.max(width, height) / 100;
  const body = panels.map(({ window: w, items }, i) => {
    const clip = `${id}-${i}`;
    const rectangle = `x="${n(w.left)}" y="${n(w.top)}" width="${n(w.right - w.left)}" height="${n(w.bottom - w.top)}"`;
    return `<clipPath id="${clip}"><rect ${rectangle}/></clipPath><g clip-path="url(#${clip})">${items.map((item) => element(item, unit, units)).join('')}</g>`;
  });
  return `<svg id="${id}" xmlns="http://www.w3.org/2000/svg" viewBox="${n(box.left)} ${n(box.top)} ${n(width)} ${n(height)}" role="img" aria-label="${escapedText(printPhrase(says, units))}" fill="none" stroke-linejoin="round" stroke-linecap="butt">${body.join('')}</svg>`;
}

function element(item: PictureItem, unit: number, units: Units): string {
  switch (item.kind) {
    case 'area': {
      const { fill, hatch, width } = FACE_LOOKS[item.face];
      const strokes = item.hatch.map(([a, b]) => `M${at(a)}L${at(b)}`).join('');
      const lines = strokes === '' ? '' : `<path stroke="${hatch}" stroke-width="${n(width * unit)}" d="${strokes}"/>`;
      return `<path fill="${fill}" d="${closedPath(item.points)}"/>${lines}`;
    }
    case 'line': {
      const { width, colour, dash } = PICTURE_LOOKS[item.line];
      const dashes = dash.length > 0 ? ` stroke-dasharray="${dash.map((part) => n(part * unit)).join(' ')}"` : '';
      return `<path stroke="${colour}" stroke-width="${n(width * unit)}"${dashes} d="M${item.points.map(at).join('L')}"/>`;
    }
    case 'sign':
      return `<path fill="${INK.sign}" d="${closedPath(item.points)}"/>`;
    case 'word':
      return `<text x="${n(item.at.x)}" y="${n(item.at.y)}" font-size="${n(item.size)}" text-anchor="${ANCHORS[item.align]}" fill="${INK.words}" stroke="#fff" stroke-width="${n(0.8 * unit)}" paint-order="stroke">${escapedText(printPhrase(item.text, units))}</text>`;
  }
}

const closedPath = (points: readonly Point[]): string => (points.length === 0 ? '' : `M${points.map(at).join('L')}Z`);
const n = (value: number): string => plain(value, 1).replace('−', '-');
const at = ({ x, y }: Point): string => `${n(x)} ${n(y)}`;

/** Signs that markup takes for its own. */
export function escapedText(text: string): string {
  const signs: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
  return plainLetters(text).replace(/[&<>"]/g, (sign) => signs[sign] ?? sign);
}
