import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { jsPDF } from 'jspdf';
import { expect, test } from 'vitest';
import {
  makePrintFont,
  printCharacters,
  printFontFile,
  widePrintCharacters,
  widePrintFontFile,
} from '../../.house/print-font';
import { printedLetters, printFontName, unprintedTold } from '../../src/drawing';
import { printPhrase } from '../../src/words';

test('the committed print fonts are what their script makes', async () => {
  expect(readFileSync(printFontFile).equals(await makePrintFont())).toBe(true);
  expect(readFileSync(widePrintFontFile).equals(await makePrintFont(widePrintCharacters))).toBe(true);
});

test('names in other letters come back out of a PDF in the wide font, and only they ask for it', () => {
  for (const name of ['Ольга', 'Ελένη', 'Nguyễn Thị Hạnh', 'Անահիտ', 'ნინო', 'Ọlá']) {
    expect(printFontName(`Lounge pant for ${name}`)).toBe('legwork-print-wide.ttf');
    expect(unprintedTold(name)).toBeUndefined();
    expect(textThroughPdf(printedLetters(name), widePrintFontFile)).toContain(printedLetters(name));
  }
  expect(printFontName('Zoë Müller-Łukasz, ½ √')).toBe('legwork-print.ttf');
});

test('of letters that no print font has the sentence tells which, and an emoji counts as one', () => {
  const told = unprintedTold('山田 \u{1F600}');
  expect(told && printPhrase(told, 'cm')).toMatch(/^“山田 \u{1F600}” .* as a question mark: 山 田 \u{1F600}\. Latin/u);
  expect(unprintedTold('Noa נועה')).toBeDefined();
  expect(unprintedTold('e\u0301lan')).toBeUndefined();
  expect(printedLetters('e\u0301')).toBe('é');
});

test('every character of the print font comes back out of a PDF', () => {
  const printed = printCharacters.filter((character) => !/[\s\u00ad]/u.test(character));
  const found = new Set(textThroughPdf(printed.join(' ')));
  expect(printed.filter((character) => !found.has(character))).toEqual([]);
});

test('a character that the print font lacks does not come back: the test above can fail', () => {
  expect(textThroughPdf('Ж')).not.toContain('Ж');
});

/** Sets a text in the print font and reads it back with a PDF reader. */
function textThroughPdf(text: string, font = printFontFile): string {
  const doc = new jsPDF({ unit: 'mm', format: 'a4', putOnlyUsedFonts: true });
  doc.addFileToVFS('print.ttf', readFileSync(font).toString('latin1'));
  doc.addFont('print.ttf', 'Print', 'normal');
  doc.setFont('Print', 'normal').setFontSize(10);
  doc.text(doc.splitTextToSize(text, 180), 10, 15);
  return execFileSync('pdftotext', ['-enc', 'UTF-8', '-', '-'], {
    input: Buffer.from(doc.output('arraybuffer')),
    encoding: 'utf8',
    // The reader remarks on the way the PDF names the font's encoding; it reads it all the same.
    stdio: ['pipe', 'pipe', 'ignore'],
  });
}
