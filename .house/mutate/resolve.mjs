// While mutants are tried, tests get the harness for their test runner; and a test file that is opened anew, with a
// number behind its name, opens its own helpers anew as well.

const harness = new URL('harness.mjs', import.meta.url).href;

/** @type {import('node:module').ResolveHook} */
export async function resolve(specifier, context, next) {
  if (specifier === 'vitest') return { url: harness, shortCircuit: true };
  const found = await next(specifier, context);
  const parent = context.parentURL ?? '';
  const opening = /[?&]opened=\d+/.exec(parent)?.[0].slice(1);
  if (opening === undefined || !/\/tests\/[^?]*$/.test(found.url)) return found;
  return { ...found, url: `${found.url}?${opening}` };
}
