import { describe, expect, it } from 'vitest';
import { checksOf, type Draft, draft, exampleProject, type Project } from '../../../src/project';
import { type BlockNumbers, type NumbersPair, numbersOf, type TapeKey } from '../../../src/trace';
import { printPhrase } from '../../../src/words';

function drafted(project: Project): Draft {
  const result = draft(project);
  if (!result.ok)
    throw new Error(result.problems.map(({ field, phrase }) => `${field} ${printPhrase(phrase, 'cm')}`).join('\n'));
  return result.value;
}
const example = drafted(exampleProject);
const whole: NumbersPair = { front: numbersOf(example.blocks.front), back: numbersOf(example.blocks.back) };
type Change = Partial<Record<TapeKey, (was: number) => number | undefined>>;
const changed = (numbers: BlockNumbers, change: Change): BlockNumbers =>
  Object.fromEntries(
    Object.entries({
      ...numbers,
      ...Object.fromEntries(Object.entries(change).map(([key, to]) => [key, to(numbers[key as TapeKey] ?? 0)])),
    }).filter(([, value]) => value !== undefined),
  );
const gone = () => undefined;
const NO_KNEE: Change = { crotchToKnee: gone, kneeWidth: gone, grainKnee: gone };
const NO_EDGES: Change = { waistEdge: gone, inseam: gone, side: gone, crotchSeam: gone, crotchWidth: gone };

/** What blocks of others are like, as changes to the tables of front and back. */
const KINDS: readonly { readonly name: string; readonly front: Change; readonly back: Change }[] = [
  { name: 'as drafted', front: {}, back: {} },
  { name: 'without a knee', front: NO_KNEE, back: NO_KNEE },
  {
    name: 'cropped above the knee',
    front: { ...NO_KNEE, ...NO_EDGES, crotchToHem: () => 180, hemWidth: () => 300, grainHem: gone },
    back: { ...NO_KNEE, ...NO_EDGES, crotchToHem: () => 172, hemWidth: () => 340, grainHem: gone },
  },
  {
    name: 'with its waist at a yoke seam, lower and curved',
    front: { ...NO_EDGES, waistToHip: (was) => was - 60, waistWidth: (was) => was + 8, waistEdge: (was) => was + 12 },
    back: { ...NO_EDGES, waistToHip: (was) => was - 60, waistWidth: (was) => was + 10, waistEdge: (was) => was + 14 },
  },
  {
    name: 'with the side seam swung forward',
    front: {
      ...NO_EDGES,
      hipWidth: (was) => was - 25,
      waistWidth: (was) => was - 25,
      kneeWidth: (was) => was - 20,
      hemWidth: (was) => was - 20,
      grainHip: (was) => was - 25,
      grainKnee: (was) => was - 20,
      grainHem: (was) => was - 20,
    },
    back: {
      ...NO_EDGES,
      hipWidth: (was) => was + 25,
      waistWidth: (was) => was + 25,
      kneeWidth: (was) => was + 20,
      hemWidth: (was) => was + 20,
      grainHip: (was) => was + 25,
      grainKnee: (was) => was + 20,
      grainHem: (was) => was + 20,
    },
  },
];

describe.each(KINDS)('a block by numbers $name', ({ front, back }) => {
  const own = drafted({
    ...exampleProject,
    block: { source: 'numbers', front: changed(whole.front, front), back: changed(whole.back, back) },
  });

  it('goes the whole way to its pieces, with seams that meet', () => {
    expect(own.pieces.length).toBeGreaterThan(0);
    const verdicts = Object.fromEntries(checksOf(own).map(({ id, verdict }) => [id, verdict]));
    for (const id of ['inseams-equal', 'cut-line-simple', 'stitching-line', 'legs-meet', 'traced-grains'])
      expect(['good', undefined], id).toContain(verdicts[id]);
    expect(verdicts.numbers).not.toBe('wrong');
  });

  it('is drawn with the widths at the hip that were measured', () => {
    for (const part of ['front', 'back'] as const) {
      const block = own.project.block.source === 'numbers' ? own.project.block[part] : {};
      expect(Math.abs(numbersOf(own.blocks[part]).hipWidth - (block.hipWidth ?? 0)), part).toBeLessThan(1);
    }
  });
});
