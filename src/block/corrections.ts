import type { Mm } from '../length';
import {
  edgeLength,
  moved,
  type Outline,
  outlineEdge,
  type Point,
  pathEnd,
  pathEndWay,
  pathReaimed,
  pathStart,
  pathStartWay,
  solveBetween,
  straight,
  TOLERANCE,
  turnBetween,
  turned,
} from '../plane';
import type { Block, BlockEdge, Blocks } from './types';

/**
 * What was seen on the body when the trousers were worn, each with its amount in mm; 0 where nothing was seen.
 *
 * @source practice
 */
export interface Corrections {
  /** Folds under the seat: back extension and back rise shorter. */
  readonly flatSeat: Mm;
  /** Drags from the seat to the crotch: back extension and back rise longer. */
  readonly fullSeat: Mm;
  /** Lines towards the crotch: both extensions longer. */
  readonly fullThigh: Mm;
  /** A pool of cloth above the seat: centre back waist lower. */
  readonly swayBack: Mm;
  /** The waist dips over the belly: centre front waist higher. */
  readonly prominentAbdomen: Mm;
  /** Pulls down when sitting: back rise longer. */
  readonly sittingPull: Mm;
  /** Worn sitting, all day or in a wheelchair: centre front lower, centre back higher, each by half, the leg longer by half. */
  readonly seated: Mm;
  /** Drags at the inner knee: inseams outwards at the knee. */
  readonly knockKnees: Mm;
}

export const NO_CORRECTIONS: Corrections = {
  flatSeat: 0,
  fullSeat: 0,
  fullThigh: 0,
  swayBack: 0,
  prominentAbdomen: 0,
  sittingPull: 0,
  seated: 0,
  knockKnees: 0,
};

/** What one correction, or all together, move: the waist at the centres, the crotch points, the knees and the named lengths. */
export interface CorrectedBy {
  readonly frontUp: Mm;
  readonly frontOut: Mm;
  readonly backUp: Mm;
  readonly backOut: Mm;
  readonly kneesOut: Mm;
  readonly longer: Mm;
}

const NOTHING: CorrectedBy = { frontUp: 0, frontOut: 0, backUp: 0, backOut: 0, kneesOut: 0, longer: 0 };

/**
 * What each correction moves. The waist edge may tilt only so far, or the casing's fold would stand askew to the seams:
 * centre back rises, and centre front sinks, as far as there is room, and what is missing behind goes to the back
 * extension, so that the seam grows as much.
 *
 * @param seen in mm
 * @param room how much more the waist edge of the uncorrected blocks may tilt, centre back over centre front
 * @source practice
 */
export function correctionMoves(seen: Corrections, room: Mm): Readonly<Record<keyof Corrections, CorrectedBy>> {
  let left = room + seen.flatSeat + seen.swayBack + seen.prominentAbdomen;
  const tilted = (wanted: Mm): Mm => {
    const by = Math.min(wanted, Math.max(0, left));
    left -= by;
    return by;
  };
  // A belly that is sat on presses in front: there the room is used first.
  const frontDown = tilted(seen.seated / 2);
  const [seatedUp, fullUp, sittingUp] = [seen.seated / 2, seen.fullSeat, seen.sittingPull].map(tilted) as [Mm, Mm, Mm];
  return {
    flatSeat: { ...NOTHING, backUp: -seen.flatSeat, backOut: -seen.flatSeat },
    fullSeat: { ...NOTHING, backUp: fullUp, backOut: 2 * seen.fullSeat - fullUp },
    fullThigh: { ...NOTHING, frontOut: seen.fullThigh, backOut: seen.fullThigh },
    swayBack: { ...NOTHING, backUp: -seen.swayBack },
    prominentAbdomen: { ...NOTHING, frontUp: seen.prominentAbdomen },
    sittingPull: { ...NOTHING, backUp: sittingUp, backOut: seen.sittingPull - sittingUp },
    seated: {
      ...NOTHING,
      frontUp: 0 - frontDown,
      backUp: seatedUp,
      backOut: seen.seated / 2 - seatedUp,
      longer: seen.seated / 2,
    },
    knockKnees: { ...NOTHING, kneesOut: seen.knockKnees },
  };
}

/** All that was seen, together. */
export const correctedBy = (moves: Readonly<Record<keyof Corrections, CorrectedBy>>): CorrectedBy =>
  Object.values(moves).reduce((sum, one) => ({
    frontUp: sum.frontUp + one.frontUp,
    frontOut: sum.frontOut + one.frontOut,
    backUp: sum.backUp + one.backUp,
    backOut: sum.backOut + one.backOut,
    kneesOut: sum.kneesOut + one.kneesOut,
    longer: sum.longer + one.longer,
  }));

/** The back crotch point is looked for so far up and down: bounds of a search. @source tolerance */
const MOST_DROP: Mm = 60;

/**
 * Corrects a pair of blocks, wherever it came from: crotch points moved out or in, the waist at the centres up or down.
 * (Knees and lengths belong to the leg's own inseams and are corrected there.)
 *
 * @param blocks the pair
 * @param by how far each point moves
 */
export function blocksCorrected(
  blocks: Blocks,
  { frontUp, frontOut, backUp, backOut }: Pick<CorrectedBy, 'frontUp' | 'frontOut' | 'backUp' | 'backOut'>,
): Blocks {
  if (backOut === 0 && frontOut === 0 && backUp === 0 && frontUp === 0) return blocks;
  const front = crotchPointMoved(centreRaised(blocks.front, frontUp), { x: frontOut, y: 0 });
  const raised = centreRaised(blocks.back, backUp);
  const inseam = (block: Block) => edgeLength(outlineEdge(block.edges, 'inseam'));
  const backAt = (drop: Mm) => crotchPointMoved(raised, { x: -backOut, y: drop });
  const drop =
    backOut === 0 && frontOut === 0
      ? 0
      : solveBetween((d) => inseam(backAt(d)) - inseam(front), -MOST_DROP, MOST_DROP, TOLERANCE.solved);
  return {
    ...blocks,
    front,
    back: backAt(drop),
    backCrotchDrop: blocks.backCrotchDrop + drop,
    backRaise: blocks.backRaise + backUp,
    extensionFront: blocks.extensionFront + frontOut,
    extensionBack: blocks.extensionBack + backOut,
  };
}

function withEdges(block: Block, changed: Partial<Record<BlockEdge, Outline[number]['curves']>>): Block {
  return {
    ...block,
    edges: block.edges.map((edge) => ({ name: edge.name, curves: changed[edge.name] ?? edge.curves })),
  };
}

/** The crotch point moved; inseam and crotch curve follow, and meet at the angle at which they met. */
function crotchPointMoved(block: Block, by: Point): Block {
  if (by.x === 0 && by.y === 0) return block;
  const [crotch, inseam] = [outlineEdge(block.edges, 'crotch').curves, outlineEdge(block.edges, 'inseam').curves];
  const at = { x: pathStart(inseam).x + by.x, y: pathStart(inseam).y + by.y };
  const foot = pathEnd(inseam.slice(0, 1));
  const slant = turnBetween(away(pathStart(inseam), foot), away(at, foot));
  const inseamWay = turned(pathStartWay(inseam), { x: 0, y: 0 }, slant);
  const arrival = turned(pathEndWay(crotch), { x: 0, y: 0 }, slant);
  return withEdges(block, {
    crotch: pathReaimed(crotch, { at: pathStart(crotch), way: pathStartWay(crotch) }, { at, way: arrival }),
    inseam: [
      ...pathReaimed(inseam.slice(0, 1), { at, way: inseamWay }, { at: foot, way: pathEndWay(inseam.slice(0, 1)) }),
      ...inseam.slice(1),
    ],
  });
}

const away = (from: Point, to: Point): Point => ({ x: to.x - from.x, y: to.y - from.y });

/** The waist at the centre moved up along the centre line; the waist edge follows. */
function centreRaised(block: Block, by: Mm): Block {
  if (by === 0) return block;
  const [waist, centre] = [outlineEdge(block.edges, 'waist').curves, outlineEdge(block.edges, 'centre').curves];
  const at = moved(pathStart(centre), pathStartWay(centre), -by);
  return withEdges(block, {
    waist: pathReaimed(waist, { at: pathStart(waist), way: pathStartWay(waist) }, { at, way: pathEndWay(waist) }),
    centre: [straight(at, pathEnd(centre.slice(0, 1))), ...centre.slice(1)],
  });
}
