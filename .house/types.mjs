// Says what the compiler finds wrong and, as the types are at hand, what in src/ would print an object.
import { join } from 'node:path';
import ts from 'typescript';
import { root } from './paths.mjs';
import { printedObjects } from './printed-objects.mjs';

const host = {
  ...ts.sys,
  /** @param {ts.Diagnostic} problem */
  onUnRecoverableConfigFileDiagnostic: (problem) => {
    throw new Error(ts.flattenDiagnosticMessageText(problem.messageText, '\n'));
  },
};
const config = ts.getParsedCommandLineOfConfigFile(join(root, 'tsconfig.json'), {}, host);
if (!config) throw new Error('tsconfig.json is missing.');
const program = ts.createProgram(config.fileNames, config.options);
const problems = [...config.errors, ...ts.getPreEmitDiagnostics(program)];
const source = ts.sys.resolvePath(join(root, 'src'));
const objects = printedObjects(program, (file) => ts.sys.resolvePath(file).startsWith(source));
const manner = { ...host, getCanonicalFileName: (/** @type {string} */ name) => name, getNewLine: () => '\n' };
if (problems.length > 0) console.error(ts.formatDiagnostics(problems, manner));
for (const object of objects) console.error(object);
process.exitCode = problems.length + objects.length === 0 ? 0 : 1;
