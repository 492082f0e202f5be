import { accessSync, constants, existsSync, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { run } from './run.mjs';

/**
 * A program that the tests need and npm does not bring.
 *
 * @typedef {object} Tool
 * @property {string} name for people
 * @property {readonly string[]} variables environment variables that may name its program file
 * @property {readonly string[]} programs its names on the path
 * @property {readonly string[]} places where it is usually installed off the path
 * @property {string} debian the Debian package that holds it
 * @property {string} advice what a person can do
 */

/** @type {Tool} */
const chromium = {
  name: 'Chromium',
  variables: ['CHROMIUM', 'CHROME_PATH'],
  programs: ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'],
  places: [
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    ...['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA'].flatMap((variable) => {
      const folder = process.env[variable];
      return folder === undefined ? [] : [join(folder, 'Google', 'Chrome', 'Application', 'chrome.exe')];
    }),
  ],
  debian: 'chromium',
  advice: 'install Chromium or Chrome, or set CHROMIUM to its program file',
};

/** @type {(program: string, debian: string) => Tool} */
const onPath = (program, debian) => ({
  name: program,
  variables: [],
  programs: [program],
  places: [],
  debian,
  advice: `install ${debian} so that ${program} is on the path`,
});

const tools = [
  chromium,
  onPath('pdftoppm', 'poppler-utils'),
  onPath('pdftotext', 'poppler-utils'),
  onPath('qpdf', 'qpdf'),
];

/**
 * Looks for a tool: first where a variable says, then on the path, then in the usual places. A variable that names
 * nothing runnable is not passed over: whoever set it meant that one.
 *
 * @param {Tool} tool
 * @param {NodeJS.ProcessEnv} environment
 * @returns {string | undefined} its program file
 */
export function findTool(tool, environment) {
  for (const variable of tool.variables) {
    const named = environment[variable];
    if (named) return runnable(named) ? named : undefined;
  }
  const folders = (environment.PATH ?? environment.Path ?? '').split(delimiter).filter((folder) => folder !== '');
  const endings = process.platform === 'win32' ? ['.exe', '.cmd'] : [''];
  const candidates = tool.programs.flatMap((program) =>
    folders.flatMap((folder) => endings.map((ending) => join(folder, program + ending))),
  );
  return [...candidates, ...tool.places].find(runnable);
}

/**
 * The Chromium that the browser tests drive.
 *
 * @throws {Error} saying what to do, where there is none
 */
export function findChromium() {
  const found = findTool(chromium, process.env);
  if (found === undefined) throw new Error(missing([chromium]));
  return found;
}

/**
 * Finds every tool, installing what is missing where that can be done without asking: on Debian, as root.
 *
 * @param {boolean} mayInstall whether anything may be installed, or only said to be missing
 * @returns {Promise<string>} one sentence on what is missing and what to do; empty where all is there
 */
export async function bringTools(mayInstall) {
  const absent = lacking();
  if (mayInstall && absent.length > 0 && existsSync('/etc/debian_version') && process.getuid?.() === 0) {
    const packages = [...new Set(absent.map((tool) => tool.debian))];
    const names = absent.map((tool) => tool.name).join(', ');
    console.log(`Installing ${packages.join(', ')} by apt-get, because the tests drive ${names} …`);
    const quiet = { DEBIAN_FRONTEND: 'noninteractive' };
    const updated = await run('apt-get', ['update', '-qq'], quiet);
    if (updated === 0) await run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', ...packages], quiet);
  }
  const still = lacking();
  return still.length === 0 ? '' : missing(still);
}

function lacking() {
  return tools.filter((tool) => findTool(tool, process.env) === undefined);
}

/**
 * @param {readonly Tool[]} absent
 */
export function missing(absent) {
  const names = absent.map((tool) => tool.name).join(', ');
  return `The tests need ${names}, not found here: please ${absent.map((tool) => tool.advice).join('; ')}.`;
}

/**
 * @param {string} file
 */
function runnable(file) {
  try {
    accessSync(file, constants.X_OK);
    return statSync(file).isFile();
  } catch {
    return false;
  }
}
