import { type Box, type Point, pointsBounds } from '../../plane';
import { type BlockMarks, type Flat, floorBox, likelyPlace } from '../../trace';
import { boardOf } from './board';
import { flatsOfWork, marksOnPaper } from './flat';
import { nextLandmark, type PhotoState } from './photo-store';
import type { Part, PhotoWork } from './work';

/** Round a mark that keys move there is so much to be seen, which goes along step by step with it; and round a block that is marked whole, millimetres. */
const ROUND_MARK = 120;
const ROUND_BLOCK = 60;

const round = ({ x, y }: Point, reach: number): Box => ({
  left: x - reach,
  top: y - reach,
  right: x + reach,
  bottom: y + reach,
});

/** The marks of a block on the floor of the photograph on which it is being marked; those of another floor have no place there. */
export function marksOnFloor(work: PhotoWork, part: Part): BlockMarks {
  const flats = flatsOfWork(work);
  const joined = flats[work[part].shot]?.joined;
  return marksOnPaper(
    work[part],
    flats.map((other) => (other?.joined === joined ? other : undefined)),
  );
}

/**
 * What of the floor is shown while a block is marked, and under which name: close where its next place likely lies; round the
 * mark in hand while keys move it; all of the block once it is marked.
 */
export function shownFloor(
  { work, selected, byKeys }: Pick<PhotoState, 'work' | 'selected' | 'byKeys'>,
  part: Part,
  flat: Flat,
): { readonly name: string; readonly box: () => Box } {
  const next = nextLandmark(work, part);
  const { landmarks } = marksOnFloor(work, part);
  const held = byKeys && selected?.kind === 'landmark' && selected.part === part ? selected.name : undefined;
  const at = held && landmarks[held];
  const set = Object.values(landmarks);
  // The first one may have to go anywhere.
  if (at && set.length > 1) {
    const [column, row] = [Math.round(at.x / ROUND_MARK), Math.round(at.y / ROUND_MARK)];
    const middle = { x: column * ROUND_MARK, y: row * ROUND_MARK };
    return { name: `at ${held} ${column} ${row}`, box: () => round(middle, ROUND_MARK) };
  }
  if (at) return { name: 'floor', box: () => floorBox(flat) };
  if (!next && set.length > 1)
    return {
      name: 'block',
      box: () => {
        const { left, top, right, bottom } = pointsBounds(set);
        return {
          left: left - ROUND_BLOCK,
          top: top - ROUND_BLOCK,
          right: right + ROUND_BLOCK,
          bottom: bottom + ROUND_BLOCK,
        };
      },
    };
  const likely = next && likelyPlace(part, { landmarks, points: {} }, next);
  if (likely) return { name: `to ${next}`, box: () => round(likely.at, likely.reach) };
  return { name: 'floor', box: () => floorBox(flat) };
}

/** Where keys place the next place of a block: where it likely lies; undefined where nothing says so, or it is off the photograph. */
export function likelyPixel(work: PhotoWork, part: Part): Point | undefined {
  const next = nextLandmark(work, part);
  const likely = next && likelyPlace(part, marksOnFloor(work, part), next);
  const shot = work.shots[work[part].shot];
  const flat = flatsOfWork(work)[work[part].shot];
  const at = likely && flat && boardOf(flat).toPicture(likely.at);
  return at && shot && at.x >= 0 && at.y >= 0 && at.x <= shot.width && at.y <= shot.height ? at : undefined;
}
