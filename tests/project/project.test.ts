import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  checksOf,
  type Draft,
  draft,
  exampleProject,
  openProject,
  type Project,
  saveProject,
  workingOf,
} from '../../src/project';
import { printPhrase, printProblem } from '../../src/words';

const BODY = { label: 'Body 1', waistGirth: 760, hipGirth: 980, bodyRise: 270, insideLeg: 760 };
const file = (more: object = {}) => JSON.stringify({ format: 'legwork-project', version: 2, body: BODY, ...more });
const opened = (text: string): Project => {
  const result = openProject(text);
  if (!result.ok) throw new Error(result.problems.map((p) => printProblem(p, 'cm')).join('\n'));
  return result.value;
};
const lines = (text: string): readonly string[] => {
  const result = openProject(text);
  return result.ok ? [] : result.problems.map((p) => printProblem(p, 'cm'));
};
const drafted = (project: Project): Draft => {
  const result = draft(project);
  if (!result.ok) throw new Error(result.problems.map((p) => printProblem(p, 'cm')).join('\n'));
  return result.value;
};

describe('opening a project', () => {
  it('needs format, version and four measurements; everything else has a default', () => {
    const project = opened(file());
    expect(project.leg).toMatchObject({ spread: 25.4, straighten: 'auto', length: 'full', shape: 'pyjama' });
    expect(project.allowances).toMatchObject({ inseam: 15, crotch: 15 });
    expect(opened(file({ units: 'inch' })).allowances.inseam).toBe(15.875);
  });

  it('keeps unknown fields, at every depth, and passes them on', () => {
    const project = opened(
      file({ note: 'for Ada’s class', leg: { spread: 10, later: [1, 2] }, body: { ...BODY, armLength: 600 } }),
    );
    const again = JSON.parse(saveProject(project));
    expect(again.note).toBe('for Ada’s class');
    expect(again.leg.later).toEqual([1, 2]);
    expect(again.body.armLength).toBe(600);
    expect(opened(saveProject(project))).toEqual(project);
  });

  it.each([
    [
      'text in a number',
      file({ body: { ...BODY, hipGirth: 'wide' } }),
      'body.hipGirth: "wide": must be a number of millimetres between 40 cm and 210 cm.',
    ],
    ['0', file({ body: { ...BODY, hipGirth: 0 } }), 'body.hipGirth: 0: Hip must lie between 40 cm and 210 cm.'],
    [
      'a negative',
      file({ body: { ...BODY, insideLeg: -760 } }),
      'body.insideLeg: -760: Inside leg must lie between 18 cm and 125 cm.',
    ],
    [
      '1e9',
      file({ body: { ...BODY, waistGirth: 1e9 } }),
      'body.waistGirth: 1000000000: Waist must lie between 35 cm and 210 cm.',
    ],
    [
      'a wrong format',
      '{"format":"something-else","version":1}',
      'format: "something-else": must be “legwork-project”; this is another kind of file.',
    ],
    [
      'a newer version',
      '{"format":"legwork-project","version":3}',
      'version: 3: was written by a newer Legwork; this one reads up to version 2.',
    ],
    ['no version', '{"format":"legwork-project"}', 'version: missing: must be 2.'],
    [
      'broken JSON',
      '{"format": "legwork-pro',
      'file: "{\\"format\\": \\"legwork-pro": isn’t a project file: it can’t be read as JSON.',
    ],
    ['a list', '[]', 'file: []: isn’t a project file: it must be one object in braces.'],
    [
      'a spread beyond reason',
      file({ leg: { spread: 900 } }),
      'leg.spread: 900: must be a number of millimetres between 0 cm and 25 cm.',
    ],
    [
      'a finish that nobody sews',
      file({ waist: { finish: 'zip' } }),
      'waist.finish: "zip": must be one of elasticCasing, drawstringCasing, elasticAndDrawstring, separateCasing, knitBand, facedCasing.',
    ],
    [
      'an unknown length',
      file({ leg: { length: 'floor' } }),
      'leg.length: "floor": must be one of full, ankle, midCalf, belowKnee, knee, midThigh, short, or { "inseam": a number of millimetres between 3 cm and 130 cm }.',
    ],
    [
      'an inseam beyond reason',
      file({ leg: { length: { inseam: 9 } } }),
      'leg.length.inseam: 9: must be a number of millimetres between 3 cm and 130 cm.',
    ],
    [
      'a pocket larger than a leg',
      file({ pocket: { width: 900 } }),
      'pocket.width: 900: must be a number of millimetres between 4 cm and 30 cm.',
    ],
  ])('says one clear sentence about %s', (_, text, wanted) => {
    expect(lines(text)).toEqual([wanted]);
  });

  it('names every problem, one a line, and none twice', () => {
    const found = lines(
      file({ body: { label: 'x', hipGirth: 'a', waistGirth: null }, leg: { spread: -1 }, units: 'furlong' }),
    );
    expect(found.map((line) => line.split(':')[0])).toEqual([
      'units',
      'body.waistGirth',
      'body.hipGirth',
      'leg.spread',
    ]);
    expect(lines(file({ body: { label: 'x' } })).map((line) => line.split(':')[0])).toEqual([
      'body.waistGirth',
      'body.hipGirth',
      'body.bodyRise',
      'body.insideLeg',
    ]);
  });

  it('does not parse a file of fifty megabytes', () => {
    expect(lines(' '.repeat(50_000_000))).toEqual(['file: has 50 MB; a project file has at most 5 MB.']);
  });
});

describe('drafting', () => {
  it('is pure: the same project gives the same draft, and is not changed', () => {
    const before = structuredClone(exampleProject);
    expect(JSON.stringify(drafted(exampleProject))).toBe(JSON.stringify(drafted(exampleProject)));
    expect(exampleProject).toEqual(before);
  });

  it('refuses what opening refuses', () => {
    const result = draft({ ...exampleProject, leg: { ...exampleProject.leg, spread: -4 } });
    expect(result.ok || result.problems.map((p) => p.field)).toEqual(['leg.spread']);
    const short = draft({
      ...exampleProject,
      body: { ...BODY, insideLeg: 200 },
      leg: { ...exampleProject.leg, length: 'short' },
    });
    expect(short.ok || short.problems.map((p) => p.field)).toEqual(['hem.depth']);
  });

  it('opens on an example that must be straightened to pull on, its crotch length reached', () => {
    const d = drafted(exampleProject);
    expect(d.project.leg.spread).toBe(12.7);
    expect(d.leg.straighten).toBeGreaterThan(0);
    expect(d.leg.straighten).toBeLessThan(1);
    expect(d.measures.waistOpening).toBeGreaterThanOrEqual(d.measures.pullOnNeeded);
    // The fit is made at the usual spread; this leg is spread by half of it.
    expect(Math.abs(d.measures.crotchFit)).toBeLessThan(1.5);
    expect(checksOf(d).filter((c) => c.verdict !== 'good')).toEqual([]);
  });

  it('is the example in docs/examples', () => {
    const text = readFileSync(new URL('../../docs/examples/flannel-bottoms.legwork.json', import.meta.url), 'utf8');
    expect(opened(text)).toEqual(exampleProject);
  });

  it('spread grows the garment by twice itself, an allowance nothing but the cut line', () => {
    const [plain, spread] = [
      drafted(exampleProject),
      drafted({ ...exampleProject, leg: { ...exampleProject.leg, spread: 22.7 } }),
    ];
    expect(spread.measures.hipGirthFinished - plain.measures.hipGirthFinished).toBeCloseTo(20, 6);
    const wide = drafted({ ...exampleProject, allowances: { ...exampleProject.allowances, inseam: 25 } });
    expect(wide.measures).toEqual(plain.measures);
    expect(wide.pieces[0]?.stitchLine).toEqual(plain.pieces[0]?.stitchLine);
    expect(wide.pieces[0]?.cutLine).not.toEqual(plain.pieces[0]?.cutLine);
  });

  it('tells the working of every stage in order, in both units, each step once', () => {
    const working = workingOf(drafted(exampleProject));
    expect(new Set(working.map((s) => s.id)).size).toBe(working.length);
    expect([...new Set(working.map((s) => s.station))]).toEqual(['body', 'blocks', 'leg', 'edges']);
    for (const step of working) {
      expect(printPhrase(step.sentence, 'cm')).toMatch(/^[A-Z].*\.$|^\d.*\.$/);
      expect(printPhrase(step.sentence, 'inch')).not.toMatch(/\bcm\b|\bmm\b/);
      for (const line of step.lines) expect(line.curves.length, `${step.id} ${line.name}`).toBeGreaterThan(0);
    }
  });
});
