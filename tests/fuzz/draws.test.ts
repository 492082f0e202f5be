import { afterAll, expect, test } from 'vitest';
import { emptyTally, raised, type Tally, tallyText } from './count';
import { onDemand } from './find';
import { openJudge } from './judging';

/** Sheets and files are looked at in every hundredth draw. */
const PAPERS = 100;
/** Longer than two thousand draws take on a machine that does much else; one that never ends is ended long before. */
const WATCHDOG = 600_000;

const asked = process.env.LEGWORK_SEED;
const from = asked === 'new' ? Math.floor(Math.random() * 2 ** 30) : Number(asked ?? 20261129);
const count = Math.round(2000 * Number(process.env.LEGWORK_RUNS ?? 1));

const judge = openJudge();
afterAll(() => judge.close());

test(
  'whatever is drawn within the limits is drafted whole, or refused by a sentence',
  async () => {
    console.log(`draws from seed ${from}, ${count} of them`);
    const complaints: string[] = [];
    let tally: Tally = emptyTally(from);
    for (let seed = from; seed < from + count; seed += 1) {
      const papers = seed % PAPERS === 0 ? seed / PAPERS : undefined;
      const { finds, refused, followed, millis } = await judge.ask({ seed, papers });
      const bad = finds.filter((one) => !onDemand(one));
      complaints.push(...bad.map(({ kind, seen }) => `seed ${seed}: ${kind}: ${seen}`));
      tally = {
        ...tally,
        next: seed + 1,
        draws: tally.draws + 1,
        finds: raised(tally.finds, [...new Set(bad.map(({ kind }) => kind))]),
        refused: raised(tally.refused, refused === undefined ? [] : [refused]),
        followed: raised(tally.followed, followed === undefined ? [] : [followed]),
        slowest: millis > tally.slowest[0] ? [millis, seed] : tally.slowest,
      };
    }
    console.log(tallyText({ ...tally, seconds: performance.now() / 1000 }));
    expect(complaints.slice(0, 40)).toEqual([]);
    // Else what is looked at would be mostly refusals.
    const refusals = Object.values(tally.refused).reduce((a, b) => a + b, 0);
    expect(refusals / count).toBeLessThan(0.5);
  },
  WATCHDOG * Math.max(1, count / 2000),
);
