import * as v from 'valibot';
import { ASKED_KEYS, BLOCK_TOLD_KEYS, bodyProblems, ESTIMATED, type MeasurementKey, measurements } from '../body';
import type { Units } from '../length';
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
} from '../trace';
import { number, own, type Phrase, type Problem, say } from '../words';
import {
  FIELD_LIMITS,
  FIELDS,
  FIELDS_BY_PATH,
  type Field,
  figureWanted,
  GROUPS,
  type GroupName,
  type Limits,
  LONGEST_TEXT,
  MAY_BE_NONE,
  measurementWanted,
  ROOT_FIELDS,
  usualValue,
  wantedOf,
} from './fields';
import { lastPrint } from './last-print-schema';
import { VERSION } from './migrate';
import { toldToBody } from './told-to-body';
import type { Project } from './types';

// The library's messages are strings; what is wanted travels through them as a small code and becomes a phrase again.
const between = ({ lowest, highest }: Limits, code: string) =>
  v.pipe(v.number(code), v.finite(code), v.minValue(lowest, code), v.maxValue(highest, code));
const part = <const Entries extends v.ObjectEntries>(entries: Entries) => noList(v.looseObject(entries, 'part'));
/** To the library a list is an object too; here it would be taken for a group in which everything is left out. */
const noList = <const Group extends v.GenericSchema>(group: Group): Group => ({
  ...group,
  '~run': (dataset, config) => (Array.isArray(dataset.value) ? nowhere : group)['~run'](dataset, config),
});
const nowhere = v.never('part');
const shortText = (code: string) => v.pipe(v.string(code), v.maxLength(LONGEST_TEXT, code));

/** What a field of the catalogue takes; a refusal names it by its path. */
function valueSchema(path: string, field: Field): v.GenericSchema {
  const code = `field|${path}`;
  switch (field.kind) {
    case 'number':
      return between(field, code);
    case 'auto':
      return v.union([v.literal('auto'), between(field, code)], code);
    case 'oneOf':
    case 'count':
      return v.picklist(field.options, code);
    case 'nameOrLength': {
      const { key } = field.own;
      return v.union([v.picklist(field.options, code), part({ [key]: between(field.own, `${code}.${key}`) })], code);
    }
    case 'yesOrNo':
    case 'answer':
      return v.boolean(code);
    case 'text':
      return shortText(code);
  }
}

/** Every field of a group, each optional. */
function entriesOf(group: string, fields: Readonly<Record<string, Field>>, units: Units): v.ObjectEntries {
  const entry = ([key, field]: readonly [string, Field]) => {
    const path = group === '' ? key : `${group}.${key}`;
    return [key, v.optional(valueSchema(path, field), usualValue(field, units))] as const;
  };
  return Object.fromEntries(Object.entries(fields).map(entry));
}

/** Some names of a list, each at most once. */
const someOf = (names: readonly string[], code: string): v.GenericSchema =>
  v.pipe(
    v.array(v.picklist(names, code), code),
    v.check((chosen) => new Set(chosen).size === chosen.length, code),
  );

/** Its limits are looked at with the whole body; a few may be estimated in the place of a number. */
function measurementSchema(key: MeasurementKey): v.GenericSchema {
  const code = `limits|${key}`;
  const figure = v.pipe(v.number(code), v.finite(code));
  return mayBeAsked(key) ? v.union([v.literal(ESTIMATED), figure], code) : figure;
}
const mayBeAsked = (key: MeasurementKey): boolean => ASKED_KEYS.some((one) => one === key);

const bodyEntries = Object.fromEntries(measurements.map(({ key }) => [key, v.optional(measurementSchema(key))]));

const coordinate = between({ lowest: -FARTHEST, highest: FARTHEST }, 'coordinate');
const pair = v.strictTuple([coordinate, coordinate], 'pair');
const curvePoints = v.strictTuple([pair, pair, pair, pair], 'curve');

/** One fault says enough of an edge, which may hold hundreds of numbers. */
const edgeCurves = v.config(
  v.pipe(v.array(curvePoints, 'curves'), v.maxLength(MOST_EDGE_CURVES, `mostCurves|${MOST_EDGE_CURVES}`)),
  { abortEarly: true },
);

const tracedBlock = part({
  edges: part(Object.fromEntries(BLOCK_EDGES.map((name) => [name, edgeCurves]))),
  grainline: v.strictTuple([pair, pair], 'twoPoints'),
  hipLevel: coordinate,
  kneeLevel: v.optional(coordinate),
});

/** What is done to brought blocks of any source. */
const broughtEntries = {
  allowances: v.optional(
    part(
      Object.fromEntries(
        PAPER_SEAMS.map((seam) => [
          seam,
          v.optional(between({ lowest: 0, highest: WIDEST_ON_PAPER }, `field|block.allowances.${seam}`)),
        ]),
      ),
    ),
  ),
  trued: v.optional(someOf(TRUINGS, 'trued')),
  hipEase: v.optional(valueSchema('block.hipEase', FIELDS.block.hipEase)),
  waistEase: v.optional(valueSchema('block.waistEase', FIELDS.block.waistEase)),
};
const tracedBlocks = part({
  source: v.picklist(TRACED_SOURCES),
  front: tracedBlock,
  back: tracedBlock,
  ...broughtEntries,
});

const dart = part(
  Object.fromEntries(Object.entries(DART_LIMITS).map(([key, limits]) => [key, between(limits, `dart|${key}`)])),
);
/** A table of tape measurements; what was not measured is left out. */
const numbersOfPart = (name: 'front' | 'back') =>
  part({
    ...Object.fromEntries(
      TAPE_LENGTHS.map((one) => [one.key, v.optional(between(one, `field|block.${name}.${one.key}`))]),
    ),
    darts: v.optional(v.pipe(v.array(dart, 'darts'), v.maxLength(MOST_DARTS, 'darts'))),
  });
const numberedBlocks = part({
  source: v.literal('numbers'),
  front: numbersOfPart('front'),
  back: numbersOfPart('back'),
  ...broughtEntries,
});

function schemaFor(units: Units) {
  const draftedBlocks = part(entriesOf('block', FIELDS.block, units));
  const group = (name: GroupName): v.GenericSchema => {
    // A block is one of three kinds; which schema holds is decided by its source, so that problems name the right fields.
    if (name === 'block')
      return v.optional(
        v.lazy((block) => (isTraced(block) ? tracedBlocks : isNumbered(block) ? numberedBlocks : draftedBlocks)),
        {},
      );
    const fields = part(entriesOf(name, FIELDS[name], units));
    return MAY_BE_NONE.includes(name) ? v.optional(v.nullable(fields), null) : v.optional(fields, {});
  };
  return v.looseObject({
    format: v.literal('legwork-project'),
    version: v.literal(VERSION),
    ...entriesOf('', ROOT_FIELDS, units),
    body: part({
      label: v.optional(shortText('text'), 'Body'),
      nappy: v.optional(v.boolean('yesOrNo')),
      fromBlock: v.optional(someOf(BLOCK_TOLD_KEYS, 'fromBlock')),
      ...bodyEntries,
    }),
    ...Object.fromEntries(GROUPS.filter((name) => !name.includes('.')).map((name) => [name, group(name)])),
    sides: v.optional(
      v.nullable(
        part({
          left: v.optional(part(entriesOf('sides.left', FIELDS['sides.left'], units))),
          right: v.optional(part(entriesOf('sides.right', FIELDS['sides.right'], units))),
        }),
      ),
      null,
    ),
    lastPrint: v.optional(lastPrint),
  });
}

const sourceOf = (block: unknown): unknown => (block as { source?: unknown } | null)?.source;
const isTraced = (block: unknown): boolean => TRACED_SOURCES.some((source) => source === sourceOf(block));
const isNumbered = (block: unknown): boolean => sourceOf(block) === 'numbers';

/** The schema by units, whose default seam allowances differ. */
export const SCHEMAS = { cm: schemaFor('cm'), inch: schemaFor('inch') } as const;

/**
 * Fills in a project's defaults and finds everything in it that can't be drafted.
 *
 * @param raw the parsed file, or a project being edited
 * @returns the project with unknown fields kept, and its problems; with problems the project must not be used
 */
export function checkedProject(raw: unknown): { readonly project: Project; readonly problems: readonly Problem[] } {
  const units =
    typeof raw === 'object' && raw !== null && (raw as { units?: unknown }).units === 'inch' ? 'inch' : 'cm';
  const result: v.SafeParseResult<v.GenericSchema> = v.safeParse(SCHEMAS[units], raw);
  if (result.issues) return { project: raw as Project, problems: result.issues.map(problemOf) };
  // Schema and type are both made of the catalogue: this is as much a project as its body, which is looked at next, is one.
  const project = result.output as Project;
  return { project, problems: bodyProblems(project.body, toldToBody(project)) };
}

function problemOf(issue: v.BaseIssue<unknown>): Problem {
  // Inside a union the deepest mismatch says more than “none of these”.
  const inner = (issue.issues ?? []).find((i) => (i.path?.length ?? 0) > 0);
  const path = [...(issue.path ?? []), ...(inner?.path ?? [])].map((item) => String(item.key));
  const field = path.join('.') || 'project';
  const { input, message, expected } = inner ?? issue;
  // The name of a field is expected where the whole field is missing; the message is that of the group round it.
  const absent = input === undefined && expected?.startsWith('"');
  return { field, value: input, phrase: absent ? say`must not be left out.` : phraseOf(message) };
}

function phraseOf(code: string): Phrase {
  const [kind = '', which = ''] = code.split('|');
  if (kind === 'field') return say`must be ${wantedAt(which)}.`;
  if (kind === 'coordinate') return say`must be ${figureWanted({ unit: 'mm', lowest: -FARTHEST, highest: FARTHEST })}.`;
  if (kind === 'limits') {
    const m = measurements.find((one) => one.key === which);
    if (m) return say`must be ${measurementWanted(m)}.`;
  }
  if (kind === 'lastPrint') return say`is not what a print leaves behind.`;
  if (kind === 'yesOrNo') return say`must be true or false.`;
  if (kind === 'text') return say`must be ${wantedOf(ROOT_FIELDS.name)}.`;
  if (kind === 'part') return say`must be an object in braces.`;
  if (kind === 'pair') return say`must be a point: [x, y] in millimetres.`;
  if (kind === 'twoPoints') return say`must be two points: [[x, y], [x, y]] in millimetres.`;
  if (kind === 'curve') return say`must be four points: start, two handles, end.`;
  if (kind === 'mostCurves')
    return say`has more curves than the ${number(Number(which), 0)} that an edge may have; draw it with fewer points.`;
  if (kind === 'dart')
    return say`must be ${figureWanted({ unit: 'mm', ...DART_LIMITS[which as keyof typeof DART_LIMITS] })}.`;
  if (kind === 'trued' || kind === 'fromBlock') {
    const names = kind === 'trued' ? TRUINGS : BLOCK_TOLD_KEYS;
    return say`must be a list of ${own(names.join(', '))}, each at most once.`;
  }
  if (kind === 'darts') return say`must be a list of at most ${number(MOST_DARTS, 0)} darts.`;
  if (kind === 'curves') return say`must be a list of curves.`;
  return say`has no place here.`;
}

/** What is wanted of a field of the catalogue, or of the length within one. */
function wantedAt(path: string): Phrase {
  const field = FIELDS_BY_PATH.get(path);
  return field ? wantedOf(field) : figureWanted({ unit: 'mm', lowest: 0, highest: 0, ...FIELD_LIMITS[path] });
}
