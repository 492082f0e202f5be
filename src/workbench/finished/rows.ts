import type { Mm } from '../../length';
import { type Draft, hemEnds, type Measures } from '../../project';
import { mm, type Phrase, part, rounding, say, UNSAID } from '../../words';

/** Less than this nobody sees or sews, millimetres. */
const SEEN = 0.5;

/** One finished measure beside the body's. */
export interface MeasureRow {
  readonly key: keyof Measures;
  readonly name: Phrase;
  readonly value: Mm;
  /** What it is measured against. */
  readonly note: Phrase;
}

/** The finished measures in the order in which a wearer asks for them. */
export function measureRows(draft: Draft): readonly MeasureRow[] {
  const { measures, body, legs } = draft;
  const [left, right] = legs;
  // The figure is the right leg’s; where the left one’s differs it stands beside it.
  const other = (key: keyof Measures): Phrase =>
    right && Math.abs(left.measures[key] - right.measures[key]) >= SEEN
      ? say`; on the left ${mm(left.measures[key])}`
      : UNSAID;
  return [
    {
      key: 'hipGirthFinished',
      name: say`Hip`,
      value: measures.hipGirthFinished,
      note: ease(body.hipGirth, measures.hipGirthFinished),
    },
    {
      key: 'waistOpening',
      name: say`Waist opening`,
      value: measures.waistOpening,
      note: passingOf(measures),
    },
    ...(measures.elasticLength > 0
      ? [
          {
            key: 'elasticLength' as const,
            name: say`Elastic`,
            value: measures.elasticLength,
            note: say`to cut, for one row`,
          },
        ]
      : []),
    {
      key: 'thighGirthFinished',
      name: say`Thigh`,
      value: measures.thighGirthFinished,
      note: say`${ease(body.thighGirth, measures.thighGirthFinished)}${other('thighGirthFinished')}`,
    },
    {
      key: 'hemGirthFinished',
      name: say`Hem`,
      value: measures.hemGirthFinished,
      note: say`foot ${mm(body.footEntryGirth)}${other('hemGirthFinished')}`,
    },
    {
      key: 'crotchLengthFinished',
      name: say`Crotch length`,
      value: measures.crotchLengthFinished,
      note: crotch(body.crotchLength, measures.crotchLengthFinished),
    },
    {
      key: 'crotchDepthFinished',
      name: say`Finished rise`,
      value: measures.crotchDepthFinished,
      note: hanging(measures.riseEase),
    },
    {
      key: 'inseamFront',
      name: say`Inseam`,
      value: measures.inseamFront,
      note: say`${hemEnds(draft)}${other('inseamFront')}`,
    },
  ];
}

/** Whether the opening passes over the fullest part, and with how much to spare. */
export function passing({ waistOpening, pullOnNeeded }: Measures): Phrase {
  const spare = waistOpening - pullOnNeeded;
  if (Math.abs(spare) < SEEN) return say`just passes`;
  return spare > 0 ? say`passes by ${mm(spare)}` : say`too small by ${mm(-spare)}`;
}

/** The same beside the opening, with what has to pass. */
function passingOf({ waistOpening, pullOnNeeded }: Measures): Phrase {
  const spare = waistOpening - pullOnNeeded;
  const plus = rounding(waistOpening, pullOnNeeded, spare);
  return spare >= 0
    ? say`to pass ${mm(pullOnNeeded)} + ${part(spare)}${plus}`
    : say`to pass ${mm(pullOnNeeded)} − ${part(-spare)}${plus}`;
}

function ease(body: Mm, finished: Mm): Phrase {
  const more = finished - body;
  const plus = rounding(finished, body, more);
  return more >= 0 ? say`body ${mm(body)} + ${part(more)}${plus}` : say`body ${mm(body)} − ${part(-more)}${plus}`;
}

const hanging = (below: Mm): Phrase =>
  below >= 0 ? say`hangs ${mm(below)} below the body` : say`${mm(-below)} above the body’s crotch`;

function crotch(body: Mm | undefined, finished: Mm): Phrase {
  return body === undefined ? say`not measured` : ease(body, finished);
}

/** By how much a change moved a measure; undefined where nobody would see it. */
export function movedBy(row: MeasureRow, before: Measures | undefined): Phrase | undefined {
  if (!before) return undefined;
  const by = row.value - before[row.key];
  if (Math.abs(by) < SEEN) return undefined;
  return by > 0 ? say`+ ${mm(by)}` : say`− ${mm(-by)}`;
}
