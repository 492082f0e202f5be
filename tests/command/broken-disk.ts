import fs from 'node:fs';
import { join } from 'node:path';
import type { Disk } from '../../src/command/disk';

/** The real disk, on which something else happens at some calls. */
export interface BrokenDisk {
  readonly disk: Disk;
  /** The names of all calls so far. */
  readonly calls: readonly string[];
}

/**
 * A disk that breaks.
 *
 * @param breaks asked before every call, by its number from 1 and its name; true where it fails
 * @param code what the system says then
 */
export function brokenDisk(breaks: (number: number, call: string) => boolean, code: string): BrokenDisk {
  const calls: string[] = [];
  const wrapped = Object.entries(fs).flatMap(([call, act]) => {
    if (!call.endsWith('Sync')) return [];
    const tried = (...given: unknown[]): unknown => {
      calls.push(call);
      if (breaks(calls.length, call)) throw Object.assign(new Error(code), { code, errno: -1, syscall: call });
      // Waiting for the real disk would take most of the tests' time.
      return call === 'fsyncSync' ? undefined : (act as (...given: unknown[]) => unknown)(...given);
    };
    return [[call, tried]];
  });
  return { disk: Object.fromEntries(wrapped) as Disk, calls };
}

/** Everything in a folder and what lies in it: names, and the letters of files. */
export function folderContent(folder: string): Readonly<Record<string, string>> {
  const found: Record<string, string> = {};
  for (const name of fs.readdirSync(folder, { recursive: true, encoding: 'utf8' }).sort()) {
    const path = join(folder, name);
    const kind = fs.lstatSync(path);
    found[name] = kind.isFile() ? fs.readFileSync(path, 'latin1') : kind.isDirectory() ? 'a folder' : 'something else';
  }
  return found;
}
