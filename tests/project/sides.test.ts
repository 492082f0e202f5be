import { beforeAll, describe, expect, it } from 'vitest';
import { checksOfLegs } from '../../src/check';
import { checkLegsMeet } from '../../src/check/check-legs-meet';
import { cutCurves, HEM_FINISHES, isLeg, type Piece, WAIST_FINISHES } from '../../src/edges';
import { curveMap, distance, outlineArea, outlineCurves, pathLength } from '../../src/plane';
import {
  checksOf,
  clothOf,
  type Draft,
  draft,
  exampleProject,
  garmentOf,
  type Project,
  saveProject,
  workingOf,
} from '../../src/project';
import { sewingSteps, stepPicture } from '../../src/sewing';
import { printPhrase, printProblem, UNSAID } from '../../src/words';
import { example, moved, subjectOf, withCurves, withPiece } from '../check/subject';
import { pieceName } from '../names';
import { faultsOf } from '../sewing/faults';

const drafted = (change: Partial<Project>): Draft => {
  const result = draft({ ...exampleProject, ...change });
  if (!result.ok) throw new Error(result.problems.map((problem) => printProblem(problem, 'cm')).join('\n'));
  return result.value;
};
const side = (differences: object | null | undefined) => differences as NonNullable<Project['sides']>;
const names = ({ pieces }: Draft) => pieces.map(pieceName);
const leg = ({ pieces }: Draft, which: 'left' | 'right'): Piece => {
  const found = pieces.find(({ kind, side: its }) => kind === 'leg' && its === which);
  if (!found) throw new Error(`there is no leg ${which}`);
  return found;
};
const edgeOf = (piece: Piece, name: string) => pathLength(piece.stitchLine.find((e) => e.name === name)?.curves ?? []);

describe('a project whose sides are alike', () => {
  it.each([
    ['left out', undefined],
    ['null', null],
    ['empty', {}],
    ['nothing but noughts', { left: { fullerHip: 0, longerLeg: 0 }, right: {} }],
  ])('cuts one leg twice where they are %s', (_, sides) => {
    const one = drafted({ sides: side(sides) });
    expect(one.pieces).toEqual(drafted({}).pieces);
    expect(one.legs).toHaveLength(1);
    expect(checksOf(one).some(({ id }) => id === 'legs-meet')).toBe(false);
  });
});

describe('a hem that was chosen for both legs', () => {
  const hemmed = (hemGirth: number, length: Project['leg']['length'], sides: object) =>
    draft({ ...exampleProject, sides: side(sides), leg: { ...exampleProject.leg, shape: { hemGirth }, length } });
  const toldOf = (hemGirth: number, length: Project['leg']['length'], sides: object) => {
    const result = hemmed(hemGirth, length, sides);
    if (result.ok) throw new Error('not refused');
    expect(result.problems.map(({ field }) => field)).toEqual(['leg.shape.hemGirth']);
    return result.problems[0]?.phrase ?? UNSAID;
  };

  it('that can’t be reached is told with one that both legs reach, the wider too', () => {
    for (const sides of [{}, { right: { fullerSeat: 40 } }, { left: { fullerHip: 40 } }]) {
      const lengths = toldOf(120, { inseam: 380 }, sides).values.flatMap((part) => (isLength(part) ? [part.mm] : []));
      expect(lengths, JSON.stringify(sides)).toHaveLength(2);
      for (const [i, hem] of lengths.entries())
        expect(
          hemmed(hem + (i === 0 ? 0.01 : -0.01), { inseam: 380 }, sides).ok,
          `${hem}, ${JSON.stringify(sides)}`,
        ).toBe(true);
    }
  });

  it('is refused with a longer leg to help, where no hem does for both', () => {
    const told = printPhrase(toldOf(400, { inseam: 30 }, { left: { fullerHip: 60, fullerSeat: 60 } }), 'cm');
    expect(told).toBe('at this length no hem fits both legs; on a longer leg one would.');
  });
});

const isLength = (part: unknown): part is { readonly mm: number } =>
  typeof part === 'object' && part !== null && 'mm' in part;

describe('a pair whose legs differ', () => {
  const sides = side({ left: { fullerHip: 20, longerLeg: 12 }, right: { higherHip: 15 } });
  let pair: Draft;
  let folded: Draft;
  beforeAll(() => {
    pair = drafted({ sides, waist: { ...exampleProject.waist, finish: 'facedCasing' } });
    folded = drafted({ sides, cloth: { ...exampleProject.cloth, layout: 'foldedLengthwise', width: 1800 } });
  });

  it('has a piece for each leg, cut once, and so has what is shaped like them', () => {
    expect(names(pair)).toEqual(['leg left', 'leg right', 'waist facing left', 'waist facing right']);
    for (const { cut, mirrored } of pair.pieces) expect([cut, mirrored]).toEqual([1, false]);
    expect(names(drafted({ sides, hem: { ...exampleProject.hem, finish: 'ribCuff' } }))).toEqual([
      'leg left',
      'leg right',
      'cuff',
    ]);
  });

  it('draws the left leg mirrored, clockwise like all others, so that both lie printed side up', () => {
    const [left, right] = [leg(pair, 'left'), leg(pair, 'right')];
    for (const piece of [left, right]) expect(outlineArea(outlineCurves(piece.stitchLine))).toBeGreaterThan(0);
    const reach = (piece: Piece, edge: string) =>
      Math.sign(piece.stitchLine.find(({ name }) => name === edge)?.curves[0]?.[0].x ?? 0);
    expect([reach(left, 'crotchFront'), reach(right, 'crotchFront')]).toEqual([-1, 1]);
    left.stitchLine.forEach(({ curves }, i, all) => {
      const next = all[(i + 1) % all.length]?.curves[0]?.[0];
      expect(distance(curves.at(-1)?.[3] ?? { x: 0, y: 0 }, next ?? { x: 9, y: 9 })).toBeLessThan(1e-6);
    });
  });

  it('says on each leg whose it is, once, and how it lies', () => {
    for (const which of ['left', 'right'] as const) {
      const words = leg(pair, which).texts.map(({ text }) => text);
      expect(words).toContain(`leg ${which} · cut 1`);
      expect(words).toContain(`${which} leg`);
      expect(words).toContain('this side up');
      expect(words.join()).not.toMatch(/cut 2|mirrored/);
    }
  });

  it('sews left to right: crotch seams equally long, front to front and back to back', () => {
    for (const edge of ['crotchFront', 'crotchBack', 'centreFront', 'centreBack'])
      expect(Math.abs(edgeOf(leg(pair, 'left'), edge) - edgeOf(leg(pair, 'right'), edge))).toBeLessThan(0.05);
    expect(checksOf(pair).find(({ id }) => id === 'legs-meet')?.verdict).toBe('good');
    expect(edgeOf(leg(pair, 'left'), 'inseamFront') - edgeOf(leg(pair, 'right'), 'inseamFront')).toBeCloseTo(12, 3);
  });

  it('finds legs that would not meet', () => {
    const whole = subjectOf(example);
    const longer = withPiece(whole, (piece) => ({
      ...piece,
      stitchLine: withCurves(piece.stitchLine, 'crotchBack', (curves) =>
        moved(curves, ({ x, y }) => ({ x: 1.02 * x, y })),
      ),
    }));
    expect(checkLegsMeet(whole, whole).verdict).toBe('good');
    const check = checkLegsMeet(whole, longer);
    expect(check.verdict).toBe('wrong');
    expect(printPhrase(check.reason, 'cm')).toMatch(/^The back crotch curve differs by \d/);
    const both = checksOfLegs([
      { ...whole, side: 'left' },
      { ...longer, side: 'right' },
    ]);
    expect(both.find(({ id }) => id === 'legs-meet')?.verdict).toBe('wrong');
  });

  it('counts both legs at waist and hip', () => {
    const one = drafted({ waist: { ...exampleProject.waist, finish: 'facedCasing' } });
    expect(pair.measures.hipGirthFinished - one.measures.hipGirthFinished).toBeCloseTo(20, 3);
    expect(pair.measures.waistOpening - one.measures.waistOpening).toBeGreaterThan(20);
    expect(pair.measures.waistOpening - one.measures.waistOpening).toBeLessThan(24);
    expect(pair.legs.map(({ measures }) => measures.inseamFront)).toEqual([
      expect.closeTo(one.measures.inseamFront + 12, 3),
      expect.closeTo(one.measures.inseamFront, 3),
    ]);
  });

  it('lies on a single layer, no leg turned over, whatever layout was chosen', () => {
    for (const d of [pair, folded]) {
      const { answer } = clothOf(d);
      if (!answer.fits) throw new Error('does not fit');
      expect(answer.lay.layout).toBe('single');
      expect(answer.lay.placements.filter(({ mirrored }) => mirrored)).toEqual([]);
      expect(answer.lay.placements.map(({ piece }) => pieceName(piece)).sort()).toEqual([...names(d)].sort());
    }
  });

  it('takes hardly more cloth than the pair of legs alike does in one layer', () => {
    const length = (d: Draft) => {
      const { answer } = clothOf(d);
      return answer.fits ? answer.lay.lengthNeeded : Number.NaN;
    };
    const alike = drafted({ cloth: { ...exampleProject.cloth, layout: 'single' } });
    const little = drafted({ sides: side({ left: { longerLeg: 1 } }) });
    expect(Math.abs(length(little) - length(alike))).toBeLessThan(8);
  });

  it('tells that a casing folded over a higher hip does not lie flat, and what does', () => {
    const check = (d: Draft) => checksOf(d).find(({ id }) => id === 'turnings-flat');
    expect(check(folded)?.verdict).toBe('doubtful');
    expect(check(folded)?.fix?.changes).toEqual([{ path: 'waist.finish', value: 'facedCasing' }]);
    expect(printPhrase(check(folded)?.reason ?? UNSAID, 'cm')).toMatch(/^Right leg: /);
    expect(check(pair)?.verdict).toBe('good');
  });

  it('has a step of the working for each difference', () => {
    const ids = workingOf(pair)
      .map(({ id }) => id)
      .filter((id) => /^leg\.(left|right)\./.test(id));
    expect(ids).toEqual([
      'leg.left.fullerHip',
      'leg.left.longerLeg',
      'leg.left.sewn',
      'leg.right.higherHip',
      'leg.right.sewn',
    ]);
  });

  it('has every edge of both legs sewn once and finished once', () => {
    for (const d of [pair, folded]) {
      const garment = garmentOf(d);
      const steps = sewingSteps(garment);
      expect(faultsOf({ ...garment, pieces: d.pieces }, steps)).toEqual([]);
    }
  });

  it('has a casing of its own marked where it meets the legs, the left one first', () => {
    const d = drafted({ sides, waist: { ...exampleProject.waist, finish: 'separateCasing' } });
    const casing = d.pieces.find(({ kind }) => kind === 'casing');
    const [left, right] = [edgeOf(leg(d, 'left'), 'waist'), edgeOf(leg(d, 'right'), 'waist')];
    expect(edgeOf(casing as Piece, 'lower')).toBeCloseTo(left + right, 3);
    const along = casing?.notches.filter(({ edge }) => edge === 'lower').map(({ at }) => at.y);
    expect(along).toEqual([left / 2, left, left + right / 2].map((at) => expect.closeTo(at, 3)));
    expect(casing?.texts.map(({ text }) => text)).toContain('this half to the left leg');
  });

  it('is sewn whole with every finish of waist and hem, and each step has its picture', () => {
    const faults: string[] = [];
    for (const waist of WAIST_FINISHES)
      for (const hem of HEM_FINISHES) {
        const d = drafted({
          sides,
          waist: { ...exampleProject.waist, finish: waist },
          hem: { ...exampleProject.hem, finish: hem },
        });
        const garment = garmentOf(d);
        const steps = sewingSteps(garment);
        for (const fault of faultsOf({ ...garment, pieces: d.pieces }, steps)) faults.push(`${waist} ${hem}: ${fault}`);
        if (waist === WAIST_FINISHES[0])
          for (const { id, scene } of steps)
            if (/NaN|null/.test(JSON.stringify(stepPicture(garment, scene))))
              faults.push(`${hem}: ${id} has no picture`);
      }
    expect(faults).toEqual([]);
  });

  it('is the same when it is opened again', () => {
    expect(JSON.parse(saveProject(pair.project)).sides).toEqual(pair.project.sides);
  });
});

describe('left and right the other way round', () => {
  it('gives the same two pieces, mirrored', () => {
    const more = { fullerHip: 16, higherHip: 8, longerLeg: 10 };
    const [a, b] = [drafted({ sides: side({ left: more }) }), drafted({ sides: side({ right: more }) })];
    const over = (piece: Piece) => cutCurves(piece).map((curve) => curveMap(curve, ({ x, y }) => ({ x: -x, y })));
    for (const [one, other] of [
      [leg(a, 'left'), leg(b, 'right')],
      [leg(a, 'right'), leg(b, 'left')],
    ] as const) {
      expect(isLeg(one) && isLeg(other)).toBe(true);
      expect(Math.abs(outlineArea(over(one)))).toBeCloseTo(Math.abs(outlineArea(cutCurves(other))), 3);
    }
  });
});
