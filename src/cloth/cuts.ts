import type { LayPiece } from './lay-piece';
import type { Way } from './shape';
import type { LayCloth, Layer, Layout } from './types';

/** One cut through the cloth: which copies of a piece it gives, and through what. */
export interface Cut {
  readonly piece: LayPiece;
  readonly copies: readonly number[];
  readonly layer: Layer;
  readonly ways: readonly Way[];
}

/**
 * What is cut, cut by cut. In a single layer every copy for itself, each second one of a mirrored piece printed side down.
 * In two layers, right sides together, one cut gives a mirrored two; an odd one is cut through the upper layer.
 */
export function cutsOf(pieces: readonly LayPiece[], layout: Layout, cloth: LayCloth): readonly Cut[] {
  return pieces.flatMap((piece) => {
    const twos = layout !== 'single' && (piece.mirrored || piece.symmetric) ? Math.floor(piece.cut / 2) : 0;
    const both = Array.from(
      { length: twos },
      (_, i): Cut => ({ piece, copies: [2 * i + 1, 2 * i + 2], layer: 'both', ways: waysOf(piece, false, cloth) }),
    );
    const each = Array.from({ length: piece.cut - 2 * twos }, (_, i): Cut => {
      const copy = 2 * twos + i + 1;
      const mirrored = piece.mirrored && copy % 2 === 0;
      return {
        piece,
        copies: [copy],
        layer: layout === 'single' ? 'single' : 'upper',
        ways: waysOf(piece, mirrored, cloth),
      };
    });
    return [...both, ...each];
  });
}

/** Ways in which a copy may lie: end for end only where the cloth has no one way; off the grain only where it may. */
function waysOf(piece: LayPiece, mirrored: boolean, { oneWay, grainTolerance }: LayCloth): readonly Way[] {
  const leans = grainTolerance > 0 && !isBlocky(piece) ? [0, grainTolerance, -grainTolerance] : [0];
  const ends = oneWay || isBlocky(piece) ? [0] : [0, 180];
  const grain = mirrored ? -piece.grainTurn : piece.grainTurn;
  return ends.flatMap((end) => leans.map((lean) => ({ mirrored, turn: grain + end + lean })));
}

/** A rectangle is the same end for end, and gains nothing by leaning. */
const isBlocky = (piece: LayPiece): boolean =>
  piece.symmetric && piece.shape({ mirrored: false, turn: 0 }).points.length === 4;
