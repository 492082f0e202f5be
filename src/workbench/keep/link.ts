import { number, type Phrase, type Result, say } from '../../length';
import { LARGEST_FILE, type Project, saveProject } from '../../project';

/** What stands before the project in a link. It is behind the #, so no browser sends it to anybody. */
const START = '#project=';

/** Longer addresses are cut by some mail programs and messengers (practice). */
const LONGEST_LINK = 8000;

/**
 * A link that holds the whole project, compressed, in its own text.
 *
 * @param page the address of the page, without anything behind the #
 */
export async function projectLink(project: Project, page: string): Promise<Result<string>> {
  const text = JSON.stringify(JSON.parse(saveProject(project)));
  const packed = await through(new TextEncoder().encode(text), new CompressionStream('deflate-raw'), LARGEST_FILE);
  const link = page + START + toLetters(packed);
  if (link.length <= LONGEST_LINK) return { ok: true, value: link };
  const phrase: Phrase = say`This project is too long for a link: ${number(link.length, 0)} letters, of which ${number(LONGEST_LINK, 0)} arrive safely. Save it as a file instead.`;
  return { ok: false, problems: [{ field: 'project', value: undefined, phrase }] };
}

/**
 * The text of the project in the part of an address behind the #.
 *
 * @returns undefined where the address holds none
 * @throws where it holds one that is broken
 */
export async function projectFromHash(hash: string): Promise<string | undefined> {
  if (!hash.startsWith(START)) return undefined;
  const packed = fromLetters(hash.slice(START.length));
  const bytes = await through(packed, new DecompressionStream('deflate-raw'), LARGEST_FILE);
  return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
}

/** Bytes through a transform; throws where more comes out than any project has, before the memory is full of it. */
async function through(
  bytes: Uint8Array<ArrayBuffer>,
  transform: CompressionStream | DecompressionStream,
  most: number,
): Promise<Uint8Array<ArrayBuffer>> {
  const parts: Uint8Array[] = [];
  let size = 0;
  const reader = new Blob([bytes]).stream().pipeThrough(transform).getReader();
  for (let part = await reader.read(); !part.done; part = await reader.read()) {
    size += part.value.length;
    if (size > most) {
      await reader.cancel();
      throw new RangeError('more than any project has');
    }
    parts.push(part.value);
  }
  const whole = new Uint8Array(size);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/** Bytes in the letters that an address may hold: base64url (RFC 4648, section 5). */
function toLetters(bytes: Uint8Array): string {
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return btoa(text).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}

function fromLetters(letters: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(atob(letters.replaceAll('-', '+').replaceAll('_', '/')), (sign) => sign.charCodeAt(0));
}
