// @vitest-environment jsdom
import { describe, expect, test } from 'vitest';
import { cutCurves, type Piece } from '../../../src/edges';
import { nestedDrawing } from '../../../src/files/nest/drawing';
import { nestOf } from '../../../src/files/nest/nest';
import { nestedPieces } from '../../../src/files/nest/pieces';
import { MOST_NESTED, nestedStyle } from '../../../src/files/nest/styles';
import { writeNestedSvg } from '../../../src/files/nest/svg';
import { boxHolds, curvePoint, flattenCurves, outlineArea, pathLength, pathStart } from '../../../src/plane';
import type { Draft } from '../../../src/project';
import { planParts, tilePieces } from '../../../src/sheets';
import { pieceName } from '../../names';
import { draftWith } from '../drafts';
import { curvesOf } from '../svg-curves';

const drafts = Array.from({ length: 10 }, (_, i) =>
  draftWith({
    name: 'Class <one>',
    body: {
      label: `Learner ${i + 1}`,
      hipGirth: 900 + i * 40,
      waistGirth: 690 + i * 40,
      insideLeg: 720 + ((i * 37) % 90),
    },
    ...(i > 3 ? {} : { waist: { finish: 'separateCasing' } }),
  }),
);
const pieces = nestedPieces(drafts, 'pieces');
const ownPiece = (draft: Draft | undefined, name: string) =>
  draft?.pieces.find((piece) => pieceName(piece) === name) as Piece;

describe('ten bodies on one drawing', () => {
  test('the legs lie with crotch line and side line on each other, each as large as before', () => {
    const [leg] = pieces;
    expect(leg?.members).toHaveLength(10);
    const crotch = (piece: Piece) => pathStart(piece.lines.find(({ name }) => name === 'crotchLine')?.curves ?? []).y;
    const side = (piece: Piece) => pathStart(piece.lines.find(({ name }) => name === 'side')?.curves ?? []).x;
    for (const { body, piece } of leg?.members ?? []) {
      expect(crotch(piece)).toBeCloseTo(crotch(leg?.members[0].piece as Piece), 9);
      expect(side(piece)).toBeCloseTo(0, 9);
      const before = cutCurves(ownPiece(drafts[body], 'leg'));
      expect(pathLength(cutCurves(piece))).toBeCloseTo(pathLength(before), 6);
      expect(outlineArea(cutCurves(piece))).toBeCloseTo(outlineArea(before), 3);
    }
  });

  test('a piece that only some have is laid of those', () => {
    expect(pieces.map(({ name, members }) => [name, members.length])).toEqual([
      ['leg', 10],
      ['casing', 4],
    ]);
  });

  test.each(['A4', 'A0'])('on %s every body’s cut line is on the printed sheets, all the way', (sheet) => {
    const plan = tilePieces(
      pieces.map(({ whole }) => whole),
      { ...(drafts[0] as Draft).project.paper, sheet },
    );
    const { drawings, look } = nestedDrawing(pieces, plan.places);
    const cuts = drawings.flatMap(({ paths }) => paths).filter(({ stroke }) => stroke === 'cut');
    expect(cuts.map(look.layerOf)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 1, 2, 3, 4].map((body) => `body-${body}`));
    const points = cuts.flatMap(({ curves }) =>
      curves.flatMap((curve) => [0, 0.3, 0.7].map((t) => curvePoint(curve, t))),
    );
    expect(points.filter((p) => !planParts(plan).some(({ window }) => boxHolds(window, p)))).toEqual([]);
  });

  test('the outline that the paper is found for is one simple run round all of them', () => {
    for (const { members, whole } of pieces) {
      const box = flattenCurves(cutCurves(whole));
      const [left, right] = [Math.min(...box.map(({ x }) => x)), Math.max(...box.map(({ x }) => x))];
      const areas = members.map(({ piece }) => Math.abs(outlineArea(cutCurves(piece))));
      expect(Math.abs(outlineArea(cutCurves(whole)))).toBeGreaterThan(0.995 * Math.max(...areas));
      for (const p of members.flatMap(({ piece }) => flattenCurves(cutCurves(piece)))) {
        expect(p.x).toBeGreaterThan(left - 1);
        expect(p.x).toBeLessThan(right + 1);
      }
    }
  });
});

test('no two line types of a nest are the same, colours left aside', () => {
  const styles = Array.from({ length: MOST_NESTED }, (_, body) => nestedStyle(body));
  expect(new Set(styles.map(({ cut }) => cut.dash.join())).size).toBe(MOST_NESTED);
  expect(new Set(styles.map(({ name }) => name)).size).toBe(MOST_NESTED);
});

describe('the nest as SVG', () => {
  const svg = new DOMParser().parseFromString(writeNestedSvg(nestOf(drafts)), 'image/svg+xml').documentElement;

  test('has a group for each body, whose cut lines read back to the same length within 0.05 mm', () => {
    for (const [body, draft] of drafts.entries()) {
      const cut = [...svg.querySelectorAll(`#body-${body + 1} path[data-name="cut line"]`)];
      expect(cut).toHaveLength(draft.pieces.length);
      for (const [i, piece] of draft.pieces.entries()) {
        const curves = curvesOf(cut[i]?.getAttribute('d') ?? '');
        expect(Math.abs(pathLength(curves) - pathLength(cutCurves(piece)))).toBeLessThan(0.05);
      }
      expect(cut[0]?.getAttribute('stroke-dasharray')).toBe(
        nestedStyle(body)
          .cut.dash.map((part) => `${Math.round(part * 1000) / 1000}`)
          .join(' ') || null,
      );
    }
  });

  test('has the key: each body’s line, and whose it is', () => {
    expect(svg.querySelectorAll('#key path')).toHaveLength(10);
    const said = [...svg.querySelectorAll('#key-text text')].map((text) => text.textContent);
    expect(said[9]).toMatch(/^10 {2}Learner 10 · Class <one>: .*; waist .*finished: hip/);
  });
});
