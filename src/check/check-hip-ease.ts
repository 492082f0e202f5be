import type { Mm } from '../length';
import { pathLength } from '../plane';
import { mm, type Phrase, say, UNSAID } from '../words';
import { type Check, type ClothFigures, type Subject, usableStretch } from './check';
import { fixSpreadDownTo, fixSpreadTo, withFix } from './fixes';
import { drawnCurves } from './measuring';

/** A lounge pant of a woven is looser than a fitted one, but no sack; a knit may be smaller than the body. @source practice */
const WOVEN = { least: 80, most: 200 } as const;
const KNIT = { leastShare: -0.05, most: 150 } as const;
/** The hip is drawn to a hundredth: what the limits ask exactly is enough. */
const ROUNDING = 0.01;

/** The ease that is wanted at the hip, both ends. */
function wantedEase(cloth: ClothFigures, hip: Mm): { readonly least: Mm; readonly most: Mm } {
  return cloth.kind === 'woven' ? WOVEN : { least: KNIT.leastShare * hip, most: KNIT.most };
}

/** The finished hip has room, and not too much. Counted over the hip: whether a full abdomen passes is another check's. */
export function checkHipEase({ body, cloth, leg, finished, hip }: Subject): Check {
  const line = drawnCurves(finished.sewn, 'hip');
  const girth = hip ?? 2 * (line ? pathLength(line) : leg.front.hipPoint.x - leg.back.hipPoint.x);
  const ease = girth - body.hipGirth;
  // What is narrower than the hip, however the cloth gives, can't be got into.
  const needed = body.hipGirth / (1 + usableStretch(cloth));
  const tooSmall = girth < needed - ROUNDING;
  const wanted = wantedEase(cloth, body.hipGirth);
  const [least, most] = [Math.max(wanted.least, needed - body.hipGirth), wanted.most];
  const [tight, wide] = [ease < least - ROUNDING, ease > most + ROUNDING];
  return {
    id: 'hip-ease',
    name: say`Ease at the hip`,
    verdict: tooSmall ? 'wrong' : tight || wide ? 'doubtful' : 'good',
    measured: ease,
    wanted: Math.min(most, Math.max(least, ease)),
    tolerance: 0,
    unit: 'mm',
    reason: say`${easeTold(girth, ease)}; ${wantedTold(cloth, least, most)}.`,
    remedy: tight
      ? say`Spread by ${mm(leg.spread + (least - ease) / 2)}.`
      : wide
        ? say`Spread less, or draw the blocks with less ease.`
        : UNSAID,
    ...withFix(
      tight
        ? fixSpreadTo(leg.spread + (least - ease) / 2)
        : wide
          ? fixSpreadDownTo(leg.spread - (ease - most) / 2, leg.spread)
          : undefined,
    ),
  };
}

const easeTold = (girth: Mm, ease: Mm): Phrase =>
  ease < 0
    ? say`The hip measures ${mm(girth)}, ${mm(-ease)} less than the body’s`
    : say`The hip measures ${mm(girth)}, ${mm(ease)} more than the body’s`;

const wantedTold = ({ kind }: ClothFigures, least: Mm, most: Mm): Phrase =>
  kind === 'knit'
    ? say`a knit wants ${mm(least)} to ${mm(most)} more`
    : say`a woven wants ${mm(least)} to ${mm(most)} more`;
