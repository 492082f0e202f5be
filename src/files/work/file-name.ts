/** What may not stand in a file's name on some system or other, and what a shell would take for something else. */
const UNSAFE = /[^\p{L}\p{M}\p{N}._ -]+/gu;
const LONGEST = 80;
/** Most disks take 255 bytes for a name, of which numbers and endings need some; a letter may take four. */
const MOST_BYTES = 180;
/** Names that some systems keep for devices, whatever ending follows. */
const DEVICE = /^(?:con|prn|aux|nul|(?:com|lpt)[\d¹²³])(?:\.|$)/i;

/**
 * A name for files from a project's name: letters, figures, single hyphens; never empty, never hidden, never a path or a
 * device, and short enough for any disk.
 *
 * @param name what the person called the project
 */
export function safeFileName(name: string): string {
  const plain = name
    .normalize('NFC')
    .replace(UNSAFE, '-')
    .replace(/[\s-]+/g, '-');
  const trimmed = shortened(plain).replace(/^[-. ]+|[-. ]+$/g, '');
  if (trimmed === '') return 'pattern';
  return DEVICE.test(trimmed) ? `pattern-${trimmed}` : trimmed;
}

/** Cut between two letters, never within one. */
function shortened(text: string): string {
  const bytes = new TextEncoder();
  let [cut, room] = ['', MOST_BYTES];
  for (const letter of [...text].slice(0, LONGEST)) {
    room -= bytes.encode(letter).length;
    if (room < 0) break;
    cut += letter;
  }
  return cut;
}

/** Names made unlike each other by a number, also for systems that take capitals and small letters for the same. */
export function unlikeNames(names: readonly string[]): readonly string[] {
  const used = new Set<string>();
  const next = new Map<string, number>();
  return names.map((name) => {
    let own = name;
    for (let i = next.get(name) ?? 2; used.has(folded(own)); i += 1) {
      own = `${name}-${i}`;
      next.set(name, i + 1);
    }
    used.add(folded(own));
    return own;
  });
}

/** As systems compare names that differ least: capitals, accents beside their letters, wide letters. */
const folded = (name: string): string => name.normalize('NFKC').toUpperCase().toLowerCase().normalize('NFKC');
