import { DIALECT, type JsonSchema } from './project-schema';

const number: JsonSchema = { type: 'number' };
const whole: JsonSchema = { type: 'integer' };
const text: JsonSchema = { type: 'string' };
const truth: JsonSchema = { type: 'boolean' };
const orNull = (schema: JsonSchema): JsonSchema => ({ anyOf: [schema, { type: 'null' }] });
const list = (items: JsonSchema): JsonSchema => ({ type: 'array', items });
const pair: JsonSchema = { ...list(number), minItems: 2, maxItems: 2 };
const oneOf = (...names: readonly string[]): JsonSchema => ({ enum: names });
/** Everything in it is always there, but what is named as optional. */
const object = (properties: Readonly<Record<string, JsonSchema>>, optional: readonly string[] = []): JsonSchema => ({
  type: 'object',
  required: Object.keys(properties).filter((key) => !optional.includes(key)),
  properties,
});

const line = object({ name: text, points: list(pair) });
const piece = object({
  name: text,
  cut: whole,
  mirrored: truth,
  stitchLine: list(object({ edge: text, points: list(pair) })),
  cutLine: list(object({ edge: text, allowance: number, points: list(pair) })),
  lines: list(line),
  folds: list(line),
  notches: list(object({ edge: text, at: pair, count: whole })),
  grainline: { ...list(pair), minItems: 2, maxItems: 2 },
});
const check = object({
  id: text,
  verdict: oneOf('good', 'doubtful', 'wrong'),
  measured: number,
  wanted: number,
  tolerance: number,
  unit: oneOf('mm', 'degrees', 'share', 'count'),
  reason: text,
  remedy: text,
});

const layout = oneOf('single', 'foldedLengthwise', 'foldedCrosswise');
const width = {
  width: number,
  layout,
  fits: truth,
  lengthNeeded: orNull(number),
  lowerBound: orNull(number),
  waste: orNull(number),
  toBuy: orNull(number),
};
const item = object({ id: text, name: text, howMuch: text, note: text });
const lay = object({
  ...width,
  instead: list(text),
  table: orNull(object({ width: number, length: number })),
  placements: list(
    object({
      piece: text,
      copies: list(whole),
      layer: oneOf('single', 'both', 'upper', 'fold'),
      mirrored: truth,
      turn: number,
      at: pair,
    }),
  ),
  widths: list(object(width)),
  savings: list(
    object({
      id: text,
      toBuy: number,
      saved: orNull(number),
      oneLength: truth,
      says: text,
      changes: list(object({ path: text, value: {} })),
    }),
  ),
  others: list(object({ kind: text, pieces: list(text), ...width })),
  shopping: list(item),
});

const box = object({ left: number, top: number, right: number, bottom: number });
const marks = list(object({ number: whole, at: pair, towards: text }));
const sheets = object({
  count: whole,
  columns: whole,
  rows: whole,
  lowerBound: number,
  paper: object({ name: text, width: number, height: number, margin: number, overlap: number }),
  scale: pair,
  places: list(object({ piece: text, turn: number, shift: pair })),
  list: list(
    object({
      label: text,
      row: whole,
      column: whole,
      window: box,
      marks,
      tips: list(object({ label: text, row: whole, column: whole, window: box, marks, turn: number, shift: pair })),
    }),
  ),
  controls: list(object({ piece: text, name: text, length: number })),
});
const caution = object({ id: text, title: text, sentence: text, source: text, raisedBy: list(text) });
const step = object({
  id: text,
  part: text,
  title: text,
  tasks: list(text),
  settings: list(text),
  check: text,
  minutes: whole,
});

/**
 * The JSON Schema of the report. A test holds reports against it, and wants nothing in them that it doesn't name.
 *
 * @param measures the names of the finished measures
 */
export const reportSchema = (measures: readonly string[]): JsonSchema => ({
  $schema: DIALECT,
  title: 'Legwork report',
  description: 'Lengths are millimetres, angles degrees, shares 0 to 1; sentences stand in the project’s own unit.',
  ...object({
    format: { const: 'legwork-report' },
    version: { const: 2 },
    measures: object(Object.fromEntries(measures.map((name) => [name, number]))),
    pieces: list(piece),
    checks: list(check),
    lay,
    sheets,
    cautions: list(caution),
    sewing: object({ minutes: whole, firstPairMinutes: whole, steps: list(step) }),
  }),
});
