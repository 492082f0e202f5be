import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Draft, Project } from '../../src/project';
import { adultBody, anyBody } from './bodies';
import { anyDesign, projectOf } from './designs';
import { draftOrRefusal, girthAt, netOutline, thighLine } from './outlines';
import { between, chance, PATIENCE } from './seed';

type Body = Project['body'];
const hipOf = (d: Draft) => girthAt(netOutline(d), d.leg.hipLevel);

/** A measured crotch length holds the crotch seam as it is; without it the shares of the hip decide alone. */
const withoutCrotch = ({ crotchLength: _, frontCrotchLength: __, ...body }: Body): Body => body;

/** The same project with one thing larger, both drafted; undefined where either is refused. */
function both(a: Project, b: Project): readonly [Draft, Draft] | undefined {
  const [before, after] = [draftOrRefusal(a), draftOrRefusal(b)];
  return before && after ? [before, after] : undefined;
}

test(
  'a fuller hip gives a wider hip and a wider thigh line',
  () => {
    fc.assert(
      fc.property(anyBody.map(withoutCrotch), anyDesign, between(1, 60), (body, design, more) => {
        const wider = { ...body, hipGirth: (body.hipGirth ?? 0) + more };
        const pair = both(projectOf(body, design), projectOf(wider, design));
        if (!pair) return;
        const fullest = (b: Body) => Math.max(b.waistGirth ?? 0, b.hipGirth ?? 0, b.highHipGirth ?? 0);
        expect(hipOf(pair[1]) - hipOf(pair[0])).toBeCloseTo(fullest(wider) - fullest(body), 1);
        expect(thighLine(netOutline(pair[1]))).toBeGreaterThan(thighLine(netOutline(pair[0])));
      }),
      chance('fuller hip', 40),
    );
  },
  PATIENCE,
);

test(
  'more spread widens the garment by exactly twice as much, at hip and thigh line',
  () => {
    fc.assert(
      fc.property(anyBody, anyDesign, between(0.5, 40), (body, design, more) => {
        // Straightening that looks for itself would change with the spread; the hip would not.
        const spread = (extra: number) => ({ ...design, leg: { ...design.leg, spread: design.leg.spread + extra } });
        const pair = both(projectOf(body, spread(0)), projectOf(body, spread(more)));
        if (!pair) return;
        expect(hipOf(pair[1]) - hipOf(pair[0])).toBeCloseTo(2 * more, 1);
        expect(pair[1].measures.hipGirthFinished - pair[0].measures.hipGirthFinished).toBeCloseTo(2 * more, 6);
        if (body.crotchLength === undefined)
          expect(thighLine(netOutline(pair[1])) - thighLine(netOutline(pair[0]))).toBeCloseTo(more, 6);
      }),
      chance('more spread', 40),
    );
  },
  PATIENCE,
);

test(
  'a longer rise hangs the crotch deeper',
  () => {
    fc.assert(
      fc.property(anyBody.map(withoutCrotch), anyDesign, between(1, 30), (body, design, more) => {
        const longer = { ...body, bodyRise: (body.bodyRise ?? 0) + more };
        const pair = both(projectOf(body, design), projectOf(longer, design));
        if (!pair) return;
        expect(pair[1].leg.crotchLevel - pair[0].leg.crotchLevel).toBeCloseTo(more, 6);
      }),
      chance('longer rise', 40),
    );
  },
  PATIENCE,
);

test(
  'a longer inside leg gives a longer inseam, in every length that has a name',
  () => {
    const named = anyDesign.filter((design) => typeof design.leg.length === 'string');
    fc.assert(
      fc.property(adultBody, named, between(1, 60), (body, design, more) => {
        const pair = both(
          projectOf(body, design),
          projectOf({ ...body, insideLeg: (body.insideLeg ?? 0) + more }, design),
        );
        if (!pair) return;
        expect(pair[1].measures.inseamFront - pair[0].measures.inseamFront).toBeGreaterThan(0.1 * more);
        expect(pair[1].measures.inseamFront - pair[0].measures.inseamFront).toBeLessThan(more);
      }),
      chance('longer inside leg', 40),
    );
  },
  PATIENCE,
);
