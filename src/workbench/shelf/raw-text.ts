/** What was kept, as text for a file: for somebody who can read more of it than this program. Never fails. */
export function rawText(raw: unknown): string {
  const { text } = (typeof raw === 'object' && raw !== null ? raw : {}) as { text?: unknown };
  // A project's own text is what a newer Legwork opens.
  if (typeof text === 'string' && text.trimStart().startsWith('{')) return text;
  const above = new Set<unknown>();
  const plain = (value: unknown): unknown => {
    if (typeof value === 'bigint' || typeof value === 'number') return Number.isFinite(value) ? value : String(value);
    if (value === undefined) return 'undefined';
    if (typeof value !== 'object' || value === null) return value;
    if (above.has(value)) return 'itself';
    above.add(value);
    const out =
      value instanceof Date
        ? String(value)
        : value instanceof Map || value instanceof Set || Array.isArray(value)
          ? [...value].map(plain)
          : Object.fromEntries(Object.entries(value).map(([key, part]) => [key, plain(part)]));
    above.delete(value);
    return out;
  };
  return `${JSON.stringify(plain(raw), null, 2)}\n`;
}
