import type { Browser } from 'playwright-core';

/** Colours nearer than this, of 255 in each channel, are the same: an edge that is smoothed differently, not a line that moved. */
const NEAR = 96;

/**
 * How many pixels of two pictures differ.
 *
 * @param browser reads the pictures; nothing else here can
 * @param kept a PNG
 * @param now another
 * @returns the count; every pixel where the sizes differ
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
      let sum = 0;
      for (let at = 0; at < a.data.length; at += 4) {
        const off = [0, 1, 2].map((c) => Math.abs((a.data[at + c] ?? 0) - (b.data[at + c] ?? 0)));
        if (Math.max(...off) > near) sum += 1;
      }
      return sum;
    },
    [kept.toString('base64'), now.toString('base64'), NEAR] as const,
  );
  await page.close();
  return count;
}
