import { Zip, ZipDeflate, ZipPassThrough, type Zippable, zipSync } from 'fflate';

/** A finished file: its name, and its bytes or its text. */
export interface FinishedFile {
  /** With folders before it where it lies in one, a slash between. */
  readonly name: string;
  readonly content: Uint8Array | string;
}

/**
 * Files in one ZIP; the same files and date give the same bytes, wherever they are made.
 *
 * @param files under names that are unlike each other
 * @param date stands beside each file; its day in universal time counts
 */
export function zipFiles(files: readonly FinishedFile[], date: Date): Uint8Array {
  const letters = new TextEncoder();
  const packed: Zippable = {};
  for (const { name, content } of files) {
    // A PDF is packed already: packing it again costs time and saves nothing.
    const level = name.endsWith('.pdf') ? 0 : 6;
    packed[name] = [typeof content === 'string' ? letters.encode(content) : content, { level, mtime: zipDate(date) }];
  }
  return zipSync(packed);
}

/** Packs file after file, and hands on what is packed at once: however much it becomes, no more than one file is held. */
export interface ZipWriter {
  readonly add: (file: FinishedFile) => void;
  /** Writes the list of contents; nothing may be added afterwards. */
  readonly end: () => void;
}

/**
 * Starts a ZIP that is written piece by piece; the same files and date give the same bytes.
 *
 * @param date stands beside each file; its day in universal time counts
 * @param write is given each piece as soon as it is packed
 */
export function zipWriter(date: Date, write: (bytes: Uint8Array) => void): ZipWriter {
  const zip = new Zip((error, bytes) => {
    if (error) throw error;
    write(bytes);
  });
  const letters = new TextEncoder();
  return {
    add({ name, content }) {
      const file = name.endsWith('.pdf') ? new ZipPassThrough(name) : new ZipDeflate(name, { level: 6 });
      file.mtime = zipDate(date);
      zip.add(file);
      file.push(typeof content === 'string' ? letters.encode(content) : content, true);
    },
    end: () => zip.end(),
  };
}

/** The format has no time zone: midday of the day, as the clock here says, is the same figures everywhere. */
function zipDate(date: Date): Date {
  // The format counts its years from 1980, in seven bits, of which this writer takes the first 119.
  const year = Math.min(2099, Math.max(1980, date.getUTCFullYear()));
  return new Date(year, date.getUTCMonth(), date.getUTCDate(), 12);
}
