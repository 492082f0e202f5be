import { homographyPoint, type Point } from '../../plane';
import { flatOf } from './flat';
import { changeWork, shotAt, usePhoto } from './photo-store';
import { type MarkId, withMark } from './work';

/** Whether a mark is shown on the flattened paper, in millimetres, and not on the picture as it is. */
const isFlat = ({ kind }: MarkId): boolean => kind === 'landmark' || kind === 'point';

/** Moves a mark to a place of the board on which it is shown, never off the photograph. */
export function moveMark(id: MarkId, to: Point, running: string): void {
  const state = usePhoto.getState();
  const index = shotAt(state);
  const shot = state.work.shots[index];
  const flat = shot && isFlat(id) ? flatOf(shot) : undefined;
  const at = flat ? homographyPoint(flat.toPicture, to) : to;
  if (!shot || !at) return;
  const kept = { x: Math.min(shot.width, Math.max(0, at.x)), y: Math.min(shot.height, Math.max(0, at.y)) };
  changeWork(withMark(state.work, index, id, kept), running);
}
