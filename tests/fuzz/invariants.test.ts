import { afterAll, describe, expect, test } from 'vitest';
import type { Piece } from '../../src/edges';
import type { Curve } from '../../src/plane';
import { checksOf, type Draft, draft, exampleProject, type Project, sheetsOf, withValue } from '../../src/project';
import { mm, own, say } from '../../src/words';
import { type Changes, draftWith } from '../files/drafts';
import { pieceName } from '../names';
import { adviceOf } from './advice';
import type { Find } from './find';
import { judged } from './judge';
import { openJudge } from './judging';
import { outlineFinds } from './outlines';
import { coverFinds } from './papers';
import type { RawDraw } from './projects';
import { seamFinds } from './seams';
import { refusalFinds, toldFinds } from './told';
import { wearFinds } from './wearable';

// Each thing that must hold is broken once, and must be found.

const kinds = (finds: readonly Find[]): readonly string[] => finds.map(({ kind }) => kind);

/** The finished draft with another first piece, as it is cut and as it is worn. */
const withLeg = (draft: Draft, change: (piece: Piece) => Piece): Draft => {
  const leg = change(draft.pieces[0] as Piece);
  // Spread would run what is only made when it is asked for; it is the same all the same.
  return { ...draft, pieces: [leg, ...draft.pieces.slice(1)], finished: { ...draft.finished, piece: leg, sewn: leg } };
};

const shifted = (curves: readonly Curve[], by: number): readonly Curve[] =>
  curves.map((curve) => curve.map(({ x, y }) => ({ x: x + by, y })) as unknown as Curve);

/** One edge of an outline with other curves. */
const edgeChanged = <E extends { readonly name: string; readonly curves: readonly Curve[] }>(
  edges: readonly E[],
  name: string,
  change: (curves: readonly Curve[]) => readonly Curve[],
): readonly E[] => edges.map((edge) => (edge.name === name ? { ...edge, curves: change(edge.curves) } : edge));

/** A middle of an edge pulled aside, its ends kept. */
const bulged =
  (by: number) =>
  (curves: readonly Curve[]): readonly Curve[] =>
    curves.map(([a, b, c, d]) => [a, { x: b.x + by, y: b.y + by }, { x: c.x + by, y: c.y + by }, d]);

const finishes: readonly Changes[] = [
  {},
  { waist: { finish: 'facedCasing' }, hem: { finish: 'facedHem' } },
  { waist: { finish: 'separateCasing' }, hem: { finish: 'contrastBand' } },
  { waist: { finish: 'knitBand' }, hem: { finish: 'ribCuff' }, cloth: { kind: 'knit', stretch: 0.4 } },
];

test.each(finishes)('of what is right nothing is found: %j', async (changes) => {
  const draft = draftWith(changes);
  expect((await judged(draft.project as unknown as RawDraw, { papers: 0 })).finds).toEqual([]);
});

describe('outlines', () => {
  const good = draftWith();
  test('a gap, a crossing stitching line, an allowance that is off, stitching outside the cut line', () => {
    const gap = withLeg(good, (leg) => ({
      ...leg,
      stitchLine: edgeChanged(leg.stitchLine, 'hem', (curves) => shifted(curves, 0.2)),
    }));
    expect(kinds(outlineFinds(gap))).toContain('line not closed');

    const crossed = withLeg(good, (leg) => ({
      ...leg,
      stitchLine: edgeChanged(leg.stitchLine, 'inseamFront', bulged(-900)),
    }));
    expect(kinds(outlineFinds(crossed))).toContain('stitching crosses');

    const off = withLeg(good, (leg) => ({ ...leg, cutLine: edgeChanged(leg.cutLine, 'inseamFront', bulged(0.3)) }));
    expect(kinds(outlineFinds(off))).toEqual(['allowance off']);

    const inside = withLeg(good, (leg) => ({
      ...leg,
      cutLine: leg.cutLine.map((edge) => ({ ...edge, curves: shifted(edge.curves, 40) })),
    }));
    expect(kinds(outlineFinds(inside))).toContain('stitching outside');
  });
});

describe('seams', () => {
  test('an inseam that is longer, a notch that was moved, a turning that leaves the leg', () => {
    const good = draftWith();
    const longer = withLeg(good, (leg) => ({
      ...leg,
      stitchLine: edgeChanged(leg.stitchLine, 'inseamFront', bulged(20)),
    }));
    expect(kinds(seamFinds(longer))).toContain('inseams apart');

    const moved = withLeg(good, (leg) => ({
      ...leg,
      notches: leg.notches.map((notch, i) =>
        i === 2 ? { ...notch, at: { ...notch.at, y: notch.at.y + 0.3 } } : notch,
      ),
    }));
    expect(kinds(seamFinds(moved))).toEqual(['notches apart']);

    const turned = withLeg(good, (leg) => ({
      ...leg,
      stitchLine: edgeChanged(leg.stitchLine, 'inseamFrontTurning', (curves) => shifted(curves, 0.5)),
    }));
    expect(kinds(seamFinds(turned))).toEqual(['turning off the leg']);
  });

  test.each([
    ['casing', { waist: { finish: 'separateCasing' } }, 'lower'],
    ['waist facing', { waist: { finish: 'facedCasing' } }, 'waist'],
    ['hem band', { hem: { finish: 'contrastBand' } }, 'lower'],
    ['hem facing', { hem: { finish: 'facedHem' } }, 'hem'],
  ] as const)('a %s that is unlike the edge it is sewn to', (name, changes, edge) => {
    const good = draftWith(changes);
    const pieces = good.pieces.map((piece) =>
      pieceName(piece) === name ? { ...piece, stitchLine: edgeChanged(piece.stitchLine, edge, bulged(30)) } : piece,
    );
    expect(kinds(seamFinds({ ...good, pieces }))).toContain(`${name} unlike the leg`);
  });
});

describe('wearing', () => {
  const draft = draftWith();
  const good = checksOf(draft).map((check) => ({ ...check, verdict: 'good' as const }));
  const withBody = (body: Partial<Draft['body']>): Draft => ({
    ...draft,
    body: { ...draft.body, ...body, estimates: [] },
  });
  test.each([
    ['waist opening', { hipGirth: 1400 }],
    ['hip', { hipGirth: 1400 }],
    ['thigh', { thighGirth: 900 }],
    ['knee', { kneeGirth: 900 }],
    ['calf', { calfGirth: 800 }],
    ['hem', { footEntryGirth: 700 }],
  ] as const)('a %s that is too narrow, and nobody says so', (what, body) => {
    expect(kinds(wearFinds(withBody(body), good))).toContain(`not wearable: ${what}`);
  });

  test('told by a check it is no find', () => {
    const checks = good.map((check) => (check.id === 'knee-ease' ? { ...check, verdict: 'wrong' as const } : check));
    expect(wearFinds(withBody({ kneeGirth: 900 }), checks)).toEqual([]);
  });
});

describe('what is told', () => {
  const good = draftWith();
  test('a number that is none, a verdict against its figures, a broken sentence', () => {
    const [first, ...others] = checksOf(good);
    if (!first) throw new Error('no checks');
    const told = (check: Partial<typeof first>) => kinds(toldFinds(good, [{ ...first, ...check }, ...others]));
    expect(told({})).toEqual([]);
    expect(told({ measured: Number.NaN })).toEqual(['not finite']);
    expect(told({ measured: 10, wanted: 900 })).toEqual(['good against its figures: pull-on']);
    expect(told({ reason: say`It is ${own('undefined')} long.` })).toContain('sentence broken');
    expect(kinds(toldFinds({ ...good, measures: { ...good.measures, spread: Number.POSITIVE_INFINITY } }))).toEqual([
      'not finite',
    ]);
  });

  test('a refusal of a field that no project has, of another value, without a sentence', () => {
    const found = (field: string, value: unknown, phrase = say`must be something else.`) =>
      kinds(refusalFinds([{ field, value, phrase }], exampleProject as Project));
    expect(found('leg.spread', 12.7)).toEqual([]);
    expect(found('leg.spread', 99)).toEqual(['refused another value: leg.spread']);
    expect(found('leg.spreads', undefined)).toEqual(['refused field unknown']);
    expect(found('leg.spread', 12.7, say``)).toContain('sentence empty');
    expect(found('leg.spread', 12.7, say`must be ${own('[object Object]')}.`)).toContain('sentence broken');
    expect(kinds(refusalFinds([], exampleProject))).toEqual(['refused without a word']);
  });

  test('a value that a refusal tells and that is refused as well', () => {
    const wide = withValue(withValue(exampleProject, 'body.crotchLength', undefined), 'leg.shape.hemGirth', 2400);
    const result = draft(wide);
    const problems = result.ok ? [] : result.problems;
    expect(problems.map(({ field }) => field)).toEqual(['leg.shape.hemGirth']);
    expect(adviceOf(wide, problems)).toEqual({ finds: [], followed: 'drafted' });
    const worse = problems.map((problem) => ({ ...problem, phrase: say`${mm(2399)} would do.` }));
    expect(kinds(adviceOf(wide, worse).finds)).toEqual(["what is told doesn't do: leg.shape.hemGirth"]);
  });

  test('sheets that are missing', () => {
    expect(coverFinds(good)).toEqual([]);
    const sheets = { ...sheetsOf(good), sheets: sheetsOf(good).sheets.slice(sheetsOf(good).sheets.length / 2) };
    expect(kinds(coverFinds(good, sheets))).toContain('cut line on no sheet');
  });
});

describe('a judge', () => {
  const judge = openJudge();
  afterAll(() => judge.close());
  test('ends what takes longer than its time, tells which project it was, and goes on with the next', async () => {
    const endless = await judge.ask({ seed: 1, look: { papers: 0 } }, 1);
    expect(kinds(endless.finds)).toEqual(['never ends']);
    const next = await judge.ask({ project: exampleProject as unknown as RawDraw, look: 'all' });
    expect(next.finds).toEqual([]);
    expect(next.project).toEqual(exampleProject);
  }, 120_000);
});
