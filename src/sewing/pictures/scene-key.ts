import type { Mm } from '../../length';
import type { Point } from '../../plane';
import { type Phrase, say } from '../../words';
import { type Draw, drawing, onePanel, textWidth } from './draw';
import type { Face, PictureItem, PictureLine, StepPicture } from './picture';

/** What each sign means in every picture of the sewing, the lay among them. */
const FACES: readonly (readonly [Face, Phrase])[] = [
  ['right', say`right side of the cloth`],
  ['wrong', say`wrong side of the cloth`],
  ['elastic', say`elastic`],
  ['paper', say`paper, printed side up`],
  ['printedDown', say`paper, printed side down`],
];
type Sign = PictureLine | 'grain';
const LINES: readonly (readonly [Sign, Phrase])[] = [
  ['lit', say`what this step sews`],
  ['litFold', say`what this step folds`],
  ['overlock', say`what this step overlocks or zigzags`],
  ['stitch', say`a seam that is there already`],
  ['fold', say`a fold`],
  ['side', say`the side line`],
  ['hidden', say`what lies underneath`],
  ['notch', say`a notch or mark`],
  ['pin', say`a pin`],
  ['gather', say`gathers`],
  ['cord', say`cord`],
  ['grain', say`the grainline`],
];

/** The picture's width, and of it in hundredths a row's height, a swatch's size and where its words begin. */
const WIDTH: Mm = 1000;
const [ROW, TALL, WIDE, WORDS] = [4.6, 3.3, 9, 11] as const;

/** The key to the pictures: each face as a swatch, each line as a stretch of it, one under the other. */
export function keyPicture(): StepPicture {
  const d = drawing(WIDTH, LETTER);
  const u = d.unit;
  const items = [
    ...FACES.flatMap(([face, text], row) => [
      ...d.cloth(face, swatch(0, row * ROW * u, WIDE * u, TALL * u)),
      named(d, row, text),
    ]),
    ...LINES.flatMap(([sign, text], i) => [...lineItems(d, sign, FACES.length + i), named(d, FACES.length + i, text)]),
  ];
  const reach = WORDS + Math.max(...[...FACES, ...LINES].map(([, text]) => textWidth(text, LETTER)));
  return onePanel(
    { left: -u, right: (reach + 1) * u, top: -u, bottom: ((FACES.length + LINES.length) * ROW - 1) * u },
    items,
    say`In the pictures a plain tinted face is the right side, a hatched one the wrong side; crossed strokes are elastic; dots are paper that lies printed side down. What the step sews is a thick dashed line, what it folds a thick line of dashes and dots, what it overlocks or zigzags a zigzag. Seams that are there already are thin and dashed; thin dashes and dots are a fold, long dashes the side line, dots what lies underneath. A short thick stroke is a notch or mark, a stroke with a head a pin, upright strokes are gathers, a thick band is cord, and an arrow with two heads is the grainline.`,
  );
}

const LETTER = 2.4;

function lineItems(d: Draw, sign: Sign, row: number): readonly PictureItem[] {
  const u = d.unit;
  const y = (row * ROW + TALL / 2) * u;
  const [from, middle, to] = [0, WIDE / 2, WIDE].map((x): Point => ({ x: x * u, y })) as [Point, Point, Point];
  const upright = (x: Mm) => [
    { x: x * u, y: y - 0.4 * TALL * u },
    { x: x * u, y: y + 0.4 * TALL * u },
  ];
  switch (sign) {
    case 'overlock':
      return [d.zigzag(sign, [from, to])];
    case 'pin':
      return d.pin(middle, { x: 0, y: 1 });
    case 'notch':
      return [d.line('edge', from, to), d.line(sign, middle, { x: middle.x, y: y + 0.4 * TALL * u })];
    case 'gather':
      return [0.2, 0.4, 0.6, 0.8].map((share) => d.line(sign, ...upright(share * WIDE)));
    case 'grain':
      return [...d.arrow(from, to), ...d.arrow(to, from)];
    default:
      return [d.line(sign, from, to)];
  }
}

const named = (d: Draw, row: number, text: Phrase): PictureItem =>
  d.word({ x: WORDS * d.unit, y: (row * ROW + TALL / 2 + 0.35 * LETTER) * d.unit }, text);

const swatch = (left: Mm, top: Mm, wide: Mm, tall: Mm): readonly Point[] => [
  { x: left, y: top },
  { x: left + wide, y: top },
  { x: left + wide, y: top + tall },
  { x: left, y: top + tall },
];
