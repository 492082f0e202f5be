import type { Piece } from '../../src/edges';
import { flattenCurves, type Point } from '../../src/plane';

/** How far a cut line is off at worst, and at which edge of the stitching line. */
interface Miss {
  readonly off: number;
  readonly edge: string;
}

interface Band {
  readonly name: string;
  readonly points: readonly Point[];
  readonly away: number;
}

/** No chord leaves its curve by more. */
const CHORD = 0.002;
/** Rounding at the very ends of an edge, as a share of a chord. */
const HAIR = 1e-6;

/**
 * The cut line by its definition, densely and without our offsetting: no place of it lies within an edge's band (all
 * that is straight across from the edge, nearer than its allowance), and each lies on the border of one, or on the
 * border carried on straight at a corner.
 */
export function bandsOver(piece: Piece): Miss {
  const bands = piece.stitchLine.map(({ name, curves }): Band => {
    const away = piece.cutLine.find((cut) => cut.name === name)?.allowance ?? 0;
    return { name, points: flattenCurves(curves, CHORD), away };
  });
  const cut = flattenCurves(
    piece.cutLine.flatMap((edge) => edge.curves),
    0.05,
  );
  let worst: Miss = { off: 0, edge: '' };
  const note = (off: number, edge: string) => {
    if (off > worst.off) worst = { off, edge };
  };
  for (const p of cut) {
    let nearest = Infinity;
    let at = '';
    bands.forEach((band, i) => {
      const { within, beside } = placeAt(band, p);
      const off = (within ?? beside ?? Infinity) - band.away;
      if (within !== undefined && off < 0 && !cutOff(bands, i, p)) note(-off, band.name);
      if (Math.abs(off) < nearest) [nearest, at] = [Math.abs(off), band.name];
    });
    note(nearest, at);
  }
  return worst;
}

/** How far a point lies from a band's edge where that is straight across; else how far beside its nearer end carried on. */
function placeAt({ points }: Band, p: Point): { readonly within?: number; readonly beside?: number } {
  let [least, at, along] = [Infinity, 1, 0];
  for (let i = 1; i < points.length; i += 1) {
    const [a, b] = [points[i - 1] as Point, points[i] as Point];
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const t = ((p.x - a.x) * dx + (p.y - a.y) * dy) / Math.max(1e-12, dx * dx + dy * dy);
    const inside = Math.min(1, Math.max(0, t));
    const away = Math.hypot(a.x + inside * dx - p.x, a.y + inside * dy - p.y);
    if (away < least) [least, at, along] = [away, i, t];
  }
  const beyond = (at === 1 && along < HAIR) || (at === points.length - 1 && along > 1 - HAIR);
  const [a, b] = [points[at - 1] as Point, points[at] as Point];
  const left = ((p.x - a.x) * (b.y - a.y) - (p.y - a.y) * (b.x - a.x)) / Math.hypot(b.x - a.x, b.y - a.y);
  if (beyond) return { beside: left };
  return left >= -CHORD ? { within: Math.sign(left) * least } : {};
}

/** Whether a place of a band lies beyond the border of its neighbour, carried on straight: there the corner is cut off. */
function cutOff(bands: readonly Band[], index: number, p: Point): boolean {
  const own = bands[index] as Band;
  return [bands.at(index - 1), bands[(index + 1) % bands.length]].some((band) => {
    if (!band) return false;
    const { beside } = placeAt(band, p);
    const end = [band.points[0], band.points.at(-1)].some(
      (q) => q && Math.hypot(q.x - p.x, q.y - p.y) < 4 * Math.max(own.away, band.away),
    );
    return beside !== undefined && end && beside > band.away - 0.05;
  });
}
