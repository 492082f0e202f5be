import { HEM_FINISHES, WAIST_FINISHES } from '../../src/edges';
import { LENGTH_NAMES, type LengthName } from '../../src/leg';
import type { Project } from '../../src/project';
import { projectOf } from './designs';

const LENGTHS = Object.keys(LENGTH_NAMES) as readonly LengthName[];
const SHAPES = ['pyjama', 'block', 'straight'] as const;
const STRAIGHTEN = ['auto', 0, 0.5, 1] as const;

/** How many designs there are: each length in each shape with each straightening. */
export const DESIGNS = LENGTHS.length * SHAPES.length * STRAIGHTEN.length;

const nth = <T>(all: readonly T[], n: number): T => all[n % all.length] as T;

/**
 * The nth design for a body, of {@link DESIGNS}; the first is the usual one. Spread, rise and edges change with n too,
 * each in a rhythm of its own, so that they meet in ever other company.
 */
export function designed(body: Project['body'], n: number): Project {
  if (n % DESIGNS === 0) return projectOf(body);
  return projectOf(body, {
    units: nth(['cm', 'inch'] as const, n),
    leg: {
      length: nth(LENGTHS, n),
      shape: nth(SHAPES, Math.floor(n / LENGTHS.length)),
      straighten: nth(STRAIGHTEN, Math.floor(n / (LENGTHS.length * SHAPES.length))),
      spread: nth([25.4, 0, 12, 40, 60], n),
      raiseWaist: nth([0, 0, 20, -15, 0, 35, -30], n),
      lowerCrotch: nth([0, 0, 0, 12, 0, 25, 0, 0, 40, 0, 6], n),
    },
    waist: { finish: nth(WAIST_FINISHES, Math.floor(n / 2)) },
    hem: { finish: nth(HEM_FINISHES, Math.floor(n / 5)) },
  } as Partial<Project>);
}
