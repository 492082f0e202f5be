import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Project } from '../../src/project';
import { anyBody } from './bodies';
import { anyDesign, projectOf } from './designs';
import { withoutCrotch } from './responses';
import { between, chance, enough, PATIENCE } from './seed';
import {
  fullerHipSpreadsOneLeg,
  fullerSeatMovesTheBack,
  higherHipRaisesTheSide,
  longerLegLengthensOneLeg,
  sidesCanBeSewn,
} from './sides';

/** What one leg of two may have more, and what that must leave alone; with and without a measured crotch length. */
test.each<readonly [string, (project: Project, more: number) => boolean, number]>([
  ['a fuller hip on one side spreads that leg, half in front and half behind', fullerHipSpreadsOneLeg, 40],
  ['a fuller seat on one side moves the back of that leg alone', fullerSeatMovesTheBack, 40],
  ['a higher hip on one side raises the waist of that leg over the side alone', higherHipRaisesTheSide, 30],
  ['a longer leg lengthens both inseams of that leg alone', longerLegLengthensOneLeg, 40],
  ['legs that differ in everything can be sewn to each other', sidesCanBeSewn, 40],
])(
  '%s',
  (name, property, most) => {
    let compared = 0;
    fc.assert(
      fc.property(anyBody, anyDesign, between(0.5, most), fc.boolean(), (body, design, more, measured) => {
        const project = projectOf(body, design);
        if (property(measured ? project : withoutCrotch(project), more)) compared += 1;
      }),
      chance(name, 40),
    );
    expect(compared).toBeGreaterThan(enough(20));
  },
  PATIENCE,
);
