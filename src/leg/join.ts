import type { Block, Blocks, Dart } from '../block';
import type { Mm } from '../length';
import {
  curveMap,
  curveMeetsLine,
  curvePoint,
  flattenCurves,
  outlineCurves,
  outlineEdge,
  type Point,
  pathEnd,
  pointsBounds,
  turned,
} from '../plane';

/** Both blocks lying together, and what lies between them. */
export interface JoinedBlocks {
  readonly front: Block;
  readonly back: Block;
  readonly gapAtWaist: Mm;
  readonly gapAtKnee: Mm;
  readonly gapAtHem: Mm;
  /** How far the hip levels differed before they were aligned. */
  readonly hipDifference: Mm;
  /** How far the hips stand apart, because a side line bulges past the hip; 0 where they touch. */
  readonly gapAtHip: Mm;
}

/** Levels at which two bulging side lines are compared. @source tolerance: about one every centimetre */
const BULGE_STEPS = 120;

/**
 * Lays the two blocks side by side: grainlines upright, hip levels in line, side lines touching at the fullest hip, or
 * at the bulge where one goes past it, so that nothing overlaps below the waist.
 *
 * @param blocks front and back, wherever they came from
 */
export function joinBlocks(blocks: Pick<Blocks, 'front' | 'back'>): JoinedBlocks {
  const front = atSide(upright(blocks.front), blocks.front.hipLevel);
  const back = atSide(upright(blocks.back), blocks.front.hipLevel);
  const apart = leastRoom(front, back);
  const frontApart = blockMoved(front, (p) => ({ x: p.x + apart / 2, y: p.y }));
  const backApart = blockMoved(back, (p) => ({ x: p.x - apart / 2, y: p.y }));
  const gap = (level: Mm) => sideAt(frontApart, level) - sideAt(backApart, level);
  const waist = (block: Block) => pathEnd(outlineEdge(block.edges, 'side').curves);
  const hem = (block: Block) => pathEnd(outlineEdge(block.edges, 'hem').curves);
  return {
    front: frontApart,
    back: backApart,
    gapAtWaist: waist(frontApart).x - waist(backApart).x,
    gapAtKnee: gap(frontApart.kneeLevel),
    gapAtHem: hem(frontApart).x - hem(backApart).x,
    hipDifference: blocks.back.hipLevel - blocks.front.hipLevel,
    gapAtHip: apart,
  };
}

/**
 * Spreads the joined blocks parallel to the grain: the front by +s/2, the back by −s/2 (no wedge: it would break the
 * grain).
 *
 * @param joined the joined blocks
 * @param spread s in mm: one leg grows by s, the garment by 2s
 */
export function spreadLeg(joined: JoinedBlocks, spread: Mm): JoinedBlocks {
  if (spread === 0) return joined;
  return {
    ...joined,
    front: blockMoved(joined.front, (p) => ({ x: p.x + spread / 2, y: p.y })),
    back: blockMoved(joined.back, (p) => ({ x: p.x - spread / 2, y: p.y })),
  };
}

/** A block with every point moved by the same rule; levels are taken from where the grainline's rule puts them. */
export function blockMoved(block: Block, move: (p: Point) => Point): Block {
  const level = (y: Mm) => move({ x: 0, y }).y;
  const dart = (d: Dart): Dart => ({ left: move(d.left), right: move(d.right), tip: move(d.tip) });
  return {
    ...block,
    edges: block.edges.map((edge) => ({ name: edge.name, curves: edge.curves.map((curve) => curveMap(curve, move)) })),
    grainline: [move(block.grainline[0]), move(block.grainline[1])],
    hipLevel: level(block.hipLevel),
    crotchLevel: level(block.crotchLevel),
    kneeLevel: level(block.kneeLevel),
    darts: block.darts.map(dart),
  };
}

/** The block turned so that its grainline is upright; about the grainline's upper end. */
function upright(block: Block): Block {
  const [top] = block.grainline;
  const off = offUpright(block);
  if (Math.abs(off) < 1e-9) return block;
  const moved = blockMoved(block, (p) => turned(p, top, off));
  return { ...moved, hipLevel: block.hipLevel, crotchLevel: block.crotchLevel, kneeLevel: block.kneeLevel };
}

/** By how much a block must be turned (radians) for its grainline to stand upright. */
export function offUpright({ grainline: [top, bottom] }: Block): number {
  return Math.atan2(bottom.x - top.x, bottom.y - top.y);
}

/** The block slid so that its side line meets x = 0 at the common hip level. */
function atSide(block: Block, hipLevel: Mm): Block {
  const dy = hipLevel - block.hipLevel;
  const dx = -sideAt(block, block.hipLevel);
  return dx === 0 && dy === 0 ? block : blockMoved(block, (p) => ({ x: p.x + dx, y: p.y + dy }));
}

/** Where the side line is at a level; its nearer end beyond them. */
export function sideAt(block: Block, level: Mm): Mm {
  const side = outlineEdge(block.edges, 'side').curves;
  for (const curve of side) {
    const t = curveMeetsLine(curve, { x: 0, y: level }, { x: 1, y: 0 })[0];
    if (t !== undefined) return curvePoint(curve, t).x;
  }
  const end = pathEnd(side);
  const start = side[0] ? side[0][0] : end;
  return Math.abs(end.y - level) < Math.abs(start.y - level) ? end.x : start.x;
}

/** By how much the blocks must be moved apart so that their side lines don't overlap. */
function leastRoom(front: Block, back: Block): Mm {
  const bounds = (block: Block) => pointsBounds(flattenCurves(outlineEdge(block.edges, 'side').curves));
  const [f, b] = [bounds(front), bounds(back)];
  if (f.left >= -1e-6 && b.right <= 1e-6) return 0;
  const [top, bottom] = [Math.max(f.top, b.top), Math.min(f.bottom, b.bottom)];
  let overlap = 0;
  for (let i = 0; i <= BULGE_STEPS; i += 1) {
    const level = top + ((bottom - top) * i) / BULGE_STEPS;
    overlap = Math.max(overlap, sideAt(back, level) - sideAt(front, level));
  }
  return overlap;
}

/** A block's outline as one closed run, for drawing. */
export const blockCurves = (block: Block) => outlineCurves(block.edges);
