import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { runDraft } from '../../src/command';
import { readBlocks } from '../../src/files';
import { readClass } from '../../src/files/class/read-class';
import { plainLetters } from '../../src/length';
import { exampleProject, openProject, type Project, salvageProject, saveProject } from '../../src/project';
import { type Problem, printProblem } from '../../src/words';
import { projectFromHash } from '../../src/workbench/shelf/link';
import type { DamagedFile } from './cases';
import { untold } from './untold';

/** What came of a damaged file, and everything about that which may not be; empty as a rule. */
export interface Judged {
  readonly became: 'opened' | 'repaired' | 'refused' | 'none';
  readonly faults: readonly string[];
  readonly millis: number;
}

type Verdict = Omit<Judged, 'millis'>;

/** Reads a damaged file as the page does, and by the command line where that is asked for. */
export async function judged(file: DamagedFile, byCommand: boolean): Promise<Judged> {
  const start = performance.now();
  let verdict: Verdict;
  try {
    verdict = await JUDGES[file.kind](file.bytes);
  } catch (error) {
    verdict = { became: 'none', faults: [`throws ${error instanceof Error ? error.stack : error}`] };
  }
  const millis = performance.now() - start;
  const command = byCommand && file.kind === 'project' ? await commandFaults(file.bytes) : [];
  return { ...verdict, faults: [...verdict.faults, ...command], millis };
}

const JUDGES: Readonly<Record<DamagedFile['kind'], (bytes: Uint8Array) => Verdict | Promise<Verdict>>> = {
  project: (bytes) => projectVerdict(new TextDecoder().decode(bytes)),
  link: async (bytes) => {
    const text = await projectFromHash(new TextDecoder().decode(bytes));
    if (text === undefined) return { became: 'none', faults: [] };
    return text.ok ? projectVerdict(text.value) : refusal(text.problems);
  },
  drawing: async (bytes) => {
    const read = await readBlocks(new TextDecoder().decode(bytes));
    if (!read.ok) return refusal(read.problems);
    const project = { ...exampleProject, block: { source: 'drawn', ...read.value } } as Project;
    return { became: 'opened', faults: againFaults(project, 'brought blocks') };
  },
  table: (bytes) => {
    const read = readClass(bytes, exampleProject);
    if (!read.ok) return refusal(read.problems);
    const { rows, unused } = read.value;
    const words = [...rows.map(({ name }) => name), ...unused];
    return {
      became: 'opened',
      faults: [
        ...(rows.length === 0 ? ['a class without rows'] : []),
        ...words
          .filter((word) => plainLetters(word) !== word)
          .map((word) => `a name that is no plain words: ${JSON.stringify(word)}`),
        ...rows.flatMap(({ project }) => (project.ok ? [] : refusal(project.problems).faults)),
      ],
    };
  },
};

function projectVerdict(text: string): Verdict {
  const opened = openProject(text);
  if (opened.ok)
    return {
      became: 'opened',
      faults: [
        ...untold(text, opened.value, []).map((path) => `changed without a word: ${path}`),
        ...againFaults(opened.value, 'what was opened'),
      ],
    };
  const refused = refusal(opened.problems);
  const salvaged = salvageProject(text);
  if (!salvaged.ok) return { became: 'refused', faults: [...refused.faults, ...refusal(salvaged.problems).faults] };
  const { project, repairs, cutShort } = salvaged.value;
  return {
    became: 'repaired',
    faults: [
      ...refused.faults,
      ...(repairs.length === 0 && !cutShort ? ['a repair that is not listed'] : []),
      ...(cutShort ? [] : untold(text, project, repairs).map((path) => `repaired without a word: ${path}`)),
      ...againFaults(project, 'what was repaired'),
    ],
  };
}

/** A refusal says why, in sentences that can be printed in either unit. */
function refusal(problems: readonly Problem[]): Verdict {
  const lines = problems.flatMap((problem) => [printProblem(problem, 'cm'), printProblem(problem, 'inch')]);
  return {
    became: 'refused',
    faults: [
      ...(problems.length === 0 ? ['refused without a word'] : []),
      ...lines
        .filter(
          (line) =>
            !/[.:!?…)\w]$/.test(line) ||
            /\bNaN\b(?!")|undefined(?! entity)|\[object/.test(line.replace(/"(?:[^"\\]|\\.)*"?|“[^”]*”?/g, '')),
        )
        .map((line) => `no sentence: ${line}`),
    ],
  };
}

/** What is kept can be opened again, and is the same then. */
function againFaults(project: Project, what: string): readonly string[] {
  const text = saveProject(project);
  const again = openProject(text);
  if (!again.ok)
    return [`${what} can't be opened again: ${again.problems.map((one) => printProblem(one, 'cm')).join(' ')}`];
  return saveProject(again.value) === text ? [] : [`${what} is another when it is opened again`];
}

/** The command line ends with 0, 1 or 2, and writes nothing where it refuses. */
async function commandFaults(bytes: Uint8Array): Promise<readonly string[]> {
  const folder = mkdtempSync(join(tmpdir(), 'damaged-'));
  try {
    const path = join(folder, 'One.legwork.json');
    writeFileSync(path, bytes);
    const complained: string[] = [];
    const code = await runDraft([path, '--out', join(folder, 'out'), '--files', 'report'], {
      input: (async function* () {})(),
      say: () => {},
      complain: (line) => complained.push(line),
      now: () => new Date(0),
    });
    const written = readdirSync(folder).length > 1 && readdirSync(join(folder, 'out')).length > 0;
    return [
      ...([0, 1, 2].includes(code) ? [] : [`the command line ends with ${code}`]),
      ...(code === 2 && (written || complained.length === 0)
        ? ['refused by the command line, and written or not told']
        : []),
      ...complained
        .filter((line) => plainLetters(line) !== line || /error in Legwork/.test(line))
        .map((line) => `told on the terminal: ${line}`),
    ];
  } catch (error) {
    return [`the command line throws ${error instanceof Error ? error.stack : error}`];
  } finally {
    rmSync(folder, { recursive: true });
  }
}
