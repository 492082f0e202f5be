import { basename } from 'node:path';

/** What some system doesn't allow in a file's name, or takes for a folder, and what would turn the reading direction. */
const FORBIDDEN = /[\p{Cc}<>:"/\\|?*\u200e\u200f\u202a-\u202e\u2066-\u2069\ufffd]+/gu;
/** Names that some systems keep for devices, whatever follows the dot. */
const DEVICE = /^(?:con|prn|aux|nul|com\d|lpt\d)(?:\.|$)/i;
/** Bytes: names have at most 255 on most disks, and our endings have to fit. */
const LONGEST = 200;

/** A project file's name without what says that it is one, as every system takes it: never empty, hidden or a path. */
export function baseName(path: string): string {
  const plain = basename(path)
    .replace(/(?:\.legwork)?\.json$/i, '')
    .replace(FORBIDDEN, '-');
  let cut = '';
  for (const letter of plain.replace(/^[. ]+/, '')) {
    if (Buffer.byteLength(cut + letter) > LONGEST) break;
    cut += letter;
  }
  const name = cut.replace(/[. ]+$/, '');
  if (name === '') return 'pattern';
  return DEVICE.test(name) ? `pattern-${name}` : name;
}

/** Some systems take capitals and small letters in a file's name for the same, some an accent and its letter apart. */
export const sameName = (a: string, b: string): boolean => foldedName(a) === foldedName(b);

const foldedName = (name: string): string => name.normalize('NFC').toLowerCase();
