import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { cutCurves } from '../../src/edges';
import { writeSvg } from '../../src/files';
import { outlineArea, pathLength } from '../../src/plane';
import { draftWith } from '../files/drafts';
import { launchChromium } from './open-app';

let browser: Browser;
beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(() => browser.close());

/** A millimetre in CSS pixels. */
const MM = 96 / 25.4;

test('the SVG reopens in a browser at its real size, with the same lengths and areas, and no word is cut off', async () => {
  const draft = draftWith({
    name: 'A name so long that it reaches far beyond the piece it stands on, as far as a name can reach at all',
    waist: { finish: 'separateCasing' },
    hem: { finish: 'contrastBand' },
  });
  const page = await browser.newPage();
  await page.setContent(`<body style="margin:0">${writeSvg(draft).replace(/^<\?xml.*?\?>/, '')}</body>`);
  const seen = await page.evaluate(() => {
    const svg = document.querySelector('svg') as SVGSVGElement;
    const view = svg.viewBox.baseVal;
    const matrix = (text: SVGTextElement) => {
      const box = text.getBBox();
      const own = svg
        .getScreenCTM()
        ?.inverse()
        .multiply(text.getScreenCTM() as DOMMatrix) as DOMMatrix;
      return [0, 1, 2, 3].map((i) => {
        const p = new DOMPoint(box.x + (i % 2) * box.width, box.y + Math.floor(i / 2) * box.height);
        return p.matrixTransform(own);
      });
    };
    const area = (path: SVGPathElement) => {
      const length = path.getTotalLength();
      const count = 20_000;
      let sum = 0;
      let a = path.getPointAtLength(0);
      for (let i = 1; i <= count; i += 1) {
        const b = path.getPointAtLength((length * i) / count);
        sum += a.x * b.y - b.x * a.y;
        a = b;
      }
      return Math.abs(sum) / 2;
    };
    return {
      width: svg.getBoundingClientRect().width,
      view: view.width,
      cuts: [...svg.querySelectorAll<SVGPathElement>('#cut path')].map((path) => ({
        length: path.getTotalLength(),
        area: area(path),
      })),
      cutOff: [...svg.querySelectorAll('text')]
        .filter((text) =>
          matrix(text).some(
            (p) => p.x < view.x || p.y < view.y || p.x > view.x + view.width || p.y > view.y + view.height,
          ),
        )
        .map((text) => text.textContent),
    };
  });
  await page.close();
  expect(seen.width).toBeCloseTo(seen.view * MM, 1);
  expect(seen.cutOff).toEqual([]);
  expect(seen.cuts).toHaveLength(draft.pieces.length);
  for (const [i, piece] of draft.pieces.entries()) {
    const { length, area } = seen.cuts[i] as (typeof seen.cuts)[number];
    expect(Math.abs(length - pathLength(cutCurves(piece)))).toBeLessThan(0.05);
    expect(Math.abs(area / Math.abs(outlineArea(cutCurves(piece))) - 1)).toBeLessThan(1e-4);
  }
});
