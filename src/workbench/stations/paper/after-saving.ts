import type { FileKind } from '../../../files';
import { inTurn, own, type Phrase, say } from '../../../words';

/** What to do first with a file: a pattern is proved before it is cut. */
const FIRST: Partial<Readonly<Record<FileKind, Phrase>>> = {
  pdf: say`Print its first page alone, at 100 % (“actual size”), and measure both squares on it. If they are right, print the rest the same way.`,
  changed: say`Print its first page alone, at 100 % (“actual size”), and measure both squares on it. It says which old sheets to throw away.`,
  large: say`Ask for 100 %, nothing fitted to the page, and measure the square on it before you cut.`,
  'printer-test': say`Print it at 100 % (“actual size”), measure both bars, and type what they measure here.`,
  'projector-test': say`Project it at 100 % onto the table, measure A to B, A to D and both diagonals, and type what they measure here.`,
  projector: say`Project it at 100 % and measure a few squares of its grid on the table: they must be as large as is written there.`,
  zip: say`Print the first page of the sheets alone, at 100 % (“actual size”), and measure both squares on it.`,
};

/**
 * What is said beside the button once a file is saved: under which name, and what to do with it first.
 *
 * @param fileName as the browser was given it
 */
export const afterSaving = (kind: FileKind, fileName: string): Phrase =>
  inTurn([say`Saved as “${own(fileName)}”.`, ...[FIRST[kind]].filter((first) => first !== undefined)]);
