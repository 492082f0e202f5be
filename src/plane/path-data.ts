import { straight } from './curve';
import { loadEngine } from './engine';
import { point } from './point';
import type { Curve, Point } from './types';

/** An affine map: x′ = ax + cy + e, y′ = bx + dy + f (as SVG 2 numbers its matrix). */
export interface Affine {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
  readonly f: number;
}

/** How many figures belong to a command; the fourth and the fifth of an arc are flags. @source SVG 2, chapter 9 */
const FIGURES_OF: Readonly<Record<string, number>> = { M: 2, L: 2, H: 1, V: 1, C: 6, S: 4, Q: 4, T: 2, A: 7, Z: 0 };
/** A command and what follows it up to the next one; an `e` is part of a figure. */
const COMMANDS = /[A-DF-Za-df-z][^A-DF-Za-df-z]*/g;
const FIGURE = /[\s,]*([+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)/y;
const FLAG = /[\s,]*([01])/y;

/** The cubic curves of path data, its runs one by one; undefined where the data can't be read. */
export type PathReader = (data: string, place: Affine) => readonly (readonly Curve[])[] | undefined;

/**
 * Reads the `d` of a path that others drew, mapped by its place: arcs and quadratics come as cubics. Each run
 * is of curves that follow one another; a pen that is set down and not moved draws none.
 */
export async function pathReader(): Promise<PathReader> {
  const engine = await loadEngine();
  return (data, { a, b, c, d, e, f }) => {
    const apart = /^\s*m/i.test(data) ? figuresApart(data) : undefined;
    if (apart === undefined) return undefined;
    const at = ({ x, y }: Point): Point => ({ x: a * x + c * y + e, y: b * x + d * y + f });
    const item = engine.PathItem.create(apart);
    const paths = (item.children ?? [item]) as paper.Path[];
    const drawn = paths.map((path) => curvesOf(path, at)).filter(({ length }) => length > 0);
    return drawn.flat(2).every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y)) ? drawn : undefined;
  };
}

/** The same data with a space between its figures, which may be packed; undefined where it isn't path data. */
function figuresApart(data: string): string | undefined {
  const commands = (data.match(COMMANDS) ?? []).map((command) => {
    const [letter = '', text] = [command[0], command.slice(1).trim()];
    const count = FIGURES_OF[letter.toUpperCase()] ?? Number.NaN;
    const figures: string[] = [];
    for (let read = 0; read < text.length; ) {
      const pattern = count === 7 && [3, 4].includes(figures.length % 7) ? FLAG : FIGURE;
      pattern.lastIndex = read;
      const figure = pattern.exec(text)?.[1];
      if (figure === undefined) return undefined;
      figures.push(figure);
      read = pattern.lastIndex;
    }
    const whole = count === 0 ? figures.length === 0 : figures.length > 0 && figures.length % count === 0;
    return whole ? `${letter}${figures.join(' ')}` : undefined;
  });
  return commands.includes(undefined) ? undefined : commands.join('');
}

/** The curves of a path that draw something; those without handles are straight lines. */
const curvesOf = (path: paper.Path, at: (p: Point) => Point): readonly Curve[] =>
  path.curves.flatMap((curve) => {
    const [ax = 0, ay = 0, bx = 0, by = 0, cx = 0, cy = 0, dx = 0, dy = 0] = curve.values;
    const [a, b, c, d] = [point(ax, ay), point(bx, by), point(cx, cy), point(dx, dy)];
    if ([b, c, d].every(({ x, y }) => x === ax && y === ay)) return [];
    return curve.hasHandles() ? [[at(a), at(b), at(c), at(d)]] : [straight(at(a), at(d))];
  });
