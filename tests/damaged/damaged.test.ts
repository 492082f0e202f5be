import { afterAll, expect, test } from 'vitest';
import { openJudge } from './judging';

/** Damaged files in each run; `LEGWORK_RUNS=50` makes it 100,000, `LEGWORK_SEED=…` begins with another seed. */
const COUNT = 2000 * Number(process.env.LEGWORK_RUNS ?? 1);
const asked = process.env.LEGWORK_SEED;
const FIRST = asked === 'new' ? Math.floor(Math.random() * 2 ** 30) : Number(asked ?? 1);
/** One in so many goes through the command line too. */
const BY_COMMAND = 200;
/** A moment for a person; told, for a slow machine is no fault. */
const MOMENT = 1000;

const judge = openJudge();
afterAll(judge.close);

test(
  'a damaged project, link, drawing or table is opened as it is, repaired with each repair listed, or refused in a sentence',
  async () => {
    const became: Record<string, number> = {};
    const faults: string[] = [];
    let [slow, slowest] = [0, 0];
    for (let seed = FIRST; seed < FIRST + COUNT; seed += 1) {
      const judged = await judge.ask(seed, seed % BY_COMMAND === 0);
      became[judged.became] = (became[judged.became] ?? 0) + 1;
      faults.push(...judged.faults.map((fault) => `seed ${seed}: ${fault}`));
      slow += judged.millis > MOMENT ? 1 : 0;
      slowest = Math.max(slowest, judged.millis);
    }
    console.log(`damaged files: seeds ${FIRST} to ${FIRST + COUNT - 1}, ${JSON.stringify(became)}`);
    console.log(`slowest ${slowest.toFixed(0)} ms, ${slow} over ${MOMENT} ms; ${faults.length} faults`);
    expect(faults).toEqual([]);
    // Each of the three ways is gone many times, or this tries nothing.
    for (const way of ['opened', 'repaired', 'refused']) expect(became[way]).toBeGreaterThan(COUNT / 20);
  },
  COUNT * 600,
);
