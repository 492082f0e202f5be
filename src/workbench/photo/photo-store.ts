import { create } from 'zustand';
import type { BlockEdge } from '../../block';
import type { Point } from '../../plane';
import { type Landmark, landmarksOf } from '../../trace';
import { number, own, words } from '../../words';
import { type History, noHistory, remember, stepBack, stepForward } from '../store/history';
import { forgetPictures, openedPicture } from './ask-worker';
import { flatsOfWork } from './flat';
import type { Picture } from './picture';
import {
  type MarkId,
  MOST_SHOTS,
  markKey,
  NO_WORK,
  newShot,
  type Part,
  type PhotoWork,
  withJoin,
  withMark,
  withoutMark,
  withoutShot,
  withPoint,
  withShown,
} from './work';

export const STEPS = ['choose', 'corners', 'front', 'back', 'use'] as const;
export type PhotoStep = (typeof STEPS)[number];

export interface PhotoState {
  readonly work: PhotoWork;
  readonly history: History<PhotoWork>;
  /** What goes on under one name is one change to undo. */
  readonly running: string | undefined;
  /** The decoded photographs, by their place in the work; gone after a reload. */
  readonly pictures: readonly (Picture | undefined)[];
  readonly step: PhotoStep;
  /** Which photograph the first two steps are about. */
  readonly shot: number;
  readonly selected: MarkId | undefined;
  /** The mark that takes the focus as soon as it is drawn. */
  readonly focus: string | undefined;
  /** Whether the mark in hand was placed by keys: then it is shown close, to be moved. */
  readonly byKeys: boolean;
  /** The edge to which points are added; undefined while landmarks are placed. */
  readonly edge: BlockEdge;
  readonly told: string | undefined;
  /** Whether a photograph is being opened. */
  readonly opening: boolean;
}

export const usePhoto = create<PhotoState>()(() => ({
  work: NO_WORK,
  history: noHistory,
  running: undefined,
  pictures: [],
  step: 'choose',
  shot: 0,
  selected: undefined,
  focus: undefined,
  byKeys: false,
  edge: 'crotch',
  told: undefined,
  opening: false,
}));

const { getState: get, setState: set } = usePhoto;

/** Changes what is marked; under the same `running` name all is one change. */
export function changeWork(work: PhotoWork, running?: string): void {
  const { work: before, history, running: going } = get();
  set({ work, history: remember(history, before, running !== undefined && running === going), running });
}

export const endRun = (): void => set({ running: undefined });

/** The pictures that still belong to the work, after a step over the choice of another. */
const stillShown = (to: PhotoWork): PhotoState['pictures'] => {
  const { work, pictures } = get();
  return pictures.map((picture, i) => (work.shots[i]?.name === to.shots[i]?.name ? picture : undefined));
};

function travel(step: typeof stepBack<PhotoWork>): void {
  const { work, history } = get();
  const returned = step(history, () => work);
  if (!returned) return;
  const { to } = returned;
  set({ work: to, pictures: stillShown(to), history: returned.history, running: undefined, selected: undefined });
}

export const undo = (): void => travel(stepBack);
export const redo = (): void => travel(stepForward);

/** Which photograph a step shows. */
export const shotAt = ({ step, shot, work }: Pick<PhotoState, 'step' | 'shot' | 'work'>): number =>
  step === 'front' || step === 'back' ? work[step].shot : shot;

export function goTo(step: PhotoStep): void {
  const { work } = get();
  const shot = step === 'front' || step === 'back' ? work[step].shot : get().shot;
  set({
    step,
    shot,
    selected: undefined,
    focus: undefined,
    running: undefined,
    byKeys: false,
    edge: 'crotch',
    told: undefined,
  });
}

/** Takes a photograph in: the one whose marks are kept, if it is as large as that, else a new one with the marks found on it. */
export async function takePicture(file: File): Promise<void> {
  const { shot } = get();
  set({ opening: true, told: undefined });
  const opened = await openedPicture(file, shot).catch(() => undefined);
  set({ opening: false });
  if (!opened) {
    set({ told: words`“${own(file.name)}” can’t be read as a picture here; a JPEG or PNG file can.` });
    return;
  }
  if ('tooMany' in opened) {
    const many = number(opened.tooMany / 1e6, 0);
    set({
      told: words`“${own(file.name)}” has ${many} megapixels, too many to open here: save it smaller, half as wide is enough.`,
    });
    return;
  }
  const { picture, found } = opened;
  const { work, pictures } = get();
  const kept = work.shots[shot];
  const same = kept && kept.width === picture.width && kept.height === picture.height && !pictures[shot];
  const next = Array.from({ length: MOST_SHOTS }, (_, i) => (i === shot ? picture : pictures[i]));
  set({ pictures: next, told: same ? words`The marks are where you left them.` : undefined });
  if (!same) {
    const fresh = newShot(file.name, picture.width, picture.height, found);
    // A second photograph is most often taken over the same rectangle, a second scan made as the first.
    const first = shot > 0 && found.length === 0 ? work.shots[0] : undefined;
    const { rectangle, across, along, dots } = first ?? fresh;
    const shots = work.shots.toSpliced(shot, 1, {
      ...fresh,
      rectangle,
      across,
      along,
      ...(dots !== undefined && { dots }),
    });
    changeWork({ ...withoutShot(work, shot), shots });
  }
  set({ step: 'corners', selected: found.length > 0 ? undefined : { kind: 'corner', index: 0 } });
}

/** The landmark of a block that is to be placed next. */
export const nextLandmark = (work: PhotoWork, part: Part): Landmark | undefined =>
  landmarksOf(work[part].marks).find((name) => !work[part].marks.landmarks[name]);

/** Places what is to be placed next on a block: its next landmark, or one more point on the edge in hand. */
export function place(part: Part, at: Point, focus = false): void {
  const { work, edge } = get();
  const name = nextLandmark(work, part);
  const done = name
    ? {
        work: withMark(work, work[part].shot, { kind: 'landmark', part, name }, at),
        id: { kind: 'landmark', part, name } as const,
      }
    : withPoint(work, part, edge, at);
  changeWork(done.work);
  set({ selected: done.id, focus: focus ? markKey(done.id) : undefined, byKeys: focus });
}

/** Two places of a block may be one, as the hip at the centre and the start of the crotch curve: the next one on a mark. */
export function placeOnMark(id: MarkId): void {
  const { work } = get();
  if (id.kind !== 'landmark' || !nextLandmark(work, id.part)) return;
  const at = work[id.part].marks.landmarks[id.name];
  if (at) place(id.part, at);
}

export function removeMark(id: MarkId): void {
  changeWork(withoutMark(get().work, shotAt(get()), id));
  set({ selected: undefined });
}

/** Shows a photograph: in the steps of a block, to mark that block on it. One that isn't there yet is chosen first. */
export function showShot(shot: number): void {
  const { work, step, pictures } = get();
  const there = { shot, selected: undefined };
  if (shot >= work.shots.length) set({ ...there, step: 'choose', told: undefined });
  else if (step === 'front' || step === 'back') {
    if (work[step].shot !== shot) changeWork(withShown(work, step, shot));
    // Before it lies on the floor with the others, nothing can be marked on it.
    const ready = flatsOfWork(work)[shot] !== undefined && pictures[shot] !== undefined;
    set({ ...there, step: ready ? step : 'corners' });
  } else set(there);
}

/** One more place on two photographs: on the one that is shown and on another, to be laid on it there, too. */
export function addJoin(shots: readonly [number, number]): void {
  const { work, index } = withJoin(get().work, shots);
  changeWork(work);
  set({ selected: { kind: 'join', index } });
}

/** Forgets all marks and photographs. */
export function startAgain(): void {
  forgetPictures();
  changeWork(NO_WORK);
  set({ pictures: [], shot: 0, step: 'choose', selected: undefined, told: undefined });
}
