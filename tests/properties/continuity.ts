import { expect } from 'vitest';
import type { Project } from '../../src/project';
import { type NetLeg, netLeg } from './net';
import { farthestMove } from './outlines';

/** One millimetre on the tape moves no place of the leg, nor of the blocks without their darts, by more than this, mm. */
const MOST = 2.1;
/** A longer rise with the same measured crotch length says opposite things of the seat; without one the crotch follows the rise. */
const MOST_OF_RISE = { crotchMeasured: 4, without: 1.1 } as const;

const mostOf = (key: string, { body }: Project): number => {
  if (key !== 'bodyRise') return MOST;
  return body.crotchLength === undefined ? MOST_OF_RISE.without : MOST_OF_RISE.crotchMeasured;
};

/** The farthest move that each number made: for the log. */
export type Moves = Map<string, number>;

/** Leg choices that are lengths, and may be changed by a millimetre like a measurement. */
const LENGTHS = ['spread', 'raiseWaist', 'lowerCrotch'] as const;

/** The same project with one of its lengths changed, one after the other. */
function neighbours(project: Project, step: 1 | -1): readonly (readonly [string, Project])[] {
  const body = Object.entries(project.body)
    .filter(([key, value]) => typeof value === 'number' && key !== 'ageYears')
    .map(([key, value]) => [key, { ...project, body: { ...project.body, [key]: Number(value) + step } }] as const);
  const leg = LENGTHS.map(
    (key) => [key, { ...project, leg: { ...project.leg, [key]: project.leg[key] + step } }] as const,
  );
  return [...body, ...leg];
}

/**
 * One millimetre more (or less) of any length moves no place of the net outline by more than 2.1 mm; of the rise other.
 *
 * @param moves takes up the farthest moves
 */
export function aMillimetreMovesLittle(project: Project, step: 1 | -1, moves: Moves): boolean {
  const before = netLeg(project);
  if (!before) return false;
  for (const [key, changed] of neighbours(project, step)) {
    const after = netLeg(changed);
    if (!after) continue; // a limit may lie in between; it has its own tests
    const move = Math.max(...parts(before).map((part, i) => farthestMove(part, parts(after)[i] ?? [])));
    const name = key === 'bodyRise' && project.body.crotchLength !== undefined ? 'bodyRise, crotch length' : key;
    moves.set(name, Math.max(moves.get(name) ?? 0, move));
    expect(move, `${name} ${step > 0 ? '+' : '−'} 1`).toBeLessThanOrEqual(mostOf(key, project));
  }
  return true;
}

const parts = ({ outline, drafted: { blocks } }: NetLeg) => [outline, blocks.front.edges, blocks.back.edges];

/** The farthest moves as a line for the log. */
export const movesTold = (moves: Moves): string =>
  [...moves].map(([key, move]) => `${key} ${move.toFixed(2)}`).join(' · ');
