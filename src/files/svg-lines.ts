import { type SaxesAttributeNS, SaxesParser, type SaxesTagNS } from 'saxes';
import { compose, fromDefinition, fromTransformAttribute, type Matrix, scale, translate } from 'transformation-matrix';
import { type Phrase, type Problem, Refusal, say } from '../length';
import { type Affine, type Curve, loadPathReader } from '../plane';

/** A line of a drawing, in millimetres, y down. */
export interface SvgLine {
  /** The names of the line itself and of all the groups round it, innermost first. */
  readonly names: readonly string[];
  readonly runs: readonly (readonly Curve[])[];
}

/** Units in which the width of a drawing tells its true size, in mm (CSS Values 3, absolute lengths). */
const UNITS: Readonly<Record<string, number>> = { mm: 1, cm: 10, in: 25.4, pt: 25.4 / 72, pc: 25.4 / 6 };

/** What is kept in a file to be used elsewhere, or cuts away, is no line of the drawing. */
const NOT_DRAWN: ReadonlySet<string> = new Set(['defs', 'symbol', 'clipPath', 'mask', 'pattern', 'marker']);

/** An element that is open while the file is read. */
interface Open {
  readonly place: Matrix;
  readonly names: readonly string[];
  readonly drawn: boolean;
}

interface Found {
  readonly element: string;
  readonly names: readonly string[];
  readonly data: string;
  readonly place: Affine;
}

type Attributes = Readonly<Record<string, string>>;

/**
 * The lines of an SVG drawing at true size. Paths, lines and polylines are read, with every `transform` round them;
 * what is hidden or only defined is not.
 *
 * @param text of the file
 * @throws Refusal where it is no SVG, has no true size, or has path data that can't be read
 */
export async function svgLines(text: string): Promise<readonly SvgLine[]> {
  const found = elementsOf(text);
  const runsOf = await loadPathReader();
  return found.map(({ element, names, data, place }) => {
    const runs = runsOf(data, place);
    if (!runs) throw refusal(data, say`stands in the ${element} “${names[0] ?? ''}” and can't be read as a path.`);
    return { names, runs };
  });
}

function elementsOf(text: string): readonly Found[] {
  const parser = new SaxesParser({ xmlns: true });
  const open: Open[] = [];
  const found: Found[] = [];
  let broken: string | undefined;
  parser.on('error', (error) => {
    broken ??= error.message;
  });
  parser.on('opentag', (tag: SaxesTagNS) => {
    const own = attributesOf(tag);
    const round = open.at(-1);
    if (!round && tag.local !== 'svg') throw notSvg(text, `it starts with <${tag.name}>`);
    const place = round ? compose(round.place, turnOf(own.transform)) : trueSize(own);
    const names = [...namesOf(own), ...(round?.names ?? [])];
    const drawn = (round?.drawn ?? true) && !NOT_DRAWN.has(tag.local) && !isHidden(own);
    open.push({ place, names, drawn });
    const data = drawn ? pathDataOf(tag.local, own) : undefined;
    if (data !== undefined && data.trim() !== '') found.push({ element: tag.local, names, data, place });
  });
  parser.on('closetag', () => open.pop());
  parser.write(text).close();
  if (broken !== undefined) throw notSvg(text, broken.replace(/\.$/, ''));
  return found;
}

const notSvg = (text: string, why: string): Refusal =>
  refusal(text.slice(0, 40), say`is no SVG drawing that can be read: ${why}.`);
const refusal = (value: unknown, phrase: Phrase): Refusal => new Refusal([problem(value, phrase)]);
const problem = (value: unknown, phrase: Phrase): Problem => ({ field: 'file', value, phrase });

/** Attributes by their names; those of another namespace, such as a layer's label, by their local ones. */
function attributesOf(tag: SaxesTagNS): Attributes {
  const all: readonly SaxesAttributeNS[] = Object.values(tag.attributes);
  return Object.fromEntries([...all].reverse().map(({ local, value }) => [local, value]));
}

const namesOf = ({ id, label }: Attributes): readonly string[] =>
  [label, id].filter((name): name is string => name !== undefined && name !== '');

const isHidden = ({ display, visibility, style = '' }: Attributes): boolean =>
  display === 'none' || visibility === 'hidden' || /display:\s*none|visibility:\s*hidden/.test(style);

/** A `transform` as a matrix. */
function turnOf(transform: string | undefined): Matrix {
  if (transform === undefined || transform.trim() === '') return translate(0, 0);
  try {
    return compose(fromDefinition(fromTransformAttribute(transform)));
  } catch {
    throw refusal(transform, say`can't be read as a transform.`);
  }
}

/** From the drawing's own numbers to millimetres. */
function trueSize({ width = '', height = '', viewBox }: Attributes): Matrix {
  const mmOf = (size: string): number => {
    const [, figure, unit = ''] = /^\s*([\d.]+(?:e[+-]?\d+)?)\s*([a-z%]*)\s*$/i.exec(size) ?? [];
    return Number(figure) * (UNITS[unit.toLowerCase()] ?? Number.NaN);
  };
  const [wide, high] = [mmOf(width), mmOf(height)];
  if (!(wide > 0))
    throw refusal(
      width === '' ? undefined : width,
      say`has no true size: the width of the drawing must be given in mm, cm, in, pt or pc.`,
    );
  // Without a viewBox a unit is a CSS pixel, 1/96 in, whatever the width (SVG 2, chapter 8).
  if (viewBox === undefined) return scale(25.4 / 96);
  const [left, top, across, down] = viewBox
    .trim()
    .split(/[\s,]+/)
    .map(Number);
  if (!across || !down || !(across > 0 && down > 0) || left === undefined || top === undefined)
    throw refusal(viewBox, say`is no viewBox: it takes four numbers, the last two above 0.`);
  const share = high > 0 ? Math.min(wide / across, high / down) : wide / across;
  return compose(scale(share), translate(-left, -top));
}

/** What an element draws, as path data; undefined where it draws nothing that could be an edge. */
function pathDataOf(element: string, own: Attributes): string | undefined {
  if (element === 'path') return own.d;
  if (element === 'line') return `M${own.x1 ?? 0} ${own.y1 ?? 0}L${own.x2 ?? 0} ${own.y2 ?? 0}`;
  if (element === 'polyline' || element === 'polygon')
    return own.points === undefined ? undefined : `M${own.points}${element === 'polygon' ? 'Z' : ''}`;
  return undefined;
}
