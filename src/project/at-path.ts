type Tree = { readonly [key: string]: unknown };

const isTree = (value: unknown): value is Tree => typeof value === 'object' && value !== null;

/** What stands in a project, or in what may become one, at a dotted path, e.g. `body.hipGirth`; undefined where nothing does. */
export function valueAt(project: object, path: string): unknown {
  let here: unknown = project;
  for (const key of path.split('.')) here = isTree(here) && Object.hasOwn(here, key) ? here[key] : undefined;
  return here;
}

/**
 * The same with another value at a dotted path; undefined takes the key away. A name that stands where the path
 * needs a group gives way: `leg.length.inseam` turns `"ankle"` into `{ inseam }`.
 */
export const withValue = <Whole extends object>(project: Whole, path: string, value: unknown): Whole =>
  put(project, path.split('.'), value);

function put<Whole extends object>(whole: Whole, [key = '', ...rest]: readonly string[], value: unknown): Whole {
  const here = Object.hasOwn(whole, key) ? (whole as Tree)[key] : undefined;
  // One of a list stays one of a list.
  if (Array.isArray(here) && Object.hasOwn(here, rest[0] ?? '') && rest.length > 1)
    return { ...whole, [key]: here.with(Number(rest[0]), put(here[Number(rest[0])] ?? {}, rest.slice(1), value)) };
  if (rest.length > 0) return { ...whole, [key]: put(isTree(here) && !Array.isArray(here) ? here : {}, rest, value) };
  const changed = { ...whole, [key]: value };
  if (value === undefined) Reflect.deleteProperty(changed, key);
  return changed;
}
