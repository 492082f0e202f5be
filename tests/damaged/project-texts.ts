import type { Chance } from '../fuzz/random';
import { below } from './texts';

type Path = readonly (string | number)[];

/** Stands for a number that JSON can write and nobody can hold. */
const TOO_LARGE = '@too-large@';
/** Every kind of value that JSON has, and the rudest of each. */
const VALUES: readonly unknown[] = [
  null,
  true,
  false,
  0,
  -0,
  1,
  -1,
  0.5,
  25.4,
  1e308,
  -1e308,
  5e-324,
  1e21,
  TOO_LARGE,
  2 ** 53 + 2,
  '',
  'auto',
  'drawn',
  'drafted',
  '40',
  '\u0000\u001b[2J',
  '\ud800',
  '__proto__',
  'x'.repeat(201),
  'x'.repeat(3000),
  'own',
  [],
  [[]],
  [0, 0],
  [null],
  {},
  { a: 1 },
  { inseam: 700 },
  { hemGirth: 'x' },
  { source: 'drawn' },
  { length: 3 },
];
const NAMES = [
  '__proto__',
  'prototype',
  'constructor',
  'toString',
  'hasOwnProperty',
  'length',
  '',
  'a.b',
  'notes',
  'source',
  'version',
  '\u202e',
  'toJSON',
  '0',
];

/** Every place in a tree. */
function placesIn(tree: unknown, path: Path = []): readonly Path[] {
  if (typeof tree !== 'object' || tree === null) return [path];
  const keys = Array.isArray(tree) ? tree.map((_, i) => i) : Object.keys(tree);
  return [path, ...keys.flatMap((key) => placesIn((tree as Record<string | number, unknown>)[key], [...path, key]))];
}

/** The tree with what stands at a place changed; undefined takes it away. */
function changedAt(tree: unknown, [key, ...rest]: Path, change: (value: unknown) => unknown): unknown {
  if (key === undefined) return change(tree);
  if (Array.isArray(tree))
    return tree.flatMap((one, i) =>
      i === key ? [changedAt(one, rest, change)].filter((v) => v !== undefined) : [one],
    );
  const entries = Object.entries(tree as object).flatMap(([name, value]) => {
    if (name !== key) return [[name, value] as const];
    const after = changedAt(value, rest, change);
    return after === undefined ? [] : [[name, after] as const];
  });
  return Object.fromEntries(entries);
}

type Change = (value: unknown, chance: Chance) => unknown;
const isGroup = (value: unknown): value is object =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const CHANGES: readonly Change[] = [
  (_, chance) => chance.oneOf(VALUES),
  (_, chance) => chance.oneOf(VALUES),
  () => undefined,
  (value, chance) =>
    typeof value === 'number' ? value * chance.oneOf([-1, 10, 25.4, 1 / 25.4, 1e3, 1e6, 1e-3]) : [value],
  (value) => ({ value }),
  (value, chance) => (isGroup(value) ? withName(value, chance.oneOf(NAMES), chance.oneOf(VALUES)) : String(value)),
  (value, chance) => (isGroup(value) ? renamed(value, chance) : value),
  (value, chance) => (Array.isArray(value) ? [...value, ...value.slice(0, below(chance, value.length + 1))] : value),
  (value, chance) => (Array.isArray(value) ? Array.from({ length: below(chance, 400) }, () => value[0] ?? 0) : value),
  (value, chance) => nested(value, below(chance, 70)),
];

/** An own property, whatever its name. */
const withName = (group: object, name: string, value: unknown) =>
  Object.fromEntries([...Object.entries(group), [name, value]]);

function renamed(group: object, chance: Chance): object {
  const at = below(chance, Object.keys(group).length);
  return Object.fromEntries(
    Object.entries(group).map(([name, value], i) => [i === at ? chance.oneOf(NAMES) : name, value]),
  );
}

const nested = (value: unknown, levels: number): unknown => (levels === 0 ? value : [nested(value, levels - 1)]);

/** The text of a project in which one to five values, names or groups are something else. */
export function damagedProject(project: unknown, chance: Chance): string {
  let tree = project;
  for (let i = 1 + below(chance, 5); i > 0; i -= 1) {
    const place = chance.oneOf(placesIn(tree).filter(({ length }) => length > 0));
    if (place) tree = changedAt(tree, place, (value) => chance.oneOf(CHANGES)(value, chance));
  }
  const text = JSON.stringify(tree).replaceAll(`"${TOO_LARGE}"`, () => chance.oneOf(['1e999', '-1e999', '1E+400']));
  if (!chance.happens(0.1)) return text;
  // A name that stands twice.
  const names = [...text.matchAll(/"(\w+)":/g)];
  const name = names.length > 0 ? chance.oneOf(names) : undefined;
  return name ? text.replace(name[0], () => `${name[0]}${JSON.stringify(chance.oneOf(VALUES))},${name[0]}`) : text;
}
