import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { carriedOut } from '../../src/files';
import { madeMember } from '../../src/files/class/member';
import { summaryContent } from '../../src/files/class/summary-content';
import { writeSummaryPdf } from '../../src/files/class/summary-pdf';
import { writeFitPdf } from '../../src/files/fit/pdf';
import { writeHandoutPdf } from '../../src/files/guide/handout';
import { writeGuidePdf } from '../../src/files/guide/pdf';
import { firstPage } from '../../src/files/pdf/first-paper';
import { pdfWork } from '../../src/files/pdf/tiled';
import { pageGrid } from '../../src/files/pen/page-grid';
import { type Draft, draft, exampleProject, openProject, sheetsOf } from '../../src/project';
import { draftWith } from '../files/drafts';
import { printFont } from '../files/print-font';
import { anyDesign, projectOf } from '../properties/designs';
import { chance } from '../properties/seed';
import { pageFills, typeSizes, wordsOnWords } from './paper/page-fill';
import { openPdf } from './paper/render';

// Documents are read at a table and pinned to a wall: their pages are full and their words large enough. Judged on the
// files as Poppler draws and reads them.

const options = { font: printFont(), date: new Date('2026-11-30T12:00:00Z') };
const WRITERS = { guide: writeGuidePdf, fit: writeFitPdf, handout: writeHandoutPdf } as const;
/** How far down every page but the last reaches, of the height between the margins. */
const LEAST_FILL = 2 / 3;
const LEAST_PT = 8;

const projects = () => {
  const { seed = 0, numRuns } = chance('documents', 30);
  const designs = fc.sample(anyDesign, { seed, numRuns: 2 * numRuns });
  const drafts = designs.flatMap((design) => {
    const drafted = draft({ ...projectOf(exampleProject.body, design), name: 'Any pair' });
    return drafted.ok ? [drafted.value] : [];
  });
  // Half of each on either paper: it goes with the unit.
  return (['cm', 'inch'] as const).flatMap((units) =>
    drafts.filter(({ project }) => project.units === units).slice(0, numRuns / 2),
  );
};

const example = (name: string): Draft => {
  const text = readFileSync(new URL(`../../docs/examples/${name}.legwork.json`, import.meta.url), 'utf8');
  const opened = openProject(text);
  const drafted = opened.ok ? draft(opened.value) : opened;
  if (!drafted.ok) throw new Error(`${name} can’t be drafted`);
  return drafted.value;
};

/** What is wrong with a document's pages. @param lying whether they lie */
function pageFaults(bytes: Uint8Array, inches: boolean, lying = false): readonly string[] {
  const { height, margin, bottom } = pageGrid(inches, lying);
  const fills = pageFills(bytes, margin, height - margin - bottom);
  const small = typeSizes(bytes).filter((pt) => pt < LEAST_PT);
  return [
    ...fills.slice(0, -1).flatMap((fill, i) => (fill < LEAST_FILL ? [`page ${i + 1}: ${fill.toFixed(2)}`] : [])),
    ...small.map((pt) => `${pt} pt`),
  ];
}

describe('the pages of documents', () => {
  it('are full but for the last, in type of no less than 8 points, of thirty pairs on either paper', () => {
    const all = projects();
    expect(new Set(all.map(({ project }) => project.units)).size).toBe(2);
    const faults = all.flatMap((one, i) =>
      Object.entries(WRITERS).flatMap(([name, write]) =>
        pageFaults(write(one, options), one.project.units === 'inch').map((fault) => `${i} ${name}, ${fault}`),
      ),
    );
    console.log(`of ${3 * all.length} documents: ${faults.join('; ') || 'no page too empty'}`);
    expect(faults).toEqual([]);
  });

  it.each(['flannel-bottoms', 'knit-cropped', 'child-short'])('%s: the same, and no word lies on another', (name) => {
    const one = example(name);
    for (const write of Object.values(WRITERS)) {
      const bytes = write(one, options);
      expect(pageFaults(bytes, one.project.units === 'inch')).toEqual([]);
      const pdf = openPdf(bytes);
      const met = Array.from({ length: pdf.pages }, (_, i) => wordsOnWords(pdf.words(i + 1)));
      pdf.close();
      expect(met.flat()).toEqual([]);
    }
  });

  it.each<readonly [string, Draft]>([
    ['flannel-bottoms', example('flannel-bottoms')],
    ['child-short', example('child-short')],
    ['many small pieces', draftWith({ waist: { finish: 'separateCasing' }, hem: { finish: 'contrastBand' } })],
  ])('before the pattern’s sheets are full but for the last, in type of no less than 8 points: %s', async (_, one) => {
    const bytes = await carriedOut(pdfWork(one, options));
    const plan = sheetsOf(one);
    const fills = pageFills(bytes, firstPage(plan, one.project.units === 'inch').margin, 0);
    const first = fills.length - plan.sheets.length;
    expect(first).toBeGreaterThan(1);
    for (const fill of fills.slice(0, first - 1)) expect(fill).toBeGreaterThan(LEAST_FILL);
    expect(typeSizes(bytes).filter((pt) => pt < LEAST_PT)).toEqual([]);
  });

  it.each([1, 12, 40, 100])('of the summary of a class of %i too', (count) => {
    const made = ['flannel-bottoms', 'child-short'].map((name, i) => {
      const one = example(name);
      return madeMember({ row: i, name, project: { ok: true, value: one.project } }, one);
    });
    const members = Array.from({ length: count }, (_, i) => {
      const member = made[i % 2] as (typeof made)[number];
      // Of every third one is a sentence to read.
      const look = i % 3 === 0 ? ['The hip is small for the waist: was one of them read wrongly?'] : member.look;
      return { ...member, row: i + 1, name: `Learner ${i + 1}`, look };
    });
    for (const units of ['cm', 'inch'] as const) {
      const bytes = writeSummaryPdf(summaryContent('Any class', members, units, []), units, options);
      expect(pageFaults(bytes, units === 'inch', true)).toEqual([]);
    }
  });

  it('of a guide whose lay has just no room below what is to buy are full too', () => {
    const { project } = example('flannel-bottoms');
    const drafted = draft({
      ...project,
      units: 'inch',
      waist: { ...project.waist, finish: 'elasticAndDrawstring' },
      hem: { ...project.hem, finish: 'drawstringCasing', cord: 'ofCloth' },
      cloth: { ...project.cloth, oneWay: true, repeat: 120 },
    });
    expect(drafted.ok && pageFaults(writeGuidePdf(drafted.value, options), true)).toEqual([]);
  });

  it('of the guide to the flannel pair are six', () => {
    const pdf = openPdf(writeGuidePdf(example('flannel-bottoms'), options));
    expect(pdf.pages).toBeLessThanOrEqual(6);
    pdf.close();
  });
});

test('a page that is half empty is found', () => {
  const { height, margin, bottom } = pageGrid(false);
  const bytes = writeFitPdf(draftWith(), options);
  const [fill = 0] = pageFills(bytes, margin, height - margin - bottom);
  expect(fill).toBeGreaterThan(0.5);
  expect(fill).toBeLessThan(1);
  expect(typeSizes(bytes)).toContain(18);
  const at = { left: 0, top: 0, right: 10, bottom: 10 };
  expect(
    wordsOnWords([
      { text: 'a', ...at },
      { text: 'b', ...at, left: 5, right: 15 },
    ]),
  ).toEqual(['a / b']);
});
