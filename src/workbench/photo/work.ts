import type { BlockEdge } from '../../block';
import type { Mm } from '../../length';
import { mapTuple, type Point } from '../../plane';
import {
  type BlockMarks,
  type FollowedEdge,
  type FoundMark,
  type Landmark,
  MARK_SHEET,
  type MarkedPoint,
  withEdgePoint,
} from '../../trace';
import { type FoundId, foundAt, withFoundAt, withoutFound } from './found';

export type Part = 'front' | 'back';
export type Four = readonly [Point, Point, Point, Point];

/** One photograph and what is known of the rectangle on it. Points are in its own pixels. */
export interface Shot {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  /** A, B, C, D, round the rectangle. */
  readonly corners: Four;
  /** The outer corners of one mark sheet, a rectangle of the person's own, or none: then found marks hold it, places join it to others, or it is a scan. */
  readonly rectangle: 'sheet' | 'own' | 'none' | 'scan';
  /** Of a scan, which says its own size: how many dots of it are an inch. */
  readonly dots?: number;
  readonly across: Mm;
  readonly along: Mm;
  /** A fifth length: where it begins and ends, and how long it is. */
  readonly check: { readonly ends: readonly [Point, Point]; readonly length: Mm } | undefined;
  /** Places that another photograph shows, too, by their number. */
  readonly joins?: Readonly<Record<string, Point>>;
  /** The printed marks that were found on it. */
  readonly found?: readonly FoundMark[];
}

/** No more photographs than this are taken together. */
export const MOST_SHOTS = 6;

/** All that somebody marked; the pictures themselves are not part of it. */
export interface PhotoWork {
  readonly shots: readonly Shot[];
  /** The marks of a block, and the photograph on which it is being marked. */
  readonly front: MarkedPart;
  readonly back: MarkedPart;
}

export interface MarkedPart {
  readonly shot: number;
  readonly marks: BlockMarks;
  /** Edges that don't follow what is drawn. */
  readonly byHand?: readonly BlockEdge[];
}

const UNMARKED: MarkedPart = { shot: 0, marks: { landmarks: {}, points: {} } };

/** A rectangle of four cards round a block, to begin with: about as large as a block for an adult. */
const USUAL = { across: 600, along: 1100 } as const;

export const NO_WORK: PhotoWork = {
  shots: [],
  front: UNMARKED,
  back: UNMARKED,
};

/** A photograph of which nothing is marked yet but what was found on it: where that is nothing, corners wait within it. */
export function newShot(name: string, width: number, height: number, found: readonly FoundMark[] = []): Shot {
  const at = (x: number, y: number): Point => ({ x: x * width, y: y * height });
  return {
    name,
    width,
    height,
    corners: [at(0.25, 0.25), at(0.75, 0.25), at(0.75, 0.75), at(0.25, 0.75)],
    rectangle: found.length > 0 ? 'none' : 'own',
    ...USUAL,
    check: undefined,
    found,
  };
}

/** What a scan is most often made with. @source practice */
export const USUAL_DOTS = 300;
/** Coarser no line is seen truly, finer no scanner is. @source practice */
export const LEAST_DOTS = 50;
export const MOST_DOTS = 2400;

/** Whether a rectangle was marked by hand. */
export const hasRectangle = ({ rectangle }: Shot): boolean => rectangle === 'sheet' || rectangle === 'own';

/** The sides of the marked rectangle. */
export const sidesOf = ({ rectangle, across, along }: Shot): { readonly across: Mm; readonly along: Mm } =>
  rectangle === 'sheet' ? { across: MARK_SHEET.width, along: MARK_SHEET.height } : { across, along };

export const withShot = (work: PhotoWork, index: number, change: Partial<Shot>): PhotoWork => ({
  ...work,
  shots: work.shots.map((shot, i) => (i === index ? { ...shot, ...change } : shot)),
});

/** Which mark: one of the rectangle, of the fifth length, found, of a block. */
export type MarkId =
  | { readonly kind: 'corner'; readonly index: number }
  | { readonly kind: 'check'; readonly index: number }
  | { readonly kind: 'join'; readonly index: number }
  | FoundId
  | { readonly kind: 'landmark'; readonly part: Part; readonly name: Landmark }
  | { readonly kind: 'point'; readonly part: Part; readonly edge: BlockEdge; readonly index: number };

export const markKey = (id: MarkId): string => Object.values(id).join('-');

/** Where a mark lies on its photograph. */
export function markAt(work: PhotoWork, shot: number, id: MarkId): Point | undefined {
  if (id.kind === 'corner') return work.shots[shot]?.corners[id.index];
  if (id.kind === 'check') return work.shots[shot]?.check?.ends[id.index];
  if (id.kind === 'join') return work.shots[shot]?.joins?.[id.index];
  if (id.kind === 'found') return foundAt(work.shots[shot]?.found, id);
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
  if (id.kind === 'join') return withShot(work, shot, { joins: { ...now.joins, [id.index]: at } });
  if (id.kind === 'found') return withShot(work, shot, { found: withFoundAt(now.found, id, at) });
  const { marks } = work[id.part];
  if (id.kind === 'landmark')
    return withMarks(work, id.part, { ...marks, landmarks: { ...marks.landmarks, [id.name]: { ...at, shot } } });
  const run = marks.points[id.edge] ?? [];
  const moved = run.map((p, i) => (i === id.index ? { ...p, ...at } : p));
  return withMarks(work, id.part, { ...marks, points: { ...marks.points, [id.edge]: moved } });
}

/** The work without a mark: a landmark waits to be placed again, a point of an edge is gone. */
export function withoutMark(work: PhotoWork, shot: number, id: MarkId): PhotoWork {
  if (id.kind === 'corner' || id.kind === 'check') return work;
  if (id.kind === 'found') return withShot(work, shot, { found: withoutFound(work.shots[shot]?.found, id) });
  if (id.kind === 'join') return withoutJoin(work, id.index);
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
  const placed = { ...at, shot: work[part].shot };
  const marks = withEdgePoint(work[part].marks, edge, placed);
  const index = marks.points[edge]?.indexOf(placed) ?? 0;
  return { work: withMarks(work, part, marks), id: { kind: 'point', part, edge, index } satisfies MarkId };
}

/** The work with a point of an edge made a corner, or smooth again. */
export function withCorner(work: PhotoWork, id: MarkId & { kind: 'point' }, corner: boolean): PhotoWork {
  const { marks } = work[id.part];
  const run = (marks.points[id.edge] ?? []).map((p, i) => (i === id.index ? { ...p, corner } : p));
  return withMarks(work, id.part, { ...marks, points: { ...marks.points, [id.edge]: run } });
}

/** The work with an edge as it was followed on its photograph. */
export const withFollowed = (work: PhotoWork, part: Part, edge: BlockEdge, followed: FollowedEdge): PhotoWork =>
  withMarks(work, part, {
    ...work[part].marks,
    followed: { ...work[part].marks.followed, [edge]: followed },
  });

/** The work with an edge that goes through its marks alone, or that follows what is drawn. */
export function withByHand(work: PhotoWork, part: Part, edge: BlockEdge, byHand: boolean): PhotoWork {
  const others = (work[part].byHand ?? []).filter((one) => one !== edge);
  const { [edge]: _gone, ...followed } = work[part].marks.followed ?? {};
  const marks = { ...work[part].marks, followed };
  return { ...work, [part]: { ...work[part], marks, byHand: byHand ? [...others, edge] : others } };
}

/** The work with a block that has a knee line, or none; what was marked of one goes. */
export function withKnee(work: PhotoWork, part: Part, has: boolean): PhotoWork {
  const { kneeless: _, ...marks } = work[part].marks;
  if (has) return withMarks(work, part, marks);
  const { knee: _gone, ...landmarks } = marks.landmarks;
  return withMarks(work, part, { ...marks, landmarks, kneeless: true });
}

const withMarks = (work: PhotoWork, part: Part, marks: BlockMarks): PhotoWork => ({
  ...work,
  [part]: { ...work[part], marks },
});

/** On which photograph a mark of a block lies: those set before there were several lie on the one that was marked. */
export const shotOf = ({ shot }: MarkedPart, mark: MarkedPoint): number => mark.shot ?? shot;

/** The work with a block marked on another photograph from now on; what was marked stays where it is. */
export function withShown(work: PhotoWork, part: Part, shot: number): PhotoWork {
  const marked = work[part];
  const marks = withShots(marked);
  return { ...work, [part]: { ...marked, shot, marks } };
}

/** The work without what was marked of its blocks on one photograph. */
export function withoutShot(work: PhotoWork, shot: number): PhotoWork {
  const left = (part: MarkedPart): MarkedPart => {
    const { landmarks, points, kneeless } = withShots(part);
    const stays = (mark: MarkedPoint | undefined) => mark?.shot !== shot;
    return {
      ...part,
      marks: {
        landmarks: Object.fromEntries(Object.entries(landmarks).filter(([, mark]) => stays(mark))),
        points: Object.fromEntries(Object.entries(points).map(([edge, run]) => [edge, run.filter(stays)])),
        ...(kneeless && { kneeless }),
      },
    };
  };
  return { ...work, front: left(work.front), back: left(work.back) };
}

/** Every mark of a block with the photograph it lies on. */
function withShots(part: MarkedPart): BlockMarks {
  const { landmarks, points } = part.marks;
  const on = <One extends MarkedPoint>(mark: One): One => ({ ...mark, shot: shotOf(part, mark) });
  return {
    ...part.marks,
    landmarks: Object.fromEntries(Object.entries(landmarks).map(([name, mark]) => [name, on(mark)])),
    points: Object.fromEntries(Object.entries(points).map(([edge, run]) => [edge, run.map(on)])),
  };
}

/** The work with one more place that two photographs show, amid both until it is laid on, and its number. */
export function withJoin(work: PhotoWork, shots: readonly [number, number]): { work: PhotoWork; index: number } {
  const used = work.shots.flatMap(({ joins = {} }) => Object.keys(joins).map(Number));
  const index = Math.max(0, ...used) + 1;
  const shot = (one: Shot, i: number): Shot =>
    shots.includes(i) ? { ...one, joins: { ...one.joins, [index]: amid(one, index) } } : one;
  return { work: { ...work, shots: work.shots.map(shot) }, index };
}

/** Places that wait side by side, so that each can be taken up. */
const amid = ({ width, height }: Shot, index: number): Point => ({
  x: width * (0.3 + ((0.1 * (index - 1)) % 0.5)),
  y: height / 2,
});

function withoutJoin(work: PhotoWork, index: number): PhotoWork {
  const shot = ({ joins = {}, ...one }: Shot): Shot => ({
    ...one,
    joins: Object.fromEntries(Object.entries(joins).filter(([key]) => key !== String(index))),
  });
  return { ...work, shots: work.shots.map(shot) };
}
