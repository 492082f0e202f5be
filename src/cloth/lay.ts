import type { Mm } from '../length';
import { type Cut, cutsOf } from './cuts';
import type { LayPiece } from './lay-piece';
import type { Laid } from './no-fit';
import { type Grids, NO_GRIDS, shortestPair } from './pair';
import { layLength, type Option, shortestPlace } from './place';
import type { Shape } from './shape';
import { type CuttingTable, clothWidthFor, cuttableWidth, layersAlong, lengthToBuy, tableFor } from './table';
import type { Lay, LayCloth, Layout, Placement } from './types';

/** A cut at its place on the table; `half` where its middle lies on the fold. */
interface LaidCut extends Laid {
  readonly cut: Cut;
  readonly half: boolean;
}

/** What one layout of one cloth came to: a lay, or that something is too wide for it. */
export type LayTry =
  | { readonly fits: true; readonly lay: Lay }
  | { readonly fits: false; readonly widest: Cut; readonly room: Mm; readonly widthWanted: Mm };

/**
 * The shortest lay found for one layout. Two legs alone lie exactly as short as their covers allow; further pieces are
 * fitted in, the largest first, from several starts, and the shortest result is kept.
 *
 * @param pieces made ready to be laid
 * @param cloth as it is bought
 * @param layout how it lies
 */
export function layOn(pieces: readonly LayPiece[], cloth: LayCloth, layout: Layout): LayTry {
  const table = tableFor(cloth, layout);
  const cuts = cutsOf(pieces, layout, cloth);
  const widest = cuts.reduce((a, b) => (narrowest(b) > narrowest(a) ? b : a), cuts[0] as Cut);
  const tooWide = (): LayTry => ({
    fits: false,
    widest,
    room: table.room,
    widthWanted: clothWidthFor(narrowest(widest), cloth, layout),
  });
  if (narrowest(widest) > table.room) return tooWide();
  let found: readonly LaidCut[] | undefined;
  // A start that is no shorter than the best lay so far can't become shorter.
  for (const start of startsOf(cuts, table, cloth)) found = filled(start, cuts, table, found) ?? found;
  return found ? { fits: true, lay: finishedLay(found, table, cloth) } : tooWide();
}

/** Shorter by less is the same length. */
const WORTH_MENTIONING: Mm = 0.1;

/** How narrow a cut can be made to lie. */
const narrowest = ({ piece, ways }: Cut): Mm => Math.min(...ways.map((way) => piece.shape(way).width));

/** The first cuts at their places: several ways to begin. The two legs together, a leg at either side, or nothing yet. */
function startsOf(cuts: readonly Cut[], table: CuttingTable, cloth: LayCloth): readonly (readonly LaidCut[])[] {
  const [largest, next] = bySize(cuts) as [Cut, Cut | undefined];
  const twin =
    cuts.find((cut) => cut !== largest && cut.piece === largest.piece) ??
    (largest.piece.oneHanded && next?.piece.oneHanded ? next : undefined);
  if (twin) {
    const pairs = pairStarts(largest, twin, table, cloth);
    return cloth.repeat > 0 || cloth.repeatAcross > 0 || cuts.length === 2 ? pairs : [...pairs, []];
  }
  return largest.ways.flatMap((way) => {
    const shape = largest.piece.shape(way);
    // Upright a leg may be too wide where leaning a little off the grain it is not.
    if (shape.width > table.room) return [];
    return [0, table.room - shape.width].map((x) => [{ cut: largest, half: false, shape, at: { x, y: 0 } }]);
  });
}

/** Both legs, in every way in which they may lie to each other; turned as a whole they would be the same again. */
function pairStarts(one: Cut, other: Cut, { room }: CuttingTable, cloth: LayCloth): readonly (readonly LaidCut[])[] {
  const upright = one.ways.filter(({ turn }) => Math.abs(turn - one.piece.grainTurn) < 90);
  return upright
    .flatMap((way) => other.ways.map((otherWay) => [way, otherWay] as const))
    .flatMap(([way, otherWay]) => {
      const [a, b] = [one.piece.shape(way), other.piece.shape(otherWay)];
      const place = shortestPair(a, b, room, gridsFor(a, b, cloth));
      if (!place) return [];
      const left = Math.min(0, place.dx);
      const top = Math.min(0, place.dy);
      const slack = room - Math.max(a.width, place.dx + b.width) + left;
      return (slack > 0 ? [0, slack] : [0]).map((x): readonly LaidCut[] => [
        { cut: one, half: false, shape: a, at: { x: x - left, y: -top } },
        { cut: other, half: false, shape: b, at: { x: x + place.dx - left, y: place.dy - top } },
      ]);
    })
    .sort((a, b) => layLength(a) - layLength(b));
}

/**
 * What a repeat demands of two legs so that stripes mirror about centre front and back, and checks meet there from the hem
 * up: side by side the same way up, their hems lie on the same place of the check; end for end, their side lines lie on
 * the same place of the stripe. The other direction is met by where the first of them is begun.
 */
function gridsFor(a: Shape, b: Shape, { repeat, repeatAcross }: LayCloth): Grids {
  const endForEnd = Math.abs(b.turn - a.turn) > 90;
  if (endForEnd) {
    return repeatAcross > 0
      ? { ...NO_GRIDS, across: { first: a.origin.x - b.origin.x, step: repeatAcross } }
      : NO_GRIDS;
  }
  return repeat > 0 ? { ...NO_GRIDS, along: { first: a.origin.y - b.origin.y, step: repeat } } : NO_GRIDS;
}

const bySize = (cuts: readonly Cut[]): readonly Cut[] => [...cuts].sort((a, b) => b.piece.area - a.piece.area);

/** Lays what is not laid yet, the largest first; nothing where that doesn't become shorter than what there is. */
function filled(
  start: readonly LaidCut[],
  cuts: readonly Cut[],
  table: CuttingTable,
  toBeat: readonly LaidCut[] | undefined,
): readonly LaidCut[] | undefined {
  const below = toBeat ? layLength(toBeat) - WORTH_MENTIONING : Infinity;
  if (layLength(start) >= below) return undefined;
  const laid = [...start];
  const left = new Set(cuts);
  for (const { cut } of start) left.delete(cut);
  for (const cut of bySize([...left])) {
    const place = shortestPlace(optionsOf(cut, table), laid, below);
    if (!place) return undefined;
    laid.push({ cut, half: place.option.half, shape: place.shape, at: place.at });
  }
  return laid;
}

interface CutOption extends Option {
  readonly half: boolean;
}

/** Flat in every way it may lie; what is cut once can also lie with its middle on a fold that runs along the grain. */
function optionsOf({ piece, ways, layer }: Cut, { room, layout, left }: CuttingTable): readonly CutOption[] {
  const flat = ways.map((way): CutOption => {
    const shape = piece.shape(way);
    return { shape, half: false, left: 0, right: room - shape.width };
  });
  if (layer !== 'upper' || layout !== 'foldedLengthwise' || !piece.half) return flat;
  return [...flat, { shape: piece.half, half: true, left: -left, right: -left }];
}

function finishedLay(laid: readonly LaidCut[], table: CuttingTable, cloth: LayCloth): Lay {
  const { layout, clothWidth } = table;
  const layers = layersAlong(layout);
  const length = layLength(laid) + table.top;
  const lengthNeeded = layers * length;
  const area = laid.reduce((sum, { cut }) => sum + cut.copies.length * cut.piece.area, 0);
  const tallest = Math.max(...laid.map(({ cut }) => Math.min(...cut.ways.map((way) => cut.piece.shape(way).height))));
  return {
    layout,
    width: cloth.width,
    clothWidth,
    table: { width: table.width, length },
    placements: laid.map((one) => placementOf(one, table)),
    lengthNeeded,
    lowerBound: Math.max(layers * tallest, area / cuttableWidth(cloth)),
    waste: 1 - area / (clothWidth * lengthNeeded),
    toBuy: lengthToBuy(lengthNeeded, cloth),
  };
}

function placementOf({ cut, half, shape, at }: LaidCut, table: CuttingTable): Placement {
  const { piece, copies, layer } = cut;
  const y = at.y + shape.origin.y + table.top;
  if (!half) {
    const x = at.x + shape.origin.x + table.left;
    return { piece: piece.ref, copies, layer, mirrored: shape.mirrored, turn: shape.turn, at: { x, y } };
  }
  return {
    piece: piece.ref,
    copies,
    layer: 'fold',
    mirrored: false,
    turn: piece.grainTurn,
    at: { x: -piece.axis, y },
  };
}
