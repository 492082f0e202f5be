import type { BlockEdge } from '../../block';
import type { Mm } from '../../length';
import { type Curve, distance, type Edge, type Point, pathEnd, pathReverse, pathStart } from '../../plane';
import { mm, number, type Problem, Refusal, say } from '../../words';
import { BLOCK_EDGES, type CurvePoints, FARTHEST, MOST_EDGE_CURVES, type Pair, type TracedBlock } from './traced-block';

/** What a line of a drawn block is: one of its edges, or a line to find its way by. */
export type BlockLine = BlockEdge | 'grainline' | 'hip' | 'knee';

/** The lines of one block as somebody drew them: in pieces, in any order and direction. */
export type DrawnLines = Readonly<Partial<Record<BlockLine, readonly (readonly Curve[])[]>>>;

/** Ends of two pieces of one edge that lie no farther apart belong together, millimetres. @source tolerance */
const SAME_END = 1;

/**
 * A traced block from its drawn lines: the pieces of each edge put in order, and each edge turned so that it runs on
 * from the one before it.
 *
 * @param part which block; problems name its lines so
 * @param lines in millimetres, y down
 * @throws Refusal naming each line that is missing or lies in pieces that don't meet
 */
export function traceFromLines(part: 'front' | 'back', lines: DrawnLines): TracedBlock {
  const problems: Problem[] = [];
  const runOf = (name: BlockLine): readonly Curve[] => {
    const pieces = (lines[name] ?? []).filter((piece) => piece.length > 0);
    const count = pieces.reduce((sum, piece) => sum + piece.length, 0);
    if (count > MOST_EDGE_CURVES) {
      problems.push({
        field: `${part}-${name}`,
        value: count,
        phrase: say`has ${number(count, 0)} curves or straight parts, of ${number(MOST_EDGE_CURVES, 0)} that a line may have: draw it with fewer points.`,
      });
      return [];
    }
    const joined = joinedPieces(pieces);
    if (pieces.length === 0)
      problems.push({
        field: `${part}-${name}`,
        value: undefined,
        phrase: say`must be drawn, as a line of that name.`,
      });
    else if (!joined)
      problems.push({
        field: `${part}-${name}`,
        value: pieces.length,
        phrase: say`must be one line; its ${number(pieces.length, 0)} pieces don’t meet within ${mm(SAME_END)}.`,
      });
    return joined ?? [];
  };
  const edges = BLOCK_EDGES.map(runOf);
  const [grain, hip] = [runOf('grainline'), runOf('hip')];
  const knee = lines.knee ? runOf('knee') : undefined;
  if (problems.length > 0) throw new Refusal(problems);
  const round = allRound(edges);
  // From the waist at the side, wherever on its page the block was drawn.
  const origin = pathStart(round[0] ?? []);
  const lost = lostProblems(part, origin, [
    ...BLOCK_EDGES.map((name, i) => ({ name, curves: round[i] ?? [] })),
    { name: 'grainline', curves: grain },
    { name: 'hip', curves: hip },
    { name: 'knee', curves: knee ?? [] },
  ]);
  if (lost.length > 0) throw new Refusal(lost);
  const place = ({ x, y }: Point): Pair => [rounded(x - origin.x), rounded(y - origin.y)];
  const curvePoints = ([a, b, c, d]: Curve): CurvePoints => [place(a), place(b), place(c), place(d)];
  const level = (line: readonly Curve[]): Mm => rounded((pathStart(line).y + pathEnd(line).y) / 2 - origin.y);
  const [upper, lower] = [pathStart(grain), pathEnd(grain)].sort((a, b) => a.y - b.y) as [Point, Point];
  return {
    edges: Object.fromEntries<readonly CurvePoints[]>(
      BLOCK_EDGES.map((name, i) => [name, (round[i] ?? []).map(curvePoints)]),
    ) as TracedBlock['edges'],
    grainline: [place(upper), place(lower)],
    hipLevel: level(hip),
    ...(knee && { kneeLevel: level(knee) }),
  };
}

/** Lines that reach farther than any block does: no file takes them. */
const lostProblems = (part: string, origin: Point, lines: readonly Edge[]): readonly Problem[] =>
  lines.flatMap(({ name, curves }) => {
    const reach = Math.max(
      0,
      ...curves.flat().map(({ x, y }) => Math.max(Math.abs(x - origin.x), Math.abs(y - origin.y))),
    );
    const phrase = say`reaches farther than ${mm(FARTHEST)} from where the waist begins at the side; no block is that large.`;
    return reach > FARTHEST ? [{ field: `${part}-${name}`, value: reach, phrase }] : [];
  });

/** Finer than this, millimetres, no drawing is; the file stays short. @source tolerance */
const FINEST = 1e-4;
const rounded = (value: Mm): Mm => Math.round(value / FINEST) * FINEST;

/** The pieces of one line as one run; undefined where they don't meet. */
function joinedPieces([first, ...others]: readonly (readonly Curve[])[]): readonly Curve[] | undefined {
  if (!first) return undefined;
  let run = first;
  const left = new Set(others);
  while (left.size > 0) {
    const found = [...left].flatMap((piece) => [piece, pathReverse(piece)].map((way) => ({ piece, way })));
    const after = found.find(({ way }) => distance(pathEnd(run), pathStart(way)) <= SAME_END);
    const before = after ? undefined : found.find(({ way }) => distance(pathEnd(way), pathStart(run)) <= SAME_END);
    const next = after ?? before;
    if (!next) return undefined;
    run = after ? [...run, ...next.way] : [...next.way, ...run];
    left.delete(next.piece);
  }
  return run;
}

/** Runs turned so that each starts as near as can be to where the one before it ended, all the way round. */
function allRound(edges: readonly (readonly Curve[])[]): readonly (readonly Curve[])[] {
  const [first = [], ...others] = edges;
  const ways = [first, pathReverse(first)].map((start) => {
    const round = [start];
    let loose = 0;
    for (const edge of others) {
      const end = pathEnd(round.at(-1) ?? start);
      const turned = distance(end, pathEnd(edge)) < distance(end, pathStart(edge)) ? pathReverse(edge) : edge;
      loose += distance(end, pathStart(turned));
      round.push(turned);
    }
    return { round, loose: loose + distance(pathEnd(round.at(-1) ?? start), pathStart(start)) };
  });
  return (ways.sort((a, b) => a.loose - b.loose)[0] ?? { round: [] }).round;
}
