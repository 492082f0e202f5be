/**
 * A sheet's label: row letter and column number, from row and column counted from 0: `A1`, `B3`; after row Z comes AA,
 * and before row A, where sheets come to a plan that was printed without them, Z, Y and so on.
 */
export function sheetLabel(row: number, column: number): string {
  if (row < 0) return `${String.fromCharCode(91 + row)}${column + 1}`;
  let letters = '';
  for (let rest = row + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  }
  return `${letters}${column + 1}`;
}
