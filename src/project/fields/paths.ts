import { type MeasurementKey, measurements } from '../../body';
import { PAPER_SEAMS, type PaperSeam, TAPE_LENGTHS, type TapeKey, WIDEST_ON_PAPER } from '../../trace';
import { FIELDS, ROOT_FIELDS } from './fields';
import type { Field, Limits, ValuesOf } from './kinds';

/** The blocks of a pair, as the file names them. */
export const BLOCK_PARTS = ['front', 'back'] as const;

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

/** A length of the table that was measured on a block. */
export type NumbersPath = `block.${(typeof BLOCK_PARTS)[number]}.${TapeKey}`;

/** An allowance that is on the paper of brought blocks. */
export type PaperSeamPath = `block.allowances.${PaperSeam}`;

/** The path of any number or choice: of a measurement, or of the length within a choice too. */
export type ProjectPath =
  | FieldPath
  | NumbersPath
  | PaperSeamPath
  | `body.${MeasurementKey}`
  | 'leg.length.inseam'
  | 'leg.shape.hemGirth';

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
  ...BLOCK_PARTS.flatMap((part) => TAPE_LENGTHS.map((one) => [`block.${part}.${one.key}`, within(one)] as const)),
  ...PAPER_SEAMS.map((seam) => [`block.allowances.${seam}`, { lowest: 0, highest: WIDEST_ON_PAPER }] as const),
  ...[...FIELDS_BY_PATH].flatMap(([path, field]) => {
    if (field.kind === 'nameOrLength') return [[`${path}.${field.own.key}`, within(field.own)] as const];
    return 'lowest' in field ? [[path, within(field)] as const] : [];
  }),
]);
