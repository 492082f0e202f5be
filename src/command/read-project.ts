import { open } from 'node:fs/promises';
import { type Problem, type Result, say } from '../length';
import { LARGEST_FILE, openProject, type Project, tooLarge } from '../project';

const refused = (value: unknown, phrase: Problem['phrase']): Result<never> => ({
  ok: false,
  problems: [{ field: 'file', value, phrase }],
});

/** Why the system would not give a file, in words. */
const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file.',
  EACCES: 'this file may not be read.',
  EPERM: 'this file may not be read.',
  EISDIR: 'is a folder, not a file.',
  ENOTDIR: 'there is no such file.',
};

/**
 * Reads a project file; a file that is too large is refused by its size, before it is read.
 *
 * @param path where it is
 */
export async function readProjectFile(path: string): Promise<Result<Project>> {
  const text = await readText(path);
  return text.ok ? openProject(text.value) : text;
}

/**
 * Reads the text of any file that a person made, with the same limit.
 *
 * @param path where it is
 */
export async function readText(path: string): Promise<Result<string>> {
  const bytes = await readBytes(path);
  return bytes.ok ? { ok: true, value: plainText(bytes.value) } : bytes;
}

/**
 * Reads the bytes of any file that a person made, with the same limit.
 *
 * @param path where it is
 */
export async function readBytes(path: string): Promise<Result<Uint8Array>> {
  try {
    const file = await open(path, 'r');
    try {
      const { size } = await file.stat();
      if (size > LARGEST_FILE) return refused(path, tooLarge(size));
      return { ok: true, value: await file.readFile() };
    } finally {
      await file.close();
    }
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    if (code === undefined) throw error;
    return refused(path, [REASONS[code] ?? `can't be read (${code}).`]);
  }
}

/**
 * Reads a project from a stream, and stops as soon as it is too large.
 *
 * @param stream standard input
 */
export async function readProjectStream(stream: AsyncIterable<Uint8Array | string>): Promise<Result<Project>> {
  const parts: Uint8Array[] = [];
  let size = 0;
  for await (const part of stream) {
    const bytes = typeof part === 'string' ? Buffer.from(part) : part;
    size += bytes.length;
    if (size > LARGEST_FILE)
      return refused('-', say`is larger than the ${tooLargeLimit} MB that a project file may have.`);
    parts.push(bytes);
  }
  return openProject(plainText(Buffer.concat(parts)));
}

const tooLargeLimit = { number: LARGEST_FILE / 1e6, decimals: 0 } as const;

/** Some editors put a byte order mark in front, which JSON doesn't know. */
const plainText = (bytes: Uint8Array): string =>
  Buffer.from(bytes)
    .toString('utf8')
    .replace(/^\ufeff/, '');
