import type { Mm } from '../../length';
import { between, distance, type Point } from '../../plane';
import type { Garment } from '../garment';
import type { Draw } from './draw';
import type { Face, PictureItem } from './picture';
import { flipped, type Move } from './polygon';
import type { WaistView } from './waist-view';

/** Both halves of something drawn for one. */
export const both = (items: (move: Move) => readonly PictureItem[]): readonly PictureItem[] => [
  ...items((p) => p),
  ...items(flipped(0)),
];

/** A cloth of two halves that meet at the centre: an edge there is no edge but the centre seam. */
export function bothCloth(d: Draw, face: Face, half: readonly Point[]): readonly PictureItem[] {
  const atCentre = (p: Point) => Math.abs(p.x) < CENTRE;
  const edges = half.flatMap((p, i): readonly (readonly [Point, Point])[] => {
    const next = half[(i + 1) % half.length] as Point;
    return atCentre(p) && atCentre(next) ? [] : [[p, next]];
  });
  return both((move) => [d.area(face, half.map(move)), ...edges.map((edge) => d.line('edge', ...edge.map(move)))]);
}

/** So near to the centre a point lies on its seam, which is upright in the picture. */
const CENTRE: Mm = 0.5;

/** The centre seam, where it goes through what lies on it. */
export const centreSeam = (d: Draw, from: Mm, to: Mm): PictureItem =>
  d.line('stitch', { x: 0, y: from }, { x: 0, y: to });

export type Stage = (g: Garment, view: WaistView, d: Draw) => readonly PictureItem[];

export const lineOf = (d: Draw, look: Parameters<Draw['line']>[0], line: readonly Point[]) =>
  both((move) => [d.line(look, ...line.map(move))]);

/** What lies turned over the wrong side: the leg's own turning, or a facing; its right side looks out. */
export const turning = (view: WaistView, d: Draw): readonly PictureItem[] => [
  ...bothCloth(d, 'right', [...view.upper, view.inner[1], view.inner[0]]),
  centreSeam(d, view.upper[0].y, view.inner[0].y),
];

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
