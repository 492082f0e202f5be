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

/**
 * The same for programs that run side by side: what it says is kept until it has ended, so that nobody speaks over
 * another.
 *
 * @param {string} program
 * @param {readonly string[]} arguments_
 * @param {NodeJS.ProcessEnv} [environment] added to our own
 * @returns {Promise<{ code: number, said: string }>}
 */
export function runKept(program, arguments_, environment = {}) {
  return new Promise((resolve) => {
    const colour = process.stdout.isTTY ? { FORCE_COLOR: '1' } : {};
    const child = spawn(program, arguments_, {
      cwd: root,
      stdio: 'pipe',
      env: { ...process.env, ...environment, ...colour },
    });
    let said = '';
    for (const stream of [child.stdout, child.stderr]) stream.setEncoding('utf8').on('data', (text) => (said += text));
    child.on('error', (error) => resolve({ code: 1, said: `${program} could not be started: ${error.message}\n` }));
    child.on('close', (code) => resolve({ code: code ?? 1, said }));
  });
}
