import type { Block, Blocks } from '../block';
import type { Mm } from '../length';
import { outlineEdge, type Point, pathEnd, subtract, turned } from '../plane';
import { legStages } from './changes';
import { blockMoved, type JoinedBlocks, joinBlocks, offUpright, sideAt, spreadLeg } from './join';
import { type LegChoices, legFrom } from './leg';
import type { Leg } from './types';

/** What lies between the two side lines at one level. */
export interface Gap {
  readonly name: 'waist' | 'hip' | 'knee' | 'hem';
  /** On the back's side line. */
  readonly from: Point;
  /** On the front's. */
  readonly to: Point;
  /** Negative where the side lines overlap. */
  readonly width: Mm;
}

/** Both blocks as they lie at one moment of the join, and the gaps between them. */
export interface BlocksOnTheWay {
  readonly front: Block;
  readonly back: Block;
  readonly gaps: readonly Gap[];
}

/** The first part of the way turns a tilted grainline upright; all of it slides. @source tolerance: for showing only */
const TURNING_PART = 0.3;

/**
 * The two blocks on their way from apart to joined: for showing the join, never for drafting.
 *
 * A tilted grainline is turned upright first, so that from then on the two grainlines stay parallel while the blocks
 * slide. At the end they lie exactly as {@link joinBlocks} lays them.
 *
 * @param blocks front and back, as they were drafted or brought along
 * @param apart how far they stand apart at the start, mm
 * @param way 0 apart … 1 joined
 */
export function blocksOnTheWay(blocks: Pick<Blocks, 'front' | 'back'>, apart: Mm, way: number): BlocksOnTheWay {
  const joined = joinBlocks(blocks);
  return withGaps({
    front: blockOnTheWay(blocks.front, joined.front, apart / 2, way),
    back: blockOnTheWay(blocks.back, joined.back, -apart / 2, way),
  });
}

/**
 * The join opening: from touching to the chosen spread, parallel to the grain.
 *
 * @param joined the blocks as they lie joined and spread
 * @param spread the chosen spread, mm
 * @param way 0 touching … 1 spread
 */
export function spreadOnTheWay(joined: JoinedBlocks, spread: Mm, way: number): BlocksOnTheWay {
  return withGaps(spreadLeg(joined, spread * (way - 1)));
}

/** A leg between two of its operations: as far as it is drawn, and what it becomes. */
export interface LegOnTheWay {
  readonly leg: Leg;
  /** How much of its last shape and length has come, 0…1: those are drawn anew, not moved. */
  readonly shaped: number;
}

/**
 * The leg growing out of the spread blocks: its waist raised and its centres straightened little by little, then its
 * inseams and hem drawn anew.
 *
 * @param joined the joined and spread blocks
 * @param choices all that was chosen
 * @param way 0 as the blocks lean … 1 straightened … 2 shaped and cut to length
 */
export function legOnTheWay(joined: JoinedBlocks, choices: LegChoices, way: number): LegOnTheWay {
  if (way > 1) return { leg: legFrom(joined, choices), shaped: Math.min(1, way - 1) };
  const { spread } = legStages(joined, { ...choices, straighten: 0, raiseWaist: 0, lowerCrotch: 0 });
  if (way <= 0) return { leg: spread, shaped: 0 };
  const partly = {
    ...choices,
    straighten: choices.straighten * way,
    raiseWaist: choices.raiseWaist * way,
    lowerCrotch: choices.lowerCrotch * way,
  };
  return { leg: legStages(joined, partly).straighten, shaped: 0 };
}

function blockOnTheWay(block: Block, end: Block, start: Mm, way: number): Block {
  const pivot = block.grainline[0];
  const slide = subtract(end.grainline[0], pivot);
  const turn = offUpright(block) * Math.min(1, way / TURNING_PART);
  const dx = start + (slide.x - start) * way;
  const dy = slide.y * way;
  const moved = blockMoved(block, (p) => {
    const q = turned(p, pivot, turn);
    return { x: q.x + dx, y: q.y + dy };
  });
  // A level is a level: turning the block about its grainline does not tilt it.
  return {
    ...moved,
    hipLevel: block.hipLevel + dy,
    crotchLevel: block.crotchLevel + dy,
    kneeLevel: block.kneeLevel + dy,
  };
}

function withGaps({ front, back }: Pick<BlocksOnTheWay, 'front' | 'back'>): BlocksOnTheWay {
  const side = (block: Block) => outlineEdge(block.edges, 'side').curves;
  const hem = (block: Block) => pathEnd(outlineEdge(block.edges, 'hem').curves);
  const at = (block: Block, level: Mm): Point => ({ x: sideAt(block, level), y: level });
  const gap = (name: Gap['name'], from: Point, to: Point): Gap => ({ name, from, to, width: to.x - from.x });
  return {
    front,
    back,
    gaps: [
      gap('waist', pathEnd(side(back)), pathEnd(side(front))),
      gap('hip', at(back, back.hipLevel), at(front, front.hipLevel)),
      gap('knee', at(back, front.kneeLevel), at(front, front.kneeLevel)),
      gap('hem', hem(back), hem(front)),
    ],
  };
}
