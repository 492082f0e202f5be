import { appendFileSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { emptyTally, raised, type Tally, tallyText } from '../tests/fuzz/count';
import type { Look } from '../tests/fuzz/judge';
import { type Judge, type Outcome, openJudge } from '../tests/fuzz/judging';
import { shrunk } from '../tests/fuzz/shrink';

// Draws projects and judges them, for as long as one likes: `npm run draws -- --from 1 --count 1000000 --out draws.jsonl`.
// Started again with the same file it goes on where it stopped.

const { values } = parseArgs({
  options: {
    from: { type: 'string', default: '1' },
    count: { type: 'string', default: '10000' },
    workers: { type: 'string', default: '1' },
    out: { type: 'string', default: 'draws.jsonl' },
  },
});
const number = (name: 'from' | 'count' | 'workers'): number => {
  const value = Number(values[name]);
  if (!Number.isInteger(value) || value < 1) throw new Error(`--${name} must be a whole number from 1 on.`);
  return value;
};

/** After so many draws the file says how far it came. */
const BATCH = 100;
/** Of one kind so many finds are made smaller, and so many written as projects; the others are only counted. */
const MADE_SMALL = 3;
const WRITTEN = 25;
/** Sheets and files are looked at in every hundredth draw. */
const PAPERS = 100;

const [first, count, out] = [number('from'), number('count'), values.out];
const folder = `${out}.finds`;
mkdirSync(folder, { recursive: true });
let tally = lastTally() ?? emptyTally(first);
const end = first + count;
const judges = Array.from({ length: number('workers') }, openJudge);

while (tally.next < end) {
  const [from, to] = [tally.next, Math.min(end, tally.next + BATCH)];
  const began = Date.now();
  let seed = from;
  const found: (readonly [number, Outcome])[] = [];
  const work = async (judge: Judge) => {
    while (seed < to) {
      const mine = seed;
      seed += 1;
      found.push([mine, await judge.ask({ seed: mine, look: lookAt(mine) })]);
    }
  };
  await Promise.all(judges.map(work));
  const seconds = (Date.now() - began) / 1000;
  for (const [mine, outcome] of found) await note(mine, outcome);
  tally = { ...tally, next: to, draws: tally.draws + (to - from), seconds: tally.seconds + seconds };
  appendFileSync(out, `${JSON.stringify({ tally })}\n`);
  writeFileSync(`${out}.txt`, `${tallyText(tally)}\n`);
  const finds = Object.values(tally.finds).reduce((a, b) => a + b, 0);
  process.stdout.write(`seed ${to - 1}: ${((to - from) / seconds).toFixed(1)} draws a second, ${finds} finds\n`);
}
await Promise.all(judges.map((judge) => judge.close()));
console.log(tallyText(tally));

/** Writes down what was found in one draw: a line for each kind, and projects as files. */
async function note(mine: number, { finds, refused, followed, millis, project }: Outcome): Promise<void> {
  const kinds = [...new Set(finds.map(({ kind }) => kind))];
  for (const { kind, seen } of finds.filter((one, i) => finds.findIndex(({ kind }) => kind === one.kind) === i)) {
    const before = tally.finds[kind] ?? 0;
    const file = before < WRITTEN && project ? `${folder}/${fileWord(kind)}-${mine}.legwork.json` : undefined;
    appendFileSync(out, `${JSON.stringify({ seed: mine, kind, seen, ...(file ? { file } : {}) })}\n`);
    if (!file || !project) continue;
    const small = before < MADE_SMALL ? await shrunk(project, kind, judges[0] as Judge, lookAt(mine)) : project;
    writeFileSync(file, `${JSON.stringify(small, null, 1)}\n`);
  }
  tally = {
    ...tally,
    finds: raised(tally.finds, kinds),
    refused: raised(tally.refused, refused === undefined ? [] : [refused]),
    followed: raised(tally.followed, followed === undefined ? [] : [followed]),
    slowest: millis > tally.slowest[0] ? [millis, mine] : tally.slowest,
  };
}

function lookAt(seed: number): Look {
  return seed % PAPERS === 0 ? { papers: seed / PAPERS } : 'all';
}

function fileWord(kind: string): string {
  return kind.replace(/[^a-zA-Z]+/g, '-').slice(0, 40);
}

/** How far a run came that wrote into the same file before. */
function lastTally(): Tally | undefined {
  if (!existsSync(out)) return undefined;
  const lines = readFileSync(out, 'utf8')
    .split('\n')
    .filter((line) => line.startsWith('{"tally"') && line.endsWith('}'));
  const last = lines.at(-1);
  return last === undefined ? undefined : (JSON.parse(last) as { readonly tally: Tally }).tally;
}
