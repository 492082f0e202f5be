import { expect, test } from 'vitest';
import { drawingInk, inkCrosses, inkNear, placedDrawings, placeWords } from '../../../src/drawing';
import { withControlWords } from '../../../src/files/pdf/control-words';
import { placeNumbers } from '../../../src/files/pdf/mark-numbers';
import { startPdf } from '../../../src/files/pen/pen';
import { boxesMeet } from '../../../src/plane';
import { sheetsOf } from '../../../src/project';
import { markBoxes, sheetCell, sheetTexts } from '../../../src/sheets';
import { draftWith } from '../drafts';
import { printFont } from '../print-font';

const { widthOf } = startPdf(210, 297, printFont(), { title: '', subject: '', date: new Date(0) });

test.each([
  { name: 'the example on A4', changes: {} },
  { name: 'a band on Letter', changes: { paper: { sheet: 'Letter' }, hem: { finish: 'contrastBand' } } },
  {
    name: 'a child',
    changes: {
      body: { waistGirth: 530, hipGirth: 590, hipDepth: 140, bodyRise: 190, insideLeg: 420, ageYears: 4 },
      paper: { overlap: 0 },
    },
  },
] as const)('words and the marks’ numbers stand clear of lines and of each other: $name', ({ changes }) => {
  const draft = draftWith(changes);
  const drawings = withControlWords(draft, placedDrawings(draft.printed, sheetsOf(draft).places));
  const ink = drawingInk(drawings);
  let count = 0;
  for (const sheet of sheetsOf(draft).sheets) {
    const near = inkNear(ink, sheet.window);
    const numbers = placeNumbers(sheet, sheetsOf(draft), near, widthOf);
    const marked = [...markBoxes(sheet, sheetsOf(draft)), ...numbers.map(({ box }) => box)];
    const texts = sheetTexts(
      drawings.flatMap((drawing) => drawing.texts),
      sheetsOf(draft),
      sheet,
    );
    const room = { box: sheetCell(sheet), scale: sheetsOf(draft).scale, ink: near, taken: marked };
    const words = placeWords(texts, room, widthOf);
    count += words.length;
    const across = words.filter(({ parts }) => parts.some((part) => inkCrosses(near, part)));
    expect(across.map(({ text }) => `${sheet.label}: ${text}`)).toEqual([]);
    // A level line that runs along a join leaves its numbers no other place.
    const cut = { ...near, lines: near.lines.filter(({ stroke }) => stroke === 'cut') };
    expect(numbers.filter(({ box }) => inkCrosses(cut, box)).map(({ text }) => `${sheet.label}: ${text}`)).toEqual([]);
    for (const [i, word] of words.entries())
      for (const other of [...marked.map((box) => [box]), ...words.slice(i + 1).map(({ parts }) => parts)])
        expect(
          word.parts.some((part) => other.some((box) => boxesMeet(part, box))),
          `${sheet.label}: ${word.text}`,
        ).toBe(false);
  }
  // The piece's own words, and both lengths to measure.
  expect(count).toBeGreaterThanOrEqual(8);
});
