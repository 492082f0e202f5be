import { type LimbPlace, passedBelow } from '../body';
import { hemHeight } from '../edges';
import type { Mm } from '../length';
import { distance, pathEnd, pathStart } from '../plane';
import { mm, type Phrase, say, UNSAID } from '../words';
import { type Check, type Subject, usableStretch } from './check';
import { fixHemTo, withFix } from './fixes';
import { doubtOf, drawnCurves, estimatedWord, orMeasure } from './measuring';

/** How much wider than the foot a hem should be. @source practice */
const ROOM = 20;

/** What a hem passes on its way up, by the words of a sentence. */
const WORDS: Readonly<Record<LimbPlace['key'], Phrase>> = {
  footEntryGirth: say`the foot at heel and instep`,
  ankleGirth: say`the ankle`,
  calfGirth: say`the calf`,
  kneeGirth: say`the knee`,
  thighGirth: say`the thigh`,
};

/** What must pass the hem: how much it wants, and what it needs at the very least. */
interface Passing extends LimbPlace {
  readonly wants: Mm;
  readonly needs: Mm;
}

/**
 * What is pulled through a hem passes it: heel and instep, and a calf or a knee that it goes over to get to its place.
 * Of a foot that was only inferred a fuller one must pass as well, and only what the slimmest can't pass is wrong.
 */
export function checkHemEntry({ body, cloth, leg, finished }: Subject): Check {
  const fold = drawnCurves(finished.sewn, 'hemFold') ?? leg.hem;
  const hem = distance(pathStart(fold), pathEnd(fold));
  const give = 1 + usableStretch(cloth);
  const passed = passedBelow(body, hemHeight(leg, finished.hemPlan, body)).map((place): Passing => {
    const doubt = doubtOf(body, place.key);
    return { ...place, wants: place.girth + Math.max(ROOM, doubt), needs: place.girth - doubt };
  });
  const most = (of: (place: Passing) => Mm) => passed.reduce((a, b) => (of(b) > of(a) ? b : a));
  const [wanting, needing] = [most((place) => place.wants), most((place) => place.needs)];
  const fits = hem * give >= needing.needs;
  const verdict = hem * give >= wanting.wants ? 'good' : fits ? 'doubtful' : 'wrong';
  const told = fits ? wanting : needing;
  const wanted = wanting.wants / give;
  const measure = orMeasure(doubtOf(body, told.key), WORDS[told.key]);
  return {
    id: 'hem-entry',
    name: say`Foot goes through the hem`,
    verdict,
    measured: hem,
    wanted,
    tolerance: 0,
    unit: 'mm',
    reason: say`The hem is ${mm(hem)} round, ${WORDS[told.key]} ${mm(told.girth)}${estimatedWord(body, told.key)}.`,
    remedy: verdict === 'good' ? UNSAID : say`Make the hem at least ${mm(wanted)} round, or the leg shorter${measure}.`,
    ...withFix(verdict === 'good' ? undefined : fixHemTo(wanted)),
  };
}
