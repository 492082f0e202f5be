import type { Chance } from '../fuzz/random';
import { below } from './texts';

const ATTRIBUTES = [
  'transform="rotate(7)"',
  'transform="scale(0)"',
  'transform="matrix(1e300 0 0 1e300 0 0)"',
  'transform="matrix(1)"',
  'transform="rotate(NaN)"',
  'style="transform:scale(2)"',
  'style="display:none"',
  'style="d:path(\'M0 0\')"',
  'class="a"',
  'visibility="hidden"',
  'id="front-hem"',
  'id="back"',
  'id="note"',
  'transform-origin="5 5" transform="scale(2)"',
  'x1="5%"',
  'points="1,2,3"',
  'label="front-waist"',
  'id=""',
];
const WRAPS: readonly (readonly [string, string])[] = [
  ['<g>', '</g>'],
  ['<g id="front">', '</g>'],
  ['<defs>', '</defs>'],
  ['<symbol id="s">', '</symbol>'],
  ['<svg>', '</svg>'],
  ['<svg viewBox="0 0 1 1">', '</svg>'],
  ['<svg x="5" width="10" height="10" viewBox="0 0 5 5">', '</svg>'],
  ['<a>', '</a>'],
  ['<mask>', '</mask>'],
  ['<g style="zoom:2">', '</g>'],
  ['<!--', '-->'],
  ['<![CDATA[', ']]>'],
  ['<x:g xmlns:x="urn:x">', '</x:g>'],
  ['<foreignObject>', '</foreignObject>'],
];
const PUT = [
  '<use href="#front"/>',
  '<use id="front-hem" href="#x"/>',
  '<style>.a{transform:scale(3)}</style>',
  '<style>path{display:none}</style>',
  '<style>#front &gt; path{rotate:3deg}</style>',
  '<style>',
  '&a;',
  '<line id="front-hem" x1="1" x2="2mm"/>',
  '<polyline id="back-side" points="0,0 5"/>',
  '<path id="front-waist" d=""/>',
  '<path id="back-hip" d="M0 0a1 1 0 01.5.5"/>',
  '<rect id="front-side" width="5"/>',
  '<svg/>',
  '<?php ?>',
  '<image href="http://example.org/x.png"/>',
];
const FRAMES = [
  'width="1e999mm"',
  'width="5%"',
  'width="0mm"',
  'width="800mm" viewBox="0 0 0 0"',
  'width="800mm" viewBox="0 0 NaN 5"',
  'width="8in"',
  'width="800"',
  'preserveAspectRatio="none"',
  'preserveAspectRatio="xMaxYMin slice"',
  'style="width:50mm"',
  'transform="rotate(90)"',
];
const TOKENS = [
  'M',
  'm',
  'L',
  'Z',
  'z',
  'A',
  'a1 1 0 00',
  'C',
  'q',
  't5 5',
  's',
  'H',
  'v-3',
  'NaN',
  '1e999',
  '-',
  '.',
  '..5',
  '1e5',
  ',',
  '0',
  '-0',
  'R1 1',
];

type Change = (text: string, chance: Chance) => string;

/** One of the places where a pattern is found, replaced. */
function oneReplaced(text: string, pattern: RegExp, put: (found: string) => string, chance: Chance): string {
  const found = [...text.matchAll(pattern)];
  if (found.length === 0) return text;
  const one = found[below(chance, found.length)] as RegExpMatchArray;
  const at = one.index ?? 0;
  return text.slice(0, at) + put(one[0]) + text.slice(at + one[0].length);
}

const ELEMENT = /<(?:path|g|line)\b/g;

const CHANGES: readonly Change[] = [
  (text, chance) => oneReplaced(text, ELEMENT, (tag) => `${tag} ${chance.oneOf(ATTRIBUTES)}`, chance),
  (text, chance) => oneReplaced(text, /<path[^>]*\/>/g, () => '', chance),
  (text, chance) => oneReplaced(text, /<path[^>]*\/>/g, (path) => path + path, chance),
  (text, chance) => {
    const [before, after] = chance.oneOf(WRAPS);
    return oneReplaced(text, /<path[^>]*\/>|<g id="\w+"[\s\S]*?<\/g>/g, (part) => before + part + after, chance);
  },
  (text, chance) => oneReplaced(text, /<(?:path|g)\b/g, (tag) => chance.oneOf(PUT) + tag, chance),
  (text, chance) => text.replace(/<svg\b/, () => `<svg ${chance.oneOf(FRAMES)}`),
  (text, chance) => text.replace(/width="[^"]*"/, () => chance.oneOf(FRAMES)),
  (text, chance) => oneReplaced(text, /[\d.]+(?=[ CLMZ"])|[MCLZ]/g, () => ` ${chance.oneOf(TOKENS)} `, chance),
  (text, chance) =>
    oneReplaced(text, /-?\d+\.\d+/g, (figure) => `${Number(figure) * chance.oneOf([-1, 0, 10, 1e3, 1e9])}`, chance),
  (text, chance) =>
    oneReplaced(
      text,
      /id="[\w-]+"/g,
      () =>
        chance.oneOf([
          'id="front-hem"',
          'id="back-crotch"',
          'id="dart"',
          'id="front back waist"',
          'id="'.concat('x'.repeat(500), '"'),
        ]),
      chance,
    ),
  (text) => text.replace(/id="(front|back)/g, (_, part: string) => `id="${part === 'front' ? 'back' : 'front'}`),
];

/** A drawing in which one to four elements, attributes or figures are something else. */
export function damagedDrawing(drawing: string, chance: Chance): string {
  let text = drawing;
  for (let i = 1 + below(chance, 4); i > 0; i -= 1) text = chance.oneOf(CHANGES)(text, chance);
  return text;
}
