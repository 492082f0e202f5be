import type { BlockEdge } from '../../block';
import { type Curve, curvesNear, distance, type Point, straight, turned } from '../../plane';
import { type Problem, Refusal, say } from '../../words';
import { type EdgePoint, type FollowedEdge, followedThrough, type MarkedPoint } from './followed';
import { traceFromLines } from './lines';
import { BLOCK_EDGES, type TracedBlock } from './traced-block';

/**
 * The places of a block that are marked on its picture: those round it in their order, then the lines within. The hip
 * at the centre is often where the crotch curve starts; it doesn't follow it, so that one press too many marks neither
 * twice.
 */
export const LANDMARKS = [
  'waistSide',
  'waistCentre',
  'crotchTop',
  'crotchPoint',
  'knee',
  'hemInseam',
  'hemSide',
  'hipSide',
  'hipCentre',
  'grainTop',
  'grainBottom',
] as const;
export type Landmark = (typeof LANDMARKS)[number];

/** What is marked of one block: on a picture in pixels, on the paper in millimetres. */
export interface BlockMarks {
  readonly landmarks: Readonly<Partial<Record<Landmark, MarkedPoint>>>;
  readonly points: Readonly<Partial<Record<BlockEdge, readonly EdgePoint[]>>>;
  /** Edges as they were followed on the picture. */
  readonly followed?: Readonly<Partial<Record<BlockEdge, FollowedEdge>>>;
  /** Whether the block has no knee line, as one that ends above it; then that place isn't marked. */
  readonly kneeless?: boolean;
}

/** The places that are marked of a block, in their order: a knee only where it has one. */
export const landmarksOf = ({ kneeless = false }: Pick<BlockMarks, 'kneeless'>): readonly Landmark[] =>
  LANDMARKS.filter((name) => name !== 'knee' || !kneeless);

/** From where to where an edge runs, and the landmark that lies on it. */
const RUNS: Readonly<Record<BlockEdge, { from: Landmark; by?: Landmark; to: Landmark }>> = {
  waist: { from: 'waistSide', to: 'waistCentre' },
  centre: { from: 'waistCentre', to: 'crotchTop' },
  crotch: { from: 'crotchTop', to: 'crotchPoint' },
  inseam: { from: 'crotchPoint', by: 'knee', to: 'hemInseam' },
  hem: { from: 'hemInseam', to: 'hemSide' },
  side: { from: 'hemSide', by: 'hipSide', to: 'waistSide' },
};

/**
 * Marks nearer together than this say the same place twice, millimetres: a click's tremble would turn the line between
 * them, and swing the edge far out beside them.
 *
 * @source tolerance
 */
const ONE_PLACE = 8;

/** The points of an edge in their order, landmarks included; undefined until both its ends are marked. */
export function edgeMarks({ landmarks, points }: BlockMarks, edge: BlockEdge): readonly EdgePoint[] | undefined {
  const { from, by, to } = RUNS[edge];
  const [start, end, over] = [landmarks[from], landmarks[to], by && landmarks[by]];
  if (!start || !end) return undefined;
  const run = [start, ...(points[edge] ?? []), end];
  return over ? run.toSpliced(placeFor(run, over), 0, over) : run;
}

/** Where in a run of points another one lies: where it makes the run longer by least. */
function placeFor(run: readonly Point[], p: Point): number {
  const longer = run.slice(1).map((b, i) => {
    const a = run[i] as Point;
    return distance(a, p) + distance(p, b) - distance(a, b);
  });
  return longer.indexOf(Math.min(...longer)) + 1;
}

/** The marks with one more point on an edge, between those beside which it lies. */
export function withEdgePoint(marks: BlockMarks, edge: BlockEdge, p: EdgePoint): BlockMarks {
  const old = marks.points[edge] ?? [];
  const [start, end] = [marks.landmarks[RUNS[edge].from], marks.landmarks[RUNS[edge].to]];
  const at = start && end ? placeFor([start, ...old, end], p) - 1 : old.length;
  return { ...marks, points: { ...marks.points, [edge]: old.toSpliced(at, 0, p) } };
}

/** Whether an edge is one that was followed, through its marks as they are now. */
export const isFollowed = (marks: BlockMarks, edge: BlockEdge): boolean =>
  followedThrough(marks.followed?.[edge], edgeMarks(marks, edge) ?? []) !== undefined;

/** A smooth edge is drawn as near as this to its marks: half a pencil line and a click's tremble, millimetres. @source tolerance */
const NEAR_MARKS = 0.5;
/** A crotch curve bends one way only, and marks that tremble would bend it to and fro: it may lie farther from them. @source tolerance */
const NEAR_CROTCH = 1;

/**
 * An edge as a smooth curve on the paper, millimetres: along the line that was followed through its marks, or along the marks
 * alone; undefined until both its ends are marked.
 */
export function edgeThroughMarks(marks: BlockMarks, edge: BlockEdge): readonly Curve[] | undefined {
  const through = edgeMarks(marks, edge) ?? [];
  const along = followedThrough(marks.followed?.[edge], through) ?? through;
  const run = apartFromEachOther(along, marks.landmarks[RUNS[edge].by ?? RUNS[edge].from]);
  if (run.length < 2) return undefined;
  const cuts = run.flatMap(({ corner }, i) => (corner && i > 0 && i < run.length - 1 ? [i] : []));
  const ends = [0, ...cuts, run.length - 1];
  const within = edge === 'crotch' ? NEAR_CROTCH : NEAR_MARKS;
  return ends.slice(1).flatMap((to, i) => curvesNear(run.slice(ends[i], to + 1), within));
}

/** A run without the marks that lie on top of others; the ends stay, and what was set on the edge goes before a level on it. */
function apartFromEachOther(run: readonly EdgePoint[], level: Point | undefined): readonly EdgePoint[] {
  const [start, end] = [run[0], run.at(-1)];
  if (!start || !end || distance(start, end) === 0) return [];
  const inner = run.slice(1, -1);
  const kept: EdgePoint[] = [];
  for (const p of [...inner.filter((one) => one !== level), ...inner.filter((one) => one === level)])
    if ([start, end, ...kept].every((other) => distance(other, p) >= ONE_PLACE)) kept.push(p);
  return [start, ...inner.filter((p) => kept.includes(p)), end];
}

/** The same marks somewhere else, e.g. on the paper instead of on its picture. */
export function marksMapped(
  { landmarks, points, followed, kneeless }: BlockMarks,
  map: (p: MarkedPoint) => Point,
): BlockMarks {
  const each = <K extends string, A, B>(record: Readonly<Partial<Record<K, A>>>, to: (a: A) => B) =>
    Object.fromEntries(Object.entries(record).map(([key, value]) => [key, to(value as A)])) as Partial<Record<K, B>>;
  const run = (points: readonly EdgePoint[]) => points.map((p) => ({ ...p, ...map(p) }));
  return {
    landmarks: each(landmarks, map),
    points: each(points, run),
    ...(kneeless && { kneeless }),
    ...(followed && {
      followed: each(followed, (edge: FollowedEdge) => ({ through: run(edge.through), points: run(edge.points) })),
    }),
  };
}

/**
 * A traced block from the places that were marked on its paper: turned until its grainline is upright, its edges drawn
 * smoothly through their points.
 *
 * @param part which block; problems name its marks so
 * @param marks in millimetres on the paper, lying any way round
 * @throws Refusal naming each landmark that is missing
 */
export function traceFromMarks(part: 'front' | 'back', marks: BlockMarks): TracedBlock {
  const missing = landmarksOf(marks).filter((name) => !marks.landmarks[name]);
  const problem = (what: string, phrase: Problem['phrase']): Problem => ({
    field: `${part}-${what}`,
    value: undefined,
    phrase,
  });
  if (missing.length > 0) throw new Refusal(missing.map((name) => problem(name, say`must be marked.`)));
  const upright = uprightMarks(marks);
  const { grainTop, grainBottom, hipSide, hipCentre } = upright.landmarks as Record<Landmark, Point>;
  const knee = marks.kneeless ? undefined : upright.landmarks.knee;
  const drawn = BLOCK_EDGES.map((name) => ({ name, curves: edgeThroughMarks(upright, name) ?? [] }));
  const empty = drawn.filter(({ curves }) => curves.length === 0);
  if (empty.length > 0) throw new Refusal(empty.map(({ name }) => problem(name, say`is too short to be an edge.`)));
  const lines = Object.fromEntries(drawn.map(({ name, curves }) => [name, [curves]]));
  return traceFromLines(part, {
    ...lines,
    grainline: [[straight(grainTop, grainBottom)]],
    hip: [[straight(hipSide, hipCentre)]],
    ...(knee && { knee: [[straight(knee, knee)]] }),
  });
}

/** The marks turned until the grainline is upright, its end by the waist above. */
function uprightMarks(marks: BlockMarks): BlockMarks {
  const { grainTop, grainBottom, waistSide } = marks.landmarks as Record<Landmark, Point>;
  const [top, bottom] =
    distance(grainTop, waistSide) <= distance(grainBottom, waistSide)
      ? [grainTop, grainBottom]
      : [grainBottom, grainTop];
  const angle = Math.atan2(bottom.x - top.x, bottom.y - top.y);
  return marksMapped(marks, (p) => turned(p, top, angle));
}
