import type { BlockEdge } from '../../block';
import type { Mm } from '../../length';
import { mapTuple, type Point } from '../../plane';
import { REFERENCE } from '../../sheets';
import { type BlockMarks, type Landmark, withEdgePoint } from '../../trace';

export type Part = 'front' | 'back';
export type Four = readonly [Point, Point, Point, Point];

/** One photograph and what is known of the rectangle on it. Points are in its own pixels. */
export interface Shot {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  /** A, B, C, D, round the rectangle. */
  readonly corners: Four;
  /** The reference sheet left whole, or a rectangle of the person's own. */
  readonly rectangle: 'sheet' | 'own';
  readonly across: Mm;
  readonly along: Mm;
  /** A fifth length: where it begins and ends, and how long it is. */
  readonly check: { readonly ends: readonly [Point, Point]; readonly length: Mm } | undefined;
}

/** The edges by which allowances are taken off: centre and crotch are one seam. */
export type SeamOnPaper = 'waist' | 'crotch' | 'inseam' | 'hem' | 'side';

/** All that somebody marked; the pictures themselves are not part of it. */
export interface PhotoWork {
  readonly shots: readonly Shot[];
  /** Which photograph shows a block, and its marks there. */
  readonly front: MarkedPart;
  readonly back: MarkedPart;
  readonly allowances: Readonly<Record<SeamOnPaper, Mm>>;
}

export interface MarkedPart {
  readonly shot: number;
  readonly marks: BlockMarks;
}

const UNMARKED: MarkedPart = { shot: 0, marks: { landmarks: {}, points: {} } };

/** A rectangle of four cards round a block, to begin with: about as large as a block for an adult. */
const USUAL = { across: 600, along: 1100 } as const;

export const NO_WORK: PhotoWork = {
  shots: [],
  front: UNMARKED,
  back: UNMARKED,
  allowances: { waist: 0, crotch: 0, inseam: 0, hem: 0, side: 0 },
};

/** A photograph of which nothing is marked yet: the corners wait within it. */
export function newShot(name: string, width: number, height: number): Shot {
  const at = (x: number, y: number): Point => ({ x: x * width, y: y * height });
  return {
    name,
    width,
    height,
    corners: [at(0.25, 0.25), at(0.75, 0.25), at(0.75, 0.75), at(0.25, 0.75)],
    rectangle: 'own',
    ...USUAL,
    check: undefined,
  };
}

/** The sides of the marked rectangle. */
export const sidesOf = ({ rectangle, across, along }: Shot): { readonly across: Mm; readonly along: Mm } =>
  rectangle === 'sheet' ? { across: REFERENCE.width, along: REFERENCE.height } : { across, along };

export const withShot = (work: PhotoWork, index: number, change: Partial<Shot>): PhotoWork => ({
  ...work,
  shots: work.shots.map((shot, i) => (i === index ? { ...shot, ...change } : shot)),
});

/** Which mark: one of the rectangle, of the fifth length, of a block. */
export type MarkId =
  | { readonly kind: 'corner'; readonly index: number }
  | { readonly kind: 'check'; readonly index: number }
  | { readonly kind: 'landmark'; readonly part: Part; readonly name: Landmark }
  | { readonly kind: 'point'; readonly part: Part; readonly edge: BlockEdge; readonly index: number };

export const markKey = (id: MarkId): string => Object.values(id).join('-');

/** Where a mark lies on its photograph. */
export function markAt(work: PhotoWork, shot: number, id: MarkId): Point | undefined {
  if (id.kind === 'corner') return work.shots[shot]?.corners[id.index];
  if (id.kind === 'check') return work.shots[shot]?.check?.ends[id.index];
  const { marks } = work[id.part];
  return id.kind === 'landmark' ? marks.landmarks[id.name] : marks.points[id.edge]?.[id.index];
}

/** The work with a mark somewhere else. */
export function withMark(work: PhotoWork, shot: number, id: MarkId, at: Point): PhotoWork {
  const now = work.shots[shot];
  if (!now) return work;
  const set = (mark: Point, index: number): Point => ('index' in id && index === id.index ? at : mark);
  if (id.kind === 'corner') return withShot(work, shot, { corners: mapTuple(now.corners, set) });
  if (id.kind === 'check') {
    if (!now.check) return work;
    return withShot(work, shot, { check: { ...now.check, ends: mapTuple(now.check.ends, set) } });
  }
  const { marks } = work[id.part];
  if (id.kind === 'landmark')
    return withMarks(work, id.part, { ...marks, landmarks: { ...marks.landmarks, [id.name]: at } });
  const run = marks.points[id.edge] ?? [];
  const moved = run.map((p, i) => (i === id.index ? { ...p, ...at } : p));
  return withMarks(work, id.part, { ...marks, points: { ...marks.points, [id.edge]: moved } });
}

/** The work without a mark: a landmark waits to be placed again, a point of an edge is gone. */
export function withoutMark(work: PhotoWork, id: MarkId): PhotoWork {
  if (id.kind === 'corner' || id.kind === 'check') return work;
  const { marks } = work[id.part];
  if (id.kind === 'landmark') {
    const { [id.name]: _gone, ...landmarks } = marks.landmarks;
    return withMarks(work, id.part, { ...marks, landmarks });
  }
  const run = (marks.points[id.edge] ?? []).filter((_, i) => i !== id.index);
  return withMarks(work, id.part, { ...marks, points: { ...marks.points, [id.edge]: run } });
}

/** The work with one more point on an edge, and which it is. */
export function withPoint(work: PhotoWork, part: Part, edge: BlockEdge, at: Point) {
  const marks = withEdgePoint(work[part].marks, edge, at);
  const index = marks.points[edge]?.indexOf(at) ?? 0;
  return { work: withMarks(work, part, marks), id: { kind: 'point', part, edge, index } satisfies MarkId };
}

/** The work with a point of an edge made a corner, or smooth again. */
export function withCorner(work: PhotoWork, id: MarkId & { kind: 'point' }, corner: boolean): PhotoWork {
  const { marks } = work[id.part];
  const run = (marks.points[id.edge] ?? []).map((p, i) => (i === id.index ? { ...p, corner } : p));
  return withMarks(work, id.part, { ...marks, points: { ...marks.points, [id.edge]: run } });
}

const withMarks = (work: PhotoWork, part: Part, marks: BlockMarks): PhotoWork => ({
  ...work,
  [part]: { ...work[part], marks },
});
