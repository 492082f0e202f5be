import { describe, expect, it } from 'vitest';
import { draft, exampleProject, type Project } from '../../src/project';
import { type Caution, type CautionChoices, cautions } from '../../src/sewing';
import { printPhrase } from '../../src/words';
import { childMedians } from '../outside/children';
import { projectFor } from '../outside/survey';

const ADULT: CautionChoices = {
  body: { ageYears: 34, child: false, waistGirth: 742 },
  forSleeping: false,
  cordEnds: undefined,
  hemCords: false,
  elastic: true,
  hemElastic: false,
};
const MEASURES = { largestExtent: 1000, waistOpening: 1040 };
const of = (choices: Partial<CautionChoices>, ageYears?: number, measures = MEASURES): readonly Caution[] =>
  cautions(
    { ...ADULT, body: { ...ADULT.body, ageYears, child: ageYears === undefined || ageYears < 18 }, ...choices },
    measures,
  );
const ids = (list: readonly Caution[]): readonly string[] => list.map((one) => one.id);
const said = (list: readonly Caution[], id: string): string => {
  const found = list.find((one) => one.id === id);
  return found ? printPhrase(found.sentence, 'cm') : '';
};

describe('an adult', () => {
  it('is told of elastic and tools, and of fire where it is slept in', () => {
    expect(ids(cautions(ADULT, MEASURES))).toEqual(['elastic-tightness', 'tools']);
    expect(ids(cautions({ ...ADULT, forSleeping: true }, MEASURES))).toEqual([
      'loose-and-fire',
      'elastic-tightness',
      'tools',
    ]);
  });

  it('is told of fire where nobody has answered whether it is slept in', () => {
    expect(cautions({ ...ADULT, forSleeping: undefined }, MEASURES)).toEqual(
      cautions({ ...ADULT, forSleeping: true }, MEASURES),
    );
  });

  it('is told of elastic once, where it is: at the waist, or only at the hems', () => {
    const tight = (choices: Partial<CautionChoices>) =>
      cautions({ ...ADULT, ...choices }, MEASURES).filter((one) => one.id === 'elastic-tightness');
    expect(tight({ hemElastic: true }).map((one) => one.raisedBy)).toEqual([['waist.elasticWidth']]);
    expect(tight({ elastic: false, hemElastic: true }).map((one) => one.raisedBy)).toEqual([['hem.elasticWidth']]);
  });

  it('may have cords as long as wanted', () => {
    expect(ids(cautions({ ...ADULT, cordEnds: 275, hemCords: true, elastic: false }, MEASURES))).toEqual(['tools']);
  });
});

describe('a child', () => {
  it('that sleeps in it has the sleepwear rules and the label; this pant is not tight-fitting', () => {
    const found = of({ forSleeping: true }, 8);
    expect(ids(found)).toEqual([
      'loose-and-fire',
      'childrens-sleepwear',
      'nightwear-label',
      'elastic-tightness',
      'tools',
    ]);
    expect(said(found, 'childrens-sleepwear')).toMatch(/a child of 8 years.*not tight-fitting/);
    expect(said(found, 'nightwear-label')).toContain('KEEP AWAY FROM FIRE');
  });

  it('that lounges in it is told that loungewear counts as sleepwear', () => {
    expect(ids(of({}, 8))).toEqual(['childrens-loungewear', 'elastic-tightness', 'tools']);
  });

  it('of 13 has no label, of 14 no cord rule, of 15 no sleepwear rule', () => {
    const choices = { forSleeping: true, cordEnds: 275 };
    expect(ids(of(choices, 12.9))).toContain('nightwear-label');
    expect(ids(of(choices, 13))).not.toContain('nightwear-label');
    expect(ids(of(choices, 13.9))).toContain('waist-cord');
    expect(ids(of(choices, 14))).not.toContain('waist-cord');
    expect(ids(of(choices, 14.9))).toContain('childrens-sleepwear');
    expect(ids(of(choices, 15))).not.toContain('childrens-sleepwear');
  });

  it('of nine months wears an infant garment, if nothing is longer than 40 cm', () => {
    expect(said(of({}, 0.75, { ...MEASURES, largestExtent: 400 }), 'infant-garment')).toMatch(
      /nine months.*stays within/,
    );
    expect(said(of({}, 0.75, { ...MEASURES, largestExtent: 401 }), 'infant-garment')).toContain('goes beyond');
    expect(ids(of({}, 0.8))).not.toContain('infant-garment');
  });

  it('whose age nobody said is one by its size', () => {
    const found = of({ forSleeping: true });
    expect(ids(found)).toContain('nightwear-label');
    expect(ids(found)).not.toContain('infant-garment');
    expect(said(found, 'childrens-sleepwear')).toContain('a child of this size');
  });
});

describe('the ends of a waist cord', () => {
  // Opening 1040, waist 742: gathered, each end is 149 mm longer. EN 14682:2007 (quoted): 140 at the widest, 280 gathered.
  it.each([
    [130, 'within that', '13 cm and 27.9 cm'],
    [132, 'too long', '13.2 cm and 28.1 cm'],
    [141, 'too long', '14.1 cm and 29 cm'],
  ])('of %d mm are %s', (cordEnds, verdict, figures) => {
    const sentence = said(of({ cordEnds }, 8), 'waist-cord');
    expect(sentence).toContain(verdict);
    expect(sentence).toContain(figures);
  });

  it('are judged at the widest too, where gathering adds little', () => {
    const measures = { ...MEASURES, waistOpening: 800 };
    expect(said(of({ cordEnds: 140 }, 8, measures), 'waist-cord')).toContain('within that');
    expect(said(of({ cordEnds: 140.5 }, 8, measures), 'waist-cord')).toContain('too long');
  });

  it('are better left out under seven', () => {
    expect(said(of({ cordEnds: 100 }, 6.9), 'waist-cord')).toContain('elastic is the better choice');
    expect(said(of({ cordEnds: 100 }, 7), 'waist-cord')).not.toContain('elastic is the better choice');
  });
});

describe('every caution', () => {
  const everything = [
    ...of({ forSleeping: true, cordEnds: 275, hemCords: true }, 0.5),
    ...of({ forSleeping: false }, 8),
  ];
  it('has a title, a sentence, a source and how sure it is', () => {
    expect(new Set(ids(everything)).size).toBe(10);
    for (const { title, sentence, source } of everything) {
      expect(title).not.toBe('');
      expect(printPhrase(sentence, 'inch')).toMatch(/\.$/);
      expect(['read', 'quoted', 'memory', 'practice']).toContain(source.sure);
      expect(source.document === 'practice').toBe(source.sure === 'practice');
    }
  });

  it('names the field that raised it, and such a field there is', () => {
    for (const { raisedBy } of everything)
      for (const path of raisedBy) {
        const [group, key] = path.split('.') as [keyof Project, string];
        const known = { ...exampleProject, body: { ageYears: 1, height: 1 } }[group] as object;
        expect(key in known, path).toBe(true);
      }
  });
});

describe('a draft', () => {
  const drafted = (project: Project) => {
    const result = draft(project);
    if (!result.ok) throw new Error('refused');
    return result.value;
  };

  it('brings its cautions along: the example is flannel to sleep in', () => {
    expect(ids(drafted(exampleProject).cautions)).toEqual(['loose-and-fire', 'elastic-tightness', 'tools']);
  });

  it('of a child of two years measures its longest extent without turnings', () => {
    const m = childMedians[0];
    if (!m) throw new Error('no medians');
    const body = {
      label: 'two',
      ageYears: 0.75,
      height: m.stature,
      waistGirth: m.waist * m.stature,
      hipGirth: m.hip * m.stature,
      bodyRise: (m.waistHeight - m.crotchHeight) * m.stature,
      insideLeg: m.crotchHeight * m.stature,
    };
    const d = drafted(projectFor(body));
    const sentence = said(d.cautions, 'infant-garment');
    const cm = Number(/this one measures ([\d.]+) cm/.exec(sentence)?.[1]);
    const high = Math.max(d.leg.front.inseam.at(-1)?.[3].y ?? 0, d.leg.back.inseam.at(-1)?.[3].y ?? 0);
    const low = Math.min(d.leg.front.waistPoint.y, d.leg.back.waistPoint.y);
    // From the highest point of the fold, a casing's half above the waist edge, to the hem fold.
    expect(10 * cm).toBeGreaterThan(high - low + 20);
    expect(10 * cm).toBeLessThan(high - low + 30);
  });
});

describe('a child’s drawstring as the draft cuts it', () => {
  it('has ends that are too long for the rule, and says so at the finish', () => {
    const result = draft({
      ...exampleProject,
      body: { ...exampleProject.body, ageYears: 9 },
      waist: { ...exampleProject.waist, finish: 'drawstringCasing' },
      hem: { ...exampleProject.hem, finish: 'drawstringCasing' },
    });
    if (!result.ok) throw new Error('refused');
    const found = result.value.cautions;
    expect(ids(found)).toEqual([
      'loose-and-fire',
      'childrens-sleepwear',
      'nightwear-label',
      'waist-cord',
      'cord-outside',
      'hem-cord',
      'tools',
    ]);
    expect(said(found, 'waist-cord')).toContain('too long: shorten the cord');
    expect(found.find((one) => one.id === 'waist-cord')?.raisedBy[0]).toBe('waist.finish');
  });
});
