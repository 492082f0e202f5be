import { describe, expect, it } from 'vitest';
import { checks, type Subject } from '../../src/check';
import type { Leg } from '../../src/leg';
import { type Curve, turned } from '../../src/plane';
import {
  changedBy,
  cordedChild,
  example,
  moved,
  numberedExample,
  piecedExample,
  subjectOf,
  tracedExample,
  verdicts,
  withCurves,
  withPiece,
} from './subject';

const whole = subjectOf(example);
const traced = subjectOf(tracedExample);
const pieced = subjectOf(piecedExample);
const numbered = subjectOf(numberedExample);
const spoiltLeg = (spoil: (leg: Leg) => Leg) => subjectOf(example, spoil);

interface Break {
  readonly name: string;
  readonly from?: Subject;
  readonly spoilt: () => Subject;
  /** Exactly these checks change their verdict. */
  readonly changes: readonly string[];
}

/** Twelve faults made on purpose, each of a kind that a hand or a program makes. */
const BREAKS: readonly Break[] = [
  {
    name: 'a shifted notch',
    spoilt: () =>
      withPiece(whole, (piece) => {
        const first = piece.notches.findIndex((notch) => notch.edge === 'inseamBack');
        const shifted = piece.notches.map((notch, i) =>
          i === first ? { ...notch, at: { x: notch.at.x, y: notch.at.y + 4 } } : notch,
        );
        return { ...piece, notches: shifted };
      }),
    changes: ['notches-meet'],
  },
  {
    name: 'a longer inseam',
    spoilt: () =>
      spoiltLeg((leg) => ({
        ...leg,
        back: {
          ...leg.back,
          inseam: moved(leg.back.inseam, (p) => ({ x: p.x, y: p.y + (p.y - leg.back.crotchPoint.y) * 0.004 })),
        },
      })),
    changes: ['inseams-equal'],
  },
  {
    name: 'a tilted fold',
    spoilt: () =>
      withPiece(whole, (piece) => ({
        ...piece,
        folds: withCurves(piece.folds, 'waistFold', (curves) =>
          moved(curves, (p) => ({ x: p.x, y: p.y + p.x * 0.15 })),
        ),
      })),
    // A fold that runs down to its stitching also takes the elastic's room.
    changes: ['channels', 'turnings-flat'],
  },
  {
    name: 'a bent waist',
    spoilt: () =>
      withPiece(whole, (piece) => ({
        ...piece,
        lines: withCurves(piece.lines, 'waistEdge', (curves) =>
          curves.map(([a, b, c, d]): Curve => [a, b, { x: c.x, y: c.y - 30 }, d]),
        ),
      })),
    changes: ['waist-smooth'],
  },
  {
    name: 'a short elastic',
    spoilt: () => ({ ...whole, elasticLength: 0.8 * (whole.elasticLength ?? 0) }),
    changes: ['elastic-reaches'],
  },
  {
    name: 'a narrow channel',
    spoilt: () => {
      const { heights } = whole.finished;
      const channels = heights.channels.map((channel) => ({ ...channel, width: channel.width + 1 }));
      return { ...whole, finished: { ...whole.finished, heights: { ...heights, channels } } };
    },
    changes: ['channels'],
  },
  {
    name: 'an uneven allowance',
    spoilt: () =>
      withPiece(whole, (piece) => ({
        ...piece,
        cutLine: withCurves(piece.cutLine, 'crotchFront', (curves) =>
          curves.map(([a, b, c, d]): Curve => [a, { x: b.x + 0.2, y: b.y }, { x: c.x + 0.2, y: c.y }, d]),
        ),
      })),
    changes: ['allowances-uniform'],
  },
  {
    name: 'a crossed corner',
    spoilt: () =>
      withPiece(whole, (piece) => ({
        ...piece,
        // A spur beyond the raw edge's end: it crosses the next edge and goes back to its own place.
        cutLine: withCurves(piece.cutLine, 'waist', (curves) =>
          curves.flatMap(([a, , , d]): readonly Curve[] => {
            const over = { x: d.x + 4, y: d.y + 6 };
            const back = { x: d.x - 4, y: d.y + 6 };
            const line = (p: typeof a, q: typeof a): Curve => [p, p, q, q];
            return [line(a, over), line(over, back), line(back, d)];
          }),
        ),
      })),
    // The spur doesn't lie on the raw edge either, and where it crosses, the stitches are outside.
    changes: ['allowances-uniform', 'cut-line-simple', 'stitching-line'],
  },
  {
    name: 'a turned grain',
    from: traced,
    spoilt: () =>
      withPiece(traced, (piece) => ({
        ...piece,
        grainline: [piece.grainline[0], turned(piece.grainline[1], piece.grainline[0], 0.05)],
      })),
    changes: ['traced-grains'],
  },
  {
    name: 'a tight thigh',
    spoilt: () => ({ ...whole, body: { ...whole.body, thighGirth: whole.body.thighGirth + 150 } }),
    changes: ['thigh-ease'],
  },
  {
    name: 'a hem under the foot entry',
    spoilt: () => ({ ...whole, body: { ...whole.body, footEntryGirth: 565 } }),
    changes: ['hem-entry'],
  },
  {
    name: 'a lowered crotch end',
    spoilt: () =>
      spoiltLeg((leg) => ({
        ...leg,
        front: {
          ...leg.front,
          crotch: leg.front.crotch.map(([a, b, c, d]): Curve => [a, b, { x: c.x, y: c.y + 12 }, d]),
        },
      })),
    changes: ['crotch-smooth'],
  },
];

describe('of the whole example', () => {
  it('every check says good, and each of its kind has one verdict', () => {
    for (const subject of [whole, traced, pieced, numbered])
      expect(Object.entries(verdicts(subject)).filter(([, verdict]) => verdict !== 'good')).toEqual([]);
    const all = [whole, traced, pieced, numbered, subjectOf(cordedChild)];
    expect(new Set(all.flatMap((subject) => Object.keys(verdicts(subject)))).size).toBe(checks.length);
  });
});

describe.each(BREAKS)('$name', ({ from = whole, spoilt, changes }) => {
  it(`changes ${changes.join(' and ')}, and no other verdict`, () => {
    expect(changedBy(spoilt(), from)).toEqual(changes);
  });
});
