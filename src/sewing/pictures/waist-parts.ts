import type { Mm } from '../../length';
import { between, distance, type Point } from '../../plane';
import type { Garment } from '../garment';
import type { Draw } from './draw';
import type { PictureItem } from './picture';
import { flipped, type Move } from './polygon';
import type { WaistView } from './waist-view';

/** Both halves of something drawn for one. */
export const both = (items: (move: Move) => readonly PictureItem[]): readonly PictureItem[] => [
  ...items((p) => p),
  ...items(flipped(0)),
];

export type Stage = (g: Garment, view: WaistView, d: Draw) => readonly PictureItem[];

export const lineOf = (d: Draw, look: Parameters<Draw['line']>[0], line: readonly Point[]) =>
  both((move) => [d.line(look, ...line.map(move))]);

/** What lies turned over the wrong side: the leg's own turning, or a facing; its right side looks out. */
export const turning = (view: WaistView, d: Draw): readonly PictureItem[] =>
  both((move) => d.cloth('right', [...view.upper, view.inner[1], view.inner[0]].map(move)));

/** From the side to where the opening at the centre begins. */
export function upTo([centre, side]: readonly [Point, Point], gap: Mm): readonly [Point, Point] {
  return [between(centre, side, gap / Math.max(gap + 1, distance(centre, side))), side];
}

export const hasElastic = ({ finished }: Garment) =>
  finished.heights.channels.some((channel) => channel.holds === 'elastic');

export const raised = ([a, b]: readonly [Point, Point], by: Mm): readonly [Point, Point] => [
  { x: a.x, y: a.y - by },
  { x: b.x, y: b.y - by },
];
