import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { root } from './paths.mjs';

const tool = join(root, 'src', 'command', 'draft.ts');

if (existsSync(join(root, 'node_modules', 'tsx'))) {
  // npm moves to the repository before it runs a script; paths on the command line are meant from where it was typed.
  if (process.env.npm_lifecycle_event === 'draft' && process.env.INIT_CWD) process.chdir(process.env.INIT_CWD);
  process.argv.splice(1, 2, tool);
  const { register } = await import('tsx/esm/api');
  register();
  await import(pathToFileURL(tool).href);
} else {
  console.error('The packages are not installed yet: please run "npm ci" once in the repository, then try again.');
  process.exitCode = 2;
}
