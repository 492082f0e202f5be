import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { root } from '../../.house/paths.mjs';
import { checkPlace } from '../../src/check';
import { pieceBounds } from '../../src/drawing';
import { boxGrown, boxHolds, pathStart } from '../../src/plane';
import { checksOf, draft, exampleProject } from '../../src/project';
import { anyDesign } from '../properties/designs';
import { chance } from '../properties/seed';
import { piecedExample } from './subject';

const folder = join(root, 'src/check');
const IDS = readdirSync(folder)
  .filter((file) => file.startsWith('check-'))
  .flatMap((file) =>
    [...readFileSync(join(folder, file), 'utf8').matchAll(/^ +id: '([a-z-]+)'/gm)].map(([, id]) => id),
  );

test('each check has a place on some piece, whatever was chosen', () => {
  expect(new Set(IDS).size).toBeGreaterThan(30);
  const seen = new Set<string>();
  fc.assert(
    fc.property(anyDesign, (design) => {
      const result = draft({ ...exampleProject, ...design });
      if (!result.ok) return;
      for (const { id } of checksOf(result.value)) {
        seen.add(id);
        const places = result.value.pieces.map((piece) => [piece, checkPlace(id, piece)] as const);
        expect(
          places.flatMap(([, curves]) => curves),
          id,
        ).not.toEqual([]);
        for (const [piece, curves] of places)
          for (const curve of curves)
            expect(boxHolds(boxGrown(pieceBounds(piece), 1), pathStart([curve])), `${id} off the ${piece.kind}`).toBe(
              true,
            );
      }
    }),
    chance('places of checks', 40),
  );
  expect(seen.size).toBeGreaterThan(25);
});

test('no check is without one', () => {
  for (const id of IDS) {
    const curves = piecedExample.pieces.flatMap((piece) => checkPlace(id ?? '', piece));
    expect(curves, id).not.toEqual([]);
  }
});
