import { isSamePiece } from '../../src/edges';
import type { Garment, SewingStep } from '../../src/sewing';
import { pieceName } from '../names';

/** What is wrong with an order of work: edges sewn or finished twice or never, unknown pieces, things in a wrong order. */
export function faultsOf(garment: Garment, steps: readonly SewingStep[]): readonly string[] {
  const edges = garment.pieces.flatMap((piece) => piece.stitchLine.map((edge) => `${pieceName(piece)}.${edge.name}`));
  const count = (list: readonly string[], what: string) => [
    ...edges
      .filter((edge) => list.filter((one) => one === edge).length !== 1)
      .map((edge) => `${edge} ${what} ${list.filter((one) => one === edge).length} times`),
    ...list.filter((edge) => !edges.includes(edge)).map((edge) => `${edge} is ${what}, but there is no such edge`),
  ];
  const works = (key: 'sews' | 'finishes') =>
    steps.flatMap((step, i) =>
      step[key].flatMap(({ piece, side, edges: names }) =>
        names.map((name) => ({ edge: `${pieceName({ kind: piece, side })}.${name}`, i })),
      ),
    );
  const cut = steps.flatMap((step) => step.cuts);
  const at = (id: string) => steps.findIndex((step) => step.id === id);
  const before = (first: string, then: string) =>
    at(first) >= 0 && at(then) >= 0 && at(first) > at(then) ? [`${first} comes after ${then}`] : [];
  const ids = steps.map((step) => step.id);
  return [
    ...count(
      works('sews').map((work) => work.edge),
      'sewn',
    ),
    ...count(
      works('finishes').map((work) => work.edge),
      'finished',
    ),
    ...garment.pieces
      .filter((piece) => cut.filter((one) => isSamePiece(one, piece)).length !== 1)
      .map((piece) => `${pieceName(piece)} is not cut once`),
    ...[...works('sews'), ...works('finishes')]
      .filter(({ i }) => i <= at('cut'))
      .map(({ edge }) => `${edge} before it is cut`),
    // An edge that is held down or overlocked alone is finished before, or while, it is held.
    ...works('finishes')
      .filter(({ edge, i }) => i > (works('sews').find((one) => one.edge === edge)?.i ?? i))
      .map(({ edge }) => `${edge} is finished after it was sewn`),
    ...ids.filter((id, i) => ids.indexOf(id) !== i).map((id) => `two steps are called ${id}`),
    ...before('fork-tip', 'inseams'),
    ...before('fork-tip', 'hem.flat'),
    ...before('pocket.placed', 'inseams'),
    ...before('waist.openings', 'waist.fold'),
    ...before('waist.openings', 'inseams'),
    ...before('hem.openings', 'hem.turned'),
    ...before('folds', 'inseams'),
    ...before('raw-edges', 'folds'),
    ...before('hem.flat', 'inseams'),
    ...before('inseams', 'crotch'),
    ...before('crotch', 'waist.fold'),
    ...before('waist.fold', 'waist.thread'),
    ...before('waist.thread', 'waist.close'),
  ];
}
