import { FORK } from '../block';
import type { Mm } from '../length';
import { pathEnd, pathStart } from '../plane';
import { mm, type Phrase, say, share, UNSAID } from '../words';
import type { Check, Subject } from './check';
import { seamCurves } from './measuring';

/** Both forks together, from the crotch points across to where the crotch curves begin, as a share of hip and ease. @source practice, tried on the 6,068 adults of ANSUR II, 2014: 16–22 % of the hip */
const MOST_TOGETHER = 0.21;
/** A block that was brought along was divided by another hand: only the whole is judged, as a share of the hip. @source practice */
const TRACED = { least: 0.145, most: 0.235 } as const;
/** The curve of a leaning back begins on its slant, a little beside the width that the share is of. @source practice */
const BESIDE = 4;
const ROUNDING = 0.1;

/** One part of the fork and what it may be. */
interface Part {
  readonly name: Phrase;
  readonly across: Mm;
  readonly least: Mm;
  readonly most: Mm;
}

/**
 * Between the legs the fork is as wide as the body is deep: narrower cuts in, wider folds between the legs. What was
 * corrected after wearing is on purpose and not counted.
 */
export function checkFork(subject: Subject): Check {
  const { body, blocks, uncorrected } = subject;
  const { sewn } = subject.finished;
  const [frontCurve, backCurve] = [seamCurves(sewn, 'crotchFront'), seamCurves(sewn, 'crotchBack')];
  const front = pathEnd(frontCurve).x - pathStart(frontCurve).x;
  const back = pathEnd(backCurve).x - pathStart(backCurve).x;
  const parts = partsOf(subject, {
    front: front - (blocks.extensionFront - uncorrected.extensionFront),
    back: back - (blocks.extensionBack - uncorrected.extensionBack),
  });
  const worst = parts.reduce((a, b) => (beyond(b) > beyond(a) ? b : a));
  const good = beyond(worst) <= ROUNDING;
  const long = worst.across > worst.most;
  return {
    id: 'fork',
    name: say`Fork fits between the legs`,
    verdict: good ? 'good' : 'doubtful',
    measured: worst.across,
    wanted: good ? worst.across : long ? worst.most : worst.least,
    tolerance: ROUNDING,
    unit: 'mm',
    reason: say`The fork reaches ${mm(front)} across in front and ${mm(back)} behind, together ${share((front + back) / body.hipGirth)} of the hip; for ${worst.name} ${mm(worst.least)} to ${mm(worst.most)} are wanted.`,
    remedy: good
      ? UNSAID
      : say`${madeRight(worst, long, subject.traced)}, or measure hip, body rise and crotch length again.`,
  };
}

function madeRight(part: Part, long: boolean, traced: boolean): Phrase {
  const by = mm(beyond(part));
  if (traced)
    return long
      ? say`Redraw the back’s crotch point, the lower end of its crotch curve, ${by} nearer to the centre`
      : say`Redraw the back’s crotch point, the lower end of its crotch curve, ${by} farther from the centre`;
  return long ? say`Make ${part.name} ${by} shorter` : say`Make ${part.name} ${by} longer`;
}

const beyond = ({ across, least, most }: Part): Mm => Math.max(across - most, least - across);

function partsOf({ body, proportions }: Subject, fork: { readonly front: Mm; readonly back: Mm }): readonly Part[] {
  const whole = { name: say`both together`, across: fork.front + fork.back };
  if (!proportions) return [{ ...whole, least: TRACED.least * body.hipGirth, most: TRACED.most * body.hipGirth }];
  const { frontNet, backNet } = proportions;
  const part = (name: Phrase, across: Mm, least: Mm, most: Mm): Part => ({ name, across, least: least - BESIDE, most });
  return [
    part(say`the front`, fork.front, FORK.front.least * frontNet, FORK.front.shifted * frontNet),
    part(say`the back`, fork.back, FORK.back.least * backNet, FORK.back.most * backNet),
    { ...whole, least: 0, most: MOST_TOGETHER * 2 * (frontNet + backNet) },
  ];
}
