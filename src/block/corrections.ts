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
 * The corrections are practice.
 */
export interface Corrections {
  /** Folds under the seat: back extension and back rise shorter. */
  readonly flatSeat: Mm;
  /** Lines towards the crotch: both extensions longer. */
  readonly fullThigh: Mm;
  /** A pool of cloth above the seat: centre back waist lower. */
  readonly swayBack: Mm;
  /** Pulls down when sitting: back rise longer, and where the waist edge may not tilt further, the back extension. */
  readonly sittingPull: Mm;
  /** Drags at the inner knee: inseams outwards at the knee. */
  readonly knockKnees: Mm;
}

export const NO_CORRECTIONS: Corrections = { flatSeat: 0, fullThigh: 0, swayBack: 0, sittingPull: 0, knockKnees: 0 };

/** The back crotch point is looked for so far up and down: bounds of a search (tolerance). */
const MOST_DROP: Mm = 60;

/** Where the corrections move the crotch points and the centre back waist. */
export interface CorrectedBy {
  readonly frontOut: Mm;
  readonly backOut: Mm;
  readonly backUp: Mm;
}

/**
 * What the corrections move. What the back is raised for sitting beyond the room that the waist edge's tilt leaves goes
 * to the back extension: the seam grows as much, and the casing's fold stays square to the seams (practice).
 *
 * @param corrections in mm
 * @param room how much higher centre back may rise, of uncorrected blocks
 */
export function correctedBy({ flatSeat, fullThigh, swayBack, sittingPull }: Corrections, room: Mm): CorrectedBy {
  const up = Math.min(sittingPull, room + flatSeat + swayBack);
  return {
    frontOut: fullThigh,
    backOut: fullThigh - flatSeat + sittingPull - up,
    backUp: up - flatSeat - swayBack,
  };
}

/**
 * Corrects a pair of blocks, wherever it came from: crotch points moved out or in, the centre back waist up or down.
 * (The knees belong to the leg's own inseams and are corrected there.) All five are practice.
 *
 * @param blocks the pair
 * @param corrected how far each point moves
 */
export function blocksCorrected(blocks: Blocks, { frontOut, backOut, backUp }: CorrectedBy): Blocks {
  if (backOut === 0 && frontOut === 0 && backUp === 0) return blocks;
  const front = crotchPointMoved(blocks.front, { x: frontOut, y: 0 });
  const raised = centreRaised(blocks.back, backUp);
  const inseam = (block: Block) => edgeLength(outlineEdge(block.edges, 'inseam'));
  const backAt = (drop: Mm) => crotchPointMoved(raised, { x: -backOut, y: drop });
  const drop = solveBetween((d) => inseam(backAt(d)) - inseam(front), -MOST_DROP, MOST_DROP, TOLERANCE.solved);
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
