import { type Mm, say } from '../../length';
import type { Point } from '../../plane';
import { lengthOf } from '../facts';
import { type Garment, pieceNamed } from '../garment';
import { drawing, onePanel } from './draw';
import type { StepPicture } from './picture';
import { shifted } from './polygon';

/** A straight piece: folded end on end with its end seam lit, or folded lengthwise. */
export function stripPicture(g: Garment, name: string, stage: 'ends' | 'folded'): StepPicture {
  const piece = pieceNamed(g, name);
  const length = lengthOf(piece, ['upper']);
  const height = lengthOf(piece, ['rightEnd']);
  const allowanceOf = (edge: string) => piece.cutLine.find((one) => one.name === edge)?.allowance ?? 0;
  const [long, end] = [allowanceOf('upper'), allowanceOf('rightEnd')];
  const half = length / 2;
  const d = drawing(1.25 * Math.max(half + end, 3 * height));
  const u = d.unit;
  const box = (l: Mm, t: Mm, r: Mm, b: Mm): readonly Point[] => [
    { x: l, y: t },
    { x: r, y: t },
    { x: r, y: b },
    { x: l, y: b },
  ];
  const whole =
    stage === 'ends' ? box(0, -long, half + end, height + long) : box(-end, 0, length + end, height / 2 + long);
  const threads = name === 'casing';
  const gapTop = height / 2 + 5;
  const lit: readonly (readonly Point[])[] =
    stage === 'ends'
      ? threads
        ? [
            [
              { x: half, y: -long },
              { x: half, y: gapTop },
            ],
            [
              { x: half, y: height - 5 },
              { x: half, y: height + long },
            ],
          ]
        : [
            [
              { x: half, y: -long },
              { x: half, y: height + long },
            ],
          ]
      : [
          [
            { x: -end, y: height / 2 },
            { x: length + end, y: height / 2 },
          ],
        ];
  const ringTop = height + long + 16 * u;
  const ring = box(0, ringTop, half, ringTop + height / 2 + long);
  return onePanel(
    {
      left: -3 * u - end,
      top: -long - 6 * u,
      right: (stage === 'ends' ? half : length) + end + 26 * u,
      bottom: stage === 'ends' ? ringTop + height / 2 + long + 8 * u : height / 2 + long + 8 * u,
    },
    [
      ...d.cloth('right', whole.map(shifted(0, 1.2 * u))),
      ...d.cloth('wrong', whole),
      ...lit.map((run) => d.line('lit', ...run)),
      d.word({ x: 0, y: -long - 2.5 * u }, `${name}, right sides together, folded at the left`),
      ...d.note(
        { x: (stage === 'ends' ? half : length) + end + 3 * u, y: 0.3 * height },
        threads && stage === 'ends' ? 'seam, with a gap' : 'seam',
        { x: stage === 'ends' ? half : length, y: 0.3 * height },
      ),
      ...(stage === 'ends'
        ? [
            ...d.cloth('right', ring),
            d.line('fold', { x: 0, y: ringTop }, { x: half, y: ringTop }),
            d.line('stitch', { x: half * 0.985, y: ringTop }, { x: half * 0.985, y: ringTop + height / 2 + long }),
            ...[0.5].map((share) =>
              d.line(
                'mark',
                { x: share * half, y: ringTop + height / 2 + long },
                { x: share * half, y: ringTop + height / 2 + long - 3 * u },
              ),
            ),
            d.word({ x: 0, y: ringTop - 3 * u }, 'then the ring, folded lengthwise, right side out'),
            ...d.note({ x: half + end + 3 * u, y: ringTop + 2 * u }, 'fold', { x: half * 0.9, y: ringTop }),
            d.word({ x: half / 2, y: ringTop + height / 2 + long + 4 * u }, 'quarter', 'middle'),
          ]
        : []),
    ],
    stage === 'ends'
      ? say`The ${name} folded right sides together with its end seam lit; below, the ring folded lengthwise.`
      : say`The ${name} folded lengthwise, right sides together, its seam lit.`,
  );
}
