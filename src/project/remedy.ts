import type { Check } from '../check';
import { withValue } from './at-path';
import type { Project } from './types';

/**
 * The project with a check's remedy applied: every field of it, in one go. The same project where the check has none.
 *
 * @param project the project that was checked
 * @param check one of its checks
 */
export const applyRemedy = (project: Project, { fix }: Pick<Check, 'fix'>): Project =>
  (fix?.changes ?? []).reduce((changed, { path, value }) => withValue(changed, path, value), project);
