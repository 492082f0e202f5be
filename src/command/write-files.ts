import { join } from 'node:path';
import type { FinishedFile } from '../files';
import { own, say } from '../words';
import type { DraftOrder } from './arguments';
import { DISK, type Disk } from './disk';
import { quietly, runStamp, sweepLeftovers } from './leftovers';
import { sameName } from './names';
import type { Surroundings } from './outcome';
import { isThere, makeFolders, NotWritten, type Place, unchanged } from './places';
import { systemReason } from './reasons';
import { type Begun, keepOld, takeNames } from './take-names';

/** The place that an order names. */
export const placeOf = (order: DraftOrder, { disk, signal }: Surroundings): Place => ({
  folder: order.out,
  inputs: [...order.projects, order.blocks, order.table].filter(
    (path): path is string => path !== undefined && path !== '-',
  ),
  disk,
  signal,
});

/**
 * Files on their way to a folder: all or none. Each is first written beside its place, under a name that says whose it
 * is; only once all are there do they take their names. Every call throws NotWritten where the system refuses, and
 * nothing is changed then.
 */
export interface Writing {
  /** Begins a file, and gives what writes to it. */
  readonly begin: (name: string) => (bytes: Uint8Array) => void;
  /** Gives all files their names, and returns their paths in order. */
  readonly finish: () => readonly string[];
  /** Takes away what was begun; nothing where it is finished. */
  readonly abandon: () => void;
}

/**
 * Starts to write files to a folder, after removing what killed runs left there.
 *
 * @throws NotWritten where the folder can't be made
 */
export function startWriting(place: Place): Writing {
  const { folder, disk = DISK, signal } = place;
  const stamp = runStamp();
  const begun: Begun[] = [];
  const madeFolders: string[] = [];
  let over = false;

  const abandon = () => {
    signal?.removeEventListener('abort', abandon);
    if (over) return;
    over = true;
    for (const one of begun) {
      const { file, part, old } = one;
      one.file = undefined;
      if (file !== undefined) quietly(() => disk.closeSync(file));
      quietly(() => disk.unlinkSync(part));
      if (old !== undefined) quietly(() => disk.unlinkSync(old));
    }
    for (const made of madeFolders.reverse()) quietly(() => disk.rmdirSync(made));
  };
  signal?.addEventListener('abort', abandon);

  /** Does a part of the work; where it fails, nothing of the whole remains. */
  const attempt = <T>(name: string, act: () => T): T => {
    try {
      return act();
    } catch (error) {
      abandon();
      const reason = systemReason(error);
      if (reason === undefined) throw error;
      throw unchanged(folder, name, reason);
    }
  };

  const close = (one: Begun) => {
    const { file } = one;
    if (file === undefined) return;
    syncFile(disk, file);
    // Closed or not, after a failed attempt its number may be another file's.
    one.file = undefined;
    disk.closeSync(file);
  };

  attempt('', () => {
    makeFolders(disk, folder, madeFolders);
    sweepLeftovers(disk, folder);
  });

  return {
    begin: (name) =>
      attempt(name, () => {
        for (const one of begun) close(one);
        if (begun.some((one) => sameName(one.name, name)))
          throw new NotWritten(folder, say`${own(name)} would be written twice; rename one of the projects.`);
        const path = join(folder, name);
        const there = isThere(disk, place, name);
        const stem = join(folder, `${stamp}-${begun.length}`);
        const one: Begun = {
          name,
          path,
          part: `${stem}.part`,
          file: undefined,
          old: there ? `${stem}.old` : undefined,
        };
        begun.push(one);
        one.file = disk.openSync(one.part, 'wx');
        return (bytes) => attempt(name, () => writeWhole(disk, one.file, bytes));
      }),
    finish: () => {
      const last = begun.at(-1);
      attempt(last?.name ?? '', () => {
        for (const one of begun) close(one);
        // The last one needs no way back: once it has its name, all have.
        for (const { path, old } of begun.slice(0, -1)) if (old !== undefined) keepOld(disk, path, old);
      });
      takeNames(disk, folder, begun, abandon);
      over = true;
      abandon();
      for (const { old } of begun.slice(0, -1)) if (old !== undefined) quietly(() => disk.unlinkSync(old));
      return begun.map(({ path }) => path);
    },
    abandon,
  };
}

/**
 * Writes finished files to a folder, all or none.
 *
 * @returns their paths, in order
 * @throws NotWritten where the system refuses; nothing is changed then
 */
export function writeFiles(place: Place, files: readonly FinishedFile[]): readonly string[] {
  const writing = startWriting(place);
  try {
    for (const { name, content } of files)
      writing.begin(name)(typeof content === 'string' ? Buffer.from(content) : content);
    return writing.finish();
  } finally {
    writing.abandon();
  }
}

function writeWhole(disk: Disk, file: number | undefined, bytes: Uint8Array): void {
  if (file === undefined) throw new Error('written to after its end');
  for (let at = 0; at < bytes.length; ) {
    const taken = disk.writeSync(file, bytes, at);
    if (taken <= 0) throw Object.assign(new Error('nothing was taken'), { code: 'EIO', syscall: 'write' });
    at += taken;
  }
}

/** Some disks can't be told to finish; there the system's own care has to do. */
const CANT_SYNC: readonly unknown[] = ['EINVAL', 'ENOSYS', 'ENOTSUP'];

/** Waits until a file's bytes are on the disk, so that a failure of power can't leave a name without them. */
function syncFile(disk: Disk, file: number): void {
  try {
    disk.fsyncSync(file);
  } catch (error) {
    if (!CANT_SYNC.includes((error as NodeJS.ErrnoException).code)) throw error;
  }
}
