import { VERDICT_NAMES } from '../../check';
import { plainWords } from '../../length';
import { outlineCurves, type WorkingStep } from '../../plane';
import { checksOf, clothOf, clothSavingsOf, type Draft, STATION_NAMES, type Station, workingOf } from '../../project';
import { layPicture } from '../../sewing';
import { inTurn, isSaid, own, printPhrase, said, say, words } from '../../words';
import { shoppingRows } from '../content/cloth-rows';
import { bodyRows, finishedRows } from '../content/rows';
import { numberedCautions } from '../content/sources';
import type { PdfOptions } from '../pen/options';
import { pageGrid } from '../pen/page-grid';
import { bullets, headed, notes, type Passage, pairs } from '../pen/passage';
import { startPdf } from '../pen/pen';
import { type PageRun, setPages } from '../pen/set-pages';
import { legPicture } from './leg-picture';
import { barePicture } from './picture';
import { stepCurves, workingPictures } from './working-picture';

/** How much of its column a step's drawing takes, and of the page the leg and the lay. */
const SHARE = { step: 0.42, leg: 0.36, lay: 0.5 } as const;
/** So that most stations find room on one page. */
const TALLEST = { step: 42, lay: 66 } as const;

/**
 * The working of a draft to hand out in class, to pin up or to project: every step in the order of work with the lines
 * that it draws, its sentence and its formula, a page for each station that fills one. The same list as the screen's.
 *
 * @param draft the finished draft
 * @returns the bytes of the file; the same draft and options give the same bytes
 */
export function writeHandoutPdf(draft: Draft, options: PdfOptions): Uint8Array {
  const { project } = draft;
  const grid = pageGrid(project.units === 'inch');
  const under = words`Legwork · the working, step by step · ${own(plainWords(project.body.label))}`;
  const title = plainWords(project.name);
  const pen = startPdf(grid.width, grid.height, options.font, {
    title: words`${own(title)}: the working`,
    subject: under,
    date: options.date,
  });
  setPages(pen, grid, { title, under, runs: handoutRuns(draft) });
  return pen.bytes();
}

/** The pages' content: body, stations, and what comes out. */
export function handoutRuns(draft: Draft): readonly PageRun[] {
  const working = [...workingOf(draft), ...clothOf(draft).working];
  const stations = [...new Set(working.map(({ station }) => station))];
  const body = headed(words`Measurements`, pairs(bodyRows(draft)));
  return [
    { columns: 1, passages: [{ kind: 'beside', share: SHARE.leg, picture: legPicture(draft), passages: body }] },
    ...stations.map((station, i): PageRun => {
      const steps = working.filter((step) => step.station === station);
      return station === 'cloth'
        ? { columns: 1, passages: clothPassages(draft, steps) }
        : { columns: 2, passages: stationPassages(draft, station, steps), onNewPage: i > 0 };
    }),
    { columns: 2, passages: outcome(draft) },
  ];
}

function stationPassages(draft: Draft, station: Station, steps: readonly WorkingStep[]): readonly Passage[] {
  const { units } = draft.project;
  // The leg that the edges are drawn on, and the blocks that come out: their first steps are single lines.
  const ground =
    station === 'edges'
      ? outlineCurves(draft.finished.sewn.stitchLine)
      : station === 'blocks'
        ? steps.flatMap(stepCurves)
        : [];
  const pictures = workingPictures(steps, ground);
  return [
    stationHeading(station),
    ...steps.map((step, i): Passage => {
      const told = stepPassages(step, i + 1, units);
      const picture = pictures[i];
      return {
        kind: 'group',
        passages: picture
          ? [{ kind: 'beside', share: SHARE.step, picture: { ...picture, tallest: TALLEST.step }, passages: told }]
          : told,
      };
    }),
  ];
}

/** Of the cloth's own lines only two straight ones would be seen: its lay is one drawing, the steps beside it. */
function clothPassages(draft: Draft, steps: readonly WorkingStep[]): readonly Passage[] {
  const { units, cloth } = draft.project;
  const { answer } = clothOf(draft);
  const told = steps.flatMap((step, i) => stepPassages(step, i + 1, units));
  if (!answer.fits) return [stationHeading('cloth'), ...told];
  const picture = barePicture(layPicture(answer.lay, draft.pieces, cloth.oneWay), units);
  return [
    stationHeading('cloth'),
    { kind: 'beside', share: SHARE.lay, picture: { ...picture, tallest: TALLEST.lay }, passages: told },
  ];
}

const stationHeading = (station: Station): Passage => ({
  kind: 'heading',
  size: 'part',
  text: said(STATION_NAMES[station]),
});

const stepPassages = (
  { sentence, formula }: WorkingStep,
  number: number,
  units: Draft['project']['units'],
): readonly Passage[] => [
  { kind: 'paragraph', label: `${number}.`, text: printPhrase(sentence, units) },
  ...(isSaid(formula) ? [{ kind: 'paragraph', tone: 'quiet', text: printPhrase(formula, units) } as const] : []),
];

/** Finished measures, what to buy and what would save cloth, checks and cautions. */
function outcome(draft: Draft): readonly Passage[] {
  const { units } = draft.project;
  const savings = clothSavingsOf(draft).map(({ fix, says }) => printPhrase(say`${fix.label}. ${says}`, units));
  const { sentences, sources } = numberedCautions(draft.cautions, units);
  return [
    ...headed(words`Finished`, pairs(finishedRows(draft))),
    ...headed(words`To buy`, pairs(shoppingRows(draft))),
    ...(savings.length === 0 ? [] : headed(words`Where cloth is saved`, bullets(savings))),
    ...headed(
      words`Checks`,
      bullets(
        checksOf(draft).map(({ verdict, name, reason, remedy }) =>
          printPhrase(say`${VERDICT_NAMES[verdict]}: ${name}. ${inTurn([reason, remedy])}`, units),
        ),
      ),
    ),
    ...headed(words`Safety`, bullets(sentences)),
    ...headed(words`Sources`, ...notes(sources)),
  ];
}
