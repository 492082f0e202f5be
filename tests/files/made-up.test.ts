import { unzipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { HEM_FINISHES, WAIST_FINISHES } from '../../src/edges';
import { carriedOut, classWork, type FinishedFile, makeFiles, type Progress } from '../../src/files';
import { sheetRemarks } from '../../src/files/content/rows';
import { fitContent } from '../../src/files/fit/content';
import { handoutRuns } from '../../src/files/guide/handout';
import { writeGuideHtml } from '../../src/files/guide/html';
import { keyRows } from '../../src/files/nest/key';
import { firstWords } from '../../src/files/pdf/first-words';
import type { Draft } from '../../src/project';
import { ENGLISH, speak, speakNamed } from '../../src/words';
import { escapedFrom } from '../escaped-words';
import { openPdf } from '../outside/paper/render';
import { readTableOf } from './class/tables';
import { draftWith, projectWith } from './drafts';
import { printFont } from './print-font';
import { parsedTexts } from './read-dxf';

/** Inches, a paper’s name, and the words of documents: the same in every language. */
const SIGNS = /^(in|Letter|Nightwear|Safety|Regulations|its|edition|of|was|not|read|letter|December|and|practice)$/;
const ALIKE = { fullerHip: 0, fullerSeat: 0, higherHip: 0, longerLeg: 0 };
const options = { font: printFont(), date: new Date('2026-03-03T12:00:00Z') };

/** What is read in a page or a drawing: its texts, and what its pictures say. */
const pageText = (page: string): string =>
  [...page.replace(/<style>.*?<\/style>/s, '').matchAll(/>([^<]+)<|aria-label="([^"]*)"/g)]
    .map(([, text, label]) => text ?? label)
    .join('\n');

/** What is read on the pages of a PDF and in the list of its layers, and what it says of itself. */
function pdfText(bytes: Uint8Array): string {
  const pdf = openPdf(bytes);
  const about = pdf.info().match(/(?<=^(Title|Subject):).*/gm) ?? [];
  const layers = [
    ...Buffer.from(bytes)
      .toString('latin1')
      .matchAll(/\/OCG \/Name (?:\((.*?)\)|<feff(\w*)>)/g),
  ].map(([, plain, coded = '']) => plain ?? Buffer.from(coded, 'hex').swap16().toString('utf16le'));
  const text = [pdf.text(), ...about, ...layers].join('\n');
  pdf.close();
  return text;
}

/** What is read in a file, but for how files are called. */
function textOf({ name, content }: FinishedFile): string {
  const text =
    typeof content !== 'string' ? pdfText(content) : name.endsWith('.dxf') ? parsedTexts(content).join('\n') : content;
  return (/\.(html|svg)$/.test(name) ? pageText(text) : text).replace(/Zzz[\w.-]*/g, '');
}

/** What of a page's data is a word of the code. */
const OF_THE_CODE = new Set(['kind', 'size', 'sign', 'align', 'tone', 'tones']);

/** Every text of plain data but what is the code's own. */
const texts = (value: unknown): readonly string[] =>
  typeof value === 'string'
    ? [value]
    : typeof value === 'object' && value
      ? Object.entries(value).flatMap(([key, inner]) => (OF_THE_CODE.has(key) ? [] : texts(inner)))
      : [];

describe('the made-up language', () => {
  let drafts: readonly Draft[] = [];
  beforeAll(async () => {
    // The words on a piece are said when it is drafted.
    await speakNamed('made-up');
    drafts = WAIST_FINISHES.map((finish, i) =>
      draftWith({
        name: 'Zzz',
        units: i % 2 === 0 ? 'cm' : 'inch',
        body: { label: 'Zzz', ...(i === 1 ? { ageYears: 8 } : {}) },
        waist: { finish },
        hem: { finish: HEM_FINISHES[i] ?? 'turned' },
        cloth: i === 4 ? { kind: 'knit', stretch: 0.4 } : {},
        paper: { sheet: 'A1', ...(i === 2 ? { scale: 0.5, correctX: 1.04 } : {}) },
        sides: i === 2 ? { left: { ...ALIKE, longerLeg: 12 }, right: { ...ALIKE, fullerHip: 20 } } : null,
        ...(i < 2 ? { pocket: { width: 150, height: 165, facing: 30, part: 'back', count: i === 0 ? 1 : 2 } } : {}),
      }),
    );
  });
  afterAll(() => speak(ENGLISH));

  it('is heard through every finish in guide, handout, fit sheet, first sheet and key', () => {
    for (const draft of drafts) {
      const { verdict, lines, ...fit } = fitContent(draft);
      const first = firstWords(draft, options.date, 'zzz.pdf');
      const said = {
        guide: pageText(writeGuideHtml(draft)),
        handout: texts(handoutRuns(draft)).join('\n'),
        fit: texts([fit.says, fit.under, lines.map(({ name }) => name), fit.passages]).join('\n'),
        first: texts(first).join('\n'),
        key: texts(keyRows(drafts).map(({ says }) => says)).join('\n'),
        remarks: sheetRemarks(draft.project.paper).join('\n'),
      };
      for (const [where, text] of Object.entries(said)) expect(escapedFrom(text, SIGNS), where).toEqual([]);
      expect(said.guide).toContain('«');
    }
  });

  it('stands on every page and drawing of every kind of file, and is heard while they are made', async () => {
    const [, inches, halved] = drafts;
    if (!inches || !halved) throw new Error('no drafts');
    const doing: string[] = [];
    const onProgress = (progress: Progress) => doing.push(progress.doing);
    const jobs = [
      { name: 'Zzz', draft: inches },
      { name: 'Zzz-2', draft: halved },
    ];
    const files = await carriedOut(makeFiles(jobs, 'all', options), { onProgress });
    const read = files.filter(({ name }) => /\.(pdf|svg|dxf|html|txt)$/.test(name) && !name.endsWith('.r12.dxf'));
    expect(read.length).toBeGreaterThan(24);
    for (const file of read) {
      const text = textOf(file);
      expect(escapedFrom(text, SIGNS), file.name).toEqual([]);
      expect(text, file.name).toContain('~');
    }
    const kinds = doing.map((one) => one.replace(/Zzz[\w.-]*/g, '').replace(/^(nested|samples)\b/, ''));
    expect(escapedFrom(kinds.join('\n'), SIGNS)).toEqual([]);
  });

  it('is heard in all of a class', async () => {
    const table = readTableOf(
      ['Name,Waist (cm),Hip (cm),Body rise (cm),Inside leg (cm),Zz', 'Zzz,74,102,27,76,1', 'Zzzz,80,108,28,78,']
        .concat(['Zzzzz,7,102,27,76,', 'Zzzzzz,120,95,27,75,'])
        .join('\n'),
      projectWith({ name: 'Zzz', paper: { sheet: 'A1' }, waist: { elasticLength: 700 } }),
    );
    const parts: Uint8Array[] = [];
    const doing: string[] = [];
    const order = { table, project: projectWith({ name: 'Zzz' }), kinds: ['fit', 'samples', 'nested'] } as const;
    const members = await carriedOut(await classWork(order, options, (bytes) => parts.push(bytes)), {
      onProgress: (progress) => doing.push(progress.doing),
    });
    const files = Object.entries(unzipSync(Buffer.concat(parts))).filter(([name]) => /\.(pdf|svg)$/.test(name));
    expect(files.length).toBeGreaterThan(5);
    // The heads of a table stay as they were read.
    const ours = (text: string) => text.replace(/Waist \(cm\)/g, '').replace(/(nested|samples)(?=,|$)/gm, '');
    for (const [name, content] of files) {
      const text = textOf({ name, content: name.endsWith('.svg') ? Buffer.from(content).toString() : content });
      expect(escapedFrom(ours(text), SIGNS), name).toEqual([]);
    }
    expect(
      escapedFrom(ours(members.flatMap(({ look, doubtful }) => [...look, ...doubtful]).join('\n')), SIGNS),
    ).toEqual([]);
    expect(escapedFrom(ours(doing.join('\n')).replace(/Zzz[\w.-]*/g, ''), SIGNS)).toEqual([]);
  });

  it('shows a word that was glued on', () => {
    expect(escapedFrom('«Wåîst~» of cloth, «hîp~» girth', SIGNS)).toEqual(['cloth', 'girth']);
  });
});
