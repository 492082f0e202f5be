import { progressLine } from './progress-line';
import { runDraft } from './run';

const progress = progressLine(process.stderr, () => performance.now());
try {
  process.exitCode = await runDraft(process.argv.slice(2), {
    input: process.stdin,
    say: (line) => {
      progress.wipe();
      process.stdout.write(`${line}\n`);
    },
    complain: (line) => {
      progress.wipe();
      process.stderr.write(`${line}\n`);
    },
    now: () => new Date(),
    progress: progress.show,
  });
} catch (error) {
  progress.wipe();
  // A fault of the program must not look like a pattern with a wrong check, which is what Node's own 1 would say.
  process.stderr.write(`program: a fault, please report it: ${error instanceof Error ? error.stack : String(error)}\n`);
  process.exitCode = 2;
}
