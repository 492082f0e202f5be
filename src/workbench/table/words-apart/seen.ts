import type { StandingWord, Stretch, Surroundings } from '../../../drawing';
import { type Box, type Point, point, pointsBounds } from '../../../plane';
import { RULER } from '../Rulers';

/** What is drawn as a line, and what fills an area without one. */
const LINES =
  'path:is(.line, .sewn, .tape, .figure, .folded-outline, .folded-over, .cloth-over, .chalk-line, .join-measure, .sheet-frame, .arrowhead, .fold-triangle)';
/** The outline of a piece or of the cloth: a word inside belongs there. */
const OUTLINES = '.line-cut, .sewn-edge, .line-joined, .folded-outline';
/** Words of a drawing, and of a picture of the sewing, whose letters grow in show mode. */
export const WORDS = '.word, .sewn-word';
/** What lies over the drawing. */
const OVER = '.handle-button, .handle-words, .tools, .player, .table-notes > *, .hint';
/** Of the font size: how far letters reach above and below the line they stand on. @source geometry of the open font’s letters */
const [ASCENT, DESCENT] = [0.74, 0.22];

/** A word of the drawing and where it would stand. */
export interface SeenWord extends StandingWord {
  readonly text: SVGTextElement;
  /** What its own pixels are in pixels of the window. */
  readonly scale: number;
}

/**
 * The words of a drawing in the order of their weight: numbers first, what can be left out last. Those that are hidden
 * are left out.
 *
 * @param drawing whose words stand at their own places
 */
export function seenWords(drawing: Element): readonly SeenWord[] {
  const words = [...drawing.querySelectorAll<SVGTextElement>(WORDS)].flatMap((text) => {
    const matrix = text.getScreenCTM();
    const { x, width } = text.getBBox();
    // A word of a picture stands at a level of its own, any other where its group was moved to.
    const baseline = Number(text.getAttribute('y') ?? 0);
    if (!matrix || width === 0) return [];
    const size = Number.parseFloat(getComputedStyle(text).fontSize);
    const corners = [x, x + width].flatMap((across) =>
      [-ASCENT * size, DESCENT * size].map((down) => inMatrix(point(across, baseline + down), matrix)),
    );
    const inside = text.matches('.word-part');
    return [{ text, inside, box: pointsBounds(corners), scale: Math.hypot(matrix.a, matrix.b) }];
  });
  const weight = ({ text, inside }: SeenWord) => (text.matches('.word-number') ? 0 : inside ? 2 : 1);
  return words.sort((a, b) => weight(a) - weight(b));
}

/** Lines and whatever else words have to keep clear of, as they are seen now. */
export function seenSurroundings(drawing: Element, table: Element): Surroundings {
  return {
    lines: [...drawing.querySelectorAll<SVGPathElement>(LINES)].flatMap(stretchesOf),
    taken: [...table.querySelectorAll(OVER)].flatMap((over) => (over.getClientRects().length > 0 ? [boxOf(over)] : [])),
    room: insideRulers(boxOf(table.querySelector('.table-window') ?? table)),
  };
}

const insideRulers = ({ left, top, right, bottom }: Box): Box => ({
  left: left + RULER,
  top: top + RULER,
  right,
  bottom,
});

const boxOf = (element: Element): Box => element.getBoundingClientRect();

/** A path's points in its own space, its runs apart, for as long as it is drawn by the same text. */
const known = new WeakMap<SVGPathElement, { readonly text: string; readonly runs: readonly (readonly Point[])[] }>();

function stretchesOf(path: SVGPathElement): readonly Stretch[] {
  const matrix = path.getScreenCTM();
  const text = path.getAttribute('d') ?? '';
  if (!matrix || text === '' || path.getClientRects().length === 0) return [];
  let kept = known.get(path);
  if (kept?.text !== text) {
    kept = { text, runs: runsOf(text) };
    known.set(path, kept);
  }
  const parts = path.matches(OUTLINES);
  return kept.runs.flatMap((run) => {
    const seen = run.map((p) => inMatrix(p, matrix));
    return seen.slice(1).map((b, i): Stretch => ({ a: seen[i] as Point, b, parts }));
  });
}

const inMatrix = ({ x, y }: Point, { a, b, c, d, e, f }: DOMMatrix): Point =>
  point(a * x + c * y + e, b * x + d * y + f);

/** A curve is followed by so many straight stretches: it is only asked whether a word lies on it. */
const PARTS = 8;

/** The points of a path's text as it is written here, small letters from where one is: a command a point, but for curves. */
function runsOf(text: string): readonly (readonly Point[])[] {
  const runs: Point[][] = [];
  let here = point(0, 0);
  for (const [, command = '', figures = ''] of text.matchAll(/([a-z])([^a-z]*)/gi)) {
    const numbers = (figures.match(/-?[\d.]+(?:e-?\d+)?/gi) ?? []).map(Number);
    const from = command === command.toLowerCase() ? here : point(0, 0);
    const kind = command.toUpperCase();
    const run = runs.at(-1);
    if (kind === 'Z' && run?.[0]) run.push(run[0]);
    if (kind === 'H') run?.push(point(from.x + (numbers[0] ?? 0), here.y));
    if (kind === 'V') run?.push(point(here.x, from.y + (numbers[0] ?? 0)));
    const pairs = Array.from({ length: Math.floor(numbers.length / 2) }, (_, i) =>
      point(from.x + (numbers[2 * i] ?? 0), from.y + (numbers[2 * i + 1] ?? 0)),
    );
    if (kind === 'M' && pairs[0]) runs.push([pairs[0]]);
    if (kind === 'L' || kind === 'Q') run?.push(...pairs);
    // An arc is a tape that sags a little: its chord does.
    if (kind === 'A') run?.push(point(from.x + (numbers[5] ?? 0), from.y + (numbers[6] ?? 0)));
    if (kind === 'C')
      for (let i = 0; i + 2 < pairs.length; i += 3)
        run?.push(...curvePoints(run.at(-1) as Point, ...(pairs.slice(i, i + 3) as [Point, Point, Point])));
    here = runs.at(-1)?.at(-1) ?? here;
  }
  return runs;
}

const curvePoints = (a: Point, b: Point, c: Point, d: Point): readonly Point[] =>
  Array.from({ length: PARTS }, (_, i) => {
    const t = (i + 1) / PARTS;
    const s = 1 - t;
    const [ta, tb, tc, td] = [s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t];
    return point(ta * a.x + tb * b.x + tc * c.x + td * d.x, ta * a.y + tb * b.y + tc * c.y + td * d.y);
  });
