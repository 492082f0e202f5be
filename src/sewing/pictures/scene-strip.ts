import { type EdgeName, type PieceKind, pieceName } from '../../edges';
import type { Mm } from '../../length';
import { type Phrase, say } from '../../words';
import { lengthOf } from '../facts';
import { type Garment, pieceOfKind } from '../garment';
import { type Draw, drawing, onePanel } from './draw';
import type { PictureItem, StepPicture } from './picture';
import { rectangle, shifted } from './polygon';

/** A straight piece: folded end on end with its end seam lit, or folded lengthwise to a tube. */
export function stripPicture(g: Garment, kind: PieceKind, stage: 'ends' | 'folded'): StepPicture {
  const piece = pieceOfKind(g, kind);
  const allowanceOf = (edge: EdgeName) => piece.cutLine.find((one) => one.name === edge)?.allowance ?? 0;
  const strip: Strip = {
    name: pieceName(piece),
    threads: kind === 'casing',
    length: lengthOf(piece, ['upper']),
    height: lengthOf(piece, ['rightEnd']),
    long: allowanceOf('upper'),
    end: allowanceOf('rightEnd'),
  };
  return stage === 'ends' ? ringPicture(strip) : tubePicture(strip);
}

interface Strip {
  readonly name: Phrase;
  /** Whether something is threaded in through a gap in its seam. */
  readonly threads: boolean;
  readonly length: Mm;
  /** Before it is folded lengthwise. */
  readonly height: Mm;
  /** Allowances along it and at its ends. */
  readonly long: Mm;
  readonly end: Mm;
}

/** Folded end on end, its ends sewn; below, the ring folded lengthwise. */
function ringPicture({ name, threads, length, height, long, end }: Strip): StepPicture {
  const half = length / 2;
  const d = drawing(1.25 * Math.max(half + end, 3 * height));
  const u = d.unit;
  const whole = rectangle(0, -long, half + end, height + long);
  const down = (from: Mm, to: Mm) => d.line('lit', { x: half, y: from }, { x: half, y: to });
  const lit = threads ? [down(-long, height / 2 + 5), down(height - 5, height + long)] : [down(-long, height + long)];
  const ringTop = height + long + 16 * u;
  const ringBottom = ringTop + height / 2 + long;
  return onePanel(
    { left: -3 * u - end, top: -long - 6 * u, right: half + end + 6 * u, bottom: ringBottom + 8 * u },
    [
      ...d.cloth('right', whole.map(shifted(0, 1.2 * u))),
      ...d.cloth('wrong', whole),
      ...lit,
      d.word({ x: 0, y: -long - 2.5 * u }, say`${name}, right sides together, folded at the left`),
      ...d.note({ x: half + end + 3 * u, y: 0.3 * height }, threads ? say`seam, with a gap` : say`seam`, {
        x: half,
        y: 0.3 * height,
      }),
      ...d.cloth('right', rectangle(0, ringTop, half, ringBottom)),
      d.line('fold', { x: 0, y: ringTop }, { x: half, y: ringTop }),
      d.line('stitch', { x: half * 0.985, y: ringTop }, { x: half * 0.985, y: ringBottom }),
      d.line('mark', { x: half / 2, y: ringBottom }, { x: half / 2, y: ringBottom - 3 * u }),
      d.word({ x: 0, y: ringTop - 3 * u }, say`then the ring, folded lengthwise, right side out`),
      ...d.note({ x: half + end + 3 * u, y: ringTop + 2 * u }, say`fold`, { x: half * 0.9, y: ringTop }),
      d.word({ x: half / 2, y: ringBottom + 4 * u }, say`quarter`, 'middle'),
    ],
    say`The ${name} folded right sides together with its end seam lit; below, the ring folded lengthwise.`,
  );
}

/** So much of a long strip is shown, in heights of it. */
const SHOWN = 9;

/** One end of a long strip: folded lengthwise and sewn; below, turned right side out. */
function tubePicture({ name, length, height, long, end }: Strip): StepPicture {
  const right = Math.min(length, SHOWN * height);
  const d = drawing(1.2 * right);
  const u = d.unit;
  const [seam, raw] = [height / 2, height / 2 + long];
  const top = raw + 14 * u;
  // The strip goes on beyond the left side of the picture.
  const far = -2 * u;
  return onePanel(
    { left: 0, top: -13 * u, right: right + end + 4 * u, bottom: top + seam + 9 * u },
    [
      ...d.cloth('right', rectangle(far, 1.2 * u, right + end, raw + 1.2 * u)),
      ...d.cloth('wrong', rectangle(far, 0, right + end, raw)),
      d.line('fold', { x: far, y: 0 }, { x: right + end, y: 0 }),
      d.line('lit', { x: far, y: seam }, { x: right + end, y: seam }),
      d.word({ x: 2 * u, y: -7.6 * u }, say`${name}, one end`),
      d.word({ x: 2 * u, y: -3 * u }, say`folded lengthwise, right sides together`),
      ...d.cloth('right', rectangle(far, top, right, top + seam)),
      ...endItems(d, right, end, top, seam),
      d.word({ x: 2 * u, y: top - 3 * u }, say`turned right side out`),
      d.word({ x: right, y: top + seam + 5 * u }, say`end tucked in, stitched shut`, 'right'),
    ],
    say`One end of the ${name}: folded lengthwise, right sides together, its seam lit; below, turned right side out, the end tucked in and stitched.`,
  );
}

/** The end of a turned tube: what is tucked in, and the stitching across. */
function endItems(d: Draw, right: Mm, end: Mm, top: Mm, height: Mm): readonly PictureItem[] {
  const inside = right - end;
  return [
    d.line('hidden', { x: inside, y: top }, { x: inside, y: top + height }),
    d.line('lit', { x: right - Math.min(2, end / 2), y: top }, { x: right - Math.min(2, end / 2), y: top + height }),
  ];
}
