import { describe, expect, test } from 'vitest';
import { carriedOut } from '../../src/files';
import { firstPage } from '../../src/files/pdf/first-paper';
import { pdfWork } from '../../src/files/pdf/tiled';
import { sheetsOf } from '../../src/project';
import { partsInOrder } from '../../src/sheets';
import { draftWith } from '../files/drafts';
import { printFont } from '../files/print-font';
import { pageFills, wordsOnWords } from './paper/page-fill';
import { openPdf } from './paper/render';

// What a beginner reads before the first cut, on papers that not everybody has. Judged on the files as Poppler reads them.

const options = { font: printFont(), date: new Date('2026-11-30T12:00:00Z') };
/** How far down every first page but the last reaches, of the height between the margins. */
const LEAST_FILL = 2 / 3;

const large = { body: { waistGirth: 1700, hipGirth: 1720 }, paper: { sheet: 'Letter' }, units: 'inch' } as const;
const PAPERS = {
  Legal: { paper: { sheet: 'Legal' }, units: 'inch' },
  A3: { paper: { sheet: 'A3' } },
  Tabloid: { paper: { sheet: 'Tabloid' }, units: 'inch' },
  'a roll': { paper: { sheet: 'Roll 36 in' } },
  'a size of one’s own': { paper: { sheet: 'own', ownWidth: 160, ownHeight: 220 } },
  'Letter, for a waist of 170 cm': large,
  'Letter, for a print of one way': { cloth: { oneWay: true, repeat: 64 }, paper: { sheet: 'Letter' }, units: 'inch' },
} as const;

/** The first pages, each as its words in one line. */
async function firstPages(changes: Parameters<typeof draftWith>[0]) {
  const draft = draftWith(changes);
  const plan = sheetsOf(draft);
  const bytes = await carriedOut(pdfWork(draft, options));
  const pdf = openPdf(bytes);
  const count = pdf.pages - plan.sheets.length;
  const words = Array.from({ length: count }, (_, i) => pdf.words(i + 1));
  pdf.close();
  const page = firstPage(plan, draft.project.units === 'inch');
  return {
    plan,
    page,
    words,
    said: words.map((some) => some.map(({ text }) => text).join(' ')),
    fills: pageFills(bytes, page.margin, 0).slice(0, count),
  };
}

describe.each(Object.entries(PAPERS))('the first pages on %s', (_, changes) => {
  const pages = firstPages(changes);

  test('are full but for the last, and no word lies on another', async () => {
    const { fills, words } = await pages;
    expect(fills.slice(0, -1).filter((fill) => fill < LEAST_FILL)).toEqual([]);
    expect(words.flatMap(wordsOnWords)).toEqual([]);
  });

  test('keep the order of taping whole under its heading, and say where sheets do not touch', async () => {
    const { plan, said } = await pages;
    const rows = [...new Set(plan.sheets.map(({ label }) => label.replace(/\d+$/, '')))];
    const saying = said.filter((text) => /\bStrip [A-Z]\b/.test(text));
    if (rows.length < 2) return expect(saying).toEqual([]);
    expect(saying).toHaveLength(1);
    expect(saying[0]).toContain('Order of taping');
    for (const row of rows) expect(saying[0]).toContain(`Strip ${row}`);
    const parts = partsInOrder(plan);
    const apart = parts.slice(1).flatMap((part, i) => {
      const before = parts[i];
      const gap = before?.row === part.row && part.window.left >= before.window.right;
      return gap ? [`${before.label}, ${part.label}`] : [];
    });
    for (const pair of apart) expect(saying[0]).toContain(pair);
    expect(saying[0]?.includes('Where a comma stands')).toBe(apart.length > 0);
  });

  test('say on which paper they are printed, and what to measure', async () => {
    const { page, plan, said } = await pages;
    const all = said.join(' ');
    const own = page.name === plan.paper.name;
    expect(all).toContain(own ? 'and on the paper of the sheets' : `alone, on ${page.name};`);
    expect(all).toContain(plan.sheets.length > 1 ? 'Measure, to check the joins' : 'Measure, to check the print');
    expect(all.includes('beside it')).toBe(plan.sheets.length > 1 && said.length > 1);
  });
});

test.each(['A3', 'Tabloid'])('on %s they are one', async (sheet) => {
  expect((await firstPages({ paper: { sheet } })).said).toHaveLength(1);
});
