import { measurements } from '../../body';
import { PAPER_SEAM_NAMES, PAPER_SEAMS, TAPE_LENGTHS } from '../../trace';
import { inside, number, own, type Phrase, say } from '../../words';
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
  ...PAPER_SEAMS.map((seam) => [`block.allowances.${seam}`, PAPER_SEAM_NAMES[seam]] as const),
  ['block.trued', say`Trued`],
  ...[...FIELDS_BY_PATH].flatMap(([path, field]): (readonly [string, Phrase])[] => [
    [path, field.name],
    ...(field.kind === 'nameOrLength' ? [[`${path}.${field.own.key}`, field.own.name] as const] : []),
  ]),
]);

/** What a number of a dart is called; darts are counted from the side. */
function dartName(block: string, nth: number, what: string): Phrase {
  const of = block === 'front' ? say`Front, dart ${number(nth, 0)}` : say`Back, dart ${number(nth, 0)}`;
  if (what === 'intake') return say`${of}: takes in`;
  return what === 'length' ? say`${of}: length` : say`${of}: from the side`;
}

/** What the field at a path of the project is called; the path itself where nothing there has a name. */
export function fieldName(path: string): Phrase {
  const named = NAMES.get(path);
  if (named) return named;
  const [, block, nth, what] = /^block\.(front|back)\.darts\.(\d)\.(\w+)$/.exec(path) ?? [];
  if (block && nth && what) return dartName(block, Number(nth) + 1, what);
  const [, part, line] = /^block\.(front|back)\.(?:edges\.)?(\w+)$/.exec(path) ?? [];
  if (part && line) return say`${own(part)}-${own(line)}`;
  return say`${own(path)}`;
}
