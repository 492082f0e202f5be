import type { CutEdge, Piece } from '../../src/edges';
import type { Curve, Edge, Point } from '../../src/plane';
import { checksOf, type Draft } from '../../src/project';
import { pieceName } from '../names';
import { type Find, find, told } from './find';
import { apart, CHORD, flat, footOn, holds, largestLoop, ringOf } from './flat';

/** A loop below this can't be seen, nor cut. */
const LOOP = 0.1;
/** Ends of neighbouring edges meet within this. */
const JOINED = 0.001;
/** What the cut line promises, and what both polylines may add. */
const PROMISED = 0.05 + 2 * CHORD;
/** From a corner, in allowances: there a neighbour may cut off what lies beyond it. */
const NEAR_CORNER = 4;

/** Places are looked at as densely as a polyline needs that keeps within this; they lie on the line itself. */
const PLACES = 0.05;

/** Stitching and cut lines: closed, simple, one within the other, and as far apart as the allowances say, or told. */
export function outlineFinds(draft: Draft): readonly Find[] {
  return draft.pieces.flatMap((piece) => pieceFinds(draft, piece));
}

function pieceFinds(draft: Draft, piece: Piece): readonly Find[] {
  const broken = [
    ...gaps(pieceName(piece), 'stitching', piece.stitchLine),
    ...gaps(pieceName(piece), 'cut', piece.cutLine),
  ];
  if (broken.length > 0) return broken;
  const [stitching, cut] = [ringOf(piece.stitchLine), ringOf(piece.cutLine)];
  const [loop, cutLoop] = [largestLoop(stitching), largestLoop(cut)];
  const says = (pattern: RegExp) =>
    ['leg', 'forkTip'].includes(piece.kind) &&
    checksOf(draft).some(({ id, verdict }) => verdict === 'wrong' && pattern.test(id));
  // The checks look at the leg and the tip cut off from it; of the other pieces nothing may be wrong at all.
  const finds: Find[] = [];
  if (loop > LOOP && !says(/simple|stitch/))
    finds.push(find('stitching crosses', `${pieceName(piece)}: a loop of ${told(loop)}`));
  const cutTold = says(/cut-line|allowances/);
  if (cutLoop > LOOP && !cutTold)
    finds.push(find('cut line crosses', `${pieceName(piece)}: a loop of ${told(cutLoop)}`));
  if (loop > LOOP || cutLoop > LOOP || cutTold) return finds;
  const outside = Math.max(
    0,
    ...ringOf(piece.stitchLine, PLACES)
      .filter((p) => !holds(cut, p))
      .map((p) => footOn(cut, p).away),
  );
  if (outside > PROMISED) finds.push(find('stitching outside', `${pieceName(piece)}: by ${told(outside)}`));
  const miss = worstWidth(piece);
  if (miss.off > PROMISED) finds.push(find('allowance off', `${pieceName(piece)}: ${told(miss.off)} at ${miss.edge}`));
  return finds;
}

function gaps(piece: string, line: string, edges: readonly Edge[]): readonly Find[] {
  const curves = edges.flatMap((edge) => edge.curves);
  const gap = Math.max(0, ...curves.map((curve, i) => apart(curve[3], (curves[(i + 1) % curves.length] as Curve)[0])));
  return gap > JOINED ? [find('line not closed', `${piece}, ${line}: a gap of ${told(gap)}`)] : [];
}

/** One edge of the stitching line with its allowance and the ways it has at its ends. */
interface Band {
  readonly name: string;
  readonly line: readonly Point[];
  readonly away: number;
  readonly startWay: Point;
  readonly endWay: Point;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Whether a point may lie within a band at all. */
const near = ({ left, right, top, bottom, away }: Band, { x, y }: Point): boolean =>
  x > left - away && x < right + away && y > top - away && y < bottom + away;

interface Miss {
  readonly off: number;
  readonly edge: string;
}

/**
 * The cut line by what it promises: each place of an edge's cut lies at the edge's allowance, beyond an end at that of the
 * edge carried on straight; and none lies nearer than an allowance to any edge, straight across, but at cut-off corners.
 */
function worstWidth(piece: Piece): Miss {
  const bands = piece.stitchLine.map((edge) => bandOf(edge, piece.cutLine));
  let worst: Miss = { off: 0, edge: '' };
  const note = (off: number, edge: string) => {
    if (off > worst.off) worst = { off, edge };
  };
  for (const cut of piece.cutLine) {
    const points = flat(
      cut.curves.filter(([a, , , d]) => apart(a, d) > 0),
      PLACES,
    );
    const own = bands.findIndex(({ name }) => name === cut.name);
    for (const p of points) {
      bands.forEach((band, i) => {
        if (i !== own && !near(band, p)) return;
        const foot = footOn(band.line, p);
        if (i === own) {
          note(Math.abs((foot.atEnd && beyondEnd(band, p) ? besideEnd(band, p) : foot.away) - band.away), band.name);
        } else if (!foot.atEnd && foot.beside > 0 && band.away - foot.away > worst.off && !cutOff(bands, i, p)) {
          note(band.away - foot.away, band.name);
        }
      });
    }
  }
  return worst;
}

function bandOf({ name, curves }: Edge, cutLine: readonly CutEdge[]): Band {
  const [first, last] = [curves[0] as Curve, curves.at(-1) as Curve];
  const line = flat(curves);
  const [xs, ys] = [line.map(({ x }) => x), line.map(({ y }) => y)];
  return {
    name,
    line,
    away: cutLine.find((cut) => cut.name === name)?.allowance ?? 0,
    left: Math.min(...xs),
    right: Math.max(...xs),
    top: Math.min(...ys),
    bottom: Math.max(...ys),
    startWay: way(first[0], [first[1], first[2], first[3]]),
    endWay: negative(way(last[3], [last[2], last[1], last[0]])),
  };
}

/** From a point towards the first of others that isn't the same. */
function way(from: Point, others: readonly Point[]): Point {
  const to = others.find((p) => apart(from, p) > 1e-9) ?? { x: from.x + 1, y: from.y };
  const length = apart(from, to);
  return { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
}
const negative = ({ x, y }: Point): Point => ({ x: -x, y: -y });

/** How far a point lies to the left of an edge, carried on straight beyond its nearer end. */
function besideEnd({ line, startWay, endWay }: Band, p: Point): number {
  const [start, end] = [line[0] as Point, line.at(-1) as Point];
  return apart(p, start) < apart(p, end) ? leftBy(p, start, startWay) : leftBy(p, end, endWay);
}

/** Whether a point lies beyond an edge's nearer end: the foot on a polyline may be its end, though it isn't on the curve. */
function beyondEnd({ line, startWay, endWay }: Band, p: Point): boolean {
  const [start, end] = [line[0] as Point, line.at(-1) as Point];
  return apart(p, start) < apart(p, end) ? ahead(p, start, startWay) < 0 : ahead(p, end, endWay) > 0;
}

const ahead = (p: Point, from: Point, { x, y }: Point): number => (p.x - from.x) * x + (p.y - from.y) * y;

const leftBy = (p: Point, from: Point, { x, y }: Point): number => (p.x - from.x) * y - (p.y - from.y) * x;

/** Whether a place of a band lies beyond its neighbour's border, carried on straight: there the corner is cut off. */
function cutOff(bands: readonly Band[], index: number, p: Point): boolean {
  const own = bands[index] as Band;
  const [before, after] = [bands.at(index - 1) as Band, bands[(index + 1) % bands.length] as Band];
  const close = (corner: Point, one: Band) => apart(corner, p) < NEAR_CORNER * Math.max(own.away, one.away);
  const [start, end] = [own.line[0] as Point, own.line.at(-1) as Point];
  return (
    (close(start, before) && leftBy(p, start, before.endWay) > before.away - PROMISED) ||
    (close(end, after) && leftBy(p, end, after.startWay) > after.away - PROMISED)
  );
}
