import { LEAST_BACK_RAISE, TILT } from '../block';
import { fullestGirth } from '../body';
import type { Mm } from '../length';
import { pathEnd, pathStart, TOLERANCE } from '../plane';
import { inTurn, mm, type Phrase, say, UNSAID } from '../words';
import type { Check, Subject } from './check';
import { fixSittingPullTo, withFix } from './fixes';
import { drawnCurves, smallBody } from './measuring';

/**
 * How much higher centre back stands than centre front from a hip of 900 mm on: with less the back begins to pull down
 * when sitting. Over a full abdomen,
 * which lifts the front, less is no slip: a fifth of what it has over the hip, down to the second figure.
 *
 * @source practice, tried on the 6,068 adults of ANSUR II, 2014: nine of ten get 36–47 mm; practice
 */
const WANTED = { usual: 34.5, least: 25, ofAbdomen: 0.2 } as const;

/**
 * Centre back stands higher than centre front, and above the waist level at the side. Counted in are what was lowered
 * behind or raised in front on purpose, for a flat seat, a hollow back or a belly, what a full abdomen asks for in
 * front, and what a short measured crotch length takes.
 */
export function checkTilt(subject: Subject): Check {
  const { body, corrections } = subject;
  const k = smallBody(body);
  const { tilt, raise } = waistLevels(subject);
  const { asked, by } = tiltAsked(subject);
  const { swayBack, flatSeat, prominentAbdomen } = corrections;
  const wanted = k * asked - swayBack - flatSeat - prominentAbdomen;
  const least = LEAST_BACK_RAISE * k;
  const missing = Math.max(wanted - tilt, least - raise);
  const good = missing <= TOLERANCE.samePoint;
  const ofSide = least - raise > wanted - tilt;
  return {
    id: 'tilt',
    name: say`Back stands higher`,
    verdict: good ? 'good' : 'doubtful',
    measured: ofSide ? raise : tilt,
    wanted: ofSide ? least : wanted,
    tolerance: 0,
    unit: 'mm',
    reason: inTurn([overFront(tilt, wanted, tilt < WANTED.usual * k ? by : UNSAID), overSide(raise, least)]),
    remedy: good
      ? UNSAID
      : say`Raise the centre back waist by ${mm(missing)}, as for a pair that pulls down when sitting.`,
    ...withFix(good ? undefined : fixSittingPullTo(corrections.sittingPull + missing)),
  };
}

/** What tilt is wanted of a body of hip 900 and more, and what asks for less than usual. */
function tiltAsked({ body, blocks }: Subject): { readonly asked: number; readonly by: Phrase } {
  const abdomen = (WANTED.ofAbdomen * (fullestGirth(body) - body.hipGirth)) / smallBody(body);
  const usual = Math.max(WANTED.usual - abdomen, WANTED.least);
  if (blocks.crotchFit < 0 && TILT.least < usual)
    return { asked: TILT.least, by: say`; the measured crotch length asks for it` };
  return { asked: usual, by: abdomen > 0 ? say`; a full abdomen asks for it` : UNSAID };
}

/** How the printed waist edge lies: its back over its front, and over the side, whatever the whole waist was raised by. */
function waistLevels({ finished: { sewn }, leg, choices }: Subject): { readonly tilt: Mm; readonly raise: Mm } {
  const edge = drawnCurves(sewn, 'waistEdge') ?? leg.waistEdge;
  const [back, front] = [pathStart(edge), pathEnd(edge)];
  const moved = choices.raiseWaist * Math.cos((leg.back.lean * Math.PI) / 180);
  return { tilt: front.y - back.y, raise: -back.y - moved };
}

const overFront = (tilt: Mm, wanted: Mm, by: Phrase): Phrase =>
  tilt < 0
    ? say`Centre back stands ${mm(-tilt)} below centre front; ${mm(wanted)} above it is wanted${by}.`
    : say`Centre back stands ${mm(tilt)} above centre front; ${mm(wanted)} is wanted${by}.`;

const overSide = (raise: Mm, least: Mm): Phrase =>
  raise < 0
    ? say`It stands ${mm(-raise)} below the side; at least ${mm(least)} above it is wanted.`
    : say`It stands ${mm(raise)} above the side; at least ${mm(least)} is wanted.`;
