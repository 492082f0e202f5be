import { ASKED_KEYS, BLOCK_TOLD_KEYS, ESTIMATED, type Measurement, measurements } from '../src/body';
import {
  FIELDS,
  FIELDS_BY_PATH,
  type Field,
  fieldName,
  LONGEST_TEXT,
  MAY_BE_NONE,
  usualValue,
} from '../src/project/fields';
import { fieldSentence } from '../src/project/fields/sentences';
import { VERSION } from '../src/project/migrate';
import {
  BLOCK_EDGES,
  DART_LIMITS,
  FARTHEST,
  MOST_DARTS,
  MOST_EDGE_CURVES,
  PAPER_SEAMS,
  TAPE_LENGTHS,
  TRACED_SOURCES,
  TRUINGS,
  WIDEST_ON_PAPER,
} from '../src/trace';
import { printPhrase, said, words } from '../src/words';

/** A JSON Schema, or a part of one. */
export type JsonSchema = Readonly<Record<string, unknown>>;

/** The dialect that most editors know (an open standard). */
export const DIALECT = 'http://json-schema.org/draft-07/schema#';

/** Unknown fields are kept, so nothing is closed. */
const group = (properties: Readonly<Record<string, JsonSchema>>, more: JsonSchema = {}): JsonSchema => ({
  type: 'object',
  ...more,
  properties,
});
const figure = (lowest: number, highest: number): JsonSchema => ({ type: 'number', minimum: lowest, maximum: highest });

function valueSchema(field: Field): JsonSchema {
  switch (field.kind) {
    case 'number':
      return figure(field.lowest, field.highest);
    case 'auto':
      return { anyOf: [{ const: 'auto' }, figure(field.lowest, field.highest)] };
    case 'oneOf':
    case 'count':
      return { enum: field.options };
    case 'nameOrLength': {
      const { key, lowest, highest } = field.own;
      return { anyOf: [{ enum: field.options }, group({ [key]: figure(lowest, highest) }, { required: [key] })] };
    }
    case 'yesOrNo':
    case 'answer':
      return { type: 'boolean' };
    case 'text':
      return { type: 'string', maxLength: LONGEST_TEXT };
  }
}

function fieldSchema(path: string, field: Field): JsonSchema {
  const usual = usualValue(field, 'cm');
  return {
    title: printPhrase(field.name, 'cm'),
    description: said(fieldSentence(path)),
    ...valueSchema(field),
    // Where it differs by the unit, no one default holds.
    ...(usual !== undefined && usual === usualValue(field, 'inch') ? { default: usual } : {}),
  };
}

function measurementSchema({ key, name, definition, lowest, highest }: Measurement): JsonSchema {
  const number = figure(lowest, highest);
  const asked = ASKED_KEYS.some((one) => one === key);
  return {
    title: words`${name}`,
    description: words`${definition}`,
    ...(asked ? { anyOf: [{ const: ESTIMATED }, number] } : number),
  };
}

/** The properties that stand at a place of the file, groups within groups too. */
function propertiesAt(place: string): Readonly<Record<string, JsonSchema>> {
  const found: Record<string, JsonSchema> = {};
  for (const [path, field] of FIELDS_BY_PATH) {
    if (!path.startsWith(place)) continue;
    const [key = '', ...rest] = path.slice(place.length).split('.');
    if (rest.length === 0) found[key] = fieldSchema(path, field);
    else found[key] ??= groupSchema(`${place}${key}`);
  }
  return found;
}

function groupSchema(path: string): JsonSchema {
  if (path === 'block') return { anyOf: [draftedSchema(), tracedSchema(), numberedSchema()] };
  const schema = group(propertiesAt(`${path}.`));
  return MAY_BE_NONE.includes(path) ? { anyOf: [{ type: 'null' }, schema], default: null } : schema;
}

/** Blocks that are drafted; those that were brought have lines of their own. */
const draftedSchema = (): JsonSchema =>
  group({ ...propertiesAt('block.'), source: { enum: ['drafted'], default: 'drafted' } });

function tracedSchema(): JsonSchema {
  const coordinate = figure(-FARTHEST, FARTHEST);
  const list = (items: JsonSchema, count: number): JsonSchema => ({
    type: 'array',
    items,
    minItems: count,
    maxItems: count,
  });
  const point = list(coordinate, 2);
  const edge: JsonSchema = { type: 'array', items: list(point, 4), maxItems: MOST_EDGE_CURVES };
  const block = group(
    {
      edges: group(Object.fromEntries(BLOCK_EDGES.map((name) => [name, edge])), { required: BLOCK_EDGES }),
      grainline: list(point, 2),
      hipLevel: coordinate,
      kneeLevel: coordinate,
    },
    { required: ['edges', 'grainline', 'hipLevel'] },
  );
  return group(
    { source: { enum: TRACED_SOURCES }, front: block, back: block, ...broughtProperties() },
    { required: ['source', 'front', 'back'] },
  );
}

/** What is done to brought blocks of any source. */
const broughtProperties = (): Readonly<Record<string, JsonSchema>> => ({
  allowances: group(
    Object.fromEntries(
      PAPER_SEAMS.map((seam) => [
        seam,
        { title: printPhrase(fieldName(`block.allowances.${seam}`), 'cm'), ...figure(0, WIDEST_ON_PAPER) },
      ]),
    ),
  ),
  trued: { type: 'array', items: { enum: TRUINGS }, uniqueItems: true },
  hipEase: fieldSchema('block.hipEase', FIELDS.block.hipEase),
  waistEase: fieldSchema('block.waistEase', FIELDS.block.waistEase),
});

/** Blocks by a table of tape measurements; what was not measured is left out. */
function numberedSchema(): JsonSchema {
  const limits = Object.entries(DART_LIMITS).map(
    ([key, { lowest, highest }]) => [key, figure(lowest, highest)] as const,
  );
  const dart = group(Object.fromEntries(limits), { required: Object.keys(DART_LIMITS) });
  const table = (part: 'front' | 'back') =>
    group({
      ...Object.fromEntries(
        TAPE_LENGTHS.map(({ key, lowest, highest }) => [
          key,
          { title: printPhrase(fieldName(`block.${part}.${key}`), 'cm'), ...figure(lowest, highest) },
        ]),
      ),
      darts: { type: 'array', items: dart, maxItems: MOST_DARTS },
    });
  return group(
    { source: { const: 'numbers' }, front: table('front'), back: table('back'), ...broughtProperties() },
    { required: ['source', 'front', 'back'] },
  );
}

const mayBeTold = (key: Measurement['key']): boolean => BLOCK_TOLD_KEYS.some((one) => one === key);

/** A needed measurement stands there, or another in its place, or it is taken from brought blocks: one is enough. */
function neededSchema({ key, inPlace }: Measurement): readonly JsonSchema[] {
  const told = { required: ['fromBlock'], properties: { fromBlock: { contains: { const: key } } } };
  const ways = [{ required: [key] }, ...(inPlace ? [{ required: [inPlace] }] : []), ...(mayBeTold(key) ? [told] : [])];
  return ways.length > 1 ? [{ anyOf: ways }] : [];
}

/** The JSON Schema of the project file, from the catalogues of fields and of measurements. */
export function projectSchema(): JsonSchema {
  const { name, units, ...groups } = propertiesAt('');
  return {
    $schema: DIALECT,
    title: 'Legwork project',
    description: 'Lengths are millimetres, angles degrees, shares 0 to 1. Unknown fields are kept.',
    ...group(
      {
        format: { const: 'legwork-project' },
        version: { const: VERSION },
        ...(name ? { name } : {}),
        ...(units ? { units } : {}),
        body: group(
          {
            label: { type: 'string', maxLength: LONGEST_TEXT, default: 'Body' },
            nappy: { type: 'boolean' },
            fromBlock: { type: 'array', items: { enum: BLOCK_TOLD_KEYS }, uniqueItems: true },
            ...Object.fromEntries(measurements.map((one) => [one.key, measurementSchema(one)])),
          },
          {
            required: measurements
              .filter(({ key, required, inPlace }) => required && !inPlace && !mayBeTold(key))
              .map(({ key }) => key),
            allOf: measurements.filter(({ required }) => required).flatMap(neededSchema),
          },
        ),
        ...groups,
        lastPrint: {
          title: printPhrase(fieldName('lastPrint'), 'cm'),
          description:
            'The sheets as they were last printed. Programs write it; leave it out of what is written by hand.',
          type: 'object',
        },
      },
      { required: ['format', 'version', 'body'] },
    ),
  };
}
