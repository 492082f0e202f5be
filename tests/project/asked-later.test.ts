import { describe, expect, it } from 'vitest';
import { flattenCurves, outlineCurves, pathStart, pointsBounds } from '../../src/plane';
import {
  clothOf,
  clothWidthsOf,
  type Draft,
  draft,
  exampleProject,
  garmentOf,
  hemOf,
  openProject,
  type Project,
  salvageProject,
  shoppingOf,
} from '../../src/project';
import { printPhrase, UNSAID } from '../../src/words';

const drafted = (change: Partial<Project> = {}): Draft => {
  const result = draft({ ...exampleProject, ...change });
  if (!result.ok) throw new Error(result.problems.map((p) => p.field).join());
  return result.value;
};
const CHILD = { label: 'Child', waistGirth: 530, hipGirth: 590, bodyRise: 190, insideLeg: 420, ageYears: 4 };
const cautioned = (change: Partial<Project>) => drafted(change).cautions.map(({ id }) => id);
const waist = (finish: Project['waist']['finish']) => ({ ...exampleProject.waist, finish });
const hem = (finish: Project['hem']['finish']) => ({ ...exampleProject.hem, finish });

describe('the cautions of a project', () => {
  it('follow its age, its use and what is drawn through its edges', () => {
    expect(cautioned({})).not.toContain('childrens-sleepwear');
    expect(cautioned({ body: CHILD, use: { forSleeping: true } })).toContain('childrens-sleepwear');
    expect(cautioned({ body: CHILD, use: { forSleeping: false } })).not.toContain('childrens-sleepwear');
    expect(cautioned({ body: { ...CHILD, ageYears: 30 }, use: { forSleeping: true } })).not.toContain(
      'childrens-sleepwear',
    );
    const withCord = cautioned({ body: CHILD, waist: waist('drawstringCasing') });
    expect(withCord.filter((id) => /cord/.test(id)).length).toBeGreaterThan(0);
    const cord = drafted({ body: CHILD, waist: waist('drawstringCasing') }).cautions.find(
      ({ id }) => id === 'waist-cord',
    );
    expect(cord && printPhrase(cord.sentence, 'cm')).toContain('here it is 27.5 cm and');
    expect(cautioned({ body: CHILD }).filter((id) => /cord/.test(id))).toEqual([]);
    expect(cautioned({ body: CHILD, hem: hem('drawstringCasing') })).toContain('hem-cord');
  });

  it('say of an infant’s garment how long it is as it is worn, turnings folded in', () => {
    const infant = { label: 'Infant', waistGirth: 440, hipGirth: 470, bodyRise: 160, insideLeg: 200, ageYears: 0.5 };
    const d = drafted({ body: infant });
    const { finished, leg } = d;
    const [top, hem] = [Math.min(...finished.casing.fold.map(({ y }) => y)), pathStart(leg.hem).y];
    const told = d.cautions.find(({ id }) => id === 'infant-garment');
    const { left, right } = pointsBounds(flattenCurves(outlineCurves(finished.sewn.stitchLine)));
    const longest = Math.max(hem - top, right - left);
    expect(
      told?.sentence.values.some(
        (part) => typeof part === 'object' && 'mm' in part && Math.abs(part.mm - longest) < 0.5,
      ),
    ).toBe(true);
  });

  it('say of elastic how tight it is, at the edge where it is', () => {
    const tight = (change: Partial<Project>) =>
      drafted({ body: { ...CHILD, ageYears: 1 }, ...change })
        .cautions.filter(({ id }) => id.startsWith('elastic-tightness'))
        .map(({ sentence, title, raisedBy }) => `${title} ${printPhrase(sentence, 'cm')} ${raisedBy.join()}`);
    const [waistOnly, both, hemOnly, none] = [
      tight({}),
      tight({ hem: hem('elasticCasing') }),
      tight({ waist: waist('drawstringCasing'), hem: hem('elasticCasing') }),
      tight({ waist: waist('drawstringCasing') }),
    ];
    expect([waistOnly.length, both.length, hemOnly.length, none.length]).toEqual([1, 1, 1, 0]);
    // Of both the waist's is told, which holds all day.
    expect(both).toEqual(waistOnly);
    expect(hemOnly).not.toEqual(waistOnly);
  });
});

describe('what is asked of a draft later', () => {
  it('is made once: its lay, and the widths on which it could be laid', () => {
    const d = drafted();
    expect(clothOf(d)).toBe(clothOf(d));
    expect(clothWidthsOf(d)).toBe(clothWidthsOf(d));
    expect(clothOf(drafted())).not.toBe(clothOf(d));
  });

  it('is the garment as it is sewn', () => {
    const change = {
      ...exampleProject,
      body: CHILD,
      use: { forSleeping: true },
      sewing: { machine: 'serger' },
    } as const;
    const d = drafted(change);
    expect(garmentOf(d)).toMatchObject({
      leg: d.leg,
      pieces: d.pieces,
      notions: d.notions,
      waist: change.waist,
      hem: hemOf(change),
      machine: 'serger',
      nightwearLabel: true,
    });
    expect(garmentOf(drafted()).nightwearLabel).toBe(false);
  });

  it('is thread for every seam: inseams, crotch, both sides of the casing and the hems', () => {
    const d = drafted();
    const { inseamFront, crotchLengthFinished, waistOpening, hemGirthFinished } = d.measures;
    const seams = 2 * inseamFront + crotchLengthFinished + 2 * waistOpening + 2 * hemGirthFinished;
    const thread = shoppingOf(d).find(({ id }) => id === 'thread');
    const metres = Number(
      /About (\d+) m/.exec(
        Object.values(thread ?? {})
          .map((one) => (typeof one === 'object' && 'template' in one ? printPhrase(one, 'cm') : ''))
          .join(' '),
      )?.[1],
    );
    // Three times the seams, sewn and finished (practice).
    expect(metres).toBe(Math.ceil((6 * seams) / 1000));
    expect(shoppingOf(d).some(({ id }) => id === 'nightwear-label')).toBe(false);
    const night = drafted({ body: CHILD, use: { forSleeping: true } });
    expect(shoppingOf(night).some(({ id }) => id === 'nightwear-label')).toBe(
      night.cautions.some(({ id }) => id === 'nightwear-label'),
    );
  });
});

describe('a file with more wrong in it than can be told', () => {
  it('is told a hundred of it, and how many more there are', () => {
    const names = Array.from({ length: 130 }, (_, i) => `"n${i}": 1e999`).join(', ');
    const text = JSON.stringify(exampleProject).replace('{', `{ "notes": { ${names} }, `);
    const result = openProject(text);
    const problems = result.ok ? [] : result.problems;
    expect(problems).toHaveLength(101);
    expect(problems.at(-1)?.field).toBe('file');
    expect(printPhrase(problems.at(-1)?.phrase ?? UNSAID, 'cm')).toBe('holds 30 more problems.');
  });
});

describe('what is saved of a file', () => {
  it('says of a group that can’t be used without a part of it that the usual choice takes its place', () => {
    const result = salvageProject(
      JSON.stringify({ ...exampleProject, leg: { ...exampleProject.leg, length: { inseam: 'long' } } }),
    );
    expect(result.ok && result.value.project.leg.length).toBe('full');
    const told = result.ok ? result.value.repairs.map(({ problem }) => printPhrase(problem.phrase, 'cm')) : [];
    expect(told[0]).toMatch(/^must be a number of millimetres between/);
    const pocket = salvageProject(JSON.stringify({ ...exampleProject, pocket: { width: 'wide' } }));
    expect(pocket.ok && pocket.value.repairs.map(({ now }) => now)).toEqual([150]);
  });

  it('says of a grainline that it is two points', () => {
    const line = [
      [
        [0, 0],
        [0, 0],
        [0, 9],
        [0, 9],
      ],
    ];
    const block = {
      edges: Object.fromEntries(['waist', 'centre', 'crotch', 'inseam', 'hem', 'side'].map((name) => [name, line])),
      grainline: [[0, 0]],
      hipLevel: 5,
    };
    const result = openProject(
      JSON.stringify({
        ...exampleProject,
        block: { source: 'drawn', front: block, back: { ...block, grainline: 'up' } },
      }),
    );
    const told = result.ok ? [] : result.problems.map(({ field, phrase }) => `${field}: ${printPhrase(phrase, 'cm')}`);
    expect(told).toContain('block.back.grainline: must be two points: [[x, y], [x, y]] in millimetres.');
    expect(told.some((one) => one.startsWith('block.front.grainline'))).toBe(true);
  });
});
