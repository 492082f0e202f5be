import { compose, fromDefinition, fromTransformAttribute, type Matrix, scale, translate } from 'transformation-matrix';
import { type Phrase, Refusal, say } from '../../words';
import { declarationsOf } from './style';

/** The attributes of an element by their names. */
export type Attributes = Readonly<Record<string, string>>;

/** Units in which the width of a drawing tells its true size, in mm (CSS Values 3, absolute lengths). */
const UNITS: Readonly<Record<string, number>> = { mm: 1, cm: 10, in: 25.4, pt: 25.4 / 72, pc: 25.4 / 6 };
/** The unit of a number without one: a CSS pixel, 1/96 in. */
const PIXEL = 25.4 / 96;
/** A figure or a box is written in less; only what is no drawing has more. */
const LONGEST_FIGURE = 100;
const LONGEST_TRANSFORM = 2000;
/** No drawing of blocks is larger, mm. */
const LARGEST = 20_000;
/** A drawing whose lines were cut into short straight ones has some ten thousand, one of many pieces more; these many take a few seconds. */
export const MOST_CURVES = 100_000;

/** Throws a refusal of the file. */
export function refuseDrawing(value: unknown, phrase: Phrase): never {
  throw new Refusal([{ field: 'file', value, phrase }]);
}

/** A `transform` as a matrix. */
export function turnOf(transform: string | undefined): Matrix {
  if (transform === undefined || transform.trim() === '') return translate(0, 0);
  const turn = transform.length > LONGEST_TRANSFORM ? undefined : matrixOf(transform);
  return turn ?? refuseDrawing(transform, say`can’t be read as a transform.`);
}

function matrixOf(transform: string): Matrix | undefined {
  try {
    const matrix = compose(fromDefinition(fromTransformAttribute(transform)));
    return Object.values(matrix).every(Number.isFinite) ? matrix : undefined;
  } catch {
    return undefined;
  }
}

/** From the drawing's own numbers to millimetres. */
export function trueSize(own: Attributes): Matrix {
  const { place, sized, width } = drawnSize(own);
  if (!sized)
    refuseDrawing(
      width === '' ? undefined : width,
      say`has no true size: the width of the drawing must be given in mm, cm, in, pt or pc.`,
    );
  return place;
}

/** From the drawing's own numbers to millimetres where it tells its true size; else only how it is turned as a whole. */
export function drawnSize(own: Attributes): {
  readonly place: Matrix;
  readonly sized: boolean;
  readonly width: string;
} {
  // What the style says of the size stands above what the attributes say.
  const style = declarationsOf(own.style ?? '');
  const width = style.get('width') ?? own.width ?? '';
  const [wide, high] = [mmOf(width), mmOf(style.get('height') ?? own.height ?? '')];
  if (wide > LARGEST)
    refuseDrawing(
      width,
      say`is wider than any drawing of blocks: the width must be given in mm, cm, in, pt or pc, and be at most 20 m.`,
    );
  // A transform of the whole drawing counts too: where it moves it does not matter, how it turns and scales it does.
  const turn = turnOf(own.transform);
  if (!(wide > 0)) return { place: turn, sized: false, width };
  // Without a viewBox a unit is a CSS pixel, whatever the width (SVG 2, chapter 8).
  if (own.viewBox === undefined) return { place: compose(turn, scale(PIXEL)), sized: true, width };
  const box = boxOf(own.viewBox);
  const [, , across, down] = box;
  const place = compose(turn, fitted(box, wide, high > 0 ? high : (wide / across) * down, own.preserveAspectRatio));
  return { place, sized: true, width };
}

/** A length in millimetres; not a number where it has no unit that tells a true size. */
function mmOf(size: string): number {
  const [, figure, unit = ''] =
    /^([\d.]+(?:e[+-]?\d+)?)\s*([a-z%]*)$/i.exec(size.slice(0, LONGEST_FIGURE).trim()) ?? [];
  return Number(figure) * (UNITS[unit.toLowerCase()] ?? Number.NaN);
}

/**
 * Where a drawing within a drawing lies (SVG 2, chapter 8).
 *
 * @returns undefined where its size depends on what is round it
 */
export function innerPlace({ x, y, width, height, viewBox, preserveAspectRatio }: Attributes): Matrix | undefined {
  const [left, top] = [userLength(x), userLength(y)];
  if (left === undefined || top === undefined) return undefined;
  if (viewBox === undefined) return translate(left, top);
  const [wide, high] = [width, height].map((side) => (side === undefined ? undefined : userLength(side)));
  if (!wide || !high || !(wide > 0 && high > 0)) return undefined;
  return compose(translate(left, top), fitted(boxOf(viewBox), wide, high, preserveAspectRatio));
}

/** A length in the drawing's own units, 0 where it is left out; undefined where it depends on what is round it. */
export function userLength(text: string | undefined): number | undefined {
  if (text === undefined) return 0;
  const [, figure, unit = ''] =
    /^([-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?)\s*([a-z%]*)$/i.exec(text.slice(0, LONGEST_FIGURE).trim()) ?? [];
  const size = unit === '' || unit.toLowerCase() === 'px' ? 1 : (UNITS[unit.toLowerCase()] ?? Number.NaN) / PIXEL;
  const length = Number(figure) * size;
  return Number.isFinite(length) ? length : undefined;
}

type Box = readonly [left: number, top: number, across: number, down: number];

function boxOf(viewBox: string): Box {
  const figures = viewBox
    .slice(0, LONGEST_FIGURE)
    .trim()
    .split(/[\s,]+/)
    .map(Number);
  const [left = 0, top = 0, across = 0, down = 0] = figures;
  const good = figures.length === 4 && figures.every(Number.isFinite) && across > 0 && down > 0;
  return good
    ? [left, top, across, down]
    : refuseDrawing(viewBox, say`is no viewBox: it takes four numbers, the last two above 0.`);
}

/** A box laid into a frame as `preserveAspectRatio` says: by default as large as fits, in the middle. */
function fitted([left, top, across, down]: Box, wide: number, high: number, ratio = ''): Matrix {
  const [align = 'xMidYMid', how] = ratio
    .trim()
    .split(/\s+/)
    .filter((word) => word !== 'defer' && word !== '');
  const [x, y] = [wide / across, high / down];
  if (align === 'none') return compose(scale(x, y), translate(-left, -top));
  const share = how === 'slice' ? Math.max(x, y) : Math.min(x, y);
  const spare = (room: number, at: string) => (at === 'Min' ? 0 : at === 'Max' ? room : room / 2);
  return compose(
    translate(spare(wide - across * share, align.slice(1, 4)), spare(high - down * share, align.slice(5, 8))),
    scale(share),
    translate(-left, -top),
  );
}
