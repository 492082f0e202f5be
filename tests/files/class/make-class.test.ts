import { unzipSync } from 'fflate';
import Papa from 'papaparse';
import { beforeAll, describe, expect, test } from 'vitest';
import { measurements, STARTING_BODIES } from '../../../src/body';
import { pieceDrawing } from '../../../src/drawing';
import type { Piece } from '../../../src/edges';
import {
  type ClassKind,
  carriedOut,
  classWork,
  type MadeMember,
  makeReport,
  type Progress,
  Stopped,
} from '../../../src/files';
import { csvFile, measurementHead, measurementText } from '../../../src/files/class/write-table';
import { samplesWork } from '../../../src/files/pdf/samples';
import { amountUp } from '../../../src/length';
import { type Draft, draft, openProject, sheetsOf, withFewestSheets } from '../../../src/project';
import { pieceName } from '../../names';
import { inkedPixels, inkPlaces } from '../../outside/paper/pixels';
import { type OpenPdf, openPdf } from '../../outside/paper/render';
import { draftOf, projectWith } from '../drafts';
import { printFont } from '../print-font';
import { bodiesOf, readTableOf } from './tables';

const options = { font: printFont(), date: new Date('2026-11-24T12:00:00Z') };
const project = projectWith({ name: 'Evening class', leg: { length: 'short' }, paper: { sheet: 'A3' } });

/** Twelve learners: medians of the open surveys, four each of women, men and children; and two whose row is bad. */
const people = (['woman', 'man', 'child'] as const).flatMap((kind) =>
  [2, 5, 8, 11].flatMap((i) => STARTING_BODIES[kind][i]?.figures ?? []),
);
const names = ['Ada', 'Bo', 'Ada', 'Cy', 'ada', 'Di', 'Eli', 'Flo', 'Gus', 'Hal', '../Ivy', 'Jo'];
const rows = people.map((figures, i) => [
  names[i] ?? '',
  ...measurements.map((m) => measurementText(m, { label: '', ...figures }, 'cm')),
]);
const heads = ['Name', ...measurements.map((m) => measurementHead(m, 'cm'))];
const bad = ['Bad', '30', '102', '', '27', '76'];
const table = readTableOf(
  csvFile([heads, ...rows.slice(0, 5), bad, ...rows.slice(5), ['Slip', '120', '95', '', '27', '75']]),
  project,
);

async function made(kinds: readonly ClassKind[], onlooker: Parameters<typeof carriedOut>[1] = {}, of = table) {
  const parts: Uint8Array[] = [];
  const work = await classWork({ table: of, project, kinds }, options, (bytes) => parts.push(bytes));
  const members = await carriedOut(work, onlooker);
  return { members, zip: Buffer.concat(parts), parts };
}

const text = (bytes: Uint8Array | undefined) => Buffer.from(bytes ?? []).toString('utf8');

describe('a class of fourteen rows, two of them odd', () => {
  let members: readonly MadeMember[] = [];
  let files: Readonly<Record<string, Uint8Array>> = {};
  const seen: Progress[] = [];
  beforeAll(async () => {
    const done = await made(['pdf', 'fit', 'samples', 'nested'], { onProgress: (progress) => seen.push(progress) });
    members = done.members;
    files = unzipSync(done.zip);
  }, 60_000);
  const open = (name: string): OpenPdf => openPdf(files[name] as Uint8Array);
  /** Each learner's own draft, from the project in their folder. */
  const drafts = (): readonly Draft[] =>
    Object.keys(files)
      .filter((name) => name.endsWith('.legwork.json'))
      .map((name) => {
        const opened = openProject(text(files[name]));
        const result = opened.ok ? draft(opened.value) : opened;
        if (!result.ok) throw new Error(name);
        return withFewestSheets(result.value);
      });

  test('has a folder for each that can be drafted, under names unlike each other and nowhere else', () => {
    const folders = [
      ...new Set(Object.keys(files).flatMap((name) => (name.includes('/') ? [name.split('/')[0]] : []))),
    ];
    expect(folders).toEqual(
      ['Ada', 'Bo', 'Ada-2', 'Cy', 'ada-2-2', 'Di', 'Eli', 'Flo', 'Gus', 'Hal', 'Ivy', 'Jo', 'Slip'].map((n) =>
        n === 'ada-2-2' ? expect.stringMatching(/^ada-\d/) : n,
      ),
    );
    expect(new Set(folders.map((name) => name?.toLowerCase())).size).toBe(13);
    expect(
      Object.keys(files)
        .filter((name) => !name.includes('/'))
        .sort(),
    ).toEqual([
      'nested-1-of-2.large.pdf',
      'nested-1-of-2.pdf',
      'nested-1-of-2.svg',
      'nested-2-of-2.large.pdf',
      'nested-2-of-2.pdf',
      'nested-2-of-2.svg',
      'samples.pdf',
      'summary.csv',
      'summary.pdf',
    ]);
    for (const folder of folders)
      expect(Object.keys(files)).toEqual(
        expect.arrayContaining([`${folder}/${folder}.pdf`, `${folder}/${folder}.fit.pdf`]),
      );
  });

  test('its summary says of each what their own report says', () => {
    const { data } = Papa.parse<Record<string, string>>(text(files['summary.csv']).replace(/^\uFEFF/, ''), {
      header: true,
      skipEmptyLines: true,
    });
    const done = data.filter(({ Verdict }) => Verdict !== 'not made');
    const all = drafts();
    expect(done).toHaveLength(all.length);
    for (const line of done) {
      const one = all.find(
        ({ project: { body } }) =>
          body.label === line.Name && Math.abs((body.hipGirth ?? 0) - Number(line['Hip (cm)']) * 10) < 0.05,
      );
      if (!one) throw new Error(line.Name);
      const { measures, lay, sheets, checks } = makeReport(one);
      expect(Number(line['Finished hip (cm)']) * 10).toBeCloseTo(measures.hipGirthFinished, 0);
      expect(Number(line['Finished waist opening (cm)']) * 10).toBeCloseTo(measures.waistOpening, 0);
      expect(Number(line['Finished inseam (cm)']) * 10).toBeCloseTo(measures.inseamFront, 0);
      expect(Number(line['Elastic to cut (cm)']) * 10).toBeCloseTo(measures.elasticLength, 0);
      expect(Number(line['Cloth to buy (m)']) * 1000).toBeCloseTo(lay.toBuy ?? 0, 6);
      expect(Number(line.Sheets)).toBe(sheets.count);
      const worst = ['wrong', 'doubtful', 'good'].find((verdict) => checks.some((check) => check.verdict === verdict));
      expect(line.Verdict).toBe(worst);
    }
    const cloth = all.reduce((sum, one) => sum + (makeReport(one).lay.toBuy ?? 0), 0);
    const elastic = all.reduce((sum, one) => sum + one.measures.elasticLength, 0);
    const sheets = all.reduce((sum, one) => sum + sheetsOf(one).sheets.length, 0);
    const pdf = open('summary.pdf');
    try {
      const words = pdf.text().replace(/\s+/g, ' ');
      expect(words).toContain(`Cloth 150 cm wide: ${(cloth / 1000).toFixed(1)} m for 13 learners`);
      expect(words).toContain(
        `Waist elastic, 2.5 cm wide: ${(amountUp(elastic, 'cm') / 1000).toFixed(1).replace('.0', '')} m for 13 learners`,
      );
      expect(words).toContain(`Paper: ${sheets} sheets`);
      expect(words).toContain('13 patterns made · 1 not made · 2 to look at');
      expect(words).toContain('Bad (row 7, not made), Slip (row 15)');
      // A4, lying, and a white edge all round.
      const outside = pdf.words(1).filter((w) => w.left < 11 || w.top < 8 || w.right > 297 - 11 || w.bottom > 210 - 6);
      expect(outside).toEqual([]);
    } finally {
      pdf.close();
    }
  });

  test('its summary can be read again as a table of the same bodies', () => {
    const again = readTableOf(files['summary.csv'] as Uint8Array, project);
    expect(bodiesOf(again)).toEqual(bodiesOf(table));
  });

  test('has one page for each fit sheet, the sheets of its plan for each pattern, and sound files', () => {
    /** How many of a pattern's pages are first ones: two where the first is too small for all of its words. */
    const firstPages = (pdf: OpenPdf) => pdf.text().split('each leg one piece').length - 1;
    const counts = Object.keys(files)
      .filter((name) => name.endsWith('.pdf'))
      .map((name) => {
        const pdf = open(name);
        try {
          if (name.includes('summary') || name.includes('samples'))
            expect(pdf.check(), name).toMatch(/No syntax or stream encoding errors/);
          return [name, pdf.pages, firstPages(pdf)] as const;
        } finally {
          pdf.close();
        }
      });
    const pagesOf = Object.fromEntries(counts);
    expect(counts.filter(([name]) => name.endsWith('.fit.pdf')).map(([, pages]) => pages)).toEqual(Array(13).fill(1));
    const sheetsOf = (row: MadeMember) => row.sheets;
    const patterns = counts.filter(([name]) => name.includes('/') && !name.endsWith('.fit.pdf'));
    for (const [name, , first] of patterns) expect([1, 2], name).toContain(first);
    expect(patterns.map(([, pages, first]) => pages - first)).toEqual(
      members.filter(({ figures }) => figures).map(sheetsOf),
    );
    // Thirteen legs to the knee at a quarter: several to a page.
    expect(2 * (pagesOf['samples.pdf'] ?? 99)).toBeLessThanOrEqual(13);
    for (const [name, bytes] of Object.entries(files))
      expect(bytes.length, name).toBeLessThan(name.includes('nested') ? 400_000 : 150_000);
  });

  test('tells who is being made, ever further, and names the bad row with its column', () => {
    expect(seen.map(({ share }) => share)).toEqual(seen.map(({ share }) => share).toSorted((a, b) => a - b));
    expect(seen.some(({ doing }) => doing.startsWith('Gus'))).toBe(true);
    expect(members.find(({ name }) => name === 'Bad')?.look).toEqual([
      'Waist (cm): "30": was read as 30 cm; Waist must lie between 35 cm and 210 cm.',
    ]);
  });

  test('keeps each one’s cautions: the children’s of children alone', () => {
    const of = (name: string) => {
      const pdf = open(name);
      try {
        return pdf.text().replace(/\s+/g, ' ');
      } finally {
        pdf.close();
      }
    };
    expect(of('Gus/Gus.fit.pdf')).toContain('Children’s sleepwear');
    expect(of('Bo/Bo.fit.pdf')).not.toContain('Children’s sleepwear');
    expect(of('Gus/Gus.pdf')).toContain('Children’s sleepwear');
  });
});

test('the same class gives the same bytes', async () => {
  const two = readTableOf(csvFile([heads, ...rows.slice(0, 2)]), project);
  const [once, again] = [await made(['fit'], {}, two), await made(['fit'], {}, two)];
  expect(Buffer.compare(once.zip, again.zip)).toBe(0);
});

test('a class can be stopped between two learners, and hands on nothing after that', async () => {
  const stop = new AbortController();
  let after = 0;
  const work = await classWork({ table, project, kinds: ['fit'] }, options, () => {
    if (stop.signal.aborted) after += 1;
  });
  const seen: string[] = [];
  const over = carriedOut(work, {
    signal: stop.signal,
    onProgress: ({ doing }) => {
      seen.push(doing);
      if (doing.startsWith('Cy')) stop.abort();
    },
  });
  await expect(over).rejects.toBeInstanceOf(Stopped);
  expect([seen.at(-1)?.startsWith('Cy'), after]).toEqual([true, 0]);
});

describe('handouts at a quarter', () => {
  test('are true to a quarter, with all pieces, nothing outside the page', async () => {
    const one = draftOf(
      projectWith({ waist: { finish: 'separateCasing' }, hem: { finish: 'contrastBand' }, paper: { sheet: 'A3' } }),
    );
    const pdf = openPdf(await carriedOut(samplesWork([one], options)));
    try {
      expect(pdf.pages).toBe(1);
      const [, a, b] = /Page size:\s+([\d.]+) x ([\d.]+) pts/.exec(pdf.info()) ?? [];
      expect([Number(a), Number(b)].map((pt) => Math.round((pt * 25.4) / 72)).toSorted((x, y) => x - y)).toEqual([
        297, 420,
      ]);
      const words = pdf.words(1);
      const [width, height] = [Number(a), Number(b)].map((pt) => (pt * 25.4) / 72) as [number, number];
      expect(words.filter((w) => w.left < 5 || w.top < 5 || w.right > width - 5 || w.bottom > height - 5)).toEqual([]);
      for (const piece of one.pieces) expect(pdf.text()).toContain(`${pieceName(piece)}, cut`);
    } finally {
      pdf.close();
    }
  });

  test('lie on the paper that was chosen, and on a larger one where a piece would not fit', async () => {
    const sides = async (sheet: string, length: Draft['project']['leg']['length']) => {
      const one = draftOf(projectWith({ leg: { length }, paper: { sheet } }));
      const pdf = openPdf(await carriedOut(samplesWork([one], options)));
      try {
        const [, a, b] = /Page size:\s+([\d.]+) x ([\d.]+) pts/.exec(pdf.info()) ?? [];
        return [a, b].map((pt) => Math.round((Number(pt) * 25.4) / 72)).toSorted((x, y) => x - y);
      } finally {
        pdf.close();
      }
    };
    expect(await sides('A4', 'short')).toEqual([210, 297]);
    expect(await sides('Letter', 'short')).toEqual([216, 279]);
    expect(await sides('A4', { inseam: 1000 })).toEqual([297, 420]);
    expect(await sides('Roll 24 in', 'short')).toEqual([297, 420]);
  });

  test('measure a quarter of the piece, on the page as it is printed', async () => {
    const one = draftOf(project);
    const pdf = openPdf(await carriedOut(samplesWork([one], options)));
    try {
      const picture = pdf.picture(1);
      // Below the line with the bar there is one leg and nothing else.
      const places = inkPlaces(picture, inkedPixels(picture), 'cut').filter(({ y }) => y > 12);
      const seen = [places.map(({ x }) => x), places.map(({ y }) => y)].map(
        (all) => Math.max(...all) - Math.min(...all),
      );
      const { left, right, top, bottom } = pieceDrawing(one.pieces[0] as Piece).bounds;
      const wanted = [(right - left) / 4, (bottom - top) / 4];
      const sorted = (two: readonly number[]) => two.toSorted((a, b) => a - b);
      for (const [i, length] of sorted(seen).entries())
        expect(Math.abs(length - (sorted(wanted)[i] ?? 0))).toBeLessThan(0.4);
    } finally {
      pdf.close();
    }
  });
});
