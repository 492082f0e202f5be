import type { Mm } from '../length';
import { type Point, parallelOutline, pathThrough, point } from '../plane';
import type { CutEdge, Notch, Piece, PieceText } from './piece';

type RectangleEdge = 'upper' | 'rightEnd' | 'lower' | 'leftEnd';

/** A straight piece: a band, a casing, a cuff, a cord. */
export interface RectangleChoices {
  readonly name: string;
  readonly cut: number;
  /** Net, laid out flat, unfolded. */
  readonly length: Mm;
  readonly height: Mm;
  /** Folded lengthwise along its middle. */
  readonly folded: boolean;
  readonly allowances: { readonly long: Mm; readonly ends: Mm };
  /** Where matching marks stand on the long edges, as shares of the length. */
  readonly marks: readonly number[];
  /** The grain runs along the length, or across it (where the stretch of a rib must go round the body). */
  readonly grain: 'along' | 'across';
  readonly words: readonly string[];
  /** Upper left corner on the drawing. */
  readonly at: Point;
}

/**
 * A straight piece with its allowances, fold, quarter marks, grainline and words.
 *
 * @param choices sizes net, in mm
 */
export function rectanglePiece(choices: RectangleChoices): Piece {
  const { length, height, at, allowances, marks } = choices;
  const corner = (x: Mm, y: Mm): Point => point(at.x + x, at.y + y);
  const [a, b, c, d] = [corner(0, 0), corner(length, 0), corner(length, height), corner(0, height)];
  const stitchLine = [
    { name: 'upper', curves: pathThrough(a, b) },
    { name: 'rightEnd', curves: pathThrough(b, c) },
    { name: 'lower', curves: pathThrough(c, d) },
    { name: 'leftEnd', curves: pathThrough(d, a) },
  ] as const;
  const allowance = (name: RectangleEdge): Mm =>
    name === 'upper' || name === 'lower' ? allowances.long : allowances.ends;
  const cutLine: readonly CutEdge[] = parallelOutline<RectangleEdge>(stitchLine, allowance).map((edge) => ({
    ...edge,
    allowance: allowance(edge.name),
  }));
  const notch = (share: number): readonly Notch[] => [
    { edge: 'upper', at: corner(share * length, 0), outward: point(0, -1), length: allowances.long, count: 1 },
    { edge: 'lower', at: corner(share * length, height), outward: point(0, 1), length: allowances.long, count: 1 },
  ];
  return {
    name: choices.name,
    cut: choices.cut,
    mirrored: false,
    stitchLine,
    cutLine,
    lines: [],
    folds: choices.folded
      ? [{ name: `${choices.name} fold`, curves: pathThrough(corner(0, height / 2), corner(length, height / 2)) }]
      : [],
    notches: allowances.long > 0 ? marks.flatMap(notch) : [],
    grainline: grainlineOf(choices),
    texts: textsOf(choices),
  };
}

/** In the last third, clear of the words. */
function grainlineOf({ length, height, at, grain }: RectangleChoices): readonly [Point, Point] {
  if (grain === 'along')
    return [point(at.x + 0.62 * length, at.y + 0.25 * height), point(at.x + 0.95 * length, at.y + 0.25 * height)];
  const x = at.x + 0.9 * length;
  return [point(x, at.y + 0.1 * height), point(x, at.y + 0.9 * height)];
}

const TALLEST = 6;
/** Width of an average letter of the print font, as a share of the letter height. */
const LETTER_WIDTH = 0.82;

function textsOf({ length, height, at, words }: RectangleChoices): readonly PieceText[] {
  // The words stand in the lower half: above them the fold, beside them the grainline.
  const room = (0.5 * height) / (words.length + 0.5);
  return words.map((text, i) => ({
    at: point(at.x + 0.3 * length, at.y + 0.5 * height + (i + 0.9) * room),
    text,
    size: Math.min(TALLEST, 0.6 * room, (0.5 * length) / (LETTER_WIDTH * text.length)),
    turn: 0,
    role: i === 0 ? 'name' : 'note',
  }));
}
