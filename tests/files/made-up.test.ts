import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { HEM_FINISHES, WAIST_FINISHES } from '../../src/edges';
import { sheetRemarks } from '../../src/files/content/rows';
import { fitContent } from '../../src/files/fit/content';
import { writeHandout } from '../../src/files/guide/handout';
import { writeGuideHtml } from '../../src/files/guide/html';
import { keyRows } from '../../src/files/nest/key';
import { firstWords } from '../../src/files/pdf/first-words';
import type { Draft } from '../../src/project';
import { ENGLISH, speak, speakNamed } from '../../src/words';
import { draftWith } from './drafts';

/** Inches, and the words of documents: the same in every language. */
const SIGNS = /^(in|Nightwear|Safety|Regulations|its|edition|of|was|not|read|letter|December|and|practice)$/;

/** Words of a text that hold a plain vowel, but for the letters of clauses: they were not said through the catalogue. */
const escapedFrom = (text: string): readonly string[] =>
  [...new Set(text.match(/[\p{L}’-]*[aeiou][\p{L}’-]*/gu) ?? [])].filter(
    (word) => word.length > 1 && !SIGNS.test(word),
  );

/** What is read in a page: its texts, and what its pictures say. */
const pageText = (html: string): string =>
  [...html.replace(/<style>.*?<\/style>/s, '').matchAll(/>([^<]+)<|aria-label="([^"]*)"/g)]
    .map(([, text, label]) => text ?? label)
    .join('\n');

/** Every text of plain data, whatever its keys. */
const texts = (value: unknown): readonly string[] =>
  typeof value === 'string' ? [value] : typeof value === 'object' && value ? Object.values(value).flatMap(texts) : [];

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
        paper: i === 2 ? { scale: 0.5, correctX: 1.04 } : {},
        ...(i < 2 ? { pocket: { width: 150, height: 165, facing: 30, part: 'back', count: i === 0 ? 1 : 2 } } : {}),
      }),
    );
  });
  afterAll(() => speak(ENGLISH));

  it('is heard through every finish in guide, handout, fit sheet, first sheet and key', () => {
    for (const draft of drafts) {
      const { verdict, lines, ...fit } = fitContent(draft);
      const { sections, ...first } = firstWords(draft, new Date('2026-03-03T12:00:00Z'), 'zzz.pdf');
      const said = {
        guide: pageText(writeGuideHtml(draft)),
        handout: writeHandout(draft),
        fit: texts([fit.says, fit.under, lines.map(({ name }) => name), fit.sections]).join('\n'),
        first: texts([first, sections]).join('\n').replace('March', ''),
        key: texts(keyRows(drafts).map(({ says }) => says)).join('\n'),
        remarks: sheetRemarks(draft.project.paper).join('\n'),
      };
      for (const [where, text] of Object.entries(said)) expect(escapedFrom(text), where).toEqual([]);
      expect(said.guide).toContain('«');
    }
  });

  it('shows a word that was glued on', () => {
    expect(escapedFrom('«Wåîst~» of cloth, «hîp~» girth')).toEqual(['cloth', 'girth']);
  });
});
