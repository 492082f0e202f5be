import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Dots to the inch, as a sharp photograph of the sheet has them. */
const DPI = 220;

/**
 * The words of a page as Tesseract reads them from its picture, level ones alone.
 *
 * @returns undefined where Tesseract isn't installed
 */
export function readByEye(bytes: Uint8Array, page: number): readonly string[] | undefined {
  if (spawnSync('tesseract', ['--version']).error) return undefined;
  const folder = mkdtempSync(join(tmpdir(), 'eye-'));
  try {
    const [file, picture] = [join(folder, 'it.pdf'), join(folder, 'page')];
    writeFileSync(file, bytes);
    execFileSync('pdftoppm', ['-gray', '-r', `${DPI}`, '-f', `${page}`, '-l', `${page}`, '-singlefile', file, picture]);
    const read = execFileSync('tesseract', [`${picture}.pgm`, '-', '--psm', '11'], {
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
    });
    return read.split(/\s+/);
  } finally {
    rmSync(folder, { recursive: true });
  }
}
