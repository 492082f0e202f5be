import { constants } from 'node:fs';
import { type FileHandle, open } from 'node:fs/promises';
import { LARGEST_FILE, type Opened, openProject, tooLarge } from '../project';
import { number, type Problem, type Result, say } from '../words';
import { systemReason } from './reasons';

/** A file that can't be had. */
type Refused = Extract<Result<never>, { readonly ok: false }>;

const refused = (path: string, phrase: Problem['phrase']): Refused => ({
  ok: false,
  problems: [{ field: 'file', value: path, phrase }],
});

/**
 * Reads a project file; a file that is too large is refused by its size, before it is read.
 *
 * @param path where it is
 */
export async function readProjectFile(path: string): Promise<Opened> {
  return openedProject(path, await readBytes(path));
}

/**
 * Reads a project from a stream, and stops as soon as it is too large.
 *
 * @param stream standard input
 */
export async function readProjectStream(stream: AsyncIterable<Uint8Array | string>): Promise<Opened> {
  return openedProject('-', await gathered('-', stream));
}

/**
 * Reads the text of any file that a person made, with the same limit.
 *
 * @param path where it is
 */
export async function readText(path: string): Promise<Result<string>> {
  const bytes = await readBytes(path);
  return bytes.ok ? { ok: true, value: new TextDecoder().decode(bytes.value) } : bytes;
}

/**
 * Reads the bytes of any file that a person made, with the same limit; what is no plain file is never waited for.
 *
 * @param path where it is
 */
export async function readBytes(path: string): Promise<Result<Uint8Array>> {
  try {
    // A pipe that nobody writes to would keep even its opening waiting. Some systems don't know this.
    const file = await open(path, constants.O_RDONLY | (constants.O_NONBLOCK ?? 0));
    try {
      return await plainFileBytes(path, file);
    } finally {
      await file.close();
    }
  } catch (error) {
    return unread(path, error);
  }
}

async function plainFileBytes(path: string, file: FileHandle): Promise<Result<Uint8Array>> {
  const before = await file.stat();
  if (before.isDirectory()) return refused(path, say`is a folder, not a file.`);
  if (!before.isFile()) return refused(path, say`isn’t a plain file; name one, or give a project through - instead.`);
  if (before.size > LARGEST_FILE) return refused(path, tooLarge(before.size));
  const read = await gathered(path, file.createReadStream({ autoClose: false }));
  const after = await file.stat();
  if (read.ok && (after.size !== before.size || after.mtimeMs !== before.mtimeMs))
    return refused(path, say`was written to while it was read; try again once it is done.`);
  return read;
}

/** All of a stream, or a refusal as soon as it is too much. */
async function gathered(path: string, stream: AsyncIterable<Uint8Array | string>): Promise<Result<Uint8Array>> {
  const parts: Uint8Array[] = [];
  let size = 0;
  try {
    for await (const part of stream) {
      const bytes = typeof part === 'string' ? Buffer.from(part) : part;
      size += bytes.length;
      if (size > LARGEST_FILE)
        return refused(path, say`is larger than the ${number(LARGEST_FILE / 1e6, 0)} MB that a file may have.`);
      parts.push(bytes);
    }
  } catch (error) {
    return unread(path, error);
  }
  return size === 0 ? refused(path, say`is empty.`) : { ok: true, value: Buffer.concat(parts) };
}

/** A project of what was read; letters that aren't UTF-8 would silently become others. */
function openedProject(path: string, read: Result<Uint8Array>): Opened {
  if (!read.ok) return read;
  try {
    return openProject(new TextDecoder('utf-8', { fatal: true }).decode(read.value));
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ERR_ENCODING_INVALID_ENCODED_DATA') throw error;
    return refused(path, say`has letters that are not UTF-8, or is cut off within one; save it as UTF-8.`);
  }
}

/** Why a file could not be read; a fault of the program is thrown on. */
function unread(path: string, error: unknown): Refused {
  if ((error as NodeJS.ErrnoException).code === 'ENOENT') return refused(path, say`there is no such file.`);
  const reason = systemReason(error);
  if (reason === undefined) throw error;
  return refused(path, say`can’t be read: ${reason}.`);
}
