import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { guideContent } from '../../../src/files/guide/content';
import { writeGuideHtml } from '../../../src/files/guide/html';
import { writeGuidePdf } from '../../../src/files/guide/pdf';
import { pageGrid } from '../../../src/files/pen/page-grid';
import { type OpenPdf, openPdf, type Word } from '../../outside/paper/render';
import { draftWith } from '../drafts';
import { printFont } from '../print-font';

const DATE = new Date('2026-11-24T12:00:00Z');
const draft = draftWith({
  units: 'inch',
  pocket: { width: 150, height: 165, facing: 30, part: 'back', count: 2 },
  paper: { sheet: 'Letter' },
});
const guide = guideContent(draft);
const steps = guide.parts.flatMap((part) => part.steps);
const spaceless = (text: string) => text.replace(/\s+/g, '');

describe('the guide as pages', () => {
  const bytes = writeGuidePdf(draft, { font: printFont(), date: DATE });
  let pdf: OpenPdf;
  beforeAll(() => {
    pdf = openPdf(bytes);
  });
  afterAll(() => pdf.close());

  it('says every step, setting, caution and thing to buy, each inside its page', () => {
    const pages = Array.from({ length: pdf.pages }, (_, i) => pdf.words(i + 1));
    const words = pages.flat();
    // Letter paper, and a white edge round every page.
    const outside = words.filter(
      ({ left, top, right, bottom }) => left < 10 || top < 8 || right > 215.9 - 10 || bottom > 279.4 - 8,
    );
    expect(outside).toEqual([]);
    expect(pdf.check()).toContain('No syntax or stream encoding errors');
    // A step may go on overleaf: the line at the foot stands between.
    const foot = 279.4 - pageGrid(true).margin - 2;
    const read = (some: readonly Word[]) => some.flatMap((word) => (word.top > foot ? [] : [word.text])).join('');
    // Where lines of two columns stand at one height the reader may go across both, so each column is read by itself, too.
    const columns = pages.flatMap((all) => [
      all.filter(({ left }) => left < 215.9 / 2),
      all.filter(({ left }) => left >= 215.9 / 2),
    ]);
    const text = spaceless([words, ...columns].map(read).join(''));
    const wanted = [
      ...guide.safety,
      ...steps.flatMap((step) => [step.title, ...step.tasks, step.check]),
      ...guide.shopping.map(({ name }) => name),
    ];
    expect(wanted.filter((sentence) => !text.includes(spaceless(sentence)))).toEqual([]);
  });

  it('gives the same bytes for the same draft', () => {
    expect(writeGuidePdf(draft, { font: printFont(), date: DATE })).toEqual(bytes);
  });

  it('stays small', () => {
    expect(bytes.length).toBeLessThan(200_000);
  });
});

describe('the guide as a web page', () => {
  const html = writeGuideHtml(draft);

  it('holds a picture for every step, the lay, the finished pair and the key, each told in words, and the way once more in small', () => {
    expect(html.match(/<svg[^>]* role="img" aria-label="[^"]+"/g)?.length).toBe(steps.length + 3);
    const small = [...html.matchAll(/<use href="#(p\d+)"/g)].map(([, id]) => id);
    expect(small).toEqual(steps.map(({ number }) => `p${number}`));
    expect(small.filter((id) => !html.includes(`<svg id="${id}"`))).toEqual([]);
  });

  it('asks nothing of anybody else and runs nothing', () => {
    expect(html).not.toMatch(/<script|<img|<link|src=|@import|url\((?!#)/);
    expect(html).toContain("default-src 'none'");
  });

  it('says why there is no lay on a cloth that is too narrow, and what would fit', () => {
    const narrow = writeGuideHtml(draftWith({ cloth: { width: 500 } }));
    expect(narrow).toMatch(/The leg is [^<]* wide, and [^<]* can be cut\. What would fit: /);
  });

  it('lets no name break out of its place', () => {
    const odd = writeGuideHtml(draftWith({ name: '<b onload="x">&' }));
    expect(odd).toContain('&lt;b onload=&quot;x&quot;&gt;&amp;');
    expect(odd).not.toContain('<b onload');
  });
});
