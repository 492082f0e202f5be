import { describe, expect, it } from 'vitest';
import { draftBlocks } from '../../src/block';
import { prepareBody } from '../../src/body';
import {
  centreStands,
  centresOf,
  finishedInseam,
  type JoinedBlocks,
  joinBlocks,
  type Leg,
  type LegChoices,
  legFrom,
  legOfSide,
  legWorking,
  NO_DIFFERENCES,
  type SideDifferences,
  sideWorking,
  spreadLeg,
} from '../../src/leg';
import { pathEnd, pathStart, type WorkingStep } from '../../src/plane';
import { printPhrase, say, UNSAID } from '../../src/words';

// What the working says and shows of the leg.

const body = prepareBody({ label: 'a', waistGirth: 742, hipGirth: 1020, hipDepth: 208, bodyRise: 272, insideLeg: 758 });
const { blocks } = draftBlocks(body, {
  hipEase: 50.8,
  waistEase: 25,
  riseEase: 'auto',
  crotchEase: 'auto',
  balance: 10,
});
const ANKLE = finishedInseam('ankle', body, blocks.riseEase);
const plain: LegChoices = {
  spread: 0,
  straighten: 0,
  straightenAutomatic: false,
  raiseWaist: 0,
  lowerCrotch: 0,
  inseam: ANKLE,
  ankleInseam: ANKLE,
  shape: 'pyjama',
  hemBody: body,
  kneesOut: 0,
};

function worked(some: Partial<LegChoices> = {}, lying: (joined: JoinedBlocks) => JoinedBlocks = (joined) => joined) {
  const choices = { ...plain, ...some };
  const joined = lying(spreadLeg(joinBlocks(blocks), choices.spread));
  return { joined, choices, leg: legFrom(joined, choices) };
}
/** The working of a leg; what is drawn of it may be told another way than it is. */
function told(some: Partial<LegChoices> = {}, lying?: (joined: JoinedBlocks) => JoinedBlocks, as: Partial<Leg> = {}) {
  const { joined, choices, leg } = worked(some, lying);
  const steps = legWorking({
    joined,
    leg: { ...leg, ...as },
    choices,
    leaning: centresOf(joined, 0, choices.raiseWaist),
    opening: 1050,
    needed: 1040,
    hem: 460,
    lengthWords: say`to the ankle`,
  });
  return { leg, steps, step: (id: string) => steps.find((one) => one.id === `leg.${id}`) };
}
const sentence = (step: WorkingStep | undefined) => printPhrase(step?.sentence ?? UNSAID, 'cm');
const formula = (step: WorkingStep | undefined) => printPhrase(step?.formula ?? UNSAID, 'cm');

describe('what an operation changed', () => {
  it('is told by the measures that change by half a millimetre and more', () => {
    const { step } = told({ spread: 25.4 });
    expect(formula(step('spread'))).toMatch(/^It changes hip by \+5\.1 cm, waist by \+5\.1 cm, thigh by \+2\.5 cm/);
    expect(formula(step('spread'))).toMatch(/\d cm\.$/);
    expect(formula(step('spread'))).not.toMatch(/inseam|crotch length/);
    expect(formula(step('straighten'))).toBe('No finished measure changes.');
  });

  it('is told of a raised waist, of a straightened back and of a shorter leg', () => {
    const { step } = told({ raiseWaist: 30, lowerCrotch: 10, straighten: 1, inseam: 500 });
    expect(formula(step('rise'))).toMatch(/^It changes .*crotch length by \+7\.6 cm\.$/);
    expect(formula(step('straighten'))).toMatch(/^It changes .*waist by \+/);
    expect(formula(step('length'))).toMatch(/inseam by [-−][\d.]+ cm\.$/);
  });
});

describe('the steps of the leg', () => {
  it('show the lines that they speak of', () => {
    const { leg, step } = told({ spread: 25.4 });
    for (const id of ['shape', 'length'])
      for (const part of ['front', 'back'] as const)
        expect(
          step(id)?.lines.map(({ curves }) => curves),
          `${id}, ${part}`,
        ).toContain(leg[part].inseam);
    expect(step('length')?.lines.map(({ curves }) => curves)).toContain(leg.hem);
    expect(step('waist-edge')?.lines.map(({ curves }) => curves)).toEqual([leg.waistEdge]);
    const [hip] = step('spread')?.lines ?? [];
    expect([pathStart(hip?.curves ?? []), pathEnd(hip?.curves ?? [])]).toEqual([leg.back.hipPoint, leg.front.hipPoint]);
  });

  it('say whether the join is spread, and that nothing was raised where nothing was', () => {
    expect(sentence(told().step('spread'))).toBe('The join is not spread.');
    expect(sentence(told({ spread: 25.4 }).step('spread'))).toMatch(
      /spread by 2\.5 cm.*grows by 2 × 2\.5 cm \+ rounding 0\.1 cm = 5\.1 cm/,
    );
    expect(told().step('rise')).toBeUndefined();
  });

  it('say where the side lines touch, and what was brought in line', () => {
    const lying = (as: Partial<JoinedBlocks>) => sentence(told({}, (joined) => ({ ...joined, ...as })).step('join'));
    expect(lying({})).toMatch(/touching at the hip\. The gaps/);
    expect(lying({ hipDifference: 4 })).toMatch(/touching at the hip\. The back’s hip level was 0\.4 cm off/);
    expect(lying({ gapAtHip: 3 })).toMatch(
      /where a side line bulges out; at the hip they stand 0\.3 cm apart\. The gaps/,
    );
  });

  it('count the darts that are not sewn', () => {
    const darted = (front: number, back: number) =>
      sentence(
        told({}, (joined) => ({
          ...joined,
          front: { ...joined.front, darts: Array.from({ length: front }, () => dart) },
          back: { ...joined.back, darts: Array.from({ length: back }, () => dart) },
        })).step('join'),
      );
    const dart = { left: { x: 0, y: 0 }, right: { x: 9, y: 0 }, tip: { x: 4, y: 90 } };
    expect(darted(0, 0)).toMatch(/there are no darts\.$/);
    expect(darted(0, 1)).toMatch(/the one dart is not sewn\.$/);
    expect(darted(1, 2)).toMatch(/the 3 darts are not sewn\.$/);
  });

  it('say how the waist edge was brought square, and how centre front stands', () => {
    const edge = (as: Partial<Leg>) => sentence(told({}, undefined, as).step('waist-edge'));
    expect(edge({ waistTurned: 0.01 })).toMatch(/its turning lies flat\.$/);
    expect(edge({ waistTurned: 1.5 })).toMatch(/turned by 1\.5° about centre front, .* square to both centre lines\.$/);
    expect(edge({ waistTurned: -1.5, waistLifted: 4 })).toMatch(
      /turned by 1\.5° .* and lifted by 0\.4 cm, so that centre back stays 1\.5 cm above the level of the side\.$/,
    );
    const { leg } = worked();
    const front = (by: number) =>
      sentence(
        told({}, undefined, {
          front: { ...leg.front, waistPoint: { ...leg.front.waistPoint, x: leg.front.curveEnd.x + by }, lean: -by },
        }).step('straighten'),
      );
    expect(front(0)).toMatch(/Centre front stands upright\./);
    expect(front(20)).toMatch(/Centre front leans outwards by 2 cm, and stays so\./);
    expect(front(-20)).toMatch(/Centre front leans inwards by 2 cm\./);
  });

  it('say why a hem is as wide as it is', () => {
    const hem = (girths: Partial<LegChoices['hemBody']>) =>
      sentence(told({ hemBody: { ...body, ...girths } }).step('shape'));
    expect(hem({})).toMatch(/to 0\.45 × foot .* \+ 0\.5 × knee .* = /);
    expect(hem({ footEntryGirth: 520, kneeGirth: 300 })).toMatch(
      /what the foot passes with room to spare, 52 cm \+ 4 cm = 56 cm/,
    );
    expect(hem({ footEntryGirth: 200, kneeGirth: 200, hipGirth: 450 })).toMatch(/start too steeply/);
  });
});

describe('how a centre stands', () => {
  const stands = (part: 'front' | 'back', x: number) =>
    printPhrase(centreStands(part, { curveEnd: { x: 0, y: 200 }, waistPoint: { x, y: 0 } }), 'cm');

  it('is upright, or leans inwards or outwards, on either side', () => {
    expect([stands('front', 0.05), stands('back', -0.05)]).toEqual(['stands upright', 'stands upright']);
    expect([stands('front', -29), stands('back', 29)]).toEqual(['leans 2.9 cm', 'leans 2.9 cm']);
    expect([stands('front', 31), stands('back', -31)]).toEqual(['leans 3.1 cm outwards', 'leans 3.1 cm outwards']);
  });
});

describe('the working of one side', () => {
  const { joined, choices, leg } = worked({ spread: 25.4 });
  const side = (more: Partial<SideDifferences>) => {
    const all = { ...NO_DIFFERENCES, ...more };
    return sideWorking('left', all, { before: leg, after: legOfSide(leg, joined, choices, all) });
  };

  it('says that it is alike, where it is', () => {
    expect(side({}).map(sentence)).toEqual(['The left leg is as the measurements say.']);
  });

  it('has a step for each difference, with the lines that it moved', () => {
    const steps = side({ fullerSeat: 10, higherHip: 12 });
    expect(steps.map(({ id }) => id)).toEqual(['leg.left.fullerSeat', 'leg.left.higherHip', 'leg.left.sewn']);
    expect(steps[0]?.lines.map(({ name }) => name)).toEqual(['centre back', 'back crotch']);
    expect(sentence(steps[1])).toMatch(/The left hip is higher by 12 mm|The left hip is higher by 1\.2 cm/);
    expect(steps[1]?.lines).toHaveLength(1);
    const names = side({ longerLeg: 10 })[0]?.lines.map(({ name }) => name) ?? [];
    expect(names).toEqual(['front inseam', 'back inseam', 'hem']);
  });

  it('says what differs, and by how much this leg’s lines do, and nothing of those that don’t', () => {
    const steps = side({ fullerHip: 20, longerLeg: 10 });
    expect(steps.map(({ id }) => id)).toEqual(['leg.left.fullerHip', 'leg.left.longerLeg', 'leg.left.sewn']);
    expect(formula(steps.at(-1))).toBe('This leg alone: waist +2 cm, hip +2 cm, thigh +2 cm, inseam +1 cm');
  });
});
