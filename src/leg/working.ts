import { LEAST_BACK_RAISE } from '../block';
import type { Mm } from '../length';
import { type Edge, pathLength, pathThrough, type WorkingStep } from '../plane';
import { degrees, inTurn, mm, number, type Phrase, part, rounding, say, UNSAID } from '../words';
import type { Centres } from './centres';
import { changesTold, type LegOperation, legStages } from './changes';
import type { JoinedBlocks } from './join';
import { type LegChoices, pyjamaHemOf } from './leg';
import { pyjamaHemTold } from './shape';
import type { Leg } from './types';

/** What the leg's sentences need beside the leg. */
export interface LegStory {
  readonly joined: JoinedBlocks;
  readonly leg: Leg;
  readonly choices: LegChoices;
  /** The centre lines before straightening. */
  readonly leaning: Centres;
  readonly opening: Mm;
  readonly needed: Mm;
  readonly hem: Mm;
  readonly lengthWords: Phrase;
}

/** How the blocks became a leg, step by step, in the order of work. */
export function legWorking({
  joined,
  leg,
  choices,
  leaning,
  opening,
  needed,
  hem,
  lengthWords,
}: LegStory): readonly WorkingStep[] {
  const step = (id: string, sentence: Phrase, formula: Phrase, lines: readonly Edge[]): WorkingStep => ({
    id: `leg.${id}`,
    station: 'leg',
    sentence,
    formula,
    lines,
  });
  const inseams: readonly Edge[] = [
    { name: 'front inseam', curves: leg.front.inseam },
    { name: 'back inseam', curves: leg.back.inseam },
  ];
  const centreLines: readonly Edge[] = [
    { name: 'centre front', curves: pathThrough(leg.front.waistPoint, leg.front.curveEnd) },
    { name: 'centre back', curves: pathThrough(leg.back.waistPoint, leg.back.curveEnd) },
  ];
  const stages = legStages(joined, choices);
  const from = (before: LegOperation, after: LegOperation): Phrase => changesTold(stages[before], stages[after]);
  const { raiseWaist, lowerCrotch } = choices;
  return [
    step(
      'join',
      say`The blocks lie side by side, grainlines upright, ${contactWords(joined)} The gaps of ${mm(leg.gapAtWaist)} at the waist, ${mm(leg.gapAtKnee)} at the knee and ${mm(leg.gapAtHem)} at the hem become part of the leg; ${dartWords(joined)}`,
      UNSAID,
      [
        { name: 'front block', curves: leg.joined.front },
        { name: 'back block', curves: leg.joined.back },
      ],
    ),
    step(
      'spread',
      leg.spread === 0
        ? say`The join is not spread.`
        : say`The join is spread by ${part(leg.spread)}, parallel to the grain: the garment grows by 2 × ${part(leg.spread)}${rounding(2 * leg.spread, { mm: leg.spread, times: 2 })} = ${part(2 * leg.spread)}.`,
      from('join', 'spread'),
      [{ name: 'hip', curves: pathThrough(leg.back.hipPoint, leg.front.hipPoint) }],
    ),
    ...(raiseWaist === 0 && lowerCrotch === 0
      ? []
      : [
          step(
            'rise',
            raiseWaist < 0
              ? say`The waist edge is lowered by ${mm(-raiseWaist)} along the centre lines, the crotch lowered by ${mm(lowerCrotch)}.`
              : say`The waist edge is raised by ${mm(raiseWaist)} along the centre lines, the crotch lowered by ${mm(lowerCrotch)}.`,
            from('spread', 'rise'),
            [...centreLines, { name: 'waist edge', curves: leg.waistEdge }],
          ),
        ]),
    step(
      'straighten',
      inTurn([
        backWords(leg, leaning),
        frontWords(leg),
        say`The opening is ${mm(opening)}, and ${mm(needed)} must pass.`,
      ]),
      from('rise', 'straighten'),
      centreLines,
    ),
    step(
      'waist-edge',
      say`The waist edge is one straight line from centre back to centre front, so that the casing’s fold is straight and its turning lies flat.${squaringWords(leg)}`,
      UNSAID,
      [{ name: 'waist edge', curves: leg.waistEdge }],
    ),
    step(
      'shape',
      say`${shapeTold(joined, choices)} The back crotch point lies ${mm(leg.backCrotchDrop)} below the front’s, so that both inseams are equal.`,
      from('straighten', 'shape'),
      inseams,
    ),
    step(
      'length',
      say`Length: ${lengthWords}. Both inseams are ${mm(pathLength(leg.front.inseam))} long, measured from the crotch, and the hem is ${mm(hem)} round.`,
      from('shape', 'length'),
      [{ name: 'hem', curves: leg.hem }, ...inseams],
    ),
  ];
}

/** How the leg runs from the crotch to the ankle. */
function shapeTold(joined: JoinedBlocks, choices: LegChoices): Phrase {
  const { shape, hemBody } = choices;
  if (shape === 'block') return say`The leg keeps the inseams of the blocks.`;
  if (shape === 'straight') return say`The leg falls straight from the knee.`;
  if (shape === 'pyjama')
    return say`The pyjama leg narrows in one hollow line each side ${pyjamaHemTold(hemBody, pyjamaHemOf(joined, choices))}.`;
  return say`The leg runs evenly to the hem that was chosen.`;
}

/** How the waist edge was brought square to the seams; nothing where it was so from the start. */
function squaringWords({ waistTurned, waistLifted }: Leg): Phrase {
  if (Math.abs(waistTurned) < 0.05) return UNSAID;
  const turned = say` It was turned by ${degrees(Math.abs(waistTurned))} about centre front, so that it stands within 6° of square to both centre lines`;
  if (waistLifted < 0.05) return say`${turned}.`;
  return say`${turned}, and lifted by ${mm(waistLifted)}, so that centre back stays ${mm(LEAST_BACK_RAISE)} above the level of the side.`;
}

/** How centre back stands, and how it stood. */
function backWords(leg: Leg, leaning: Centres): Phrase {
  if (leg.straighten === 0) return say`Centre back keeps its lean of ${degrees(leg.back.lean)}.`;
  const [before, after] = [mm(leanMm(leaning, 'back')), mm(leanOf(leg, 'back'))];
  return leg.straightenAutomatic
    ? say`Centre back leaned ${before}; as much as the opening needs it is straightened to ${after}.`
    : say`Centre back leaned ${before}; as chosen it is straightened to ${after}.`;
}

/** How centre front stands: what leans outwards is never straightened. */
function frontWords({ front }: Leg): Phrase {
  const lean = Math.abs(front.waistPoint.x - front.curveEnd.x);
  if (lean < 0.05) return say`Centre front stands upright.`;
  if (front.lean < 0) return say`Centre front leans outwards by ${mm(lean)}, and stays so.`;
  return say`Centre front leans inwards by ${mm(lean)}.`;
}

/** Where the side lines touch, and what had to be aligned. */
function contactWords({ gapAtHip, hipDifference }: JoinedBlocks): Phrase {
  const levels =
    Math.abs(hipDifference) < 0.05
      ? UNSAID
      : say` The back’s hip level was ${mm(hipDifference)} off and was brought in line.`;
  if (gapAtHip > 0.05)
    return say`touching where a side line bulges out; at the hip they stand ${mm(gapAtHip)} apart.${levels}`;
  return say`touching at the hip.${levels}`;
}

const dartWords = ({ front, back }: JoinedBlocks): Phrase => {
  const count = front.darts.length + back.darts.length;
  if (count === 0) return say`there are no darts.`;
  return count === 1 ? say`the one dart is not sewn.` : say`the ${number(count)} darts are not sewn.`;
};

const leanMm = (centres: Centres, part: 'front' | 'back'): Mm =>
  Math.abs(centres[part].waistPoint.x - centres[part].curveEnd.x);
const leanOf = (leg: Leg, part: 'front' | 'back'): Mm => Math.abs(leg[part].waistPoint.x - leg[part].curveEnd.x);
