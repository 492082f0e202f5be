import { measurements } from '../body';
import { HEM_FINISH_NAMES, WAIST_FINISH_NAMES } from '../edges';
import { LENGTH_NAMES } from '../leg';
import { isBrought } from '../trace';
import { mm, number, own, type Phrase, say } from '../words';
import { valueAt } from './at-path';
import type { Draft } from './draft-types';
import { FIELDS_BY_PATH, fieldName } from './fields';

/** Every measurement and choice that a project can hold, by its path. */
const PATHS: readonly string[] = [...measurements.map(({ key }) => `body.${key}`), ...FIELDS_BY_PATH.keys()];

/** What moves no line of the pattern. */
const APART = /^(paper\.|projector\.|units$)/;

/** What has changed since the pattern was printed, a phrase for each number or choice; paper and projector apart. */
export function changedSince({ project }: Pick<Draft, 'project'>): readonly Phrase[] {
  const { lastPrint } = project;
  if (!lastPrint) return [];
  const differ = (path: string) =>
    JSON.stringify(valueAt(lastPrint.project, path)) !== JSON.stringify(valueAt(project, path));
  const found = PATHS.filter((path) => !APART.test(path) && differ(path)).map((path) =>
    changeOf(path, valueAt(lastPrint.project, path), valueAt(project, path)),
  );
  // Lines that were brought have no numbers to name.
  const brought = isBrought(project.block) && differ('block');
  return brought ? [...found, changeOf('block', undefined, undefined)] : found;
}

/** What the options of a choice are called, where that says more than that it has changed. */
const OPTION_NAMES: Readonly<Record<string, Readonly<Record<string, Phrase>>>> = {
  'waist.finish': WAIST_FINISH_NAMES,
  'hem.finish': HEM_FINISH_NAMES,
  'leg.length': LENGTH_NAMES,
};

function changeOf(path: string, was: unknown, is: unknown): Phrase {
  const name = fieldName(path);
  if (typeof was === 'string' && typeof is === 'string') {
    const [before, now] = [was, is].map((text) => (path === 'name' ? say`${own(text)}` : OPTION_NAMES[path]?.[text]));
    return before && now ? say`${name}: ${before}, now ${now}` : say`${name}: changed`;
  }
  if (typeof was !== 'number' || typeof is !== 'number') return say`${name}: changed`;
  const field = FIELDS_BY_PATH.get(path);
  const inMm = path.startsWith('body.') || (field !== undefined && 'unit' in field && field.unit === 'mm');
  return inMm ? say`${name}: ${mm(was)}, now ${mm(is)}` : say`${name}: ${number(was)}, now ${number(is)}`;
}
