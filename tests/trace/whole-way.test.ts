import { describe, expect, it } from 'vitest';
import { checksOf, type Draft, draft, exampleProject, type Project } from '../../src/project';
import {
  type BlockNumbers,
  type BroughtBlocks,
  blocksBrought,
  broughtTrued,
  mapPair,
  type NumbersPair,
  numbersOf,
  type Pair,
  type TapeKey,
  TRUINGS,
  type TracedPair,
  traceFromMarks,
} from '../../src/trace';
import { printPhrase } from '../../src/words';
import { judged } from '../fuzz/judge';
import { markedBlock } from './marks/marked-block';

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

interface Kind {
  readonly name: string;
  readonly front: Change;
  readonly back: Change;
  /** How far the handles of the waist lie lower, mm. */
  readonly hollow?: number;
}

/** What blocks of others are like, as changes to the tables of front and back. */
const KINDS: readonly Kind[] = [
  { name: 'as drafted', front: {}, back: {} },
  { name: 'without a knee', front: NO_KNEE, back: NO_KNEE },
  {
    name: 'cropped above the knee',
    front: { ...NO_KNEE, ...NO_EDGES, crotchToHem: () => 180, hemWidth: () => 300, grainHem: gone },
    back: { ...NO_KNEE, ...NO_EDGES, crotchToHem: () => 172, hemWidth: () => 340, grainHem: gone },
  },
  {
    name: 'with its waist at a yoke seam, lower and curved',
    hollow: 12,
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

const numbersFor = ({ front, back }: Kind): NumbersPair => ({
  front: changed(whole.front, front),
  back: changed(whole.back, back),
});

/** The same blocks as lines, their waist hollowed like the lower edge of a band. */
function linesFor(kind: Kind): TracedPair {
  const { pair } = broughtTrued({ source: 'numbers', ...numbersFor(kind) });
  return mapPair(pair, (block) => {
    const { waist } = block.edges;
    const hollowed = waist.map(([a, b, c, d]) => [a, down(b, kind.hollow), down(c, kind.hollow), d] as const);
    return { ...block, edges: { ...block.edges, waist: hollowed } };
  });
}
const down = ([x, y]: Pair, by = 0): Pair => [x, y + by];

/** And as marks on their photograph, a knee only where there is one. */
function marksFor(kind: Kind): TracedPair {
  const lines = linesFor(kind);
  const { front, back } = blocksBrought({ source: 'drawn', ...lines }, 260);
  return mapPair(lines, (block, part) => {
    const { landmarks, points } = markedBlock(part === 'front' ? front : back);
    const { knee: _, ...kneeless } = landmarks;
    const marks = block.kneeLevel === undefined ? { landmarks: kneeless, kneeless: true } : { landmarks };
    return traceFromMarks(part, { ...marks, points });
  });
}

const ROADS = {
  numbers: (kind: Kind) => ({ source: 'numbers', ...numbersFor(kind) }),
  drawn: (kind: Kind) => ({ source: 'drawn', ...linesFor(kind) }),
  photographed: (kind: Kind) => ({ source: 'photographed', ...marksFor(kind), trued: TRUINGS }),
} as const satisfies Readonly<Record<string, (kind: Kind) => BroughtBlocks>>;
const ways = KINDS.flatMap((kind, k) =>
  Object.entries(ROADS).map(([road, block], r) => ({
    name: `${kind.name}, ${road}`,
    kind,
    block,
    papers: (k + r) % 3 === 0,
    turn: k,
  })),
);

describe.each(ways)('a block $name', ({ kind, block, papers, turn }) => {
  const project: Project = { ...exampleProject, block: block(kind) };

  // Of each kind the files are made on one of the roads.
  it('goes the whole way, to its files and documents too', async () => {
    const { finds, refused } = await judged({ ...project }, papers ? { papers: turn } : 'all');
    expect({ finds, refused }).toEqual({ finds: [], refused: undefined });
  });

  it('has seams that meet, and is as wide at the hip as it was brought', () => {
    const own = drafted(project);
    const verdicts = Object.fromEntries(checksOf(own).map(({ id, verdict }) => [id, verdict]));
    for (const id of [
      'inseams-equal',
      'cut-line-simple',
      'stitching-line',
      'legs-meet',
      'traced-grains',
      'crotch-smooth',
    ])
      expect(['good', undefined], id).toContain(verdicts[id]);
    expect(verdicts.numbers).not.toBe('wrong');
    for (const part of ['front', 'back'] as const) {
      const wide = numbersFor(kind)[part].hipWidth ?? 0;
      expect(Math.abs(numbersOf(own.blocks[part]).hipWidth - wide), part).toBeLessThan(1.5);
    }
  });
});
