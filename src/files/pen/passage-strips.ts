import { baseline, INK, type LineStyle, lineHeight } from '../../drawing';
import type { Mm } from '../../length';
import { point } from '../../plane';
import { keyStrips } from './key-strips';
import type { Passage } from './passage';
import { besideInset, besideStrip, galleryStrips, pictureStrip } from './picture-strips';
import { joinedStrip, type Strip, stripsBelow, stripsHeight, stripsTogether } from './strip';
import { RULE, tableStrips } from './table-strips';
import { type Measure, TONE_INK, textStrips } from './text-strips';
import { SPACE, TYPE } from './type-scale';

type Of<K extends Passage['kind']> = Extract<Passage, { kind: K }>;

const CARE_BAR: LineStyle = { width: 0.9, colour: TONE_INK.care, dash: [] };
/** From a caution's bar to its words. */
const CARE_INSET: Mm = 2.4;

/**
 * Lays passages into a column: one strip for each of what is never torn apart, from the top.
 *
 * @param width of the column
 */
export function passageStrips(passages: readonly Passage[], width: Mm, widthOf: Measure): readonly Strip[] {
  return passages.flatMap((passage) => stripsOf(passage, width, widthOf));
}

function stripsOf(passage: Passage, width: Mm, widthOf: Measure): readonly Strip[] {
  switch (passage.kind) {
    case 'heading':
      return [headingStrip(passage, width, widthOf)];
    case 'paragraph': {
      const { text, label, size = 'words', tone = 'plain' } = passage;
      const style = { type: TYPE[size], colour: TONE_INK[tone], label };
      return stripsBelow(SPACE.paragraph, textStrips(text, width, widthOf, style));
    }
    case 'list':
      return listStrips(passage, width, widthOf);
    case 'table':
      return stripsBelow(SPACE.paragraph, tableStrips(passage.columns, passage.rows, width, widthOf));
    case 'picture':
      // Never parted from what it shows.
      return [{ ...pictureStrip(passage.picture, width, widthOf), stays: true }];
    case 'beside':
      return besideStrips(passage, width, widthOf);
    case 'gallery':
      return galleryStrips(passage, width, widthOf);
    case 'key':
      return keyStrips(passage, width, widthOf);
    case 'caution':
      return [cautionStrip(passage, width, widthOf)];
    case 'group': {
      const strips = passageStrips(passage.passages, width, widthOf);
      // Where it has to be parted all the same, its last line is not left alone.
      return strips.map((strip, i) => ({
        ...strip,
        ...(i === 0 ? { groups: strips.length } : {}),
        ...(i === strips.length - 2 ? { stays: true } : {}),
      }));
    }
  }
}

/** A part's heading has a rule under it; either stays with what it heads. */
function headingStrip({ size, text, aside = '' }: Of<'heading'>, width: Mm, widthOf: Measure): Strip {
  const type = TYPE[size];
  const taken = aside === '' ? 0 : widthOf(aside, TYPE.small.pt) + SPACE.cell;
  const words = joinedStrip(
    textStrips(text, width - taken, widthOf, { type, colour: size === 'part' ? INK.mark : INK.cut }),
  );
  const part = size === 'part';
  return {
    above: part ? SPACE.part : SPACE.head,
    height: words.height + (part ? SPACE.underPart : SPACE.underHead),
    stays: true,
    draw: (pen, left, top) => {
      words.draw(pen, left, top);
      if (aside !== '') {
        const { pt } = TYPE.small;
        const at = point(left + width, baseline(top, type.pt));
        pen.words(aside, at, { pt, colour: INK.quietWords, align: 'right' });
      }
      const y = top + words.height + 0.8;
      if (part) pen.line(point(left, y), point(left + width, y), RULE);
    },
  };
}

function listStrips({ items, sign }: Of<'list'>, width: Mm, widthOf: Measure): readonly Strip[] {
  const type = TYPE.words;
  const widest = sign === 'numbers' ? `${items.length}.` : sign;
  const indent = widthOf(`${widest} `, type.pt);
  return items.flatMap((text, i) =>
    stripsBelow(
      i === 0 ? SPACE.paragraph : SPACE.item,
      textStrips(text, width, widthOf, {
        type,
        colour: INK.words,
        sign: sign === 'numbers' ? `${i + 1}.` : sign,
        indent,
      }),
    ),
  );
}

function cautionStrip({ label, text }: Of<'caution'>, width: Mm, widthOf: Measure): Strip {
  const style = { type: TYPE.words, colour: TONE_INK.care, label };
  const words = joinedStrip(textStrips(text, width - CARE_INSET, widthOf, style));
  return {
    ...words,
    above: SPACE.paragraph,
    draw: (pen, left, top) => {
      const x = left + CARE_BAR.width / 2;
      pen.line(point(x, top + 0.3), point(x, top + words.height - 0.3), CARE_BAR);
      words.draw(pen, left + CARE_INSET, top);
    },
  };
}

/** What begins above the picture's foot stands beside it, the rest below on the whole width. */
function besideStrips({ picture, share, passages }: Of<'beside'>, width: Mm, widthOf: Measure): readonly Strip[] {
  const narrow = width - besideInset(width, share);
  const drawn = pictureStrip(picture, share * width, widthOf);
  const beside: Strip[] = [];
  const singles = passages.flatMap(singlePassages);
  let i = 0;
  for (; i < singles.length && stripsHeight(beside) < drawn.height - lineHeight(TYPE.words.pt); i += 1)
    beside.push(...stripsOf(singles[i] as Passage, narrow, widthOf));
  const below = singles.slice(i).flatMap((passage) => stripsOf(passage, width, widthOf));
  return [...stripsTogether([besideStrip(drawn, share, width, beside)]), ...below];
}

/** A list item by item, so that it can change its width between two; numbers go on. */
function singlePassages(passage: Passage): readonly Passage[] {
  if (passage.kind !== 'list' || passage.sign === 'numbers') return [passage];
  return passage.items.map((item) => ({ ...passage, items: [item] }));
}
