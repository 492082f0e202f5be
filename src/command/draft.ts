import { own, words } from '../words';
import { faultSentence } from './outcome';
import { progressLine } from './progress-line';
import { runDraft } from './run';
import { stopOnSignals } from './stop';

const progress = progressLine(process.stderr, () => performance.now());
const stop = new AbortController();
let over = false;
const complain = (line: string) => {
  progress.wipe();
  process.stderr.write(`${line}\n`);
};

// Until it is said how it ended: Node's own 1 and 13 would look like a pattern with a wrong check, or like nothing known.
process.exitCode = 2;
const fault = (error: unknown) => {
  stop.abort();
  complain(faultSentence(error));
  process.exit(2);
};
process.on('uncaughtException', fault);
stopOnSignals(process, () => {
  stop.abort();
  complain(over ? words`stopped: the files are written` : words`stopped: nothing was written`);
});
// Who reads only the first line, as `head -1` does, has all the files none the less.
process.stdout.on('error', ({ code }: NodeJS.ErrnoException) => {
  if (code !== 'EPIPE')
    complain(words`standard output: can’t be written to (${own(`${code}`)}); the files are written all the same`);
});
process.stderr.on('error', () => {});

try {
  process.exitCode = await runDraft(process.argv.slice(2), {
    input: process.stdin,
    say: (line) => {
      progress.wipe();
      process.stdout.write(`${line}\n`);
    },
    complain,
    now: () => new Date(),
    locale: process.env.LC_ALL || process.env.LC_MESSAGES || process.env.LANG,
    progress: progress.show,
    signal: stop.signal,
  });
  over = process.exitCode !== 2;
} catch (error) {
  fault(error);
}
