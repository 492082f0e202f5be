import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { register } from 'node:module';
import { relative, sep } from 'node:path';
import { tokens } from '@stryker-mutator/api/plugin';
import {
  DryRunStatus,
  determineHitLimitReached,
  MutantRunStatus,
  TestStatus,
  toMutantRunResult,
} from '@stryker-mutator/api/test-runner';
import fc from 'fast-check';
import { register as registerTypeScript } from 'tsx/esm/api';
import { root } from '../paths.mjs';
import { placeOf, readDrawn } from './draw.mjs';
import { loadRooms, openTests, testFiles } from './open-tests.mjs';

/** How long each test took without a mutant, for processes that come after. */
const TIMES = 'mutate-times.json';

/**
 * So long tests are called for one mutant, milliseconds of the processor, the quickest first: those that are left say little
 * more and take most of the time. What lives so long counts as alive.
 */
const PATIENCE = 5000;

/** What a test of the mutant's own room counts for, where the quickest go first. */
const OWN = 0.1;

/** Milliseconds of the processor since then: on a busy machine the same tests are called. */
const spent = (/** @type {NodeJS.CpuUsage} */ began) => process.cpuUsage(began).user / 1000;

/** @typedef {{ name: string, run: () => unknown }} Test */

/**
 * Runs the tests in this very process, the quickest first, until one fails.
 *
 * What a test file works out while it is opened counts as one more test of it: where that meets a mutant, the file is
 * opened anew with the mutant in it. And where it meets one while the rooms are loaded, they are loaded anew, a world of their own.
 */
export class RoomsRunner {
  static inject = tokens();
  /** @type {any} What the instrumented source asks which mutant is on, and tells what was reached. */
  space = {};
  /** @type {Map<string, readonly Test[]>} by file */
  tests = new Map();
  /** @type {any[]} how the opening of each file went; none as long as nothing was opened */
  openings = [];
  openedSoFar = 0;
  world = 1;
  /** @type {Record<string, number>} milliseconds by test */
  times = {};
  places = new Set(readDrawn().map(({ place }) => place));

  capabilities() {
    return { reloadEnvironment: true };
  }

  async init() {
    /** @type {any} */ (globalThis).__stryker__ = this.space;
    registerTypeScript();
    register('./resolve.mjs', import.meta.url);
    // Chance draws few cases here: there are as many runs as mutants.
    process.env.LEGWORK_RUNS = '0.05';
    // A failure is enough: to make it smaller would draft again and again.
    fc.configureGlobal({ endOnFailure: true });
    console.log = () => {};
    if (existsSync(TIMES)) this.times = JSON.parse(readFileSync(TIMES, 'utf8'));
  }

  /** @returns {Promise<import('@stryker-mutator/api/test-runner').DryRunResult>} */
  async dryRun() {
    await this.openAll();
    const results = [...this.openings];
    for (const [file, held] of this.tests) {
      for (const { name, run } of held) results.push(await this.result(`${file}#${name}`, run));
    }
    // This process goes on to try mutants, and another takes its place when one never ends.
    this.times = Object.fromEntries(results.map(({ id, timeSpentMs }) => [id, timeSpentMs]));
    writeFileSync(TIMES, JSON.stringify(this.times));
    return { status: DryRunStatus.Complete, tests: results, mutantCoverage: this.space.mutantCoverage };
  }

  /**
   * @param {import('@stryker-mutator/api/test-runner').MutantRunOptions} options
   * @returns {Promise<import('@stryker-mutator/api/test-runner').MutantRunResult>}
   */
  async mutantRun({ activeMutant, testFilter, mutantActivation, reloadEnvironment, hitLimit }) {
    const { fileName, location, replacement, id } = activeMutant;
    const file = relative(root, fileName).split(sep).join('/');
    // The tool makes every mutant within a drawn one, too.
    if (!this.places.has(placeOf(file, location, replacement)))
      return { status: MutantRunStatus.Survived, nrOfTests: 0 };
    if (reloadEnvironment) {
      this.world += 1;
      this.openings = [];
    }
    if (mutantActivation === 'runtime') await this.openAll();
    Object.assign(this.space, { hitCount: 0, hitLimit, activeMutant: id });
    await this.openAll();
    const results = await this.untilOneFails(testFilter, testsOf(file));
    this.space.activeMutant = undefined;
    const timeout = determineHitLimitReached(this.space.hitCount, hitLimit);
    return toMutantRunResult(timeout ?? { status: DryRunStatus.Complete, tests: results });
  }

  /** Opens every test file, unless that is done. */
  async openAll() {
    if (this.openings.length > 0) return;
    const rooms = await this.result('rooms', () => loadRooms(this.world));
    for (const file of testFiles()) this.openings.push(await this.open(file));
    if (rooms.status === TestStatus.Failed)
      this.openings[0] = { ...this.openings[0], ...rooms, id: this.openings[0].id };
  }

  /**
   * @param {string} file
   * @param {Map<string, readonly Test[]>} [into]
   */
  async open(file, into = this.tests) {
    return this.result(openingOf(file), async () => {
      this.openedSoFar += 1;
      into.set(file, await openTests(file, this.world, this.openedSoFar));
    });
  }

  /**
   * @param {readonly string[] | undefined} filter every test where there is none
   * @param {string} own where the tests of the mutant's own room stand
   */
  async untilOneFails(filter, own) {
    const broken = this.openings.find(({ status }) => status === TestStatus.Failed);
    if (broken) return [broken];
    const asked = new Set(filter);
    const results = [];
    const began = process.cpuUsage();
    /** @type {Map<string, readonly Test[]>} */
    const anew = new Map();
    for (const { file, id, name } of this.inOrder(asked, filter === undefined, own)) {
      if (spent(began) > PATIENCE) break;
      if (asked.has(openingOf(file)) && !anew.has(file)) {
        results.push(await this.open(file, anew));
        if (results.at(-1).status === TestStatus.Failed) break;
      }
      const test = (anew.get(file) ?? this.tests.get(file))?.find((one) => one.name === name);
      results.push(await this.result(id, () => test?.run()));
      if (results.at(-1).status === TestStatus.Failed) break;
    }
    return results;
  }

  /**
   * @param {ReadonlySet<string>} asked
   * @param {boolean} all
   * @param {string} own
   */
  inOrder(asked, all, own) {
    // A test whose file has to be opened anew for it takes as long as that; one of the mutant's own room says most, and goes before.
    const time = (/** @type {{ file: string, id: string }} */ { file, id }) =>
      ((this.times[id] ?? 0) + (asked.has(openingOf(file)) ? (this.times[openingOf(file)] ?? 0) : 0)) *
      (file.startsWith(own) ? OWN : 1);
    return [...this.tests]
      .flatMap(([file, held]) => held.map(({ name }) => ({ file, name, id: `${file}#${name}` })))
      .filter(({ id, file }) => all || asked.has(id) || asked.has(openingOf(file)))
      .sort((a, b) => time(a) - time(b));
  }

  /**
   * @param {string} id
   * @param {() => unknown} run
   * @returns {Promise<any>}
   */
  async result(id, run) {
    const before = this.space.currentTestId;
    // The rooms' own loading belongs to no test.
    this.space.currentTestId = id === 'rooms' ? undefined : id;
    const began = performance.now();
    const common = () => ({ id, name: id, timeSpentMs: Math.max(1, Math.round(performance.now() - began)) });
    try {
      await run();
      return { ...common(), status: TestStatus.Success };
    } catch (error) {
      return { ...common(), status: TestStatus.Failed, failureMessage: String(error) };
    } finally {
      this.space.currentTestId = before;
    }
  }
}

/** @param {string} file of the source */
const testsOf = (file) => `tests/${file.split('/')[1]}/`;

/** @param {string} file */
const openingOf = (file) => `${file}#opened`;
