import fc from 'fast-check';
import { expect, test } from 'vitest';
import { checksOf } from '../../src/project';
import { anyBody } from './bodies';
import { anyDesign, projectOf } from './designs';
import { draftOrRefusal } from './outlines';
import { withoutCrotch } from './responses';
import { between, chance, enough, PATIENCE } from './seed';
import { asDrafted, broughtAlong, broughtBlocksGiveTheSame, mirroredBlocksGiveTheSame } from './symmetry';

const place = between(-900, 900);

test(
  'a block brought along mirrored or moved gives the same leg',
  () => {
    let compared = 0;
    fc.assert(
      fc.property(anyBody, anyDesign, place, place, (body, design, dx, dy) => {
        if (mirroredBlocksGiveTheSame(projectOf(body, design), dx, dy)) compared += 1;
      }),
      chance('mirrored blocks', 40),
    );
    expect(compared).toBeGreaterThan(enough(20));
  },
  PATIENCE,
);

test(
  'and the same verdicts',
  () => {
    fc.assert(
      fc.property(anyBody, anyDesign, place, (body, design, dx) => {
        const project = projectOf(body, design);
        const own = draftOrRefusal(project);
        if (!own) return;
        const verdicts = (front: typeof asDrafted, back: typeof asDrafted) => {
          const drafted = draftOrRefusal(broughtAlong(own.blocks, project, front, back));
          return drafted && checksOf(drafted).map((c) => c.verdict);
        };
        const mirrored: typeof asDrafted = ({ x, y }) => [dx - x, y + dx];
        expect(verdicts(mirrored, mirrored)).toEqual(verdicts(asDrafted, asDrafted));
      }),
      chance('verdicts of mirrored blocks', 20),
    );
  },
  PATIENCE,
);

test(
  'the leg never asks where a block came from: brought along as it was drafted it gives the same leg',
  () => {
    let compared = 0;
    fc.assert(
      fc.property(anyBody, anyDesign, (body, design) => {
        // A crotch that is solved once more on the finished leg would differ by its tolerance.
        if (broughtBlocksGiveTheSame(withoutCrotch(projectOf(body, design)))) compared += 1;
      }),
      chance('own blocks', 40),
    );
    expect(compared).toBeGreaterThan(enough(20));
  },
  PATIENCE,
);
