import { describe, expect, it } from 'vitest';
import { plateBodies } from '../../.house/plate-bodies';
import { type Lay, type Layout, laidRows, type Placement } from '../../src/cloth';
import { isSamePiece, type Piece } from '../../src/edges';
import { formatLength } from '../../src/length';
import type { Point } from '../../src/plane';
import { clothOf, type Draft, draft, exampleProject, type Project } from '../../src/project';
import { layPicture } from '../../src/sewing';
import { printPhrase } from '../../src/words';

/** Where a point of a piece lies, by the sentence of `Placement` and a turn of its own. */
function laid({ x, y }: Point, { mirrored, turn, at }: Placement): Point {
  const [px, angle] = [mirrored ? -x : x, (turn * Math.PI) / 180];
  return {
    x: at.x + px * Math.cos(angle) - y * Math.sin(angle),
    y: at.y + px * Math.sin(angle) + y * Math.cos(angle),
  };
}

interface Laid {
  readonly name: string;
  readonly draft: Draft;
  readonly lay: Lay;
}

/** Very different people, on cloth that is laid in each way in turn, every third a little off its grain. */
const lays: readonly Laid[] = plateBodies.flat().flatMap(({ name, body, rest }, i) => {
  const layout = (['single', 'foldedLengthwise', 'foldedCrosswise'] as const satisfies readonly Layout[])[i % 3];
  const cloth = { ...exampleProject.cloth, layout, width: 1600, grainTolerance: i % 4 === 0 ? 2 : 0 };
  const result = draft({ ...exampleProject, ...rest, cloth, body: { label: name, ...body } } as Project);
  if (!result.ok) return [];
  const { answer } = clothOf(result.value);
  return answer.fits ? [{ name, draft: result.value, lay: answer.lay }] : [];
});

const pieceOf = ({ draft: { pieces } }: Laid, placement: Placement) =>
  pieces.find((one) => isSamePiece(one, placement.piece)) as Piece;

describe('the table of a lay', () => {
  it('tells from which selvedge, and how far, each arrowhead lies', () => {
    const faults: string[] = [];
    let told = 0;
    for (const one of lays) {
      const { lay, name } = one;
      for (const [i, { place }] of laidRows(lay, one.draft.pieces).entries()) {
        const placement = lay.placements[i] as Placement;
        const text = printPhrase(place, 'cm');
        if (placement.layer === 'fold') continue;
        const ends = pieceOf(one, placement).grainline.map((p) => laid(p, placement));
        ends.sort((a, b) => a.y - b.y);
        const right = /right selvedge|the selvedges$/.test(text);
        const off = ends.map(({ x }) => formatLength(right ? lay.table.width - x : x, 'cm'));
        told += 1;
        if (!off.every((figure) => text.includes(figure))) faults.push(`${name}: ${off} and “${text}”`);
        // Folded lengthwise the other long edge is the fold: nobody measures from there.
        if (lay.layout === 'foldedLengthwise' && !text.endsWith('the selvedges')) faults.push(`${name}: ${text}`);
      }
    }
    expect(faults).toEqual([]);
    expect(told).toBeGreaterThan(lays.length);
  });

  it('calls the one leg that is printed side up on a single layer the right one, and the other the left one', () => {
    let pairs = 0;
    for (const { lay, draft: one, name } of lays) {
      const rows = laidRows(lay, one.pieces).map((row) => [row.name, row.place].map((said) => printPhrase(said, 'cm')));
      const legs = rows.filter(([called]) => called?.includes('leg'));
      if (lay.layout !== 'single') {
        expect(
          legs.every(([called]) => called === 'both legs'),
          name,
        ).toBe(true);
        continue;
      }
      pairs += 1;
      expect(legs.map(([called]) => called).sort(), name).toEqual(['leg left', 'leg right']);
      // Legs that differ are printed as they are worn; of two that mirror each other the left one is turned over.
      if (one.pieces.filter(({ kind }) => kind === 'leg').length === 1)
        expect(legs.find(([called]) => called === 'leg left')?.[1], name).toContain('printed side down');
    }
    expect(pairs).toBeGreaterThan(5);
  });
});

describe('the picture of a lay', () => {
  it('names each leg’s front and back where they lie, and dots what lies printed side down', () => {
    for (const one of lays) {
      const { lay, name } = one;
      const items = layPicture(lay, one.draft.pieces, false).panels.flatMap((panel) => panel.items);
      const places = (text: string) =>
        items.flatMap((item) => (item.kind === 'word' && printPhrase(item.text, 'cm') === text ? [item.at] : []));
      const legs = lay.placements.filter(({ piece }) => piece.kind === 'leg');
      expect(places('front'), name).toHaveLength(legs.length);
      for (const placement of legs) {
        const { stitchLine } = pieceOf(one, placement);
        const crotch = (edge: string) =>
          laid(stitchLine.find((found) => found.name === edge)?.curves[0]?.[0] as Point, placement);
        const nearest = (text: string, p: Point) =>
          Math.min(...places(text).map((at) => Math.hypot(at.x - p.x, at.y - p.y)));
        const [front, back] = [crotch('inseamFront'), crotch('inseamBack')];
        expect(nearest('front', front) + nearest('back', back), name).toBeLessThan(
          nearest('back', front) + nearest('front', back),
        );
      }
      const down = items.filter((item) => item.kind === 'area' && item.face === 'printedDown');
      expect(down.length, name).toBe(lay.placements.filter(({ mirrored }) => mirrored).length);
    }
  });
});
