import { deflateSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { pictureSize } from '../../../src/files';

const bytes = (...parts: readonly (string | readonly number[])[]): Uint8Array =>
  Uint8Array.from(
    parts.flatMap((part) => (typeof part === 'string' ? [...part].map((c) => c.charCodeAt(0)) : [...part])),
  );
const two = (value: number) => [value >> 8, value & 255];
const SIZE = { width: 20_000, height: 10_000 };

const PNG = bytes([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0, 0, 13], 'IHDR', [
  0,
  0,
  ...two(20_000),
  0,
  0,
  ...two(10_000),
]);
/** With a note of the camera before the frame, as large as such a note can be. */
const JPEG = bytes([0xff, 0xd8, 0xff, 0xe1, ...two(65_535)], new Array<number>(65_533).fill(0xff), [
  0xff,
  0xff,
  0xc4,
  0,
  4,
  1,
  1,
  0xff,
  0xc2,
  0,
  11,
  8,
  ...two(10_000),
  ...two(20_000),
  1,
  1,
  0x11,
  0,
]);
const webp = (kind: string, ...rest: readonly number[]) =>
  bytes('RIFF', [0, 0, 0, 0], `WEBP${kind}`, [0, 0, 0, 0], rest);
const [w, h] = [SIZE.width - 1, SIZE.height - 1];
const bits = w | (h << 14);

describe('how large a picture is', () => {
  test.each([
    ['a PNG', PNG, SIZE],
    ['a JPEG', JPEG, SIZE],
    ['a plain WebP', webp('VP8 ', 0, 0, 0, 0x9d, 1, 0x2a, 0x40, 0x1f, 0xd0, 0x07), { width: 8000, height: 2000 }],
    [
      'a WebP without loss',
      webp('VP8L', 0x2f, bits & 255, (bits >> 8) & 255, (bits >> 16) & 255, bits >>> 24),
      {
        width: (w & 0x3fff) + 1,
        height: h + 1,
      },
    ],
    ['a WebP with more in it', webp('VP8X', 0, 0, 0, 0, w & 255, w >> 8, 0, h & 255, h >> 8, 0), SIZE],
  ] as const)('is read from the head of %s', (_, head, size) => {
    expect(pictureSize(head)).toEqual(size);
  });

  test.each([
    ['nothing', new Uint8Array()],
    ['a text', bytes('no picture at all')],
    ['a PNG that is cut off', PNG.slice(0, 18)],
    ['a JPEG that is cut off', JPEG.slice(0, 400)],
    ['a JPEG of junk', bytes([0xff, 0xd8, 1, 2, 3, 4])],
    ['a WebP of another kind', webp('ALPH', 0, 0, 0, 0, 0, 0)],
    ['something packed', Uint8Array.from(deflateSync('x'.repeat(100)))],
  ])('is not known of %s', (_, head) => {
    expect(pictureSize(head)).toBeUndefined();
  });
});
