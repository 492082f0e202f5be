import { describe, expect, it } from 'vitest';
import { startingRows } from '../../.house/starting-bodies';
import { surveysAreHere } from '../../.house/surveys';
import { bodyProblems, bodyRemarks, STARTING_BODIES, startingSource } from '../../src/body';
import { CHILDREN, MEN, WOMEN } from '../../src/body/starting-rows';
import { draft } from '../../src/project';
import { printPhrase } from '../../src/words';
import { sayLeftOut } from './body-people';
import { projectFor } from './survey';

if (!surveysAreHere) sayLeftOut('the starting bodies computed again');

// Sources: ANSUR II, NATICK/TR-15/007 (2014); UM-HSRI-77-17 (1977).
describe('starting bodies', () => {
  it.runIf(surveysAreHere)('are what the surveys give today', () => {
    expect({ women: WOMEN, men: MEN, children: CHILDREN }).toEqual(startingRows());
  });

  it.each(['woman', 'man', 'child'] as const)('of every %s are ordinary and can be drafted', (kind) => {
    for (const { by, people, figures } of STARTING_BODIES[kind]) {
      const body = { label: `${kind} ${by}`, ...figures };
      expect(people, body.label).toBeGreaterThanOrEqual(10);
      expect(printPhrase(startingSource(kind, people), 'cm')).toMatch(
        new RegExp(`iddle values of ${people} .*(1977|2014)`),
      );
      expect(bodyProblems(body), body.label).toEqual([]);
      expect(bodyRemarks(body), body.label).toEqual([]);
      const result = draft(projectFor(body));
      expect(result.ok, body.label).toBe(true);
    }
  });

  // The survey's own medians of everybody: hip 1018, waist 852, rise 198, crotch 780 (women); 1017, 937, 211, 845 (men).
  it.each([
    ['woman', 852, 198, 780],
    ['man', 937, 211, 845],
  ] as const)('in the middle are the middle %s', (kind, waist, rise, inside) => {
    const middle = STARTING_BODIES[kind].find(({ by }) => by === 1025)?.figures;
    expect(Math.abs((middle?.waistGirth ?? 0) - waist)).toBeLessThan(15);
    expect(Math.abs((middle?.bodyRise ?? 0) - rise)).toBeLessThan(5);
    expect(Math.abs((middle?.insideLeg ?? 0) - inside)).toBeLessThan(8);
  });
});
