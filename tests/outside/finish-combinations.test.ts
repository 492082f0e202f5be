import { beforeAll, describe, expect, it } from 'vitest';
import { outlineCrossings, outlineCurves } from '../../src/plane';
import { checksOf, draft } from '../../src/project';
import { every } from './every';
import { ONE_SHEET, projectFor, surveyBodies, surveyIsHere } from './survey';

const WAISTS = [
  'elasticCasing',
  'drawstringCasing',
  'elasticAndDrawstring',
  'separateCasing',
  'knitBand',
  'facedCasing',
] as const;
const HEMS = ['turned', 'elasticCasing', 'drawstringCasing', 'contrastBand', 'ribCuff', 'facedHem'] as const;
const CLOTHS = [
  { kind: 'woven', stretch: 0 },
  { kind: 'knit', stretch: 0.3 },
] as const;
const LENGTHS = ['ankle', 'belowKnee', 'short'] as const;
const BODIES = 200;
/** Each combination meets one body in so many, in turn, so that every body is drafted; with `LEGWORK_EVERY=1` each meets all. */
const ONE_IN = every ? 1 : 24;

interface Count {
  drafts: number;
  pieces: number;
  crossed: number;
  doubtful: number;
  wrong: number;
}

const counts = new Map<string, Count>();
const refused: string[] = [];

/** Every waist × hem × cloth over 200 bodies of the survey (ANSUR II, NATICK/TR-15/007, 2014), lengths in turn. */
beforeAll(() => {
  const all = surveyBodies();
  const step = Math.max(1, Math.floor(all.length / BODIES));
  const bodies = all.filter((_, i) => i % step === 0).slice(0, BODIES);
  if (!surveyIsHere)
    console.log(`The survey file is not beside this checkout: ${bodies.length} percentile bodies stand in.`);
  let turn = 0;
  for (const waist of WAISTS) {
    for (const hem of HEMS) {
      for (const cloth of CLOTHS) {
        const name = `${waist} · ${hem} · ${cloth.kind}`;
        const count: Count = { drafts: 0, pieces: 0, crossed: 0, doubtful: 0, wrong: 0 };
        counts.set(name, count);
        for (const { id, body } of bodies) {
          turn += 1;
          if ((turn + counts.size) % ONE_IN !== 0) continue;
          const rest = {
            cloth,
            waist: { finish: waist, rows: 1 + (Math.floor(turn / ONE_IN) % 2) },
            hem: { finish: hem },
            leg: { length: LENGTHS[Math.floor(turn / ONE_IN) % 3] },
          };
          const result = draft(projectFor(body, { ...ONE_SHEET, ...rest }));
          if (!result.ok) {
            refused.push(`${name}, ${id}: ${result.problems.map((p) => p.field).join()}`);
            continue;
          }
          const { pieces } = result.value;
          const checks = checksOf(result.value);
          count.drafts += 1;
          count.pieces += pieces.length;
          count.crossed += pieces.filter((piece) => outlineCrossings(outlineCurves(piece.cutLine)).length > 0).length;
          count.doubtful += checks.some((c) => c.verdict === 'doubtful') ? 1 : 0;
          count.wrong += checks.some((c) => c.verdict === 'wrong') ? 1 : 0;
        }
      }
    }
  }
}, 2_000_000);

describe('every waist with every hem in every cloth', () => {
  it('is drafted on every body, each piece with a simple cut line', () => {
    console.log(`${'waist · hem · cloth'.padEnd(52)} drafts pieces crossed doubtf  wrong`);
    for (const [name, c] of counts) {
      console.log(
        `${name.padEnd(52)} ${[c.drafts, c.pieces, c.crossed, c.doubtful, c.wrong].map((n) => String(n).padStart(6)).join(' ')}`,
      );
    }
    expect(refused).toEqual([]);
    expect([...counts.values()].reduce((sum, c) => sum + c.crossed, 0)).toBe(0);
    expect(counts.size).toBe(WAISTS.length * HEMS.length * CLOTHS.length);
  });
});
