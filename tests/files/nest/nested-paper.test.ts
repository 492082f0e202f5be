import { expect, test } from 'vitest';
import { carriedOut, makeFiles } from '../../../src/files';
import { openPdf } from '../../outside/paper/render';
import { draftWith } from '../drafts';
import { printFont } from '../print-font';

const MM_PER_PT = 25.4 / 72;
const jobs = [930, 1010, 1090].map((hipGirth, i) => ({
  name: `b${i}`,
  draft: draftWith({ body: { label: `Learner ${i + 1}`, hipGirth }, leg: { length: 'knee' } }),
}));

test('a nest on paper: sound files, the key on the second page, every sheet with its label, all bodies on one large sheet', async () => {
  const files = await carriedOut(makeFiles(jobs, ['nested'], { font: printFont(), date: new Date(0) }));
  const [sheets, large] = files.slice(0, 2).map(({ content }) => openPdf(content as Uint8Array));
  if (!sheets || !large) throw new Error('not made');
  try {
    expect(sheets.check()).toMatch(/No syntax or stream encoding errors/);
    const pages = sheets.text().split('\f');
    const count = Number(/(\d+) sheets A4/.exec(pages[0] ?? '')?.[1]);
    expect(sheets.pages).toBe(count + 2);
    for (const { draft } of jobs) expect(pages[1]).toContain(draft.project.body.label);
    expect(pages[1]).toContain('What each line is');
    for (const page of pages.slice(2, -1)) expect(page).toMatch(/^[A-Z]\d+$/m);
    // Figures are drawn as lines: the leg's name alone is said once.
    expect(sheets.text().match(/leg · cut 2/g)).toHaveLength(1);

    expect(large.check()).toMatch(/No syntax or stream encoding errors/);
    expect(large.pages).toBe(1);
    for (const { draft } of jobs) expect(large.text()).toContain(draft.project.body.label);
    const [, width, height] = (/Page size:\s+([\d.]+) x ([\d.]+) pts/.exec(large.info()) ?? []).map(Number);
    for (const { text, left, top, right, bottom } of large.words(1)) {
      const inside =
        left > 5 && top > 5 && right < (width ?? 0) * MM_PER_PT - 5 && bottom < (height ?? 0) * MM_PER_PT - 5;
      expect([text, inside]).toEqual([text, true]);
    }
  } finally {
    sheets.close();
    large.close();
  }
});
