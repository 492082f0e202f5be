import { readDrawing } from '../../../src/files/read/drawing';
import { edgeLength, outlineEdge } from '../../../src/plane';
import {
  BLOCK_EDGES,
  type BlocksTaken,
  blocksFromTrace,
  blocksTaken,
  type Drawing,
  type TracedPair,
} from '../../../src/trace';
import { printProblem } from '../../../src/words';

/** How long each edge of the fitted blocks of the first example is, millimetres, as the kept drawings hold them. */
const LENGTHS = {
  front: { waist: 234.114, centre: 214.27, crotch: 113.463, inseam: 670.036, hem: 225.386, side: 974.153 },
  back: { waist: 227.448, centre: 247.318, crotch: 168.949, inseam: 670.036, hem: 245.386, side: 978.067 },
} as const;

export async function drawingOf(text: string): Promise<Drawing> {
  const read = await readDrawing(text);
  if (!read.ok) throw new Error(read.problems.map((one) => printProblem(one, 'cm')).join('\n'));
  if (!('drawing' in read.value)) throw new Error('has names');
  return read.value.drawing;
}

export async function takenOf(text: string): Promise<BlocksTaken> {
  const taken = blocksTaken(await drawingOf(text));
  if (!taken.ok) throw new Error(taken.problems.map((one) => printProblem(one, 'cm')).join('\n'));
  return taken.value;
}

/** By how much each edge of a pair is longer than those of the first example; the centre line and the crotch curve also together. */
export function edgesOff(pair: TracedPair): Readonly<Record<string, number>> {
  const blocks = blocksFromTrace(pair.front, pair.back, 0);
  return Object.fromEntries(
    (['front', 'back'] as const).flatMap((part) => {
      const long = (name: (typeof BLOCK_EDGES)[number]) =>
        edgeLength(outlineEdge(blocks[part].edges, name)) - LENGTHS[part][name];
      return [
        ...BLOCK_EDGES.map((name) => [`${part} ${name}`, long(name)] as const),
        [`${part} centre and crotch`, long('centre') + long('crotch')] as const,
      ];
    }),
  );
}

/** Those edges that are off by more than `within`, millimetres. */
export const edgesWrong = (pair: TracedPair, within = 0.05): readonly string[] =>
  Object.entries(edgesOff(pair)).flatMap(([name, off]) =>
    Math.abs(off) <= within ? [] : [`${name} is off by ${off.toFixed(3)}`],
  );
