import { type LimbPlace, passedBelow } from '../body';
import { hemHeight } from '../edges';
import { mm, say } from '../length';
import { distance, pathEnd, pathStart } from '../plane';
import { type Check, type Subject, usableStretch } from './check';
import { fixHemTo, withFix } from './fixes';
import { drawnCurves, estimatedWord, knownMeasure } from './measuring';
import { notMeasured } from './not-measured';

/** How much wider than the foot a hem should be (practice). */
const ROOM = 20;

/** What a hem passes on its way up, by the words of a sentence. */
const WORDS: Readonly<Record<LimbPlace['key'], string>> = {
  footEntryGirth: 'the foot at heel and instep',
  ankleGirth: 'the ankle',
  calfGirth: 'the calf',
  kneeGirth: 'the knee',
  thighGirth: 'the thigh',
};

/** What is pulled through a hem passes it: heel and instep, and a calf or a knee that it goes over to get to its place. */
export function checkHemEntry({ body, cloth, leg, finished }: Subject): Check {
  const fold = drawnCurves(finished.sewn, 'hem fold') ?? leg.hem;
  const hem = distance(pathStart(fold), pathEnd(fold));
  const about = { id: 'hem-entry', name: 'Foot passes the hem', measured: hem, tolerance: 0, unit: 'mm' } as const;
  const passed = passedBelow(body, hemHeight(leg, finished.hemPlan, body));
  const [first, ...others] = passed.filter(({ key }) => knownMeasure(body, key) !== undefined);
  const give = 1 + usableStretch(cloth);
  const fullest = first && others.reduce((a, b) => (b.girth > a.girth ? b : a), first);
  // A calf that doesn't pass says enough; one that does says nothing of a foot that nobody knows.
  if (!fullest || (first.key !== 'footEntryGirth' && hem * give >= fullest.girth))
    return notMeasured(about, say`The hem is ${mm(hem)} round`, WORDS.footEntryGirth);
  const verdict = hem * give >= fullest.girth + ROOM ? 'good' : hem * give >= fullest.girth ? 'mind' : 'wrong';
  const needed = (fullest.girth + ROOM) / give;
  return {
    ...about,
    verdict,
    wanted: needed,
    reason: say`The hem is ${mm(hem)} round, ${WORDS[fullest.key]} ${mm(fullest.girth)}${estimatedWord(body, fullest.key)}.`,
    remedy: verdict === 'good' ? [] : say`Make the hem at least ${mm(needed)} round, or the leg shorter.`,
    ...withFix(verdict === 'good' ? undefined : fixHemTo(needed)),
  };
}
