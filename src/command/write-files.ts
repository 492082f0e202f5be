import { mkdir, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { FinishedFile } from '../files';

/**
 * Writes finished files to a folder, all or none: each is first written beside its place, and only once all are there
 * do they take their names.
 *
 * @param folder made where it is missing
 * @returns the paths, in order
 * @throws what the system says, after taking away what was begun
 */
export async function writeFiles(folder: string, files: readonly FinishedFile[]): Promise<readonly string[]> {
  await mkdir(folder, { recursive: true });
  const places = files.map(({ name, content }) => ({
    content,
    path: join(folder, name),
    begun: join(folder, `${name}.part`),
  }));
  try {
    for (const { begun, content } of places) await writeFile(begun, content);
    for (const { begun, path } of places) await rename(begun, path);
  } catch (error) {
    for (const { begun } of places) await rm(begun, { force: true });
    throw error;
  }
  return places.map(({ path }) => path);
}
