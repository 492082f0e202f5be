// The door to every house command. It stays this plain so that an old Node can still read it and be told what it
// lacks; everything written in newer syntax, or needing an installed package, is loaded only after that.
import { nodeProblem } from './node-version.mjs';

/** @type {Record<string, () => Promise<unknown>>} */
const commands = {
  start: () => import('./start.mjs'),
  test: () => import('./test.mjs'),
  draft: () => import('./draft.mjs'),
};

const command = process.argv[2] || '';
const open = commands[command];
const problem = nodeProblem(process.versions.node);
// To whoever drafts, 1 means a pattern with a wrong check.
const failure = command === 'draft' ? 2 : 1;

if (open === undefined) {
  console.error(`There is no house command "${command}"; there are: ${Object.keys(commands).join(', ')}.`);
  process.exitCode = 1;
} else if (problem !== '') {
  console.error(problem);
  process.exitCode = failure;
} else {
  open().catch((error) => {
    console.error(error);
    process.exitCode = failure;
  });
}
