import type { Units } from '../../length';
import { mm, type Phrase, say } from '../../words';
import { valueAt } from '../at-path';
import { valueAnew } from './anew';
import { usualValue } from './kinds';
import { fieldName } from './names';
import { FIELDS_BY_PATH } from './paths';

/**
 * What of a project isn't as it would be without anybody's choice.
 *
 * @param paths of the fields that are looked at
 * @returns each by its name, and of a length by how long it is
 */
export function unusualFields(project: { readonly units: Units }, paths: readonly string[]): readonly Phrase[] {
  return paths.flatMap((path) => {
    const field = FIELDS_BY_PATH.get(path);
    const value = valueAt(project, path);
    if (!field || value === undefined) return [];
    const { units } = project;
    if (value === usualValue(field, units) || value === valueAnew(path, field, units)) return [];
    const isLength = 'unit' in field && field.unit === 'mm' && typeof value === 'number';
    return [isLength ? say`${fieldName(path)} ${mm(value)}` : fieldName(path)];
  });
}
