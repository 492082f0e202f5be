import { uprightPlaces } from '../../../drawing';
import { type FoldName, hemPlan, isDrawnLeft, isLeg } from '../../../edges';
import { centreLean, leanRange, straighteningFor } from '../../../leg';
import { formatLength, MM_PER_INCH, type Mm, type Units } from '../../../length';
import { add, between, type Point, pathAt, pathEnd, pathLength, pathStart } from '../../../plane';
import { type Draft, hemOf, type Limits, type Station } from '../../../project';
import { own, part, printPhrase, rounding, say, UNSAID, words } from '../../../words';
import { TYPED_LIMITS } from '../../store/limits';
import type { Handle } from './handle';

/** Millimetres for what is small, half a centimetre for what is long; an eighth of an inch for both. */
const SMALL: Readonly<Record<Units, Mm>> = { cm: 1, inch: MM_PER_INCH / 8 };
const LONG: Readonly<Record<Units, Mm>> = { cm: 5, inch: MM_PER_INCH / 8 };

const limitsOf = (path: string) => (): Limits => TYPED_LIMITS[path] ?? { lowest: 0, highest: 0 };

const spread: Handle = {
  key: 'spread',
  name: say`Spread`,
  path: 'leg.spread',
  at: ({ leg, joined }) => ({ x: (leg.spread + joined.gapAtHip) / 2, y: leg.hipLevel }),
  value: ({ measures }) => measures.spread,
  limits: limitsOf('leg.spread'),
  // The join opens to both sides of the side line.
  pull: { x: 2, y: 0 },
  written: (_, value) => value,
  words: ({ measures }, units) => words`spread ${own(formatLength(measures.spread, units))}`,
  note: ({ measures }, units) =>
    printPhrase(
      say`the pair grows by 2 × ${part(measures.spread)}${rounding(2 * measures.spread, { mm: measures.spread, times: 2 })} = ${part(2 * measures.spread)}`,
      units,
    ),
  step: SMALL,
  side: 'right',
};

const straighten: Handle = {
  key: 'straighten',
  name: say`Straighten: lean of centre back`,
  path: 'leg.straighten',
  at: ({ leg }) => leg.back.waistPoint,
  value: ({ leg }) => centreLean('back', leg.back),
  limits({ joined, legChoices }) {
    const { asBlock, upright } = leanRange(joined, legChoices.raiseWaist);
    return { lowest: Math.min(asBlock, upright), highest: Math.max(asBlock, upright) };
  },
  pull: { x: 1, y: 0 },
  written: ({ joined, legChoices }, value) => straighteningFor(joined, legChoices.raiseWaist, value),
  words: ({ leg }, units) => words`leans ${own(formatLength(centreLean('back', leg.back), units))}`,
  detail: ({ leg }) => (leg.straightenAutomatic ? say`as needed` : UNSAID),
  note: ({ measures }, units) => words`the opening is ${own(formatLength(measures.waistOpening, units))}`,
  step: SMALL,
  side: 'left',
};

/** Where on the waist edge its button lies: on the front half, clear of the side line and of centre front. */
const ALONG_WAIST = 0.74;

const waistHeight: Handle = {
  key: 'waist',
  name: say`Waist height`,
  path: 'leg.raiseWaist',
  at: ({ leg }) => pathAt(leg.waistEdge, ALONG_WAIST * pathLength(leg.waistEdge)).at,
  value: ({ legChoices }) => legChoices.raiseWaist,
  limits: limitsOf('leg.raiseWaist'),
  pull: { x: 0, y: -1 },
  written: (_, value) => value,
  words: ({ measures }, units) => words`rise ${own(formatLength(measures.crotchDepthFinished, units))}`,
  note({ legChoices: { raiseWaist } }, units) {
    const by = own(formatLength(Math.abs(raiseWaist), units));
    if (raiseWaist === 0) return words`the waist where the block has it`;
    return raiseWaist > 0 ? words`the waist raised by ${by}` : words`the waist lowered by ${by}`;
  },
  step: SMALL,
  side: 'above',
};

/** A band or cuff counts in the length that is chosen, not in the leg's own inseam. */
const bandLength = ({ project }: Draft): Mm => hemPlan(hemOf(project)).added;

const hemLevel: Handle = {
  key: 'length',
  name: say`Hem level: inseam`,
  path: 'leg.length',
  at: ({ leg }) => between(pathStart(leg.hem), pathEnd(leg.hem), 0.62),
  value: (draft) => draft.measures.inseamFront + bandLength(draft),
  limits: limitsOf('leg.length.inseam'),
  pull: { x: 0, y: 1 },
  written: (_, inseam) => ({ inseam }),
  words: ({ measures }, units) => words`inseam ${own(formatLength(measures.inseamFront, units))}`,
  step: LONG,
  side: 'above',
};

const hemWidth: Handle = {
  key: 'hem',
  name: say`Leg width at the hem`,
  path: 'leg.shape',
  at: ({ leg }) => pathEnd(leg.front.inseam),
  value: ({ measures }) => measures.hemGirthFinished,
  limits: limitsOf('leg.shape.hemGirth'),
  // Both inseams move by as much.
  pull: { x: 2, y: 0 },
  written: (_, hemGirth) => ({ hemGirth }),
  words: ({ measures }, units) => words`hem ${own(formatLength(measures.hemGirthFinished, units))} round`,
  note: ({ body }, units) => words`the foot needs ${own(formatLength(body.footEntryGirth, units))}`,
  step: LONG,
  side: 'right',
};

/** The same number where the finished piece is shown: the button lies on its fold, or where the leg ends without one. */
function onFold(handle: Handle, name: FoldName, share: number, side: Handle['side']): Handle {
  return { ...handle, side, at: (draft) => onFoldOf(draft, name, share) ?? handle.at(draft) };
}

function onFoldOf({ pieces }: Draft, name: FoldName, share: number): Point | undefined {
  // Of two legs the right one is drawn as the leg itself is.
  const index = pieces.findIndex((piece) => isLeg(piece) && !isDrawnLeft(piece));
  const fold = pieces[index]?.folds.find((edge) => edge.name === name);
  if (!fold) return undefined;
  const [back, front] = [pathStart(fold.curves), pathEnd(fold.curves)].toSorted((a, b) => a.x - b.x) as [Point, Point];
  return add(between(back, front, share), uprightPlaces(pieces)[index]?.shift ?? { x: 0, y: 0 });
}

const LEG_HANDLES: readonly Handle[] = [straighten, waistHeight, spread, hemWidth, hemLevel];
const EDGE_HANDLES: readonly Handle[] = [
  onFold(waistHeight, 'waistFold', ALONG_WAIST, 'above'),
  onFold(hemLevel, 'hemFold', 0.38, 'below'),
];

/** What can be taken hold of at a station: only what has room to move in. */
export function handlesAt(station: Station, draft: Draft): readonly Handle[] {
  const all = station === 'leg' ? LEG_HANDLES : station === 'edges' ? EDGE_HANDLES : [];
  return all.filter((handle) => {
    const { lowest, highest } = handle.limits(draft);
    return highest - lowest > 1;
  });
}
