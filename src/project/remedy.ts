import type { Check, FieldChange } from '../check';
import { withValue } from './at-path';
import { type Choices, FIELD_LIMITS } from './fields';
import type { Project } from './types';

/**
 * The project with a check's remedy applied: every field of it, in one go. The same project where the check has none.
 *
 * @param project the project that was checked
 * @param check one of its checks
 */
export const applyRemedy = (project: Project, { fix }: Pick<Check, 'fix'>): Project =>
  (fix?.changes ?? []).reduce(withSetting, project);

/** A choice by its path, and a value that it takes. */
type Setting = {
  [Group in keyof Choices]: {
    [Key in keyof Choices[Group] & string]: { readonly path: `${Group}.${Key}`; readonly value: Choices[Group][Key] };
  }[keyof Choices[Group] & string];
}[keyof Choices];

const withSetting = (project: Project, { path, value }: Setting): Project => withValue(project, path, value);

/** The check without its remedy where that asks for more than a project takes. */
export const withinLimits = ({ fix, ...check }: Check): Check =>
  fix?.changes.every(({ path, value }) => figuresOf(path, value).every(isTaken)) ? { ...check, fix } : check;

/** The numbers that a change writes, each at its own path: also the one in `{ hemGirth }`. */
const figuresOf = (path: string, value: FieldChange['value']): readonly (readonly [string, unknown])[] =>
  typeof value === 'object' ? Object.entries(value).map(([key, own]) => [`${path}.${key}`, own]) : [[path, value]];

function isTaken([path, value]: readonly [string, unknown]): boolean {
  const limits = FIELD_LIMITS[path];
  return typeof value !== 'number' || !limits || (value >= limits.lowest && value <= limits.highest);
}
