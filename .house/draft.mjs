import { pathToFileURL } from 'node:url';
import { commandFile } from './command-bundle.mjs';

const file = await commandFile();
if (file === undefined) {
  console.error('The packages are not installed yet: please run "npm ci" once in the repository, then try again.');
  process.exitCode = 2;
} else {
  // npm moves to the repository before it runs a script; paths on the command line are meant from where it was typed.
  if (process.env.npm_lifecycle_event === 'draft' && process.env.INIT_CWD) process.chdir(process.env.INIT_CWD);
  process.argv.splice(1, 2, file);
  await import(pathToFileURL(file).href);
}
