import { describe, expect, it } from 'vitest';
import { startPdf } from '../../src/files/pen/pen';
import { type Box, boxesMeet, boxGrown, boxMeetsSegment, type Point, segmentWithin } from '../../src/plane';
import { type PictureSetting, placedWords, type StepPicture, sewingSteps, stepPicture } from '../../src/sewing';
import { printFont } from '../files/print-font';
import { CHILD, everyGarment } from './garments';

// What stands in a picture of the sewing is read on paper, on a telephone, on a screen and from the last row of a class: its
// letters are larger in a small picture than in a large one, and everywhere they have to be read.

const pen = startPdf(100, 100, printFont(), { title: '', subject: '', date: new Date(0) });
/** Of a text at a size of one, as the pen knows it. */
const widths = new Map<string, number>();
const sizeOf = (pt: number): number => (pt * 25.4) / 72;
const width = (text: string, size: number): number => {
  const known = widths.get(text) ?? pen.widthOf(text, 100) / sizeOf(100);
  widths.set(text, known);
  return known * size;
};

interface Place {
  /** What a picture may take, and the letters in it, in one measure. */
  readonly wide: number;
  readonly tall: number;
  readonly letter: number;
  /** Round the picture, where words may stand, too. */
  readonly around: boolean;
}
const PLACES: Readonly<Record<string, Place>> = {
  print: { wide: 82, tall: 250, letter: sizeOf(8), around: false },
  phone: { wide: 366, tall: 300, letter: 10, around: true },
  screen: { wide: 720, tall: 620, letter: 10, around: true },
  show: { wide: 1180, tall: 560, letter: 32.4, around: true },
};

/** A picture on the table leaves a little of it free all round. */
const FITTED = 0.94;

function settingOf({ box }: StepPicture, { wide, tall, letter, around }: Place): PictureSetting {
  const [w, h] = [box.right - box.left, box.bottom - box.top];
  const scale = (around ? FITTED : 1) * Math.min(wide / w, tall / h);
  const [x, y] = around ? [(wide / scale - w) / 2, (tall / scale - h) / 2] : [0, 0];
  const room = { left: box.left - x, right: box.right + x, top: box.top - y, bottom: box.bottom + y };
  return { units: 'inch', least: letter / scale, width, room };
}

/** Words that lie on each other, on a line, or outside; only letters as large as for a class may find no room. */
function faultsOf(picture: StepPicture, setting: PictureSetting, mayLeaveOut: boolean): readonly string[] {
  const words = placedWords(picture, setting);
  const all = picture.panels.flatMap(({ items }) => items.filter(({ kind }) => kind === 'word'));
  const lines = picture.panels.flatMap(({ window, items }) =>
    items.flatMap((item): readonly (readonly [Point, Point])[] =>
      item.kind === 'line' || item.kind === 'sign'
        ? item.points.slice(1).flatMap((b, i) => {
            const seen = segmentWithin(window, item.points[i] as Point, b);
            return seen ? [seen] : [];
          })
        : [],
    ),
  );
  const { room } = setting;
  const hair = 0.001 * (room.right - room.left);
  const inside = ({ left, right, top, bottom }: Box) =>
    left >= room.left - hair && right <= room.right + hair && top >= room.top - hair && bottom <= room.bottom + hair;
  const missing = all.length - words.length;
  const left = missing > 0 && !mayLeaveOut ? [`${missing} words are left out`] : [];
  const faults = words.flatMap(({ text, box }, i) => {
    const own = boxGrown(box, -hair);
    return [
      ...(inside(box) ? [] : [`“${text}” is outside`]),
      ...words.slice(0, i).flatMap((other) => (boxesMeet(own, other.box) ? [`“${text}” on “${other.text}”`] : [])),
      ...(lines.some(([a, b]) => boxMeetsSegment(own, a, b)) ? [`“${text}” on a line`] : []),
    ];
  });
  return [...left, ...faults];
}

describe('the words of the pictures', () => {
  it.each(Object.entries({ grown: {}, child: { body: CHILD, leg: { shape: { hemGirth: 290 } } } }))(
    'lie apart and off the lines on paper, on a telephone, on a screen and before a class: %s',
    (_, body) => {
      const faults = new Set<string>();
      let pictures = 0;
      for (const [chosen, garment] of everyGarment(body))
        for (const step of sewingSteps(garment)) {
          const picture = stepPicture(garment, step.scene);
          for (const [name, place] of Object.entries(PLACES)) {
            pictures += 1;
            for (const fault of faultsOf(picture, settingOf(picture, place), name === 'show'))
              faults.add(`${name} ${step.id} ${chosen}: ${fault}`);
          }
        }
      console.log(`${pictures} pictures`);
      expect([...faults]).toEqual([]);
    },
  );
});
