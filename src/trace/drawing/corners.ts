import type { Mm } from '../../length';
import { type Turning, turnedBetween } from './turning';
import type { WayRound } from './way-round';

/** A place at which an outline turns at once: clockwise by `turn`, or back where that is below 0. Radians. */
export interface Corner {
  readonly at: Mm;
  readonly turn: number;
}

/** A corner turns within so much of the outline to either side, millimetres: cloth is cut no sharper. @source practice */
const REACH: Mm = 5;
/** What turns less than this, radians, is no corner. @source practice */
const LEAST: number = 0.35;

/** The corners of an outline in millimetres, in their order round it. */
export function cornersOf({ length, ends }: WayRound, turning: Turning): readonly Corner[] {
  const reach = Math.min(REACH, length / 100);
  const turn = (at: Mm, by: Mm): number => {
    const { onward, back } = turnedBetween(turning, length, at - by + length, at + by + length);
    return onward - back;
  };
  // Where two curves meet at a corner, that is the place of it; else the middle of where it turns most.
  const sharp = ends
    .map((at) => ({ at: at % length, turn: turn(at, SHARP) }))
    .filter((corner) => Math.abs(corner.turn) > LEAST / 2);
  const rounded = turning.places.map((at) => ({ at: at % length, turn: turn(at, reach) }));
  const found: Corner[] = [];
  const apart = (at: Mm) =>
    found.every((other) => {
      const away = Math.abs(other.at - at);
      return Math.min(away, length - away) > reach;
    });
  for (const list of [sharp, rounded])
    for (const corner of [...list].sort((a, b) => Math.abs(b.turn) - Math.abs(a.turn)))
      if (Math.abs(corner.turn) >= LEAST && apart(corner.at)) found.push(corner);
  return found.sort((a, b) => a.at - b.at);
}

/** Where two curves meet, what turns within this, millimetres, turns there. @source tolerance */
const SHARP: Mm = 0.01;
