import { describe, expect, it } from 'vitest';
import {
  type BlockOptions,
  blocksCorrected,
  blockWorking,
  correctionMoves,
  correctionsWorking,
  draftBlocks,
  NO_CORRECTIONS,
  tracedWorking,
} from '../../src/block';
import { prepareBody } from '../../src/body';
import { fittedBlocks } from '../../src/leg';
import { curveBounds, outlineEdge, pathEnd, pathStart, type WorkingStep } from '../../src/plane';
import { printPhrase, UNSAID } from '../../src/words';

// What the working says and shows of the blocks: the lines of a step lie where its sentence says.

const OPTIONS: BlockOptions = { hipEase: 50.8, waistEase: 25, riseEase: 'auto', crotchEase: 'auto', balance: 10 };
const BODY = { label: 'round', waistGirth: 800, hipGirth: 1000, hipDepth: 200, bodyRise: 260, insideLeg: 780 };

const worked = (body: object = {}) => {
  const prepared = prepareBody({ ...BODY, ...body });
  const drafted = fittedBlocks(prepared, OPTIONS);
  const steps = blockWorking(drafted, prepared, OPTIONS);
  return { ...drafted, step: (id: string) => stepOf(steps, `blocks.${id}`) };
};
const stepOf = (steps: readonly WorkingStep[], id: string): WorkingStep => {
  const found = steps.find((one) => one.id === id);
  if (!found) throw new Error(`no step ${id}`);
  return found;
};
const sentence = ({ sentence: said }: WorkingStep) => printPhrase(said, 'cm');
const formula = ({ formula: said }: WorkingStep) => printPhrase(said, 'cm');
const lineOf = ({ lines }: WorkingStep, nth: number) => lines[nth]?.curves ?? [];

describe('the lines of the working', () => {
  it('run from crotch point to crotch point, and along the widths and the forks', () => {
    const { proportions: p, step } = worked();
    const [front, back] = [p.frontWidth + p.extensionFront, -p.backWidth - p.extensionBack];
    for (const level of ['crotch-line', 'hip-line', 'knee']) {
      const line = lineOf(step(level), 0);
      expect([pathStart(line).x, pathEnd(line).x], level).toEqual([back, front]);
    }
    expect([0, 1].map((nth) => pathEnd(lineOf(step('widths'), nth)).x)).toEqual([p.frontWidth, -p.backWidth]);
    expect([0, 1].map((nth) => pathStart(lineOf(step('extensions'), nth)).x)).toEqual([p.frontWidth, -p.backWidth]);
    expect([0, 1].map((nth) => pathEnd(lineOf(step('extensions'), nth)).x)).toEqual([front, back]);
  });

  it('have names of their own, each dart too', () => {
    const { step, blocks } = worked({ waistGirth: 640 });
    expect(blocks.front.darts.length).toBeGreaterThan(0);
    expect(blocks.back.darts.length).toBeGreaterThan(1);
    const names = step('shaping').lines.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
    const [dart] = blocks.back.darts;
    const bounds = lineOf(step('shaping'), names.length - blocks.back.darts.length).map(curveBounds);
    expect(Math.max(...bounds.map(({ bottom }) => bottom))).toBeCloseTo(dart?.tip.y ?? Number.NaN, 9);
  });
});

describe('the working says', () => {
  it('whether centre front drops or, over a belly, rises', () => {
    expect(sentence(worked().step('waist'))).toMatch(/at centre front it drops 0\.8 cm/);
    expect(sentence(worked({ waistGirth: 1100 }).step('waist'))).toMatch(/at centre front it rises 0\.6 cm/);
  });

  it('by how much the inseams are let out for a full thigh over a near knee, and nothing where they are not', () => {
    const plain = worked().step('knee');
    expect(`${sentence(plain)} ${formula(plain)}`).not.toMatch(/let out/);
    expect(formula(plain)).toMatch(/^knee [\d.]+ cm \+ [\d.]+ cm( [+−] rounding 0\.1 cm)? = [\d.]+ cm$/);
    const full = worked({ hipGirth: 1400, waistGirth: 1200, insideLeg: 640 }).step('knee');
    expect(sentence(full)).toMatch(/the inseams are let out by/);
    expect(formula(full)).toMatch(/^knee [\d.]+ cm \+ [\d.]+ cm \+ [\d.]+ cm( [+−] rounding 0\.1 cm)? = [\d.]+ cm$/);
  });

  it('where the hip line lies, and how far it was drawn from where it was measured', () => {
    const plain = worked().step('hip-line');
    expect(sentence(plain)).toBe('The hip line lies 20 cm below the waist, where the seat is fullest.');
    expect(plain.formula).toEqual(UNSAID);
    expect(sentence(worked({ hipDepth: 255 }).step('hip-line'))).toMatch(/drawn 24\.6 cm below .* 0\.9 cm higher/);
  });

  it('how wide the knee is, what it was let out counted in', () => {
    for (const body of [{}, { hipGirth: 1400, waistGirth: 1200, insideLeg: 640 }]) {
      const { step, blocks, proportions: p } = worked(body);
      const width = (part: 'front' | 'back', side: 'inseam' | 'side') =>
        Math.abs(pathEnd(outlineEdge(blocks[part].edges, side).curves.slice(0, 1)).x);
      const round = (['front', 'back'] as const).reduce((sum, part) => sum + 2 * width(part, 'inseam'), 0);
      const creases = 2 * (p.creaseFront + p.creaseBack);
      // From the crease to the inseam a block is half as wide as it would be, were it let out on both sides.
      const letOut = (round - creases - p.kneeFront - p.kneeBack) / 2;
      const told = /the block is ([\d.]+) cm round there/.exec(sentence(step('knee')))?.[1];
      expect(10 * Number(told)).toBeCloseTo(p.kneeFront + p.kneeBack + letOut, -1);
      expect(letOut > 1).toBe('hipGirth' in body);
    }
  });

  it('nothing of a fit where no crotch length was measured', () => {
    const { step } = worked();
    expect(formula(step('crotch-line'))).toMatch(/ease 3\.1 cm = 29\.1 cm\. Source/);
    expect(formula(step('extensions'))).toMatch(/the widths without a belly\. Source/);
    expect(() => step('crotch-fit')).toThrow();
  });

  it('each stage that a long and a short crotch length went through, and which way', () => {
    const long = worked({ crotchLength: 900 });
    expect(formula(long.step('crotch-fit'))).toMatch(
      /^moved: the waist up .*, then the crotch line down by 2\.5 cm, then longer forks$/,
    );
    expect(formula(long.step('crotch-line'))).toMatch(/ \+ crotch fit 2\.5 cm/);
    const short = worked({ crotchLength: 560 });
    expect(formula(short.step('crotch-fit'))).toMatch(
      /^moved: the waist down .*, then the crotch line up by 1 cm, then shorter forks$/,
    );
    expect(formula(short.step('crotch-line'))).toMatch(/ − crotch fit 1 cm/);
    expect(formula(short.step('extensions'))).toMatch(/the crotch fit moved them by/);
  });
});

describe('the working of blocks that were brought along', () => {
  it('says what they are, and shows them whole', () => {
    const { blocks } = draftBlocks(prepareBody(BODY), OPTIONS);
    const steps = tracedWorking(blocks);
    expect(steps.map(({ id, station }) => [id, station])).toEqual([
      ['blocks.brought', 'blocks'],
      ['blocks.brought-inseams', 'blocks'],
    ]);
    const [brought, inseams] = steps as [WorkingStep, WorkingStep];
    expect(sentence(brought)).toMatch(/the crotch lies 29\.1 cm below the waist .* 6\.6 cm in front and 12\.3 cm/);
    expect([brought.formula, inseams.formula]).toEqual([UNSAID, UNSAID]);
    expect(brought.lines.map(({ curves }) => curves)).toEqual(
      [...blocks.front.edges, ...blocks.back.edges].map(({ curves }) => curves),
    );
    expect(inseams.lines).toHaveLength(2);
  });
});

describe('the working of a correction', () => {
  it('shows as many lines before as corrected, each called so', () => {
    const { blocks } = draftBlocks(prepareBody(BODY), OPTIONS);
    const seen = { ...NO_CORRECTIONS, swayBack: 10 };
    const moves = correctionMoves(seen, 0);
    const [step] = correctionsWorking(blocks, blocksCorrected(blocks, moves.swayBack), seen, moves);
    const names = step?.lines.map(({ name }) => name) ?? [];
    expect(names.filter((name) => name.endsWith('before'))).toHaveLength(8);
    expect(names.filter((name) => name.endsWith('corrected'))).toHaveLength(8);
  });

  it('says what was seen and by how much each place was moved for it', () => {
    const { blocks } = draftBlocks(prepareBody(BODY), OPTIONS);
    const said = (some: Partial<typeof NO_CORRECTIONS>, room: number) => {
      const seen = { ...NO_CORRECTIONS, ...some };
      return sentence(correctionsWorking(blocks, blocks, seen, correctionMoves(seen, room))[0] as WorkingStep);
    };
    expect(said({ sittingPull: 20 }, 30)).toBe(
      'It pulls down when sitting: centre back is 2 cm higher. Centre front stays.',
    );
    expect(said({ sittingPull: 20 }, 12)).toMatch(
      /1\.2 cm higher, and since .* the back extension is 0\.8 cm longer\./,
    );
    expect(said({ seated: 40 }, 100)).toMatch(
      /centre front is 2 cm lower.*centre back 2 cm higher.*leg is 2 cm longer/,
    );
    expect(said({ seated: 40 }, 100)).not.toMatch(/extension/);
    expect(said({ seated: 40 }, 30)).toMatch(/centre back [\d.]+ cm higher.*back extension is [\d.]+ cm longer/);
    expect(said({ knockKnees: 8 }, 0)).toMatch(/let out there by 0\.8 cm/);
    expect(said({ knockKnees: -8 }, 0)).toMatch(/let in there by 0\.8 cm/);
  });
});
