import { SMALL_HIP } from '../block';
import type { Leg } from '../leg';
import type { Mm } from '../length';
import { type Point, pathThrough, point } from '../plane';
import { letterFitting, TALLEST } from './lettering';
import { type PieceLine, pieceLine } from './line-names';
import { cutLineOf } from './outline';
import type { Piece } from './piece';
import { countedWords, KIND_NAMES } from './piece-names';

/** A patch pocket; there is no side seam, so no pocket can sit in one. */
export interface PocketChoices {
  /** Finished width and height. */
  readonly width: Mm;
  readonly height: Mm;
  /** Depth of the facing that is turned inside at the opening. */
  readonly facing: Mm;
  readonly part: 'front' | 'back';
  readonly count: 1 | 2;
}

/**
 * On an adult the pocket's opening lies this far below the finished waist edge, clear of the casing's stitching, and
 * its bottom stays this far above the crotch line; on a small body each is as much less as its hip is.
 *
 * @source practice
 */
const BELOW_WAIST = 65;
const BELOW_STITCHING = 20;
const ABOVE_CROTCH = 20;

type PocketEdge = 'opening' | 'rightSide' | 'bottom' | 'leftSide';

/**
 * A patch pocket: its facing is turned inside at the opening; sides and bottom are turned under and sewn on.
 *
 * @param pocket sizes in mm
 * @param allowance at the sides and the bottom
 */
export function patchPocket({ width, height, facing, count }: PocketChoices, allowance: Mm): Piece {
  const [a, b, c, d] = [point(0, -facing), point(width, -facing), point(width, height), point(0, height)];
  const stitchLine = [
    { name: 'opening', curves: pathThrough(a, b) },
    { name: 'rightSide', curves: pathThrough(b, c) },
    { name: 'bottom', curves: pathThrough(c, d) },
    { name: 'leftSide', curves: pathThrough(d, a) },
  ] as const;
  const text = countedWords(KIND_NAMES.pocket, count);
  return {
    kind: 'pocket',
    side: undefined,
    cut: count,
    mirrored: false,
    stitchLine,
    cutLine: cutLineOf<PocketEdge>(stitchLine, (edge) => (edge === 'opening' ? 0 : allowance)),
    lines: [],
    folds: [{ name: 'pocketFold', curves: pathThrough(point(0, 0), point(width, 0)) }],
    notches: [],
    grainline: [point(0.5 * width, 0.35 * height), point(0.5 * width, 0.85 * height)],
    texts: [
      {
        at: point(0.5 * width, 0.25 * height),
        text,
        size: Math.min(TALLEST.onPieces, letterFitting(text, 0.7 * width)),
        turn: 0,
        says: 'piece',
      },
    ],
  };
}

/**
 * Where the pocket is sewn on: on the middle of its half at the hip, upright; where it would reach below the crotch
 * line it lies higher, as far as the casing leaves room.
 *
 * @param leg the leg
 * @param pocket sizes in mm
 * @param finishedEdge how far the finished waist edge lies above the leg's own
 * @param hipGirth of the body
 */
export function pocketPlace(
  leg: Leg,
  { width, height, part }: PocketChoices,
  finishedEdge: Mm,
  hipGirth: Mm,
): PieceLine {
  const half = leg[part];
  const middle = half.hipPoint.x / 2;
  const k = Math.min(1, hipGirth / SMALL_HIP);
  const edge = Math.max(leg.front.waistPoint.y, leg.back.waistPoint.y);
  const highest = edge + BELOW_STITCHING * k;
  const lowest = leg.crotchLevel - ABOVE_CROTCH * k - height;
  const top = Math.max(highest, Math.min(edge - finishedEdge + BELOW_WAIST * k, lowest));
  const corner = (x: Mm, y: Mm): Point => point(middle + x, top + y);
  return pieceLine(
    'pocketPlace',
    pathThrough(corner(-width / 2, 0), corner(-width / 2, height), corner(width / 2, height), corner(width / 2, 0)),
  );
}
