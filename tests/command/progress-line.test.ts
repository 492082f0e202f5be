import { expect, test } from 'vitest';
import { progressLine } from '../../src/command/progress-line';

function line(isTTY: boolean) {
  let now = 0;
  const written: string[] = [];
  const shown = progressLine({ isTTY, columns: 30, write: (text) => written.push(text) }, () => now);
  return {
    written,
    wipe: shown.wipe,
    at(time: number, share: number, doing: string) {
      now = time;
      shown.show({ share, doing });
    },
  };
}

test('short work is done before the line is shown; long work is, no wider than the terminal, and not too often', () => {
  const { written, at, wipe } = line(true);
  at(500, 0.1, 'a.pdf');
  wipe();
  expect(written).toEqual([]);
  at(700, 0.256, 'a.pdf, sheet B3');
  at(750, 0.3, 'a.pdf, sheet B4');
  expect(written).toEqual(['\r\x1b[K 25 %  a.pdf, sheet B3  (Ctrl']);
  wipe();
  wipe();
  expect(written.slice(1)).toEqual(['\r\x1b[K']);
});

test('where nobody looks on nothing is written', () => {
  const { written, at, wipe } = line(false);
  at(5000, 0.5, 'a.pdf');
  wipe();
  expect(written).toEqual([]);
});
