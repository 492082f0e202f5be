import { LARGEST_FILE, type Project, STATIONS, type Station, saveProject, withoutLastPrint } from '../../project';
import { number, type Phrase, type Result, say } from '../../words';

/*
 * What may stand behind the # of an address, where no browser sends it to anybody: `#station=leg`, and in a link
 * `#station=leg&project=…`, the project last, so that it is missed where an address was cut.
 */
const PROJECT = 'project';
const STATION = 'station';

const partOf = (hash: string, name: string): string | null => new URLSearchParams(hash.slice(1)).get(name);

/** The address of a station: the part behind the #. */
export const stationHash = (station: Station): string => `#${STATION}=${station}`;

/** The station that an address names behind the #; undefined where it names none. */
export function stationFromHash(hash: string): Station | undefined {
  const named = partOf(hash, STATION);
  return STATIONS.find((station) => station === named);
}

/** Longer addresses are cut by some mail programs and messengers. @source practice */
const LONGEST_LINK = 8000;

/**
 * A link that holds the whole project, compressed, in its own text, and the station at which it opens; not what was printed
 * of it, which is larger than a link, and lies on this table and not on the reader's.
 *
 * @param page the address of the page, without anything behind the #
 */
export async function projectLink(project: Project, station: Station, page: string): Promise<Result<string>> {
  const text = JSON.stringify(JSON.parse(saveProject(withoutLastPrint(project))));
  const packed = await through(new TextEncoder().encode(text), new CompressionStream('deflate-raw'), LARGEST_FILE);
  const link = `${page}${stationHash(station)}&${PROJECT}=${toLetters(packed)}`;
  if (link.length <= LONGEST_LINK) return { ok: true, value: link };
  const phrase: Phrase = say`This project is too long for a link: ${number(link.length, 0)} letters, of which ${number(LONGEST_LINK, 0)} arrive safely. Save it as a file instead.`;
  return { ok: false, problems: [{ field: 'project', value: undefined, phrase }] };
}

/**
 * Nothing is unpacked beyond this, bytes. Text of projects packs to a tenth or so: what a link of {@link LONGEST_LINK}
 * letters can hold stays far below, and what was packed to burst is stopped.
 */
const MOST_UNPACKED = 500_000;

/**
 * The text of the project in the part of an address behind the #.
 *
 * @returns undefined where the address holds none; otherwise its text, or why there is none to be had
 */
export async function projectFromHash(hash: string): Promise<Result<string> | undefined> {
  const letters = partOf(hash, PROJECT);
  if (letters === null) return undefined;
  // Whatever these three steps of the browser's own throw says that the letters, the bytes or the text are none.
  try {
    const packed = fromLetters(letters);
    const bytes = await through(packed, new DecompressionStream('deflate-raw'), MOST_UNPACKED);
    return { ok: true, value: new TextDecoder('utf-8', { fatal: true }).decode(bytes) };
  } catch (error) {
    return refused(
      error instanceof TooMuch
        ? say`holds more than any project that fits into a link, ${number(MOST_UNPACKED / 1000, 0)} kB, and was not unpacked.`
        : say`is incomplete. Was the link cut off?`,
    );
  }
}

const refused = (phrase: Phrase): Result<never> => ({
  ok: false,
  problems: [{ field: 'file', value: undefined, phrase }],
});

/** More came out than was allowed. */
class TooMuch extends Error {}

/** Bytes through a transform; throws where more comes out than is allowed, before the memory is full of it. */
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
      throw new TooMuch();
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
