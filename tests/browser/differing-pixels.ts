import type { Browser } from 'playwright-core';

/** Two colours nearer than this, of 255 in each channel, are seen as the same. */
const NEAR = 64;

/**
 * How many pixels of two pictures differ: those that match no pixel of the other picture within one pixel's distance, so
 * that a line that is smoothed differently is the same line, and one that has moved is not.
 *
 * @param browser reads the pictures; nothing else here can
 * @param kept a PNG
 * @param now another
 * @returns the larger count of the two directions; every pixel where the sizes differ
 */
export async function differingPixels(browser: Browser, kept: Buffer, now: Buffer): Promise<number> {
  const page = await browser.newPage();
  const count = await page.evaluate(
    async ([first, second, near]) => {
      const pixels = async (text: string) => {
        const image = new Image();
        image.src = `data:image/png;base64,${text}`;
        await image.decode();
        const canvas = document.createElement('canvas');
        canvas.width = image.naturalWidth;
        canvas.height = image.naturalHeight;
        const context = canvas.getContext('2d');
        if (!context) throw new Error('no canvas');
        context.drawImage(image, 0, 0);
        return context.getImageData(0, 0, canvas.width, canvas.height);
      };
      const [a, b] = [await pixels(first), await pixels(second)];
      if (a.width !== b.width || a.height !== b.height) return a.width * a.height;
      const matches = (one: ImageData, other: ImageData, x: number, y: number) => {
        const at = 4 * (y * one.width + x);
        for (let dy = -1; dy <= 1; dy += 1) {
          for (let dx = -1; dx <= 1; dx += 1) {
            const [u, v] = [x + dx, y + dy];
            if (u < 0 || v < 0 || u >= one.width || v >= one.height) continue;
            const there = 4 * (v * one.width + u);
            const off = [0, 1, 2].map((c) => Math.abs((one.data[at + c] ?? 0) - (other.data[there + c] ?? 0)));
            if (Math.max(...off) <= near) return true;
          }
        }
        return false;
      };
      const unlike = (one: ImageData, other: ImageData) => {
        let sum = 0;
        for (let y = 0; y < one.height; y += 1)
          for (let x = 0; x < one.width; x += 1) if (!matches(one, other, x, y)) sum += 1;
        return sum;
      };
      return Math.max(unlike(a, b), unlike(b, a));
    },
    [kept.toString('base64'), now.toString('base64'), NEAR] as const,
  );
  await page.close();
  return count;
}
