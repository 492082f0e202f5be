import type { Mm } from '../../length';
import { type Box, boxRound, type Point, subtract, unit } from '../../plane';
import { type Phrase, printPhrase } from '../../words';
import type { Face, PictureItem, PictureLine, PicturePanel, StepPicture } from './picture';
import { dotting, hatching } from './polygon';

/** Sizes of signs and letters in hundredths of the picture's longer side, so that they read alike at any scale. */
const HATCH = 1.5;
const LETTER = 3.4;
const AVERAGE_LETTER = 0.6;
const PIN = 3.4;
const ARROWHEAD = 1.5;

/** Makes the items of one picture; `unit` is a hundredth of its longer side. */
export interface Draw {
  readonly unit: Mm;
  readonly area: (face: Face, points: readonly Point[]) => PictureItem;
  /** An area with its outline. */
  readonly cloth: (face: Face, points: readonly Point[]) => readonly PictureItem[];
  readonly line: (line: PictureLine, ...points: readonly Point[]) => PictureItem;
  /** A zigzag over a run of points, on both sides of it. */
  readonly zigzag: (line: PictureLine, points: readonly Point[], width?: Mm) => PictureItem;
  /** A pin across a seam: `way` along the seam. */
  readonly pin: (at: Point, way: Point) => readonly PictureItem[];
  readonly arrow: (from: Point, to: Point) => readonly PictureItem[];
  readonly word: (at: Point, text: Phrase, align?: 'left' | 'middle' | 'right') => PictureItem;
  /** A word with a thin line to what it names. */
  readonly note: (at: Point, text: Phrase, to: Point) => readonly PictureItem[];
  readonly dot: (at: Point) => PictureItem;
}

/** The strokes that tell a face, so far apart. */
const STROKES: Readonly<Record<Face, (points: readonly Point[], step: Mm) => readonly (readonly [Point, Point])[]>> = {
  right: () => [],
  wrong: (points, step) => hatching(points, step, true),
  elastic: (points, step) => [true, false].flatMap((rises) => hatching(points, 0.8 * step, rises)),
  paper: () => [],
  printedDown: (points, step) => dotting(points, 1.2 * step),
};

/**
 * @param longer the picture's longer side
 * @param letter size of the words, in hundredths of it
 */
export function drawing(longer: Mm, letter = LETTER): Draw {
  const u = longer / 100;
  const area = (face: Face, points: readonly Point[]): PictureItem => ({
    kind: 'area',
    face,
    points,
    hatch: STROKES[face](points, HATCH * u),
  });
  const line = (look: PictureLine, ...points: readonly Point[]): PictureItem => ({ kind: 'line', line: look, points });
  const word: Draw['word'] = (at, text, align = 'left') => ({
    kind: 'word',
    at,
    text,
    align,
    size: letter * u,
  });
  return {
    unit: u,
    area,
    line,
    word,
    cloth: (face, points) => [area(face, points), line('edge', ...points, points[0] as Point)],
    zigzag: (look, points, width = 1.2 * u) => line(look, ...zigzagged(points, width)),
    pin(at, way) {
      const over = { x: -way.y, y: way.x };
      const end = (by: number): Point => ({ x: at.x + over.x * by * u, y: at.y + over.y * by * u });
      return [line('pin', end(-PIN / 2), end(PIN / 2)), { kind: 'sign', points: disc(end(PIN / 2), 0.55 * u) }];
    },
    arrow(from, to) {
      const way = unit(subtract(to, from));
      const back = (by: number, side: number): Point => ({
        x: to.x - way.x * by * u - way.y * side * u,
        y: to.y - way.y * by * u + way.x * side * u,
      });
      return [
        line('thin', from, back(ARROWHEAD, 0)),
        { kind: 'sign', points: [to, back(ARROWHEAD, ARROWHEAD / 3), back(ARROWHEAD, -ARROWHEAD / 3)] },
      ];
    },
    note(at, text, to) {
      const left = to.x > at.x;
      const start = { x: at.x + (left ? 0.6 : -0.6) * u, y: at.y - 0.35 * letter * u };
      return [line('thin', start, to), word(at, text, left ? 'right' : 'left')];
    },
    dot: (at) => ({ kind: 'sign', points: disc(at, 0.6 * u) }),
  };
}

const disc = (at: Point, radius: Mm): readonly Point[] =>
  Array.from({ length: 10 }, (_, i) => ({
    x: at.x + radius * Math.cos((i * Math.PI) / 5),
    y: at.y + radius * Math.sin((i * Math.PI) / 5),
  }));

function zigzagged(points: readonly Point[], width: Mm): readonly Point[] {
  const found: Point[] = [];
  let side = 1;
  let rest = 0;
  for (let i = 1; i < points.length; i += 1) {
    const [a, b] = [points[i - 1] as Point, points[i] as Point];
    const way = unit(subtract(b, a));
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    for (let s = rest; s <= length; s += width) {
      found.push({ x: a.x + way.x * s - (way.y * side * width) / 2, y: a.y + way.y * s + (way.x * side * width) / 2 });
      side = -side;
    }
    rest = (Math.ceil((length - rest) / width) * width + rest - length) % width;
  }
  return found;
}

/** One panel as a whole picture; its window grows where a word needs room. */
export function onePanel(window: Box, items: readonly PictureItem[], says: Phrase): StepPicture {
  const box = withRoom(window, items);
  return { box, panels: [{ window: box, items }], says };
}

/**
 * The same with a line of words under it, outside the window: what lies how, and from where it is seen.
 *
 * @param d what the items were drawn with
 */
export function captioned(
  window: Box,
  items: readonly PictureItem[],
  caption: Phrase,
  says: Phrase,
  d: Draw,
): StepPicture {
  const above = withRoom(window, items);
  const middle = (above.left + above.right) / 2;
  const word = d.word({ x: middle, y: above.bottom + CAPTION * d.unit }, caption, 'middle');
  const below = withRoom({ ...above, top: above.bottom, bottom: above.bottom + 1.5 * CAPTION * d.unit }, [word]);
  const [left, right] = [Math.min(above.left, below.left), Math.max(above.right, below.right)];
  return {
    box: { left, right, top: above.top, bottom: below.bottom },
    panels: [
      { window: { ...above, left, right }, items },
      { window: { ...below, left, right, top: above.bottom }, items: [word] },
    ],
    says,
  };
}

/** From a window's lower edge to the baseline of its caption. */
const CAPTION = 3.6;

/** A window that cuts no word off, in centimetres nor in inches. */
function withRoom(window: Box, items: readonly PictureItem[]): Box {
  return items.reduce((box, item) => {
    if (item.kind !== 'word') return box;
    const { at, text, align, size } = item;
    const reach = textWidth(text, size);
    const left = at.x - (align === 'left' ? 0 : align === 'middle' ? reach / 2 : reach);
    return {
      left: Math.min(box.left, left),
      right: Math.max(box.right, left + reach),
      top: Math.min(box.top, at.y - size),
      bottom: Math.max(box.bottom, at.y + 0.4 * size),
    };
  }, window);
}

/** How far a text reaches, in centimetres or in inches, in the measure of its letters: of those of a picture, hundredths of its longer side. */
export const textWidth = (text: Phrase, letter = LETTER): number =>
  Math.max(...(['cm', 'inch'] as const).map((units) => printPhrase(text, units).length)) * letter * AVERAGE_LETTER;

/** Several panels, each already in its place, all as wide as the words of any need. */
export function panelled(panels: readonly PicturePanel[], says: Phrase): StepPicture {
  const box = boxRound([
    ...panels.map(({ window }) => window),
    ...panels.map(({ window, items }) => ({ ...withRoom(window, items), top: window.top, bottom: window.bottom })),
  ]);
  const { left, right } = box;
  return { box, panels: panels.map(({ window, items }) => ({ window: { ...window, left, right }, items })), says };
}
