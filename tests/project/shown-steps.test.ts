import { describe, expect, test } from 'vitest';
import { edgeLength } from '../../src/plane';
import { allowanceStepsOf, draft, exampleProject, type Project, sheetsOf, tapingStepsOf } from '../../src/project';
import { joinLine, planParts } from '../../src/sheets';
import { printPhrase } from '../../src/words';

function draftOf(change: (project: Project) => Project = (project) => project) {
  const made = draft(change(exampleProject));
  if (!made.ok) throw new Error('the example can not be drafted');
  return made.value;
}

describe('allowances, edge by edge', () => {
  test('go once round each piece, and say what lies between the two lines that they draw', () => {
    const one = draftOf((project) => ({ ...project, waist: { ...project.waist, finish: 'separateCasing' } }));
    const steps = allowanceStepsOf(one);
    expect(new Set(steps.map(({ id }) => id)).size).toBe(steps.length);
    for (const piece of one.pieces) {
      const names = piece.cutLine.map(({ name }) => name).filter((name) => !name.endsWith('Turning'));
      const own = steps.filter(({ id }) => id.startsWith(`edges.allowance ${piece.kind} `));
      expect(own.map(({ id }) => id.split(' ').at(-1))).toEqual(names);
    }
    const inseam = steps.find(({ id }) => id === 'edges.allowance leg inseamFront');
    expect(inseam && printPhrase(inseam.sentence, 'cm')).toBe(
      'At the front inseam of the leg the cut line runs 1.5 cm outside the stitching line.',
    );
    const [stitched, cut] = [0, 1].map((i) => inseam?.lines.filter(({ name }) => name === 'inseamFront')[i]);
    if (!stitched || !cut) throw new Error('a line is missing');
    const [a, b] = [stitched.curves[0]?.[0], cut.curves[0]?.[0]];
    expect(Math.hypot((a?.x ?? 0) - (b?.x ?? 0), (a?.y ?? 0) - (b?.y ?? 0))).toBeGreaterThanOrEqual(15 - 0.01);
    expect(edgeLength(stitched)).toBeGreaterThan(600);
  });

  test('say where nothing is added', () => {
    const waist = allowanceStepsOf(draftOf()).find(({ id }) => id === 'edges.allowance leg waist');
    expect(waist && printPhrase(waist.sentence, 'cm')).toContain('nothing is added');
    expect(waist?.lines.map(({ name }) => name)).toEqual(['waist']);
  });
});

describe('the taping of the sheets', () => {
  test.each([0, 20])('puts down every sheet once and makes every join once, with an overlap of %d mm', (overlap) => {
    const one = draftOf((project) => ({ ...project, paper: { ...project.paper, overlap } }));
    const parts = planParts(sheetsOf(one)).toSorted((a, b) => a.row - b.row || a.column - b.column);
    const steps = tapingStepsOf(one);
    const rows = new Set(parts.map(({ row }) => row)).size;
    expect(steps).toHaveLength(parts.length + rows - 1);
    expect(steps.slice(0, parts.length).map(({ id }) => id)).toEqual(parts.map(({ label }) => `paper.tape ${label}`));
    const joins = steps.reduce((sum, { lines }) => sum + lines.filter(({ curves }) => curves.length === 1).length, 0);
    const wanted = parts.filter((part) => joinLine(part, 'left') !== undefined).length;
    expect(joins).toBe(wanted + parts.filter((part) => joinLine(part, 'top') !== undefined).length);
    for (const { sentence } of steps) expect(printPhrase(sentence, 'cm')).not.toMatch(/[{}]/);
  });

  test('of one sheet has nothing to say', () => {
    const whole = { sheet: 'own', ownWidth: 2000, ownHeight: 2000 };
    const one = draftOf((project) => ({ ...project, paper: { ...project.paper, ...whole } }));
    expect([sheetsOf(one).sheets.length, tapingStepsOf(one)]).toEqual([1, []]);
  });
});
