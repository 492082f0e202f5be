import { type BlockOptions, draftBlocks } from '../../block';
import { prepareBody } from '../../body';
import type { Mm } from '../../length';
import { numbersOf } from './measured';
import type { PlaceKey } from './shape';
import type { BlockNumbers, NumbersPair, TapeKey } from './table';

/** A middling body: the block drafted for it has the usual proportions. @source ANSUR II, 2014, medians, rounded */
const MIDDLING = { label: '', waistGirth: 860, hipGirth: 1020, hipDepth: 190, bodyRise: 260, insideLeg: 790 };
/** As a block is drafted where nothing was chosen. @source practice: 2 in of hip ease */
const OPTIONS: BlockOptions = { hipEase: 50.8, waistEase: 25, riseEase: 'auto', crotchEase: 'auto', balance: 10 };

type Part = keyof NumbersPair;
type Usual = Readonly<Record<Part, Required<BlockNumbers>>>;
let drafted: Usual | undefined;

/** The table of the usual block, drafted when it is first asked for. */
function usualBlock(): Usual {
  if (!drafted) {
    const { front, back } = draftBlocks(prepareBody(MIDDLING), OPTIONS).blocks;
    drafted = { front: numbersOf(front), back: numbersOf(back) };
  }
  return drafted;
}

const HEIGHTS = ['waistToHip', 'hipToCrotch', 'crotchToHem'] as const;

/**
 * What the corners of a block rest on where it was not measured: the proportions of a usual block, taken from what was
 * measured of this one, or else of the other one of the pair.
 *
 * @param part whose numbers
 * @param pair what was measured of both
 * @returns a length for each place, those that were measured as they were
 * @source practice
 */
export function usualPlaces(part: Part, pair: NumbersPair): Readonly<Record<PlaceKey, Mm>> {
  const usual = usualBlock()[part];
  const [given, beside] = [pair[part], part === 'front' ? pair.back : pair.front];
  const besideUsual = usualBlock()[part === 'front' ? 'back' : 'front'];
  /** A length from others that were measured, by what they are to it on the usual block: the first that there is. */
  const from = (key: TapeKey, ...others: readonly TapeKey[]): Mm | undefined => {
    const own = others.find((one) => given[one] !== undefined);
    if (own) return usual[key] * ((given[own] as Mm) / usual[own]);
    return beside[key] === undefined ? undefined : usual[key] * (beside[key] / besideUsual[key]);
  };
  const tallness = ratio(HEIGHTS, [given, usual], [beside, besideUsual]);
  const height = (key: TapeKey, ...others: readonly TapeKey[]): Mm =>
    given[key] ?? from(key, ...others) ?? usual[key] * tallness;
  const hipWidth = given.hipWidth ?? from('hipWidth', 'crotchWidth', 'waistWidth', 'waistEdge') ?? usual.hipWidth;
  const wide = (key: TapeKey): Mm => given[key] ?? usual[key] * (hipWidth / usual.hipWidth);
  const crotchToHem = height('crotchToHem', 'inseam');
  const hipToCrotch = height('hipToCrotch');
  const crotchToKnee = given.crotchToKnee ?? crotchToHem * (usual.crotchToKnee / usual.crotchToHem);
  const crotchWidth = given.crotchWidth ?? hipWidth + wide('fork');
  const hemWidth = given.hemWidth ?? from('hemWidth') ?? wide('hemWidth');
  const narrows = (usual.kneeWidth - usual.hemWidth) / (usual.crotchWidth - usual.hemWidth);
  const kneeWidth = given.kneeWidth ?? hemWidth + narrows * (crotchWidth - hemWidth);
  return {
    waistToHip: height('waistToHip'),
    hipToCrotch,
    crotchToKnee,
    crotchToHem,
    waistWidth: given.waistWidth ?? from('waistWidth', 'waistEdge', 'hipWidth') ?? wide('waistWidth'),
    hipWidth,
    kneeWidth,
    hemWidth,
    fork: wide('fork'),
    centreRise: wide('centreRise'),
    centreLean: wide('centreLean'),
    curveStart: given.curveStart ?? hipToCrotch * (usual.curveStart / usual.hipToCrotch),
    grainHip: wide('grainHip'),
    grainKnee: given.grainKnee ?? kneeWidth * (usual.grainKnee / usual.kneeWidth),
    grainHem: given.grainHem ?? hemWidth * (usual.grainHem / usual.hemWidth),
  };
}

/** How much larger than usual is what was measured of some lengths; 1 where none was. */
function ratio(keys: readonly TapeKey[], ...parts: readonly (readonly [BlockNumbers, Required<BlockNumbers>])[]) {
  const known = parts.flatMap(([given, usual]) =>
    keys.flatMap((key) => (given[key] === undefined ? [] : [{ has: given[key], usually: usual[key] }])),
  );
  if (known.length === 0) return 1;
  const sum = (of: (one: (typeof known)[number]) => Mm) => known.reduce((total, one) => total + of(one), 0);
  return sum(({ has }) => has) / sum(({ usually }) => usually);
}
