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
const LINES: readonly (readonly [PictureLine, Phrase])[] = [
  ['lit', say`what this step sews or folds`],
  ['stitch', say`stitching that is there already`],
  ['fold', say`a fold, or the side line`],
  ['hidden', say`what lies underneath`],
  ['overlock', say`an edge overlocked or zigzagged`],
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
    ...LINES.flatMap(([look, text], i) => [lineItem(d, look, FACES.length + i), named(d, FACES.length + i, text)]),
  ];
  const reach = WORDS + Math.max(...[...FACES, ...LINES].map(([, text]) => textWidth(text, LETTER)));
  return onePanel(
    { left: -u, right: (reach + 1) * u, top: -u, bottom: ((FACES.length + LINES.length) * ROW - 1) * u },
    items,
    say`In the pictures a plain tinted face is the right side, a hatched one the wrong side; crossed strokes are elastic; dots are paper that lies printed side down. What the step sews is the thick dashed line; seams that are there already are thin and dashed; dash and dot is a fold; dotted is what lies underneath; a zigzag is a finished edge.`,
  );
}

const LETTER = 2.4;

function lineItem(d: Draw, look: PictureLine, row: number): PictureItem {
  const y = (row * ROW + TALL / 2) * d.unit;
  const run = [
    { x: 0, y },
    { x: WIDE * d.unit, y },
  ];
  return look === 'overlock' ? d.zigzag(look, run) : d.line(look, ...run);
}

const named = (d: Draw, row: number, text: Phrase): PictureItem =>
  d.word({ x: WORDS * d.unit, y: (row * ROW + TALL / 2 + 0.35 * LETTER) * d.unit }, text);

const swatch = (left: Mm, top: Mm, wide: Mm, tall: Mm): readonly Point[] => [
  { x: left, y: top },
  { x: left + wide, y: top },
  { x: left + wide, y: top + tall },
  { x: left, y: top + tall },
];
