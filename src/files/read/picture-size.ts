/** How many pixels a picture has, as its file says, before anything turns it. */
export interface PictureSize {
  readonly width: number;
  readonly height: number;
}

/**
 * How large a picture is, read from the beginning of its file, so that one too large to hold is refused before anything is
 * decoded.
 *
 * @param head the first bytes of the file; a megabyte holds all that cameras write before the size
 * @returns undefined for another kind of file than JPEG, PNG and WebP, and for one that is cut off or broken
 * @source *ISO/IEC 10918-1*, 1994, B.2; *ISO/IEC 15948*, 2004, 11.2.2; *RFC 9649 WebP Image Format*, 2024; from memory
 */
export function pictureSize(head: Uint8Array): PictureSize | undefined {
  const view = new DataView(head.buffer, head.byteOffset, head.byteLength);
  try {
    if (view.getUint32(0) === 0x89504e47) return { width: view.getUint32(16), height: view.getUint32(20) };
    if (view.getUint16(0) === 0xffd8) return jpegSize(view);
    if (view.getUint32(0) === RIFF && view.getUint32(8) === WEBP) return webpSize(view);
  } catch (error) {
    // Beyond the end of what is there.
    if (!(error instanceof RangeError)) throw error;
  }
  return undefined;
}

const RIFF = 0x52494646;
const WEBP = 0x57454250;

/** Segment by segment to the one in which a frame begins. */
function jpegSize(view: DataView): PictureSize | undefined {
  let at = 2;
  while (view.getUint8(at) === 0xff) {
    const kind = view.getUint8(at + 1);
    if (kind === 0xff) {
      at += 1;
      continue;
    }
    const frame = kind >= 0xc0 && kind <= 0xcf && kind !== 0xc4 && kind !== 0xc8 && kind !== 0xcc;
    if (frame) return { height: view.getUint16(at + 5), width: view.getUint16(at + 7) };
    // Some have no length of their own.
    at += kind === 0x01 || (kind >= 0xd0 && kind <= 0xd8) ? 2 : 2 + view.getUint16(at + 2);
  }
  return undefined;
}

function webpSize(view: DataView): PictureSize | undefined {
  const kind = String.fromCharCode(...[12, 13, 14, 15].map((at) => view.getUint8(at)));
  const three = (at: number) => view.getUint16(at, true) + (view.getUint8(at + 2) << 16);
  if (kind === 'VP8X') return { width: three(24) + 1, height: three(27) + 1 };
  if (kind === 'VP8 ') return { width: view.getUint16(26, true) & 0x3fff, height: view.getUint16(28, true) & 0x3fff };
  if (kind !== 'VP8L') return undefined;
  const bits = view.getUint32(21, true);
  return { width: (bits & 0x3fff) + 1, height: ((bits >>> 14) & 0x3fff) + 1 };
}
