// While mutants are tried, tests get the harness for their test runner. A test file that is opened anew, with a number
// behind its name, opens its own helpers anew as well; one that is opened in another world has rooms of its own.

const harness = new URL('harness.mjs', import.meta.url).href;

/** @type {import('node:module').ResolveHook} */
export async function resolve(specifier, context, next) {
  if (specifier === 'vitest') return { url: harness, shortCircuit: true };
  const found = await next(specifier, context);
  const parent = new URL(context.parentURL ?? 'file:///').searchParams;
  const url = new URL(found.url);
  const ours = url.protocol === 'file:' && !url.pathname.includes('/node_modules/');
  const passedOn = url.pathname.includes('/tests/') ? ['opened', 'world'] : ['world'];
  if (!ours) return found;
  for (const name of passedOn) {
    const value = parent.get(name);
    if (value !== null) url.searchParams.set(name, value);
  }
  return { ...found, url: url.href };
}
