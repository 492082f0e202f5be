import { constants } from 'node:fs';
import { inRow, own, say } from '../words';
import type { Disk } from './disk';
import { NotWritten, unchanged } from './places';
import { systemReason } from './reasons';

/** One file on its way. */
export interface Begun {
  readonly name: string;
  readonly path: string;
  readonly part: string;
  /** Open for writing. */
  file: number | undefined;
  /** Where the file that had this name waits until all is done; undefined where there was none. */
  old: string | undefined;
}

/**
 * Gives every file its name; where one can't have it, those before it get back what they were.
 *
 * @throws NotWritten where one can't, and says what became of the others
 */
export function takeNames(disk: Disk, folder: string, begun: readonly Begun[], abandon: () => void): void {
  for (const [i, { name, part, path }] of begun.entries()) {
    try {
      disk.renameSync(part, path);
    } catch (error) {
      const lost = begun.slice(0, i).filter((one) => !putBack(disk, one));
      // What could not be put back must outlive this run.
      const kept = lost.map(({ name, old }) =>
        old === undefined ? say`${own(name)} is new` : say`${own(name)} as it was is now ${own(old)}`,
      );
      for (const one of lost) one.old = undefined;
      abandon();
      const reason = systemReason(error);
      if (reason === undefined) throw error;
      if (kept.length > 0)
        throw new NotWritten(
          folder,
          say`${own(name)} can’t be written to: ${reason}; not all could be put back: ${inRow(kept)}; move these before the next run.`,
        );
      if (i === 0) throw unchanged(folder, name, reason);
      throw new NotWritten(
        folder,
        say`${own(name)} can’t be written to: ${reason}; what had been renamed was put back, nothing is changed.`,
      );
    }
  }
}

/** Whether a file that had its new name is again what it was. */
function putBack(disk: Disk, { path, old }: Begun): boolean {
  try {
    if (old === undefined) disk.unlinkSync(path);
    else disk.renameSync(old, path);
    return true;
  } catch {
    return false;
  }
}

/** A second name for a file, or a copy of it where the disk knows no second names. */
export function keepOld(disk: Disk, path: string, old: string): void {
  try {
    disk.linkSync(path, old);
  } catch {
    disk.copyFileSync(path, old, constants.COPYFILE_EXCL);
  }
}
