import type { FinishedFile, ZipWriter } from './zip';

/**
 * Files in one ZIP; the same files and date give the same bytes. The packer is loaded when it is first asked for.
 *
 * @param files under names that are unlike each other
 * @param date stands beside each file; its day in universal time counts
 */
export async function zipFiles(files: readonly FinishedFile[], date: Date): Promise<Uint8Array> {
  return (await import('./zip')).zipFiles(files, date);
}

/** Starts a ZIP that is written piece by piece; the packer is loaded when it is first asked for. */
export async function startZip(date: Date, write: (bytes: Uint8Array) => void): Promise<ZipWriter> {
  return (await import('./zip')).zipWriter(date, write);
}
