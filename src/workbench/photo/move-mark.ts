import type { Point } from '../../plane';
import { AS_IT_IS, type Board, boardOf, isOnPaper } from './board';
import { flatsOfWork } from './flat';
import { changeWork, shotAt, usePhoto } from './photo-store';
import { type MarkId, markAt, type PhotoWork, shotOf, withMark } from './work';

/** The photograph a mark lies on, of which another may be shown. */
function shotOfMark(work: PhotoWork, index: number, id: MarkId): number {
  if (!isOnPaper(id) || !('part' in id)) return index;
  const mark = markAt(work, index, id);
  return mark ? shotOf(work[id.part], mark) : index;
}

/** The board on which a kind of mark is shown of a photograph; undefined where that can't be flattened. */
function boardOn(work: PhotoWork, index: number, id: MarkId): Board | undefined {
  if (!isOnPaper(id)) return AS_IT_IS;
  const flat = flatsOfWork(work)[index];
  return flat && boardOf(flat);
}

/** Where a mark lies on the board on which it is shown. */
export function placeOf(work: PhotoWork, index: number, id: MarkId): Point | undefined {
  const at = markAt(work, index, id);
  return at && boardOn(work, shotOfMark(work, index, id), id)?.fromPicture(at);
}

/** Moves a mark to a place of the board on which it is shown, never off its photograph. */
export function moveMark(id: MarkId, to: Point, running: string): void {
  const state = usePhoto.getState();
  const { work } = state;
  const shown = shotAt(state);
  // What is seen there is the photograph that is shown; a mark beyond it stays on its own.
  const there = shotFor(work, shown, id, to);
  const [shot, at] = [work.shots[there], boardOn(work, there, id)?.toPicture(to)];
  if (!shot || !at) return;
  const kept = { x: Math.min(shot.width, Math.max(0, at.x)), y: Math.min(shot.height, Math.max(0, at.y)) };
  changeWork(withMark(work, there, id, kept), running);
}

function shotFor(work: PhotoWork, shown: number, id: MarkId, to: Point): number {
  const [shot, at] = [work.shots[shown], boardOn(work, shown, id)?.toPicture(to)];
  const within = shot && at && at.x >= 0 && at.y >= 0 && at.x <= shot.width && at.y <= shot.height;
  return within ? shown : shotOfMark(work, shown, id);
}
