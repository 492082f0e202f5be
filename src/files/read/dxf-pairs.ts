import { number, say } from '../../words';
import { refuseDrawing } from './place';

/** A thing of a DXF file: what it is, and its figures and words by their group codes, in their order. */
export interface DxfThing {
  readonly kind: string;
  readonly pairs: readonly DxfPair[];
}
export type DxfPair = readonly [code: number, value: string];

/** No word of a file is read any longer. */
const LONGEST = 250;
/** No thing of a drawing of blocks has more pairs; a curve of ten thousand points has as many. */
const MOST_PAIRS = 200_000;

/** Whether a file may be DXF: it begins with a section. */
export const isDxf = (text: string): boolean =>
  /^\s*(?:999\r?\n[^\n]*\n\s*)*0\s*\r?\n\s*SECTION\b/.test(text.slice(0, 4000));

/**
 * The things of a DXF file one after another, each with the pairs up to the next.
 *
 * @throws Refusal where a code isn’t a number, or a thing has more pairs than any drawing
 * @source the published DXF reference
 */
export function* dxfThings(text: string): Generator<DxfThing> {
  let at = text.charCodeAt(0) === 0xfeff ? 1 : 0;
  const line = (): string | undefined => {
    if (at >= text.length) return undefined;
    const end = text.indexOf('\n', at);
    const stop = end < 0 ? text.length : end;
    const read = text.slice(at, Math.min(stop, at + LONGEST));
    at = stop + 1;
    return read.trim();
  };
  let kind = '';
  let pairs: DxfPair[] = [];
  for (let code = line(); code !== undefined; code = line()) {
    const value = line();
    if (value === undefined) break;
    if (!/^-?\d{1,5}$/.test(code))
      refuseDrawing(code, say`is no DXF drawing that can be read: a group code isn’t a number.`);
    if (code === '0') {
      if (kind !== '') yield { kind, pairs };
      [kind, pairs] = [value.toUpperCase(), []];
    } else {
      if (pairs.length === MOST_PAIRS)
        refuseDrawing(
          undefined,
          say`has a line of more than ${number(MOST_PAIRS / 2, 0)} points, far more than a drawing of blocks.`,
        );
      pairs.push([Number(code), value]);
    }
  }
  if (kind !== '') yield { kind, pairs };
}

/** The first value of a code as a number; NaN where it is none. */
export const figure = (thing: DxfThing, code: number, otherwise: number): number => {
  const found = thing.pairs.find(([one]) => one === code);
  return found ? Number(found[1] === '' ? Number.NaN : found[1]) : otherwise;
};

/** All values of a code as numbers. */
export const figures = ({ pairs }: DxfThing, code: number): readonly number[] =>
  pairs.flatMap(([one, value]) => (one === code ? [Number(value === '' ? Number.NaN : value)] : []));

/** The first value of a code as a word. */
export const word = ({ pairs }: DxfThing, code: number): string => pairs.find(([one]) => one === code)?.[1] ?? '';
