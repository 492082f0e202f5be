import { readFileSync } from 'node:fs';

/**
 * Says what is wrong with the running Node, against the least version that package.json names.
 *
 * @param {string} running e.g. `20.19.0`
 * @returns {string} one sentence, or an empty text where all is well
 */
export function nodeProblem(running) {
  const text = readFileSync(new URL('../package.json', import.meta.url), 'utf8');
  const least = JSON.parse(text).engines.node.replace('>=', '');
  return newEnough(running, least)
    ? ''
    : `Legwork needs Node ${least} or newer, and this is Node ${running}: please install a newer one.`;
}

/**
 * @param {string} running
 * @param {string} least
 */
function newEnough(running, least) {
  const [major = 0, minor = 0] = running.split('.').map(Number);
  const [leastMajor = 0, leastMinor = 0] = least.split('.').map(Number);
  return major > leastMajor || (major === leastMajor && minor >= leastMinor);
}
