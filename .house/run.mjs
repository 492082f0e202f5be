import { spawn } from 'node:child_process';
import { root } from './paths.mjs';

/**
 * Runs a program in the repository, its output going where ours goes.
 *
 * @param {string} program
 * @param {readonly string[]} arguments_
 * @param {NodeJS.ProcessEnv} [environment] added to our own
 * @returns {Promise<number>} its exit code; 1 where it could not be started or was stopped
 */
export function run(program, arguments_, environment = {}) {
  return new Promise((resolve) => {
    const child = spawn(program, arguments_, { cwd: root, stdio: 'inherit', env: { ...process.env, ...environment } });
    child.on('error', (error) => {
      console.error(`${program} could not be started: ${error.message}`);
      resolve(1);
    });
    child.on('close', (code) => resolve(code ?? 1));
  });
}
