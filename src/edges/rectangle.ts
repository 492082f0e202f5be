import type { Mm } from '../length';
import { type Point, pathThrough, point } from '../plane';
import type { EdgeName } from './edge-names';
import { letterFitting, TALLEST } from './lettering';
import { cutLineOf } from './outline';
import type { Notch, Piece, PieceText } from './piece';
import type { StraightKind } from './piece-names';

/** A straight piece: a band, a casing, a cuff, a cord. */
export interface RectangleChoices {
  readonly kind: StraightKind;
  readonly cut: number;
  /** Net, laid out flat, unfolded. */
  readonly length: Mm;
  readonly height: Mm;
  /** Folded lengthwise along its middle. */
  readonly folded: boolean;
  readonly allowance: (edge: EdgeName) => Mm;
  /** Where matching marks stand on the long edges, as shares of the length. */
  readonly marks: readonly number[];
  /** The grain runs along the length, or across it (where the stretch of a rib must go round the body). */
  readonly grain: 'along' | 'across';
  readonly words: readonly string[];
}

/** Longer pieces stand upright on the paper, as the leg does. */
const STANDS_FROM = 300;

/** Where a place of the piece, laid out with its length across, comes to lie on the drawing. */
interface Frame {
  readonly at: (x: Mm, y: Mm) => Point;
  readonly way: (x: number, y: number) => Point;
  /** Degrees by which words are turned. */
  readonly turn: number;
}

const frameOf = ({ length, height }: RectangleChoices): Frame =>
  length < STANDS_FROM
    ? { at: point, way: point, turn: 0 }
    : { at: (x, y) => point(height - y, x), way: (x, y) => point(-y, x), turn: 90 };

/**
 * A straight piece with its allowances, fold, quarter marks, grainline and words.
 *
 * @param choices sizes net, in mm
 */
export function rectanglePiece(choices: RectangleChoices): Piece {
  const { length, height, allowance, marks } = choices;
  const long = allowance('upper');
  const frame = frameOf(choices);
  const [a, b, c, d] = [frame.at(0, 0), frame.at(length, 0), frame.at(length, height), frame.at(0, height)];
  const stitchLine = [
    { name: 'upper', curves: pathThrough(a, b) },
    { name: 'rightEnd', curves: pathThrough(b, c) },
    { name: 'lower', curves: pathThrough(c, d) },
    { name: 'leftEnd', curves: pathThrough(d, a) },
  ] as const;
  const notch = (share: number): readonly Notch[] => [
    { edge: 'upper', at: frame.at(share * length, 0), outward: frame.way(0, -1), length: long, count: 1 },
    {
      edge: 'lower',
      at: frame.at(share * length, height),
      outward: frame.way(0, 1),
      length: long,
      count: 1,
    },
  ];
  return {
    kind: choices.kind,
    side: undefined,
    cut: choices.cut,
    mirrored: false,
    stitchLine,
    cutLine: cutLineOf(stitchLine, allowance),
    lines: [],
    folds: choices.folded
      ? [{ name: `${choices.kind}Fold`, curves: pathThrough(frame.at(0, height / 2), frame.at(length, height / 2)) }]
      : [],
    notches: long > 0 ? marks.flatMap(notch) : [],
    grainline: grainlineOf(choices, frame),
    texts: textsOf(choices, frame),
  };
}

/** In the last third, clear of the words; the upper arrowhead first. */
function grainlineOf({ length, height, grain }: RectangleChoices, frame: Frame): readonly [Point, Point] {
  const ends =
    grain === 'along'
      ? ([frame.at(0.62 * length, 0.25 * height), frame.at(0.95 * length, 0.25 * height)] as const)
      : ([frame.at(0.9 * length, 0.1 * height), frame.at(0.9 * length, 0.9 * height)] as const);
  return ends[0].y <= ends[1].y ? ends : [ends[1], ends[0]];
}

function textsOf({ length, height, words }: RectangleChoices, frame: Frame): readonly PieceText[] {
  // The words stand in the lower half: above them the fold, beside them the grainline.
  const room = (0.5 * height) / (words.length + 0.5);
  return words.map((text, i) => ({
    at: frame.at(0.3 * length, 0.5 * height + (i + 0.9) * room),
    text,
    size: Math.min(TALLEST.onPieces, 0.6 * room, letterFitting(text, 0.5 * length)),
    turn: frame.turn,
    says: i === 0 ? 'piece' : 'note',
  }));
}
