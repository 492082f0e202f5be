import DxfParser from 'dxf-parser';
import { PDFDocument } from 'pdf-lib';
import { SaxesParser } from 'saxes';
import { describe, expect, test } from 'vitest';
import { carriedOut, makeFiles } from '../../../src/files';
import { draftWith } from '../drafts';
import { printFont } from '../print-font';

// It comes without types.
const { JSDOM } = (await import('jsdom' as string)) as { JSDOM: new (text: string) => { window: Window } };

// Everything by which words have broken out of a file: each format's own signs, controls, turned directions, halves.
const RUDE = [
  '</script><script>alert(1)</script>',
  '</title></svg>]]>&amp;<!--',
  '"\' onload="x',
  ') Tj ET %%EOF endstream endobj \\',
  '\r\n0\r\nENDSEC\r\n0\r\nEOF\r\n',
  '%%u %%d {\\H9;x}',
  '\u0000\u0007\u001b[2J\u0085\u009b',
  '\u202etxt.exe\u2069\u200f',
  '\ud800\udfff\ufffe\uffff\u2028\u2029',
  '=1+1',
].join(' ');

const draft = draftWith({
  name: RUDE.slice(0, 199),
  body: { label: [...RUDE].reverse().slice(0, 150).reverse().join('') },
});
const files = await carriedOut(
  makeFiles([{ name: 'One', draft }], 'all', { font: printFont(), date: new Date('2026-11-24T12:00:00Z') }),
);
const contentOf = (ending: string): string | Uint8Array => {
  const file = files.find(({ name }) => name.endsWith(ending));
  if (!file) throw new Error(`no ${ending}`);
  return file.content;
};
const textOf = (ending: string) => contentOf(ending) as string;
/** What a terminal, an editor or a reader might obey; line ends and tabs are the format's own. */
const OBEYED = /(?![\t\r\n])[\p{Cc}\u202a-\u202e\u2066-\u2069\u200e\u200f\u2028\u2029\ufffe\uffff]/u;

describe('rude names of a project and a body', () => {
  test.each(['One.svg', '.blocks.svg'])('are words and no markup in %s', (ending) => {
    const faults: string[] = [];
    const elements: string[] = [];
    const parser = new SaxesParser();
    parser.on('error', (error) => faults.push(error.message));
    parser.on('opentag', ({ name }) => elements.push(name));
    parser.write(textOf(ending)).close();
    expect(faults).toEqual([]);
    expect(elements).not.toContain('script');
    expect(textOf(ending)).toContain('&lt;/script&gt;');
  });

  test('are words and no markup on the page of the guide', () => {
    const { document } = new JSDOM(textOf('.guide.html')).window;
    expect(document.querySelectorAll('script')).toHaveLength(0);
    expect(
      [...document.querySelectorAll('*')].flatMap((one) => [...one.attributes].map(({ name }) => name)),
    ).not.toContain('onload');
    expect(document.querySelector('h1')?.textContent).toContain('</script><script>alert(1)</script>');
  });

  test.each(['One.dxf', '.r12.dxf'])('end no line of %s and begin no group of it', (ending) => {
    const text = textOf(ending);
    const plain = files.length > 0 && new DxfParser().parseSync(text);
    expect(plain).toBeTruthy();
    const lines = text.trimEnd().split(/\r?\n/);
    // Codes and values in turn, and the file's end once, at its end.
    expect(lines.filter((_, i) => i % 2 === 0).every((code) => /^\s*\d+$/.test(code))).toBe(true);
    expect(lines.filter((line) => line.trim() === 'EOF')).toHaveLength(1);
  });

  test.each(['One.svg', '.blocks.svg', '.guide.html', 'One.dxf', '.r12.dxf'])(
    'hold nothing in %s that anything would obey, and no half of a character',
    (ending) => {
      const text = textOf(ending);
      expect(OBEYED.exec(text)?.[0]?.charCodeAt(0).toString(16)).toBeUndefined();
      expect(text.isWellFormed()).toBe(true);
    },
  );

  test('leave the report what it is: data', () => {
    expect(JSON.parse(textOf('.report.json'))).toHaveProperty('measures');
  });

  test.each(['One.pdf', '.large.pdf', '.projector.pdf', '.guide.pdf', '.fit.pdf', '.handout.pdf'])(
    'end no text and no object of %s',
    async (ending) => {
      const bytes = contentOf(ending) as Uint8Array;
      const read = await PDFDocument.load(bytes, { throwOnInvalidObject: true });
      expect(read.getPageCount()).toBeGreaterThan(0);
      expect(read.getTitle() ?? '').not.toMatch(OBEYED);
      const text = Buffer.from(bytes).toString('latin1');
      expect(text.match(/%%EOF/g)?.length).toBeLessThanOrEqual(1 + (text.match(/\) Tj ET %%EOF/g)?.length ?? 0));
    },
  );
});
