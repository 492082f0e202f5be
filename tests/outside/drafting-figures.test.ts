import { describe, expect, it } from 'vitest';
import { draftBlocks } from '../../src/block';
import { measurements, prepareBody } from '../../src/body';
import { casingHeights, elasticLength } from '../../src/edges';
import { checksOf, type Draft, draft, type Project } from '../../src/project';
import { projectFor, surveyBodies } from './survey';

/** Published figures, each with its source beside it; “memory” where no page was found, “practice” where there is none. */
const IN = 25.4;
const OPTIONS = { hipEase: 50.8, waistEase: 25, riseEase: 'auto', crotchEase: 'auto', balance: 10 } as const;
const BODY = { label: 'a', waistGirth: 742, hipGirth: 1020, hipDepth: 208, bodyRise: 272, insideLeg: 758 };

const blocks = (hip: number) =>
  draftBlocks(prepareBody({ ...BODY, waistGirth: 0.75 * hip, hipGirth: hip }), OPTIONS).blocks;

function drafted(body: object = {}, rest: object = {}): Draft {
  const result = draft(projectFor({ ...BODY, ...body }, rest));
  if (!result.ok) throw new Error(result.problems.map((p) => p.field).join());
  return result.value;
}
const check = (d: Draft, id: string) => checksOf(d).find((c) => c.id === id);

describe('ease, after *Measurements for Fitting Pants*, New Mexico State University Extension, Guide C-209', () => {
  // An older print, quoted; its middle value (¾ in) is doubtful print, so only the two ends are held.
  it.each([
    [860, 0.5 * IN],
    [910, 0.5 * IN],
    [970, 1 * IN],
    [1200, 1 * IN],
  ])('the crotch of a hip of %d mm lies at least the printed ½ or 1 in below the body', (hip, printed) => {
    const { riseEase } = blocks(hip);
    expect(riseEase).toBeGreaterThanOrEqual(printed - 0.5);
    // Ours adds 6 mm for a lounge pant (practice).
    expect(riseEase).toBeLessThanOrEqual(printed + 12.7);
  });

  it('the printed rise ease grows with the hip, and so does ours', () => {
    const eases = [700, 800, 860, 900, 950, 980, 1100].map((hip) => blocks(hip).riseEase);
    expect([...eases].sort((a, b) => a - b)).toEqual(eases);
  });

  // Read: hip at least 2–4 in; memory: sleepwear 4–8 in.
  it('the hip has at least the 2–4 in of fitted pants, and with the default spread the 4 in of sleepwear', () => {
    const d = drafted();
    expect(d.measures.hipGirthFinished - 1020).toBeGreaterThanOrEqual(4 * IN - 0.1);
    expect(d.measures.hipGirthFinished - 1020).toBeLessThanOrEqual(8 * IN);
    expect(drafted({}, { leg: { spread: 0 } }).measures.hipGirthFinished - 1020).toBeGreaterThanOrEqual(2 * IN - 0.1);
  });

  // The same print, quoted: thigh 1–2 in, knee at least 1 in. Ours is a loose leg, so the print is a least.
  it('thigh and knee have no less than the printed 2 and 1 in', () => {
    const d = drafted({ thighGirth: 612, kneeGirth: 390 });
    expect(d.measures.thighGirthFinished - 612).toBeGreaterThanOrEqual(2 * IN);
    const knee = d.pieces[0]?.lines.find((line) => line.name === 'knee')?.curves[0];
    expect((knee?.[3].x ?? 0) - (knee?.[0].x ?? 0) - 390).toBeGreaterThanOrEqual(1 * IN);
  });
});

describe('extensions beyond a quarter of the hip, hip 1000 mm', () => {
  const ours = blocks(1000);

  it('in front between hip/16 and hip/12', () => {
    // *The Practical Designer* (1911), lesson 82 (read), and *The Practical Designer for Women's and Misses' Underwear* (1918), lesson 411 (read).
    expect(ours.extensionFront).toBeGreaterThanOrEqual(1000 / 16);
    expect(ours.extensionFront).toBeLessThanOrEqual(1000 / 12);
  });

  it('behind between lesson slides’ hip/16 + hip/18 (read) and a widely taught textbook rule’s hip/8 (memory), both together within the 15–19 % in print', () => {
    expect(ours.extensionBack).toBeGreaterThanOrEqual(1000 / 16 + 1000 / 18);
    expect(ours.extensionBack).toBeLessThanOrEqual(1000 / 8);
    const both = (ours.extensionFront + ours.extensionBack) / 1000;
    expect(both).toBeGreaterThanOrEqual(0.15);
    expect(both).toBeLessThanOrEqual(0.191);
    // A tenth to a fifth less than the body is thick: buttock depth 22.8 % of the hip in women, 24.1 % in men (ANSUR II, computed).
    expect(both / 0.228).toBeLessThanOrEqual(0.9);
    expect(both / 0.241).toBeGreaterThanOrEqual(0.7);
  });

  it('the back crotch point lies lower, as on the lesson slides on trousers (read: 1 cm)', () => {
    const drops = surveyBodies()
      .filter((_, i, all) => all.length < 100 || i % 150 === 0)
      .map(({ body }) => drafted(body).measures.backCrotchDrop);
    // Ours is solved, so that the inseams are equal: about as low, never above.
    expect(Math.min(...drops)).toBeGreaterThan(-1e-6);
    const middle = [...drops].sort((a, b) => a - b)[Math.floor(drops.length / 2)] ?? 0;
    console.log(
      `back crotch drop: ${Math.min(...drops).toFixed(1)} – ${middle.toFixed(1)} – ${Math.max(...drops).toFixed(1)} mm`,
    );
    expect(middle).toBeGreaterThan(4);
    expect(middle).toBeLessThan(16);
  });
});

describe('casing and elastic', () => {
  const casing = (elasticWidth: number, turnOfCloth = IN / 8) =>
    casingHeights(projectFor(BODY, { waist: { elasticWidth, turnOfCloth, elastic: 'sewnOn' } }).waist);

  // Practice: twice the elastic plus ⅛ in for the turn of the cloth.
  it.each([0.5, 0.75, 1, 1.5, 2])(
    'a casing for %f in elastic is built above the edge by twice that and ⅛ in',
    (inches) => {
      expect(casing(inches * IN).height).toBeCloseTo((2 * inches + 0.125) * IN, 9);
      expect(casing(inches * IN).fold).toBeCloseTo((inches + 0.0625) * IN, 9);
    },
  );

  // Read, a sewing-professionals' standard: ⅛ in wider than the elastic. The turn of the cloth is part of it.
  it('the channel is wider than its elastic by at least half the turn of the cloth', () => {
    expect(casing(IN).fold - IN).toBeCloseTo(IN / 16, 9);
  });

  // Read, several home-sewing pages: waist − 2 to − 3 in, lap about 1 in.
  it('elastic is cut as long as the home-sewing pages say, on ordinary waists', () => {
    for (const waist of [24 * IN, 28 * IN, 32 * IN, 36 * IN]) {
      const cut = elasticLength(waist, 2 * waist) - 1 * IN;
      expect(cut).toBeGreaterThanOrEqual(waist - 3 * IN - 1);
      expect(cut).toBeLessThanOrEqual(waist - 1.9 * IN);
    }
  });

  // Practice: more elastic than opening would hang in folds.
  it('elastic is never longer than the opening', () => {
    expect(elasticLength(1000, 700)).toBe(700);
  });
});

describe('what must pass', () => {
  // Practice; the principle is read: an unstretched woven opening passes over the fullest part.
  it('a woven waist that opens less than the fullest girth is wrong, one that opens wider is good', () => {
    expect(check(drafted({}, { leg: { spread: 0, straighten: 0 } }), 'pull-on')?.verdict).toBe('wrong');
    expect(check(drafted({}, { leg: { spread: 40, straighten: 1 } }), 'pull-on')?.verdict).toBe('good');
  });

  // Read: opening × (1 + stretch) ≥ fullest girth. 10 → 14 in is 40 %; of it a sewn waist keeps 0.7 (practice).
  it('a knit that stretches from 10 to 14 in needs an opening of the hip ÷ 1.28', () => {
    const knit = { cloth: { kind: 'knit', stretch: 4 / 10 } };
    expect(drafted({}, knit).measures.pullOnNeeded).toBeCloseTo(1020 / (1 + 0.7 * 0.4), 6);
  });

  // Principle: NMSU C-209 (read); the foot of the survey's 95 % man is 372 mm round heel and instep (computed).
  it('a hem that the 372 mm foot doesn’t pass is wrong', () => {
    const hem = (hemGirth: number) =>
      check(drafted({ footEntryGirth: 372 }, { leg: { shape: { hemGirth } } }), 'hem-entry');
    expect(hem(360)?.verdict).toBe('wrong');
    expect(hem(380)?.verdict).toBe('doubtful');
    expect(hem(400)?.verdict).toBe('good');
  });
});

describe('allowances', () => {
  // Computed: ⅝ in is 15.875 mm and not 15; home sewing ⅝ in (read).
  it('are ⅝ in in inch projects and 15 mm in centimetre projects, and neither is the other rounded', () => {
    const of = (units: Project['units']) =>
      drafted({}, { units }).pieces[0]?.cutLine.find((e) => e.name === 'crotchFront');
    expect(of('inch')?.allowance).toBe((5 / 8) * IN);
    expect(of('cm')?.allowance).toBe(15);
  });

  // Read, *Text-Book on Domestic Art* (1911): one notch in front, two behind.
  it('one notch on the front centre seam, two on the back', () => {
    const notches = drafted().pieces[0]?.notches ?? [];
    expect(notches.find((n) => n.edge === 'centreFront')?.count).toBe(1);
    expect(notches.find((n) => n.edge === 'centreBack')?.count).toBe(2);
  });
});

// ISO 8559-1:2017, clauses as quoted in published.md; ankle from memory; body rise, hip depth and the rest have none.
describe('the catalogue names the clauses of ISO 8559-1:2017', () => {
  it.each([
    ['height', '5.1.1'],
    ['insideLeg', '5.1.15'],
    ['waistGirth', '5.3.10'],
    ['highHipGirth', '5.3.12'],
    ['hipGirth', '5.3.13'],
    ['thighGirth', '5.3.20'],
    ['kneeGirth', '5.3.22'],
    ['calfGirth', '5.3.24'],
    ['ankleGirth', '5.3.26'],
    ['crotchLength', '5.4.18'],
  ])('%s: %s', (key, clause) => {
    expect(measurements.find((m) => m.key === key)?.iso).toBe(clause);
  });

  it('and none for body rise, hip depth and the front part of the crotch length', () => {
    for (const key of ['bodyRise', 'hipDepth', 'frontCrotchLength', 'outsideLeg'])
      expect(measurements.find((m) => m.key === key)?.iso, key).toBeUndefined();
  });
});
