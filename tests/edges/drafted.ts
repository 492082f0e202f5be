import { expect } from 'vitest';
import type { Piece } from '../../src/edges';
import { flattenCurves, outlineCurves, type Point } from '../../src/plane';
import { type Draft, draft, exampleProject, type Project } from '../../src/project';
import { pieceName } from '../names';

export const drafted = (change: Partial<Project> = {}): Draft => {
  const result = draft({ ...exampleProject, ...change });
  if (!result.ok) throw new Error(result.problems.map((p) => p.field).join());
  return result.value;
};
export const pieceOf = (d: Draft, name: string): Piece => {
  const found = d.pieces.find((piece) => pieceName(piece) === name);
  if (!found) throw new Error(`there is no ${name}`);
  return found;
};
export const ring = (piece: Piece) => flattenCurves(outlineCurves(piece.stitchLine));
export const near = ({ x, y }: Point, digits = 6) => ({ x: expect.closeTo(x, digits), y: expect.closeTo(y, digits) });
export const lineOf = (piece: Piece, name: string) => {
  const found = piece.lines.find((line) => line.name === name);
  if (!found) throw new Error(`there is no ${name}`);
  return found.curves;
};
