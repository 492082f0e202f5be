import { carriedOut, makeFiles, type SingleFile } from '../../src/files';
import type { Point } from '../../src/plane';
import { type Draft, draft as draftOf, sheetsOf } from '../../src/project';
import { planParts, type SheetPlan } from '../../src/sheets';
import { Refusal } from '../../src/words';
import { printFont } from '../files/print-font';
import { pieceName } from '../names';
import { type Find, find, told } from './find';
import { ringOf } from './flat';

/** How far a place may lie outside every sheet: rounding. */
const COVERED = 0.01;
/** Made of every draft that is looked at … */
const ALWAYS: readonly SingleFile[] = ['pdf', 'svg', 'dxf'];
/** … and one of these by turns. */
const BY_TURNS: readonly SingleFile[] = ['report', 'guide-html', 'handout', 'guide', 'r12', 'fit', 'large'];
const DATE = new Date('2026-11-29T12:00:00Z');

/**
 * The sheets show every place of every cut line, and files come out the same twice, drafted anew.
 *
 * @param draft of which they are made
 * @param turn which of the files that are made by turns, a whole number
 */
export async function paperFinds(draft: Draft, turn: number): Promise<readonly Find[]> {
  const again = draftOf(draft.project);
  if (!again.ok) return [find('refused the second time', '')];
  const finds: Find[] = [...coverFinds(draft)];
  for (const kind of [...ALWAYS, BY_TURNS[turn % BY_TURNS.length] as SingleFile]) {
    const [first, second] = [await bytesOf(draft, kind), await bytesOf(again.value, kind)];
    if (Buffer.compare(first, second) !== 0) finds.push(find(`other bytes the second time: ${kind}`, ''));
    if (kind !== 'pdf' && first.length < 100) finds.push(find(`empty file: ${kind}`, `${first.length} bytes`));
  }
  return finds;
}

async function bytesOf(draft: Draft, kind: SingleFile): Promise<Buffer> {
  const name = 'draw';
  try {
    const files = await carriedOut(makeFiles([{ name, draft }], [kind], { font: printFont(), date: DATE }));
    return Buffer.concat(files.map(({ content }) => Buffer.from(content as Uint8Array)));
  } catch (error) {
    // What can't be made is refused by a sentence, the same both times.
    if (error instanceof Refusal) return Buffer.from(error.message.padEnd(100));
    throw error;
  }
}

/** Places of cut lines that no sheet shows. */
export function coverFinds(draft: Draft, sheets: SheetPlan = sheetsOf(draft)): readonly Find[] {
  return draft.printed.flatMap((piece, i) => {
    const place = sheets.places[i];
    if (!place) return [find('piece on no sheet', pieceName(piece))];
    const turn = (place.turn * Math.PI) / 180;
    const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
    const outside = ringOf(piece.cutLine).map(({ x, y }) => {
      const at = { x: x * cos - y * sin + place.shift.x, y: x * sin + y * cos + place.shift.y };
      return Math.min(...planParts(sheets).map(({ window }) => beyond(window, at)));
    });
    const worst = Math.max(...outside);
    return worst > COVERED ? [find('cut line on no sheet', `${pieceName(piece)}: ${told(worst)} outside`)] : [];
  });
}

interface Window {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

const beyond = ({ left, top, right, bottom }: Window, { x, y }: Point): number =>
  Math.max(left - x, x - right, top - y, y - bottom, 0);
