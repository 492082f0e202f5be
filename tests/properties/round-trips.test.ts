import fc from 'fast-check';
import { expect, test } from 'vitest';
import { openProject, saveProject } from '../../src/project';
import { anyBody } from './bodies';
import { anyDesign, projectOf } from './designs';
import { draftOrRefusal } from './outlines';
import { estimatesHold, normalisedOnce, savedIsTheSame, unitIsNoMeasure, unitsRoundTrip } from './round-trips';
import { chance, enough, PATIENCE } from './seed';

test('a project saved and opened is the same project, unknown fields too', () => {
  fc.assert(
    fc.property(anyBody, anyDesign, fc.jsonValue(), (body, design, stranger) => {
      const project = { ...projectOf(body, design), laterField: JSON.parse(JSON.stringify(stranger)) };
      savedIsTheSame(project);
      normalisedOnce(project);
    }),
    chance('saved projects', 200),
  );
});

test(
  'a project saved and opened gives the same draft',
  () => {
    let drafted = 0;
    fc.assert(
      fc.property(anyBody, anyDesign, (body, design) => {
        const project = projectOf(body, design);
        const own = draftOrRefusal(project);
        const opened = openProject(saveProject(project));
        const again = opened.ok ? draftOrRefusal(opened.value) : undefined;
        if (own) drafted += 1;
        expect(again).toEqual(own);
      }),
      chance('drafts of saved projects', 30),
    );
    expect(drafted).toBeGreaterThan(enough(15));
  },
  PATIENCE,
);

test(
  'a body typed in either unit, or with its estimates taken for measurements, gives the same leg',
  () => {
    const moves: number[] = [];
    fc.assert(
      fc.property(anyBody, anyDesign, (body, design) => {
        const project = projectOf(body, design);
        estimatesHold(project);
        unitIsNoMeasure(project);
        for (const units of ['cm', 'inch'] as const) moves.push(unitsRoundTrip(project, units) ?? 0);
      }),
      chance('typed bodies', 100),
    );
    console.log(`typing moves no place by more than ${Math.max(...moves).toFixed(3)} mm`);
  },
  PATIENCE,
);
