import type { Mm } from '../../length';
import { printPhrase, words } from '../../words';
import { gridSpan, pageGrid } from '../pen/page-grid';
import { bullets, headed, notes, type Passage, pairs } from '../pen/passage';
import type { PageRun } from '../pen/set-pages';
import type { Guide, GuideStep } from './content';
import { barePicture, framedPicture, smallPicture } from './picture';

/** A picture that need not be wider than this stands beside its words, not above them. */
const NARROW: Mm = 48;
/** How much of a column a narrow picture takes, and of the page the lay and the finished pair. */
const SHARE = { narrow: 0.5, lay: 0.64, pair: 0.42 } as const;
/** The way in small: at most so many steps in a row, each in a cell of this shape. */
const WAY = { most: 8, ratio: 1 } as const;
const TALLEST = { pair: 75, lay: 110, smallLay: 80 } as const;

/**
 * The guide's pages: the finished pair and the whole way in small first, then what to buy and to cut, the lay, the steps,
 * and at the end where it comes from.
 */
export function guideRuns(guide: Guide): readonly PageRun[] {
  const { units, pair, parts, shopping } = guide;
  const steps = parts.flatMap((part) => part.steps);
  return [
    {
      columns: 1,
      passages: [
        {
          kind: 'beside',
          share: SHARE.pair,
          picture: { ...barePicture(pair, units), tallest: TALLEST.pair },
          passages: [
            ...headed(words`Finished measures`, pairs(guide.finished)),
            { kind: 'paragraph', text: guide.time },
          ],
        },
        { kind: 'heading', size: 'part', text: words`All steps at a glance` },
        {
          kind: 'gallery',
          ratio: WAY.ratio,
          across: Math.ceil(steps.length / Math.ceil(steps.length / WAY.most)),
          pictures: steps.map(({ picture, number, title }) => ({
            ...smallPicture(picture, units),
            caption: `${number}. ${title}`,
          })),
        },
      ],
    },
    {
      columns: 2,
      passages: [
        ...headed(words`To buy`, {
          kind: 'table',
          columns: [
            { align: 'left', share: 3 },
            { align: 'left', share: 4 },
          ],
          rows: shopping.map(({ name, value, note }) => ({ cells: [name, note === '' ? value : `${value}. ${note}`] })),
        }),
        ...headed(words`Cut`, pairs(guide.cut)),
        ...headed(words`Your choices`, bullets(guide.chosen)),
        ...headed(words`Safety`, bullets(guide.safety)),
      ],
    },
    { columns: 1, passages: layPassages(guide, TALLEST.lay), smaller: layPassages(guide, TALLEST.smallLay) },
    {
      columns: 2,
      passages: [
        { kind: 'paragraph', text: printPhrase(guide.key.says, units), tone: 'quiet' },
        ...parts.flatMap(({ name, steps: some }): readonly Passage[] => [
          { kind: 'heading', size: 'part', text: name },
          ...some.map((step): Passage => ({ kind: 'group', passages: stepPassages(step, guide) })),
        ]),
        ...headed(words`Sources`, ...notes(guide.sources)),
      ],
    },
  ];
}

/** The lay to scale; beside it where each piece lies, and other widths. */
function layPassages({ lay, laid, noLay, widths, units }: Guide, tallest: Mm): readonly Passage[] {
  const others = headed(words`On other widths`, pairs(widths));
  const heading: Passage = { kind: 'heading', size: 'part', text: words`The lay` };
  if (!lay) return [heading, { kind: 'paragraph', text: noLay }, ...others];
  const picture = { ...barePicture(lay, units), tallest };
  return [
    heading,
    {
      kind: 'beside',
      share: SHARE.lay,
      picture,
      passages: [...headed(words`Where each piece lies`, pairs(laid)), ...others],
    },
  ];
}

function stepPassages(step: GuideStep, { units }: Guide): readonly Passage[] {
  const picture = framedPicture(step.picture, units);
  const told: readonly Passage[] = [
    // Before the work, and with the picture on its page.
    ...(step.care === '' ? [] : [{ kind: 'caution', label: words`Take care:`, text: step.care } as const]),
    bullets(step.tasks),
    ...(step.why === '' ? [] : [labelled(words`Why:`, step.why, 'quiet')]),
    labelled(words`Check:`, step.check, 'good'),
    ...(step.settings.length === 0 ? [] : [settingsLine(step)]),
  ];
  const heading: Passage = { kind: 'heading', size: 'head', text: `${step.number}. ${step.title}` };
  const { widest = NARROW } = picture;
  const { left, right } = gridSpan(pageGrid(units === 'inch'), 0, 6);
  return widest < NARROW
    ? [heading, { kind: 'beside', share: Math.min(SHARE.narrow, widest / (right - left)), picture, passages: told }]
    : [heading, { kind: 'picture', picture }, ...told];
}

const labelled = (label: string, text: string, tone: 'quiet' | 'good'): Passage => ({
  kind: 'paragraph',
  label,
  text,
  tone,
});

const settingsLine = ({ settings }: GuideStep): Passage => ({
  kind: 'paragraph',
  size: 'small',
  tone: 'quiet',
  text: settings.map(({ name, value }) => `${name}: ${value}`).join(' · '),
});
