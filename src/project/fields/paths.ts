import { type MeasurementKey, measurements } from '../../body';
import { FIELDS, ROOT_FIELDS } from './fields';
import type { Field, Limits, ValuesOf } from './kinds';

type Fields = typeof FIELDS;
export type GroupName = keyof Fields;
/** The groups in the order in which the file is written. */
export const GROUPS = Object.keys(FIELDS) as readonly GroupName[];

/** What the groups of a project hold, every default filled in. */
export type Choices = { readonly [Group in GroupName]: ValuesOf<Fields[Group]> };

/** The dotted path of a choice that a project holds, e.g. `leg.spread`. */
export type FieldPath =
  | keyof typeof ROOT_FIELDS
  | { [Group in GroupName]: `${Group}.${keyof Fields[Group] & string}` }[GroupName];

/** The path of any number or choice: of a measurement, or of the length within a choice too. */
export type ProjectPath = FieldPath | `body.${MeasurementKey}` | 'leg.length.inseam' | 'leg.shape.hemGirth';

const pathsOf = (group: string, fields: Readonly<Record<string, Field>>): readonly (readonly [string, Field])[] =>
  Object.entries(fields).map(([key, field]) => [group === '' ? key : `${group}.${key}`, field]);

/** Every choice by its path, in the order in which the file is written. */
export const FIELDS_BY_PATH: ReadonlyMap<string, Field> = new Map([
  ...pathsOf('', ROOT_FIELDS),
  ...Object.entries(FIELDS).flatMap(([group, fields]) => pathsOf(group, fields)),
]);

const within = ({ lowest, highest }: Limits): Limits => ({ lowest, highest });

/** The limits of every number in a project, by its path: choices and measurements. */
export const FIELD_LIMITS: Readonly<Record<string, Limits>> = Object.fromEntries([
  ...measurements.map((one) => [`body.${one.key}`, within(one)] as const),
  ...[...FIELDS_BY_PATH].flatMap(([path, field]) => {
    if (field.kind === 'nameOrLength') return [[`${path}.${field.own.key}`, within(field.own)] as const];
    return 'lowest' in field ? [[path, within(field)] as const] : [];
  }),
]);
