import { homographyPoint, type Point } from '../../plane';
import { boardOf } from './board';
import { changeWork, shotAt, usePhoto } from './photo-store';
import { type MarkId, markAt, type PhotoWork, withMark } from './work';

/** Where a mark lies on the board on which it is shown. */
export function placeOf(work: PhotoWork, index: number, id: MarkId): Point | undefined {
  const shot = work.shots[index];
  const board = shot && boardOf(shot, id);
  const at = markAt(work, index, id);
  return board && at && homographyPoint(board.fromPicture, at);
}

/** Moves a mark to a place of the board on which it is shown, never off the photograph. */
export function moveMark(id: MarkId, to: Point, running: string): void {
  const state = usePhoto.getState();
  const index = shotAt(state);
  const shot = state.work.shots[index];
  const board = shot && boardOf(shot, id);
  const at = board && homographyPoint(board.toPicture, to);
  if (!shot || !at) return;
  const kept = { x: Math.min(shot.width, Math.max(0, at.x)), y: Math.min(shot.height, Math.max(0, at.y)) };
  changeWork(withMark(state.work, index, id, kept), running);
}
