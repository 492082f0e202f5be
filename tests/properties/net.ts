import { expect } from 'vitest';
import { casingLines } from '../../src/edges';
import { centresOfLeg } from '../../src/edges/finish';
import { hemPlan, hemTurning } from '../../src/edges/hem';
import { legOutline } from '../../src/edges/outline';
import type { Outline } from '../../src/plane';
import { hemOf, type Project } from '../../src/project';
import { type FittedLeg, legFitted } from '../../src/project/fitted-leg';
import { checkedProject } from '../../src/project/schema';
import { type Problem, printPhrase, Refusal } from '../../src/words';

/** What no sentence for people may hold: the traces of a value that isn't there. */
export const BROKEN_WORDS = /NaN|undefined|null|Infinity|\[object/;

/** Looks whether a refusal says where and why. */
export function expectPlainRefusal(problems: readonly Problem[]): void {
  expect(problems.length).toBeGreaterThan(0);
  for (const { field, phrase } of problems) {
    expect(field).toMatch(/^(body|block|leg|waist|hem|allowances|cloth|fit)\.[a-z]+/i);
    for (const units of ['cm', 'inch'] as const) {
      expect(printPhrase(phrase, units)).toMatch(/^.{10,}\.$/s);
      expect(printPhrase(phrase, units)).not.toMatch(BROKEN_WORDS);
    }
  }
}

/** A leg as far as its net outline, turnings included: all that most properties compare, in a fifth of a draft's time. */
export interface NetLeg extends FittedLeg {
  readonly outline: Outline;
}

const drawn = new WeakMap<Project, { readonly net: NetLeg | undefined }>();

/** The net leg of a project, drawn once; undefined where it is refused, after looking whether the refusal is plain. */
export function netLeg(project: Project): NetLeg | undefined {
  const known = drawn.get(project) ?? { net: netOrRefusal(project) };
  drawn.set(project, known);
  return known.net;
}

function netOrRefusal(input: Project): NetLeg | undefined {
  const { project, problems } = checkedProject(input);
  try {
    if (problems.length > 0) throw new Refusal(problems);
    const fitted = legFitted(project);
    const casing = casingLines(centresOfLeg(fitted.leg), fitted.heights);
    const hem = hemTurning(fitted.leg.front.inseam, fitted.leg.back.inseam, hemPlan(hemOf(project)));
    return { ...fitted, outline: legOutline(fitted.leg, casing, fitted.heights.kind, hem) };
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    expectPlainRefusal(error.problems);
    return undefined;
  }
}

/** Two projects' net legs; undefined where either is refused. */
export function bothNet(a: Project, b: Project): readonly [NetLeg, NetLeg] | undefined {
  const [before, after] = [netLeg(a), netLeg(b)];
  return before && after ? [before, after] : undefined;
}
