import type { Project } from './types';

type Tree = { readonly [key: string]: unknown };

const isTree = (value: unknown): value is Tree => typeof value === 'object' && value !== null;

/** What stands in the project at a dotted path, e.g. `body.hipGirth`; undefined where nothing does. */
export function valueAt(project: Project, path: string): unknown {
  let here: unknown = project;
  for (const key of path.split('.')) here = isTree(here) && Object.hasOwn(here, key) ? here[key] : undefined;
  return here;
}

/**
 * The project with another value at a dotted path; undefined takes the key away. A name that stands where the path
 * needs a group gives way: `leg.length.inseam` turns `"ankle"` into `{ inseam }`.
 */
export function withValue(project: Project, path: string, value: unknown): Project {
  return put(project, path.split('.'), value) as unknown as Project;
}

function put(here: unknown, [key, ...rest]: readonly string[], value: unknown): Tree {
  const tree = isTree(here) && !Array.isArray(here) ? here : {};
  if (key === undefined) return tree;
  if (rest.length > 0) return { ...tree, [key]: put(tree[key], rest, value) };
  if (value !== undefined) return { ...tree, [key]: value };
  const { [key]: _gone, ...others } = tree;
  return others;
}
