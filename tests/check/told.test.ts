import { describe, expect, it } from 'vitest';
import { type Check, checksOfLegs, curvesOneWay, runChecks, type Subject } from '../../src/check';
import { leastWidthAt, widthAt } from '../../src/check/measuring';
import {
  type Curve,
  distance,
  pathEnd,
  pathFrom,
  pathLength,
  pathStart,
  pathUpTo,
  straight,
  turned,
} from '../../src/plane';
import { type Phrase, printPhrase, UNSAID } from '../../src/words';
import { cordedChild, drafted, example, moved, subjectOf, withCurves, withPiece } from './subject';
import { checkOf, pieced, traced, value, whole, withBody } from './verdicts';

// What a check says beside its verdict: its reason, what to do, and what one press would change.

const words = (phrase: Phrase | undefined): string => printPhrase(phrase ?? UNSAID, 'cm');
const found = (subject: Subject, id: string): Check => {
  const check = checkOf(subject, id);
  if (!check) throw new Error(`no check ${id}`);
  return check;
};
const reason = (subject: Subject, id: string) => words(found(subject, id).reason);
const remedy = (subject: Subject, id: string) => words(found(subject, id).remedy);
const fixOf = (subject: Subject, id: string) => found(subject, id).fix;

const shaped = (shape: Subject['choices']['shape'], of = whole): Subject => ({
  ...of,
  choices: { ...of.choices, shape },
});
const clothed = (cloth: Partial<Subject['cloth']>, of = whole): Subject => ({
  ...of,
  cloth: { ...of.cloth, ...cloth },
});
const radians = (degrees: number): number => (degrees * Math.PI) / 180;

type Piece = Subject['finished']['piece'];
/** The example with one edge of its stitching line drawn otherwise. */
const edged = (name: string, to: (curves: readonly Curve[]) => readonly Curve[]): Subject =>
  withPiece(whole, (piece) => ({
    ...piece,
    stitchLine: withCurves(piece.stitchLine, name, to) as Piece['stitchLine'],
  }));
const inferred = (key: 'thighGirth' | 'kneeGirth', girth: number): Subject =>
  withBody({ [key]: girth, estimates: [{ key, value: girth, spread: 5, source: 'a test', basis: 'inference' }] });

it('every check has a name of its own', () => {
  const all = [whole, traced, pieced, subjectOf(cordedChild)].flatMap(runChecks);
  const names = new Map(all.map(({ id, name }) => [id, name.template]));
  expect(new Set(names.values()).size).toBe(names.size);
  for (const [id, name] of names) expect(name, id).toMatch(/^[A-Z][a-z]/);
});

describe('an allowance', () => {
  it('is short where the fork’s tip was cut off, though each edge keeps its distance', () => {
    const bevelled = withPiece(whole, (piece) => {
      const at = piece.cutLine.findIndex(({ name }) => name === 'crotchFront');
      const next = (at + 1) % piece.cutLine.length;
      return {
        ...piece,
        cutLine: piece.cutLine.map((edge, i) => {
          const { curves } = edge;
          if (i === at) return { ...edge, curves: pathUpTo(curves, pathLength(curves) - 40) };
          return i === next ? { ...edge, curves: pathFrom(curves, 60) } : edge;
        }),
      };
    });
    expect(found(bevelled, 'allowances-uniform').verdict).toBe('wrong');
  });
});

describe('channels', () => {
  it('are as high as they were planned where no stitching is drawn', () => {
    const bare = withPiece(whole, (piece) => ({
      ...piece,
      lines: piece.lines.filter(({ name }) => name !== 'casingStitching'),
    }));
    const [channel] = whole.finished.heights.channels;
    expect(found(bare, 'channels').measured).toBeCloseTo((channel?.to ?? 0) - (channel?.from ?? 0), 9);
  });
});

describe('the cloth’s width', () => {
  it('speaks of the first wash only where that takes something', () => {
    const said = (washFirst: boolean, shrinkWidth: number) =>
      reason(clothed({ washFirst, shrinkWidth }), 'leg-fits-cloth');
    expect(said(true, 0.02)).toMatch(/after its first wash/);
    expect(said(true, 0)).not.toMatch(/wash/);
    expect(said(false, 0.02)).not.toMatch(/wash/);
  });
});

describe('a crotch curve', () => {
  /** Arriving at the crotch point by 25° from level. */
  const hooked = (curves: readonly Curve[]) =>
    curves.map(([a, b, , d]): Curve => [a, b, { x: d.x - 30, y: d.y - 30 * Math.tan(radians(25)) }, d]);

  it('that ends in a hook is sent to the pyjama shape, unless it has it', () => {
    const hook = edged('crotchFront', hooked);
    expect(found(hook, 'crotch-ends').verdict).toBe('doubtful');
    expect(remedy(shaped('block', hook), 'crotch-ends')).toMatch(/pyjama leg slants less/);
    expect(fixOf(shaped('block', hook), 'crotch-ends')?.changes).toEqual([{ path: 'leg.shape', value: 'pyjama' }]);
    expect(remedy(hook, 'crotch-ends')).toMatch(/Measure body rise and crotch length again/);
    expect(fixOf(hook, 'crotch-ends')).toBeUndefined();
  });

  it('bends one way, whichever that is, and not to and fro', () => {
    const bend = (one: number, other: number): readonly Curve[] => [
      [
        { x: 0, y: 0 },
        { x: 30, y: one },
        { x: 60, y: other },
        { x: 90, y: 0 },
      ],
    ];
    expect([bend(20, 20), bend(-20, -20), bend(0, 0)].map(curvesOneWay)).toEqual([true, true, true]);
    expect([bend(20, -20), bend(-20, 20)].map(curvesOneWay)).toEqual([false, false]);
  });
});

describe('a hem', () => {
  it('exactly as round as the foot is tight, and not too small', () => {
    expect(found(withBody({ footEntryGirth: value('hem-entry') }), 'hem-entry').verdict).toBe('doubtful');
  });

  it('that is too narrow at the calf is let out by more than is missing there', () => {
    const width = widthAt(whole.finished.sewn, whole.body.bodyRise + 0.6 * whole.body.insideLeg) ?? Number.NaN;
    const tight = withBody({ calfGirth: width - 8 });
    expect(reason(tight, 'limb-ease')).toMatch(/^At the calf/);
    // Six tenths of what the hem is widened by arrive at the calf, and 20 mm of room are wanted.
    const hem = distance(pathStart(whole.leg.hem), pathEnd(whole.leg.hem));
    const missing = 20 - found(tight, 'limb-ease').measured;
    expect(fixOf(tight, 'limb-ease')?.changes).toEqual([
      { path: 'leg.shape', value: { hemGirth: Math.ceil(hem + missing / 0.6) } },
    ]);
  });
});

describe('ease', () => {
  it('at the hip says whether the garment measures more than the body or less', () => {
    const knit = { kind: 'knit', stretch: 0.3 } as const;
    const girth = whole.body.hipGirth + value('hip-ease');
    expect(reason(whole, 'hip-ease')).toMatch(/8 cm more than the body’s/);
    expect(reason(clothed(knit, withBody({ hipGirth: girth + 10 })), 'hip-ease')).toMatch(/1 cm less than the body’s/);
  });

  it('at the knee comes by the hem of a leg that narrows, and by spread of one that doesn’t', () => {
    const width = value('knee-ease') + whole.body.kneeGirth;
    const tight = withBody({ kneeGirth: width - 50 });
    for (const shape of ['pyjama', { hemGirth: 460 }] as const)
      expect(remedy(shaped(shape, tight), 'knee-ease')).toMatch(/^Make the hem [\d.]+ cm round\.$/);
    expect(remedy(shaped('straight', tight), 'knee-ease')).toMatch(/^Spread by [\d.]+ cm\.$/);
    expect(fixOf(shaped('straight', tight), 'knee-ease')?.changes).toEqual([
      { path: 'leg.spread', value: Math.ceil(2 * (whole.leg.spread + 10)) / 2 },
    ]);
    expect(remedy(inferred('kneeGirth', width - 10), 'knee-ease')).toMatch(/, or measure the knee\.$/);
  });

  it('at the thigh comes by more spread or by less, as far as there is any', () => {
    const width = value('thigh-ease') + whole.body.thighGirth;
    const eased = (ease: number) => withBody({ thighGirth: width - ease });
    expect(remedy(eased(50), 'thigh-ease')).toMatch(/^Spread by [\d.]+ cm\.$/);
    expect(fixOf(eased(50), 'thigh-ease')?.changes[0]?.value).toBeCloseTo(whole.leg.spread + 10, 0);
    expect(remedy(inferred('thighGirth', width - 15), 'thigh-ease')).toMatch(/, or measure the thigh\.$/);
    expect(remedy(eased(230), 'thigh-ease')).toMatch(/^Spread by only/);
    expect(words(fixOf(eased(230), 'thigh-ease')?.label)).toMatch(/^Spread by only/);
    const sack = fixOf(eased(300), 'thigh-ease');
    expect([words(sack?.label), sack?.changes]).toEqual(['Leave out the spread', [{ path: 'leg.spread', value: 0 }]]);
  });

  it('in the rise says where the crotch line lies, below the body or above it', () => {
    const { bodyRise } = whole.body;
    const rise = value('rise-ease');
    expect(reason(withBody({ bodyRise: bodyRise + rise + 10 }), 'rise-ease')).toMatch(/1 cm/);
    expect(found(withBody({ bodyRise: bodyRise + rise + 10 }), 'rise-ease').measured).toBeCloseTo(-10, 6);
    const low = fixOf(withBody({ bodyRise: bodyRise - 40 }), 'rise-ease');
    expect(words(low?.label)).toMatch(/ease in the rise|Lower the crotch|Leave the crotch/);
  });
});

describe('a lean', () => {
  it('of a centre back is straightened until it is what a cutter draws', () => {
    const { curveEnd, lean } = whole.leg.back;
    const steep = edged('centreBack', (curves) => moved(curves, (p) => turned(p, curveEnd, radians(10 - lean))));
    const { straighten } = whole.leg;
    const to = Number(fixOf(steep, 'leans')?.changes[0]?.value);
    expect(fixOf(steep, 'leans')?.changes[0]?.path).toBe('leg.straighten');
    // 10° as it is straightened now; drawn without, it leans by more.
    expect((10 / (1 - straighten)) * (1 - to)).toBeCloseTo(7.95, 2);
  });
});

describe('inseams', () => {
  const twisted = edged('inseamBack', (curves) =>
    curves.map(
      ([a, b, c, d], i): Curve => (i > 0 ? [a, b, c, d] : [{ x: a.x - 160, y: a.y }, { x: b.x - 110, y: b.y }, c, d]),
    ),
  );

  it('that slant apart are sent to the pyjama shape, unless they have it', () => {
    expect(found(twisted, 'inseams-slant').verdict).toBe('doubtful');
    expect(remedy(shaped('block', twisted), 'inseams-slant')).toMatch(/^Choose the pyjama shape/);
    expect(remedy(twisted, 'inseams-slant')).toMatch(/^Narrow the leg less/);
    expect(fixOf(twisted, 'inseams-slant')).toBeUndefined();
  });
});

describe('what is wanted', () => {
  it('of the hip’s ease is the nearer limit, and spread comes as near to it', () => {
    const eased = (ease: number) => withBody({ hipGirth: whole.body.hipGirth + value('hip-ease') - ease });
    expect(found(eased(60), 'hip-ease').wanted).toBe(80);
    expect(found(eased(230), 'hip-ease').wanted).toBe(200);
    expect(found(eased(120), 'hip-ease').wanted).toBeCloseTo(120, 9);
    expect(remedy(eased(60), 'hip-ease')).toMatch(/^Spread by 2\.\d cm\.$/);
    expect(fixOf(eased(60), 'hip-ease')?.changes[0]?.value).toBeCloseTo(whole.leg.spread + 10, 0);
  });

  it('of the fork is shorter or longer', () => {
    const wide = withBody({ hipGirth: whole.body.hipGirth });
    const { frontNet = 0, backNet = 0 } = whole.proportions ?? {};
    const netOf = (share: number): Subject => ({
      ...wide,
      proportions: whole.proportions && {
        ...whole.proportions,
        frontNet: share * frontNet,
        backNet: share * backNet,
      },
    });
    expect(remedy(netOf(0.7), 'fork')).toMatch(/^Make .* shorter, or measure/);
    expect(found(netOf(0.7), 'fork').wanted).toBeLessThan(found(netOf(0.7), 'fork').measured);
    expect(remedy(netOf(1.4), 'fork')).toMatch(/^Make .* longer, or measure/);
    expect(found(netOf(1.4), 'fork').wanted).toBeGreaterThan(found(netOf(1.4), 'fork').measured);
  });

  it('of fullness is less spread, unless the opening is no wider than it must be', () => {
    const narrow = (opening: number) => ({ ...withBody({ waistGirth: opening / 1.7 }), opening });
    const needed = found(whole, 'pull-on').wanted;
    expect(remedy(narrow(needed + 60), 'fullness')).toBe('Spread less.');
    expect(fixOf(narrow(needed + 60), 'fullness')?.changes[0]?.path).toBe('leg.spread');
    expect(remedy(narrow(needed + 0.5), 'fullness')).toMatch(/thin, soft cloth/);
    expect(fixOf(narrow(needed + 0.5), 'fullness')).toBeUndefined();
  });
});

describe('words', () => {
  it('tell what was estimated from what was measured', () => {
    const girth = whole.body.thighGirth;
    expect(reason(inferred('thighGirth', girth), 'thigh-ease')).toMatch(/\(estimated\)/);
    const measured = { ...withBody({ thighGirth: girth, estimates: [] }) };
    expect(reason(measured, 'thigh-ease')).not.toMatch(/estimated/);
  });

  it('of a notch, a crossed cut line and a cord at the hem', () => {
    const shifted = withPiece(whole, (piece) => ({
      ...piece,
      notches: piece.notches.map((notch) =>
        notch.edge === 'inseamBack' ? { ...notch, at: { x: notch.at.x, y: notch.at.y + 4 } } : notch,
      ),
    }));
    expect(remedy(shifted, 'notches-meet')).toMatch(/^Set the notches at equal lengths/);
    const knotted = withPiece(whole, (piece) => ({
      ...piece,
      cutLine: withCurves(piece.cutLine, 'waist', (curves) =>
        curves.flatMap(([a, , , d]): readonly Curve[] => {
          const [over, back] = [
            { x: d.x + 4, y: d.y + 6 },
            { x: d.x - 4, y: d.y + 6 },
          ];
          return [straight(a, over), straight(over, back), straight(back, d)];
        }),
      ) as Piece['cutLine'],
    }));
    expect(found(knotted, 'cut-line-simple').verdict).toBe('wrong');
    expect(remedy(knotted, 'cut-line-simple')).toMatch(/narrower seam allowances/);
    const child = subjectOf(cordedChild);
    expect(reason(child, 'hem-cord')).toMatch(/two ends of a cord would hang out/);
    expect(words(fixOf(child, 'hem-cord')?.label)).toMatch(/hems/);
    expect(words(fixOf(child, 'waist-cord')?.label)).toMatch(/waist/);
  });

  it('of a kink send a traced block back to its drawing, and a drafted one to the tape', () => {
    const kinked = (curves: readonly Curve[]) =>
      curves.map(([a, b, c, d]): Curve => [a, turned(b, a, radians(8)), c, d]);
    const kink = (of: Subject) =>
      withPiece(of, (piece) => ({
        ...piece,
        stitchLine: withCurves(piece.stitchLine, 'crotchFront', kinked) as Piece['stitchLine'],
      }));
    expect(remedy(kink(traced), 'centres-smooth')).toMatch(/^Draw the centre line and the crotch curve/);
    expect(remedy(kink(whole), 'centres-smooth')).toMatch(/^Check waist, hip and body rise/);
  });
});

describe('the opening', () => {
  it('that is too small is spread; straightened too where somebody keeps it from that', () => {
    const tight = { ...whole, opening: whole.opening - 10 };
    expect(remedy(tight, 'pull-on')).toMatch(/^Spread by [\d.]+ cm instead of/);
    const leaning = {
      ...tight,
      opening: whole.opening - 60,
      leg: { ...whole.leg, straighten: 0, straightenAutomatic: false },
    };
    expect(remedy(leaning, 'pull-on')).toMatch(/^Straighten the centre lines/);
    const gains = { ...tight, leg: { ...whole.leg, straighten: 0, straightenAutomatic: false } };
    expect(remedy(gains, 'pull-on')).toMatch(/automatic does as much as is needed\), or spread by 1\.8 cm\.$/);
  });
});

describe('the stitching line', () => {
  it('that crosses itself says so, and not that it leaves the cut line', () => {
    const crossed = edged('crotchFront', (curves) =>
      curves.map(([a, , , d]): Curve => [a, { x: d.x + 300, y: d.y + 200 }, { x: a.x - 300, y: d.y + 200 }, d]),
    );
    expect(reason(crossed, 'stitching-line')).toMatch(/crosses itself/);
    expect(remedy(crossed, 'stitching-line')).toMatch(/^Undo the last change/);
    const beyond = edged('inseamFront', (curves) => moved(curves, (p) => ({ x: p.x + 16, y: p.y })));
    expect(reason(beyond, 'stitching-line')).toMatch(/leaves the cut line by [\d.]+ cm/);
    expect(remedy(beyond, 'stitching-line')).toMatch(/^Use wider seam allowances/);
  });
});

describe('turnings', () => {
  it('have nothing to say where waist and hem are pieces of their own', () => {
    const { project } = example;
    const none = subjectOf(
      drafted({
        ...project,
        waist: { ...project.waist, finish: 'facedCasing' },
        hem: { ...project.hem, finish: 'ribCuff' },
      }),
    );
    expect(found(none, 'turnings-flat')).toMatchObject({ verdict: 'good', measured: 0, remedy: UNSAID });
    expect(reason(none, 'turnings-flat')).toMatch(/^Nothing is turned over/);
  });

  /** The waist fold bent by so many degrees over a hand’s breadth in its middle, straight before and after. */
  const bent = (degrees: number): Subject =>
    withPiece(whole, (piece) => ({
      ...piece,
      folds: withCurves(piece.folds, 'waistFold', (curves) => {
        const [a, b] = [pathStart(curves), pathEnd(curves)];
        const along = (t: number) => ({ x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t });
        const turn = (p: typeof a) => turned(p, along(0.5), radians(degrees));
        const [from, to] = [along(0.45), turn(along(0.55))];
        return [straight(a, from), [from, along(0.48), turn(along(0.52)), to], straight(to, turn(b))];
      }),
    }));

  it('on a fold that bends differ by twice their depth times the angle of the sharpest stretch', () => {
    const { fold } = whole.finished.heights as { readonly fold: number };
    const check = found(bent(6), 'turnings-flat');
    expect(check.measured).toBeCloseTo(2 * fold * radians(6), 1);
    expect(check.verdict).toBe('doubtful');
    expect(words(check.reason)).toMatch(/over the higher hip/);
    expect(check.fix?.changes).toEqual([{ path: 'waist.finish', value: 'facedCasing' }]);
  });

  it('are doubtful by their millimetres where their share is small, and a casing’s come by straightening', () => {
    const tilted = (slope: number): Subject =>
      withPiece(whole, (piece) => ({
        ...piece,
        folds: withCurves(piece.folds, 'waistFold', (curves) =>
          moved(curves, (p) => ({ x: p.x, y: p.y + p.x * slope })),
        ),
      }));
    const slight = tilted(0.08);
    const check = found(slight, 'turnings-flat');
    expect(check.measured).toBeGreaterThan(3);
    expect(check.measured).toBeLessThan(0.01 * 500);
    expect(check.verdict).toBe('doubtful');
    expect(check.fix?.changes).toEqual([{ path: 'leg.straighten', value: 1 }]);
    expect(fixOf({ ...slight, leg: { ...slight.leg, straighten: 1 } }, 'turnings-flat')).toBeUndefined();
  });

  it('at the hem have no press of their own', () => {
    const flared = edged('inseamFrontTurning', (curves) => moved(curves, (p) => ({ x: p.x + 12, y: p.y })));
    expect(found(flared, 'turnings-flat').verdict).toBe('doubtful');
    expect(words(found(flared, 'turnings-flat').reason)).toMatch(/the hem differs/);
    expect(fixOf(flared, 'turnings-flat')).toBeUndefined();
  });

  it('are doubtful by their share too, where they are short', () => {
    const check = found(bent(1), 'turnings-flat');
    expect(check.measured).toBeLessThan(3);
    expect(check.verdict).toBe(check.measured > 1 ? 'doubtful' : 'good');
  });
});

describe('a cord at a child’s waist', () => {
  const child = subjectOf(cordedChild);
  const corded = (opening: number, ends: number, ageYears = 6): Subject => ({
    ...child,
    opening,
    cordLength: opening + 2 * ends,
    ageYears,
  });
  const { waistGirth } = child.body;

  it('is measured at its widest unless only drawn in it is too long', () => {
    expect(found(corded(waistGirth + 100, 150), 'waist-cord')).toMatchObject({ measured: 150, wanted: 140 });
    expect(found(corded(waistGirth + 100, 100), 'waist-cord')).toMatchObject({ measured: 100, wanted: 140 });
    expect(found(corded(waistGirth + 400, 100), 'waist-cord')).toMatchObject({ measured: 300, wanted: 280 });
    expect(found(corded(waistGirth + 400, 200), 'waist-cord')).toMatchObject({ measured: 200, wanted: 140 });
  });

  it('speaks of the stricter rules under seven where it is short enough, and only there', () => {
    expect(reason(corded(waistGirth + 100, 100), 'waist-cord')).toMatch(/Under seven years/);
    expect(reason(corded(waistGirth + 100, 150), 'waist-cord')).not.toMatch(/Under seven/);
    expect(reason(corded(waistGirth + 100, 100, 9), 'waist-cord')).not.toMatch(/Under seven/);
  });

  it('can’t be cut short enough for a waist that is drawn in by too much', () => {
    expect(remedy(corded(waistGirth + 400, 100), 'waist-cord')).toMatch(/^Choose elastic, or cut the cord/);
    expect(remedy(corded(waistGirth + 600, 10), 'waist-cord')).toMatch(/too wide for any cord/);
  });
});

describe('the waist edge', () => {
  it('says at which end it is off square, and is straightened only where the centres lean', () => {
    const tilted = (by: number): Subject =>
      withPiece(whole, (piece) => ({
        ...piece,
        lines: withCurves(piece.lines, 'waistEdge', (curves) =>
          curves.map(
            ([a, b, c, d]): Curve => (by < 0 ? [a, { ...b, y: b.y + by }, c, d] : [a, b, { ...c, y: c.y - by }, d]),
          ),
        ) as Piece['lines'],
      }));
    expect(reason(tilted(40), 'waist-smooth')).toMatch(/^At the front/);
    expect(reason(tilted(-40), 'waist-smooth')).toMatch(/^At the back/);
    expect(found(tilted(40), 'waist-smooth').verdict).toBe('doubtful');
    expect(fixOf(tilted(40), 'waist-smooth')).toBeUndefined();
    const { front, back } = whole.leg;
    const leaning = (lean: number, of: Subject): Subject => ({
      ...of,
      leg: { ...of.leg, straighten: 0, front: { ...front, lean }, back: { ...back, lean } },
    });
    expect(Number(fixOf(leaning(8, tilted(40)), 'waist-smooth')?.changes[0]?.value)).toBeCloseTo(1 - 11.9 / 16, 9);
    expect(fixOf(leaning(5.9, tilted(40)), 'waist-smooth')).toBeUndefined();
  });
});

describe('the checks of a pair', () => {
  it('say of legs that are alike what they say of one, and nothing of no leg', () => {
    expect(checksOfLegs([])).toEqual([]);
    const both = checksOfLegs([
      { ...whole, side: 'left' },
      { ...whole, side: 'right' },
    ]);
    const one = runChecks(whole);
    expect(both.filter(({ id }) => id !== 'legs-meet')).toEqual(one);
    const ids = both.map(({ id }) => id);
    expect(ids.indexOf('legs-meet')).toBe(ids.indexOf('notches-meet') + 1);
  });

  it('say which leg it is that is the worse', () => {
    const tight = withBody({ thighGirth: value('thigh-ease') + whole.body.thighGirth - 30 });
    const thigh = (left: Subject, right: Subject) =>
      words(
        checksOfLegs([
          { ...left, side: 'left' },
          { ...right, side: 'right' },
        ]).find(({ id }) => id === 'thigh-ease')?.reason,
      );
    expect(thigh(tight, whole)).toMatch(/^Left leg: The leg is/);
    expect(thigh(whole, tight)).toMatch(/^Right leg: The leg is/);
  });
});

describe('how wide a leg is where a level of the body may lie', () => {
  const { leg, body, finished } = whole;
  const ease = leg.crotchLevel - body.bodyRise;
  const hem = pathEnd(leg.front.inseam).y;
  const sewn = (level: number) => widthAt(finished.sewn, level) ?? Number.NaN;

  it('is the narrower of hanging and pulled up, and the one that there is near either end', () => {
    const middle = (leg.crotchLevel + hem) / 2;
    expect(leastWidthAt(whole, middle)).toBe(Math.min(sewn(middle), sewn(middle + ease)));
    expect(leastWidthAt(whole, hem - ease / 2)).toBe(sewn(hem - ease / 2));
    const above = Math.min(leg.front.crotchPoint.y, leg.back.crotchPoint.y) - ease / 2;
    expect(leastWidthAt(whole, above)).toBe(sewn(above + ease));
    expect(leastWidthAt(whole, hem + 100)).toBeUndefined();
  });
});
