import type { Mm } from '../length';
import { type Contradiction, contradictionTold, tapeLength } from '../trace';
import { all, inside, inTurn, type Phrase, say, UNSAID } from '../words';
import type { Check, Subject } from './check';

/** A tape on paper, read by two people. */
const TOLERANCE: Mm = 3;
/** Without these nobody knows how large the block is; one of a pair tells the other's heights. */
const NEEDED = ['hipWidth'] as const;
const NEEDED_OF_ONE = ['waistToHip', 'hipToCrotch', 'crotchToHem'] as const;

/** Blocks by numbers: what was measured makes the blocks, and the numbers agree. */
export function checkNumbers({ numbers }: Subject): Check | undefined {
  if (!numbers) return undefined;
  const { front, back } = numbers;
  const contradictions = [...front.contradictions, ...back.contradictions];
  const worst = Math.max(0, ...contradictions.map(({ given, others }) => Math.abs(given - others)));
  const lacking = (key: (typeof front.estimated)[number]) =>
    [front, back].map(({ estimated }) => estimated.includes(key));
  const unknown =
    NEEDED.some((key) => lacking(key).some(Boolean)) || NEEDED_OF_ONE.some((key) => lacking(key).every(Boolean));
  const guessed = front.estimated.length + back.estimated.length > 0;
  return {
    id: 'numbers',
    name: say`The blocks’ numbers agree`,
    verdict: unknown ? 'wrong' : worst > 0 || guessed ? 'doubtful' : 'good',
    measured: worst,
    wanted: 0,
    tolerance: TOLERANCE,
    unit: 'mm',
    reason: inTurn([
      contradictions.length === 0 ? say`No number contradicts the others.` : UNSAID,
      ...contradictions.map(contradictionTold),
      estimatedTold(say`front`, front.estimated),
      estimatedTold(say`back`, back.estimated),
    ]),
    remedy: remedyOf(contradictions, unknown, guessed),
  };
}

function estimatedTold(part: Phrase, keys: readonly Contradiction['key'][]): Phrase {
  if (keys.length === 0) return UNSAID;
  const names = all(keys.map((key) => say`${inside(tapeLength(key).name)}`));
  return say`Not measured on the ${part}, and drawn by the usual proportions of this block: ${names}.`;
}

function remedyOf(contradictions: readonly Contradiction[], unknown: boolean, guessed: boolean): Phrase {
  const again = contradictions.length > 0 ? say`Measure again what contradicts the rest.` : UNSAID;
  const needed = say`Measure the hip line’s width on front and back, and on one of them the heights from waist to hip line, crotch line and hem: without these nobody knows how large the block is.`;
  const rest = say`Measure on the block what is estimated.`;
  return inTurn([again, unknown ? needed : guessed ? rest : UNSAID]);
}
