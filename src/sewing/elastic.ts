import type { Mm } from '../length';
import { mm, number, type Phrase, say } from '../words';
import type { Garment } from './garment';
import type { Setting } from './step';
import { setting } from './stitches';

/** The ends of an elastic lie on each other by so much. @source practice */
export const LAP: Mm = 25;
/** A square with a cross in it has no room on narrower elastic. @source practice */
const ROOM_FOR_A_CROSS: Mm = 15;

/** The elastics of the waist, cut and tried on. */
export function elasticsCut({ waist, notions }: Garment): Phrase {
  const length = mm(notions.elasticLength ?? 0);
  return waist.rows === 1
    ? say`Cut the elastic ${length} long, ${mm(waist.elasticWidth)} wide. Close it with a pin round the waist, ${mm(LAP)} lapped, and shorten it until it holds without digging in.`
    : say`Cut ${number(waist.rows, 0)} elastics ${length} long, ${mm(waist.elasticWidth)} wide. Close one with a pin round the waist, ${mm(LAP)} lapped, and shorten it until it holds without digging in; cut the others to match.`;
}

/** How so many laps are sewn, on elastic of that width. */
export function lapSewn(width: Mm, laps: number): Phrase {
  if (width < ROOM_FOR_A_CROSS)
    return laps === 1
      ? say`Sew the lap with three rows of zigzag across it.`
      : say`Sew each lap with three rows of zigzag across it.`;
  return laps === 1
    ? say`Sew the lap: a square round its edge, and a cross in it from corner to corner.`
    : say`Sew each lap: a square round its edge, and a cross in it from corner to corner.`;
}

/** With which stitch. */
export const lapSetting = (width: Mm): Setting =>
  setting(say`Lap`, width < ROOM_FOR_A_CROSS ? say`zigzag, 1.5 mm long, 3 mm wide` : say`straight, 2.5 mm long`);
