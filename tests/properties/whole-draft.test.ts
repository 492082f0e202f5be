import fc from 'fast-check';
import { expect, test } from 'vitest';
import { anyBody } from './bodies';
import { anyDesign, projectOf } from './designs';
import { netLeg } from './net';
import { draftOrRefusal, netOutline } from './outlines';
import { chance, PATIENCE } from './seed';
import { expectPromisedHip, expectWholeOutlines, expectWorking } from './whole';

let drafted = 0;
let refused = 0;

test(
  'any body in any design is drafted whole, or refused with field and sentence',
  () => {
    fc.assert(
      fc.property(anyBody, anyDesign, (body, design) => {
        const project = projectOf(body, design);
        const d = draftOrRefusal(project);
        if (!d) {
          refused += 1;
          return;
        }
        drafted += 1;
        expectWholeOutlines(d);
        expectPromisedHip(d);
        expectWorking(d);
        expect(netLeg(project)?.outline).toEqual(netOutline(d));
      }),
      chance('whole drafts', 240),
    );
    console.log(`${drafted} drafted, ${refused} refused`);
    // A run in which everything is refused would have tested nothing.
    expect(drafted).toBeGreaterThan(4 * refused);
  },
  PATIENCE,
);
