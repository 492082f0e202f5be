import { legCurves } from '../../leg';
import type { Mm } from '../../length';
import { outlineArea } from '../../plane';
import type { Draft, Measures } from '../../project';
import { mm, type Phrase, say, share } from '../../words';

/** One measure that two drafts do not share. */
export interface Difference {
  readonly name: Phrase;
  readonly by: Phrase;
}

/** What is compared, by the names of the finished list. */
const COMPARED: readonly (readonly [Phrase, keyof Measures])[] = [
  [say`waist`, 'waistOpening'],
  [say`hip`, 'hipGirthFinished'],
  [say`thigh`, 'thighGirthFinished'],
  [say`hem`, 'hemGirthFinished'],
  [say`crotch`, 'crotchLengthFinished'],
  [say`rise`, 'crotchDepthFinished'],
  [say`inseam`, 'inseamFront'],
];

/** Smaller differences nobody sees or sews, millimetres; and of the area, a share. */
const SEEN = 0.5;
const SEEN_SHARE = 0.0005;

/**
 * By how much a draft differs from one that was kept: the finished measures, and the leg's area without allowances.
 *
 * @param kept the earlier draft
 * @param now the present one
 */
export function differences(kept: Draft, now: Draft): readonly Difference[] {
  const measured = COMPARED.flatMap(([name, measure]) => {
    const by: Mm = now.measures[measure] - kept.measures[measure];
    return Math.abs(by) < SEEN ? [] : [{ name, by: by > 0 ? say`+${mm(by)}` : say`−${mm(-by)}` }];
  });
  const area = legArea(now) / legArea(kept) - 1;
  if (Math.abs(area) < SEEN_SHARE) return measured;
  return [...measured, { name: say`area`, by: area > 0 ? say`+${share(area)}` : say`−${share(-area)}` }];
}

const legArea = ({ leg }: Draft): number => Math.abs(outlineArea(legCurves(leg)));
