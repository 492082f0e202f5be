/** What may not stand in a file's name on some system or other, and what a shell would take for something else. */
const UNSAFE = /[^\p{L}\p{N}._ -]+/gu;
const LONGEST = 80;

/**
 * A name for files from a project's name: letters, figures, single hyphens; never empty, never hidden, never a path.
 *
 * @param name what the person called the project
 */
export function safeFileName(name: string): string {
  const plain = name
    .normalize('NFC')
    .replace(UNSAFE, '-')
    .replace(/[\s-]+/g, '-');
  const cut = [...plain].slice(0, LONGEST).join('');
  const trimmed = cut.replace(/^[-. ]+|[-. ]+$/g, '');
  return trimmed === '' ? 'pattern' : trimmed;
}

/** Names made unlike each other by a number, also for systems that take capitals and small letters for the same. */
export function unlikeNames(names: readonly string[]): readonly string[] {
  const used = new Set<string>();
  const next = new Map<string, number>();
  return names.map((name) => {
    let own = name;
    for (let i = next.get(name) ?? 2; used.has(own.toLowerCase()); i += 1) {
      own = `${name}-${i}`;
      next.set(name, i + 1);
    }
    used.add(own.toLowerCase());
    return own;
  });
}
