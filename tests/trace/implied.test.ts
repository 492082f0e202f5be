import { describe, expect, it } from 'vitest';
import { plateBodies } from '../../.house/plate-bodies';
import { draftBlocks } from '../../src/block';
import { type BodyGiven, prepareBody } from '../../src/body';
import { checksOf, draft, exampleProject, openProject, type Project, saveProject } from '../../src/project';
import { blocksImplied, numbersOf, toldByBlocks } from '../../src/trace';
import { printPhrase } from '../../src/words';

const OPTIONS = { hipEase: 50.8, waistEase: 25, riseEase: 'auto', crotchEase: 'auto', balance: 10 } as const;
const bodies = plateBodies.flat().filter((_, i) => i % 4 === 0);

/** The hip line crosses a leaning centre aslant, and is measured level: a girth comes back within half a centimetre. */
const HIP = 5;

describe('what blocks say of their wearer', () => {
  it.each(bodies.map(({ name, body }) => [name, body] as const))(
    'is near %s, for whom they were drafted',
    (_, given) => {
      const { crotchLength: _length, frontCrotchLength: _front, nappy: _nappy, ...plain } = given;
      const body = prepareBody({ label: '', ...plain } as BodyGiven);
      const { body: told } = blocksImplied(draftBlocks(body, OPTIONS).blocks, {});
      expect(Math.abs((told.hipGirth?.value ?? 0) - body.hipGirth)).toBeLessThan(HIP);
      // What shaping found no dart stays in the waist.
      expect(Math.abs((told.waistGirth?.value ?? 0) - body.waistGirth)).toBeLessThan(25);
      expect(Math.abs((told.bodyRise?.value ?? 0) - body.bodyRise)).toBeLessThan(20);
      if (told.insideLeg) expect(Math.abs(told.insideLeg.value - body.insideLeg)).toBeLessThan(30);
    },
  );

  const drafted = draft(exampleProject);
  if (!drafted.ok) throw new Error('refused');
  const { front, back } = drafted.value.blocks;
  const numbers = { source: 'numbers', front: numbersOf(front), back: numbersOf(back) } as const;
  const { hipGirth: _hip, ...lacking } = exampleProject.body;
  const taking: Project = {
    ...exampleProject,
    block: numbers,
    body: { ...lacking, fromBlock: ['hipGirth', 'waistGirth'] },
  };

  it('is taken where no tape was, told as such, kept in the file, and never over a tape', () => {
    const result = draft(taking);
    if (!result.ok) throw new Error(result.problems.map(({ phrase }) => printPhrase(phrase, 'cm')).join());
    expect(result.value.body.waistGirth).toBe(exampleProject.body.waistGirth);
    expect(result.value.body.hipGirth).toBe(toldByBlocks(numbers).hipGirth?.value);
    expect(checksOf(result.value).find(({ id }) => id === 'measured')).toMatchObject({ verdict: 'doubtful' });
    const opened = openProject(saveProject(taking));
    expect(opened.ok && opened.value.body.fromBlock).toEqual(['hipGirth', 'waistGirth']);
    expect(opened.ok && opened.value.body).not.toHaveProperty('hipGirth');
  });

  it('is nothing once the blocks are drafted: then the tape is needed', () => {
    const result = draft({ ...taking, block: exampleProject.block });
    expect(!result.ok && result.problems.map(({ field }) => field)).toEqual(['body.hipGirth']);
  });

  it('says no inside leg where the block is cut short', () => {
    const short = {
      ...numbers.front,
      crotchToHem: 250,
      crotchToKnee: undefined,
      kneeWidth: undefined,
      grainKnee: undefined,
      inseam: undefined,
      side: undefined,
    };
    const cut = Object.fromEntries(Object.entries(short).filter(([, value]) => value !== undefined));
    expect(toldByBlocks({ ...numbers, front: cut, back: { ...cut, darts: [] } })).not.toHaveProperty('insideLeg');
  });
});
