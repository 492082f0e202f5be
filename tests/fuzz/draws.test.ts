import { afterAll, expect, test } from 'vitest';
import { covering } from '../properties/covering';
import { choicesOf } from './choices';
import { emptyTally, raised, type Tally, tallyText } from './count';
import { onDemand } from './find';
import type { Look } from './judge';
import { openJudge } from './judging';
import { projectDrawn } from './projects';

/** Sheets and files are looked at in one of so many draws that are looked at from all sides. */
const PAPERS = 50;
/** Longer than two thousand draws take on a machine that does much else; one that never ends is ended long before. */
const WATCHDOG = 600_000;

const asked = process.env.LEGWORK_SEED;
const from = asked === 'new' ? Math.floor(Math.random() * 2 ** 30) : Number(asked ?? 20261129);
const count = Math.round(2000 * Number(process.env.LEGWORK_RUNS ?? 1));

const judge = openJudge();
afterAll(() => judge.close());

const complaints: string[] = [];
const outcome = async (seed: number, look: Look) => {
  const found = await judge.ask({ seed, look });
  const bad = found.finds.filter((one) => !onDemand(one));
  complaints.push(...bad.map(({ kind, seen }) => `seed ${seed}: ${kind}: ${seen}`));
  return { ...found, kinds: [...new Set(bad.map(({ kind }) => kind))] };
};

test(
  'whatever is drawn within the limits is drafted whole, or refused by a sentence',
  async () => {
    const draws = Array.from({ length: count }, (_, i) => ({ seed: from + i, project: projectDrawn(from + i) }));
    const drafted = new Set<number>();
    let tally: Tally = emptyTally(from);
    for (const { seed } of draws) {
      const { refused } = await outcome(seed, 'draft');
      if (refused === undefined) drafted.add(seed);
      else tally = { ...tally, refused: raised(tally.refused, [refused]) };
    }
    // All were drafted; of what came of it, those are looked at from all sides that show every pair of choices.
    const choices = choicesOf(draws.map(({ project }) => project));
    const whole = draws.filter(({ seed }) => drafted.has(seed));
    const looked = covering(whole, ({ project }) => choices(project), 2);
    for (const [i, { seed }] of looked.entries()) {
      const { kinds, millis } = await outcome(seed, i % PAPERS === 0 ? { papers: i / PAPERS } : 'all');
      tally = {
        ...tally,
        next: Math.max(tally.next, seed + 1),
        draws: tally.draws + 1,
        finds: raised(tally.finds, kinds),
        slowest: millis > tally.slowest[0] ? [millis, seed] : tally.slowest,
      };
    }
    console.log(`${count} draws from seed ${from}, ${drafted.size} drafted; looked at from all sides:`);
    console.log(tallyText({ ...tally, seconds: performance.now() / 1000 }));
    expect(complaints.slice(0, 40)).toEqual([]);
    // Else what is looked at would be mostly refusals.
    expect(drafted.size / count).toBeGreaterThan(0.5);
  },
  WATCHDOG * Math.max(1, count / 2000),
);
