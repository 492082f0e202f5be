import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Project } from '../../src/project';
import { anyBody } from './bodies';
import { anyDesign, projectOf } from './designs';
import { fullerHipIsWider, longerLegIsLonger, longerRiseIsDeeper, spreadCountsTwice, withoutCrotch } from './responses';
import { between, chance, enough, PATIENCE } from './seed';

type Property = (project: Project, more: number) => boolean;

const asMeasured = (project: Project): Project => project;

test.each<readonly [string, Property, readonly [number, number], (project: Project) => Project]>([
  ['a fuller hip gives a wider front and a wider thigh line', fullerHipIsWider, [1, 60], withoutCrotch],
  [
    'more spread widens the garment by twice as much, the thigh by exactly as much',
    spreadCountsTwice,
    [0.5, 40],
    asMeasured,
  ],
  ['a longer rise hangs the crotch deeper', longerRiseIsDeeper, [1, 30], withoutCrotch],
  ['a longer inside leg gives a longer inseam', longerLegIsLonger, [1, 60], asMeasured],
])(
  '%s',
  (name, property, [least, most], prepared) => {
    let compared = 0;
    fc.assert(
      fc.property(anyBody, anyDesign, between(least, most), (body, design, more) => {
        if (property(prepared(projectOf(body, design)), more)) compared += 1;
      }),
      chance(name, 40),
    );
    expect(compared).toBeGreaterThan(enough(20));
  },
  PATIENCE,
);
