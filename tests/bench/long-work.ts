import { type FileKind, makeFiles } from '../../src/files';
import { carriedOut } from '../../src/files/work/long-work';
import { draft, withFewestSheets } from '../../src/project';
import { benchProjects } from './bodies';

/** What a piece of long work came to. */
export interface LongWork {
  readonly name: string;
  readonly seconds: number;
  readonly files: number;
  readonly pages: number;
  readonly bytes: number;
  /** How many times it told its progress, and how long it was silent at the most. */
  readonly told: number;
  readonly silence: number;
  /** Greatest memory seen, bytes; by the caller's own measure. */
  readonly memory: number;
}

/** Ten bodies on one drawing; and a class of bodies of whose sheets there are a thousand at least, in one ZIP. */
export const LONG_WORK = {
  'nested print of ten bodies': { bodies: 10, kinds: ['nested'] },
  'a set of 1,000 pages': { bodies: 48, kinds: ['pdf'] },
} as const satisfies Readonly<Record<string, { bodies: number; kinds: readonly FileKind[] }>>;

/**
 * Does a piece of long work and watches it.
 *
 * @param memory bytes in use, asked at each step
 */
export async function longWork(
  name: keyof typeof LONG_WORK,
  font: Uint8Array,
  memory: () => number,
): Promise<LongWork> {
  const { bodies, kinds } = LONG_WORK[name];
  const start = performance.now();
  let [most, told, silence, last] = [memory(), 0, 0, start];
  const watched = () => {
    const now = performance.now();
    silence = Math.max(silence, now - last);
    last = now;
    told += 1;
    most = Math.max(most, memory());
  };
  const jobs = benchProjects(bodies).map((project, i) => {
    const result = draft(project);
    if (!result.ok) throw new Error('a bench body was refused');
    const job = { name: `body-${i + 1}`, draft: withFewestSheets(result.value) };
    watched();
    return job;
  });
  const files = await carriedOut(makeFiles(jobs, kinds, { font, date: new Date(0) }), { onProgress: watched });
  watched();
  const pages = files
    .filter((file) => file.name.endsWith('.pdf'))
    .reduce((sum, { content }) => sum + pagesOf(content as Uint8Array), 0);
  return {
    name,
    seconds: (performance.now() - start) / 1000,
    files: files.length,
    pages,
    bytes: files.reduce((sum, { content }) => sum + content.length, 0),
    told,
    silence,
    memory: most,
  };
}

/** A page's own entry stands in plain letters in the files that our writer makes. */
const pagesOf = (bytes: Uint8Array): number =>
  new TextDecoder('latin1').decode(bytes).match(/\/Type\s*\/Page\b/g)?.length ?? 0;
