import { measurements } from '../../body';
import { TAPE_LENGTHS } from '../../trace';
import { inside, own, type Phrase, say } from '../../words';
import { GROUP_NAMES } from './fields';
import { FIELDS_BY_PATH } from './paths';

/** What every field that has a name is called, by its path. */
const NAMES: ReadonlyMap<string, Phrase> = new Map([
  ...Object.entries(GROUP_NAMES),
  ...measurements.map(({ key, name }) => [`body.${key}`, name] as const),
  ...TAPE_LENGTHS.flatMap(({ key, name }) => [
    [`block.front.${key}`, say`Front, ${inside(name)}`] as const,
    [`block.back.${key}`, say`Back, ${inside(name)}`] as const,
  ]),
  ...[...FIELDS_BY_PATH].flatMap(([path, field]): (readonly [string, Phrase])[] => [
    [path, field.name],
    ...(field.kind === 'nameOrLength' ? [[`${path}.${field.own.key}`, field.own.name] as const] : []),
  ]),
]);

/** What the field at a path of the project is called; the path itself where nothing there has a name. */
export function fieldName(path: string): Phrase {
  const named = NAMES.get(path);
  if (named) return named;
  const [, part, line] = /^block\.(front|back)\.(?:edges\.)?(\w+)$/.exec(path) ?? [];
  if (part && line) return say`${own(part)}-${own(line)}`;
  return say`${own(path)}`;
}
