import { create } from 'zustand';
import type { Mm } from '../../length';
import {
  type BlockReading,
  type DrawnSheet,
  outlineScaled,
  type ReadPlace,
  readingOf,
  readingScaled,
} from '../../trace';
import { type History, noHistory, remember, stepBack, stepForward } from '../store/history';

export type Part = 'front' | 'back';
export const PARTS: readonly Part[] = ['back', 'front'];

/** An outline that was picked, and what was read in it and set by hand. */
export interface PickedPart {
  readonly outline: number;
  readonly reading: BlockReading;
}

/** What was chosen on the screen for a drawing. */
export interface OutlinesWork {
  /** Millimetres in a unit of the drawing; how that is told, to show it. */
  readonly unit: Mm;
  readonly unitTold: string;
  readonly front: PickedPart | undefined;
  readonly back: PickedPart | undefined;
}

/** What the next press on the drawing sets, or which edge was pressed. */
export type Hand =
  | { readonly kind: 'place'; readonly part: Part; readonly name: ReadPlace }
  | { readonly kind: 'edge'; readonly part: Part; readonly index: number };

interface OutlinesState {
  readonly sheet: DrawnSheet | undefined;
  readonly work: OutlinesWork;
  readonly history: History<OutlinesWork>;
  readonly running: string | undefined;
  readonly step: 'pick' | 'places';
  /** Which block the next press on an outline picks. */
  readonly picking: Part;
  readonly hand: Hand | undefined;
}

const NO_WORK: OutlinesWork = { unit: 1, unitTold: 'drawing', front: undefined, back: undefined };

export const useOutlines = create<OutlinesState>()(() => ({
  sheet: undefined,
  work: NO_WORK,
  history: noHistory,
  running: undefined,
  step: 'pick',
  picking: 'front',
  hand: undefined,
}));
const { getState: get, setState: set } = useOutlines;

/** Begins with a drawing: with what it shows plainly, to be looked at. */
export function beginWith(sheet: DrawnSheet): void {
  const unit = sheet.unit ?? sheet.likelyUnit;
  const { picked } = sheet;
  const part = (outline: number | undefined) => picking(sheet, outline, unit);
  const work = { unit, unitTold: 'drawing', front: part(picked?.front), back: part(picked?.back) };
  set({ sheet, work, history: noHistory, running: undefined, step: 'pick', picking: 'front', hand: undefined });
}

/** Changes what is chosen; under the same `running` name all is one change. */
function changeWork(work: OutlinesWork, running?: string): void {
  const { work: before, history, running: going } = get();
  set({ work, history: remember(history, before, running !== undefined && running === going), running });
}

function travel(step: typeof stepBack<OutlinesWork>): void {
  const { work, history } = get();
  const returned = step(history, () => work);
  if (returned) set({ work: returned.to, history: returned.history, running: undefined, hand: undefined });
}
export const undo = (): void => travel(stepBack);
export const redo = (): void => travel(stepForward);

const picking = (sheet: DrawnSheet, outline: number | undefined, unit: Mm): PickedPart | undefined => {
  const picked = outline === undefined ? undefined : sheet.outlines[outline];
  return picked && outline !== undefined ? { outline, reading: readingOf(outlineScaled(picked, unit)) } : undefined;
};

/** Picks an outline as the block that is asked for, and asks for the other one where that is missing. */
export function pickOutline(outline: number): void {
  const { sheet, work, picking: part } = get();
  if (!sheet) return;
  const other = part === 'front' ? 'back' : 'front';
  // One outline is one block.
  const free = work[other]?.outline === outline ? undefined : work[other];
  changeWork({ ...work, [part]: picking(sheet, outline, work.unit), [other]: free });
  set({ picking: free ? part : other });
}

/** Takes the drawing to be in another unit: what was read in it is read anew. */
export function setUnit(unit: Mm, unitTold: string): void {
  const { sheet, work } = get();
  if (!sheet) return;
  const again = (part: PickedPart | undefined) => picking(sheet, part?.outline, unit);
  changeWork({ unit, unitTold, front: again(work.front), back: again(work.back) });
}

/** Makes everything so many times as large, by a length that is known; what was set by hand stays. */
export function scaleBy(by: number, running: string): void {
  const { work } = get();
  const larger = (part: PickedPart | undefined) => part && { ...part, reading: readingScaled(part.reading, by) };
  changeWork({ unit: work.unit * by, unitTold: 'length', front: larger(work.front), back: larger(work.back) }, running);
}

/** Changes what was read in a block. */
export function changeReading(part: Part, change: (reading: BlockReading) => BlockReading, running?: string): void {
  const { work } = get();
  const picked = work[part];
  if (picked) changeWork({ ...work, [part]: { ...picked, reading: change(picked.reading) } }, running);
}

export const takeInHand = (hand: Hand | undefined): void => set({ hand });
