import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { jsPDF } from 'jspdf';
import { expect, test } from 'vitest';
import { makePrintFont, printCharacters, printFontFile } from '../../.house/print-font';

test('the committed print font is what its script makes', async () => {
  expect(readFileSync(printFontFile).equals(await makePrintFont())).toBe(true);
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
function textThroughPdf(text: string): string {
  const doc = new jsPDF({ unit: 'mm', format: 'a4', putOnlyUsedFonts: true });
  doc.addFileToVFS('print.ttf', readFileSync(printFontFile).toString('latin1'));
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
