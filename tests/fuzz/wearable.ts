import type { Body, EstimatedKey } from '../../src/body';
import type { Check } from '../../src/check';
import { checksOf, type Draft } from '../../src/project';
import { type Find, find, told } from './find';
import { apart, ringOf, widthAt } from './flat';

// Whether a body gets into it and can wear it, told from body and drawn lines by plain arithmetic.

/** What a knit keeps of its stretch in a sewn edge, as the checks count it. */
const KEPT_STRETCH = 0.7;
/** Of an elastic's length is lapped. */
const LAPPED = 25;
/** Less than this is rounding, and nobody feels it. */
const FELT = 1;
/** Where ankle and calf lie, as shares of the inside leg above the floor. */
const ANKLE = 0.12;
const CALF = 0.4;

/** What a body can't get into, or what is narrower than the limb in it, and no check of the fit says *wrong*. */
export function wearFinds(draft: Draft, checks: readonly Check[] = checksOf(draft)): readonly Find[] {
  const tight = draft.legs.flatMap((leg) => tightPlaces(draft.legs.length === 1 ? draft : { ...draft, ...leg }, draft));
  if (tight.length === 0) return [];
  const says = checks.some(({ id, verdict }) => verdict === 'wrong' && ABOUT_WEARING.test(id));
  return says ? [] : tight;
}

const ABOUT_WEARING = /ease|entry|pull-on|elastic|calf|limb|knee|thigh|wear|crotch-length|passes/;

/** @param draft whose leg and body are one side's */
function tightPlaces(draft: Draft, { legs }: Draft): readonly Find[] {
  const { body, project, finished, notions, leg } = draft;
  const gives = project.cloth.kind === 'knit' ? 1 + KEPT_STRETCH * project.cloth.stretch : 1;
  const finds: Find[] = [];
  const need = (what: string, has: number, wanted: number | undefined) => {
    if (wanted !== undefined && has < wanted - FELT)
      finds.push(find(`not wearable: ${what}`, `${told(has)}, the body ${told(wanted)}`));
  };
  const fullest = Math.max(body.waistGirth, body.hipGirth, body.highHipGirth ?? 0);
  const both = (of: (leg: Pick<Draft, 'finished' | 'leg'>) => number) =>
    legs.length === 1 ? 2 * of(draft) : legs.reduce((sum, leg) => sum + of(leg), 0);
  const ringRound = ({ casing: { waistEdge, fold, raw } }: Draft['finished']) =>
    Math.min(apart(...waistEdge), apart(...fold), apart(...raw));
  need('waist opening', gives * both((one) => ringRound(one.finished)), fullest);
  if (notions.elasticLength !== undefined)
    need('waist elastic', (1 + project.waist.elasticStretch) * (notions.elasticLength - LAPPED), fullest);
  if (notions.bandLength !== undefined)
    need('waist band', (1 + KEPT_STRETCH * project.waist.bandStretch) * notions.bandLength, fullest);

  const ring = ringOf(finished.sewn.stitchLine);
  const { front, back } = leg;
  const hip = (one: Pick<Draft, 'finished' | 'leg'>) =>
    widthAt(ringOf(one.finished.sewn.stitchLine), one.leg.hipLevel) ?? Number.POSITIVE_INFINITY;
  need('hip', gives * both(hip), body.hipGirth);
  need('thigh', gives * (front.crotchPoint.x - back.crotchPoint.x), known(body, 'thighGirth'));

  const hemLine = [front.inseam.at(-1)?.[3], back.inseam.at(-1)?.[3]] as const;
  if (!hemLine[0] || !hemLine[1]) return finds;
  const hem = gives * apart(hemLine[0], hemLine[1]);
  const hemLevel = (hemLine[0].y + hemLine[1].y) / 2;
  // The leg hangs from the waist, or it is pulled up until it hangs from the crotch: it must do either way.
  const hangs = Math.max(0, leg.crotchLevel - body.bodyRise);
  for (const [what, level, girth] of levels(body))
    for (const y of [level, level + hangs])
      if (y < hemLevel && y > leg.crotchLevel)
        need(what, gives * (widthAt(ring, y) ?? Number.POSITIVE_INFINITY), girth);
  const floor = body.bodyRise + body.insideLeg;
  for (const height of [floor - hemLevel, floor - hemLevel + hangs]) need('hem', hem, hemNeeds(body, height));
  const cuff = draft.pieces.find(({ kind }) => kind === 'cuff');
  if (cuff) {
    const [long] = cuff.stitchLine;
    const girth = long
      ? apart((long.curves[0] as (typeof long.curves)[0])[0], (long.curves.at(-1) as (typeof long.curves)[0])[3])
      : 0;
    need('cuff', (1 + KEPT_STRETCH * project.hem.ribStretch) * girth, known(body, 'footEntryGirth'));
  }
  return finds;
}

/** A measurement that was taken, or estimated from people like this one. */
const known = (body: Body, key: EstimatedKey): number | undefined =>
  body.estimates.some((one) => one.key === key && one.basis === 'inference') ? undefined : body[key];

/** Calf and knee: how far below the waist, and round. */
const levels = (body: Body) =>
  [
    ['knee', body.waistToKnee, known(body, 'kneeGirth')],
    ['calf', body.bodyRise + (1 - CALF) * body.insideLeg, known(body, 'calfGirth')],
  ] as const;

/** How wide a hem must be that ends at a height above the floor: it passes foot and all below, and lies round the leg. */
function hemNeeds(body: Body, height: number): number | undefined {
  const places = [
    [ANKLE * body.insideLeg, known(body, 'ankleGirth')],
    [CALF * body.insideLeg, known(body, 'calfGirth')],
    [body.bodyRise + body.insideLeg - body.waistToKnee, known(body, 'kneeGirth')],
    [body.insideLeg, known(body, 'thighGirth')],
  ] as const;
  const passed = places.filter(([at]) => at <= height).map(([, girth]) => girth);
  const lies = places.slice(1).flatMap(([to, above], i) => {
    const [from, below] = places[i] as (typeof places)[number];
    if (height < from || height > to || above === undefined || below === undefined || to <= from) return [];
    return [below + ((height - from) / (to - from)) * (above - below)];
  });
  const all = [known(body, 'footEntryGirth'), ...passed, ...lies].filter((girth) => girth !== undefined);
  return all.length === 0 ? undefined : Math.max(...all);
}
