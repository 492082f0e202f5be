import { randomBytes } from 'node:crypto';
import { join } from 'node:path';
import type { Disk } from './disk';

/** The names that runs give to what is begun (`part`) and to what must be put back if they fail (`old`). */
const OURS = /^\.legwork-(\d+)-[0-9a-f]{8}-\d+\.(?:part|old)$/;

/** What the names of one run begin with: unlike those of every other run, also where two machines share a folder. */
export const runStamp = (): string => `.legwork-${process.pid}-${randomBytes(4).toString('hex')}`;

/**
 * Removes what killed runs left in a folder, and nothing else: what can't be removed stays.
 *
 * @param folder where files are about to be written
 */
export function sweepLeftovers(disk: Disk, folder: string): void {
  quietly(() => {
    for (const name of disk.readdirSync(folder)) {
      const run = OURS.exec(name)?.[1];
      if (run !== undefined && !isRunning(Number(run))) quietly(() => disk.unlinkSync(join(folder, name)));
    }
  });
}

/** Does what may fail without harm. */
export function quietly(act: () => void): void {
  try {
    act();
  } catch {
    // Nobody waits for it: the next run tries again.
  }
}

/** Whether another run by that number is still at work. */
function isRunning(run: number): boolean {
  // A number is used again once its run is over: ours was a killed run's before.
  if (run === process.pid) return false;
  try {
    return process.kill(run, 0);
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}
