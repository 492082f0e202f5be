import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** A line of a cutting file as an outside reader found it; millimetres, y up. */
export interface ReadLine {
  readonly layer: string;
  readonly closed: boolean;
  readonly length: number;
  readonly area: number;
  readonly points: readonly (readonly [number, number])[];
}

/** What the outside reader found in one file. */
export interface ReadDxf {
  readonly version: string;
  readonly units: number;
  readonly faults: number;
  readonly lines: readonly ReadLine[];
  readonly texts: readonly { layer: string; text: string; height: number; turn: number }[];
}

/** Debian's own Python first: another one on the path does not see Debian's modules. */
const python = ['/usr/bin/python3', 'python3'].find((name) => {
  try {
    execFileSync(name, ['-c', 'import ezdxf'], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
});

/** Whether the outside reader is here; it says so where it is not. */
export function ezdxfIsHere(): boolean {
  if (python === undefined) {
    console.warn(
      'The cutting files were not read with ezdxf: it is not installed (Debian: python3-ezdxf). They were read with dxf-parser alone.',
    );
  }
  return python !== undefined;
}

/** Reads and audits cutting files with ezdxf, blocks opened up. */
export function readWithEzdxf(texts: readonly string[]): readonly ReadDxf[] {
  const folder = mkdtempSync(join(tmpdir(), 'dxf-'));
  try {
    const paths = texts.map((text, i) => {
      const path = join(folder, `${i}.dxf`);
      writeFileSync(path, text);
      return path;
    });
    const script = fileURLToPath(new URL('read_dxf.py', import.meta.url));
    const said = execFileSync(python ?? 'python3', [script, ...paths], { encoding: 'utf8', maxBuffer: 1 << 28 });
    return JSON.parse(said) as readonly ReadDxf[];
  } finally {
    rmSync(folder, { recursive: true });
  }
}
