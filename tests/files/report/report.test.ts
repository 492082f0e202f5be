import { describe, expect, test } from 'vitest';
import { makeReport, writeReport } from '../../../src/files';
import { type Curve, curvePoint, type Point } from '../../../src/plane';
import { checksOf, sheetsOf } from '../../../src/project';
import { draftWith } from '../drafts';

const draft = draftWith();
const report = makeReport(draft);
const [leg] = report.pieces;
const [piece] = draft.pieces;
if (!leg || !piece) throw new Error('no leg');
const points = (pairs: readonly (readonly [number, number])[]) => pairs.map(([x, y]) => ({ x, y }));

/** How far a point is from a polyline, straight from the definition. */
function distanceTo(line: readonly Point[], p: Point): number {
  return line.slice(1).reduce((least, b, i) => {
    const a = line[i] as Point;
    const square = (b.x - a.x) ** 2 + (b.y - a.y) ** 2;
    const t =
      square === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y)) / square));
    return Math.min(least, Math.hypot(a.x + t * (b.x - a.x) - p.x, a.y + t * (b.y - a.y) - p.y));
  }, Number.POSITIVE_INFINITY);
}

/** The promise of the format. */
const CHORD = 0.02;

function farthestFromChords(curves: readonly Curve[], pairs: readonly (readonly [number, number])[]): number {
  const line = points(pairs);
  let worst = 0;
  for (const curve of curves)
    for (let i = 0; i <= 60; i += 1) worst = Math.max(worst, distanceTo(line, curvePoint(curve, i / 60)));
  return worst;
}

describe('polylines', () => {
  test.each(leg.cutLine.map((edge, i) => ({ name: edge.edge, i })))(
    'cut line, $name: no chord leaves the curve by more than 0.02 mm',
    ({ i }) => {
      expect(farthestFromChords(piece.cutLine[i]?.curves ?? [], leg.cutLine[i]?.points ?? [])).toBeLessThanOrEqual(
        CHORD,
      );
    },
  );

  test('the measure of distance would notice points left out of a curve', () => {
    const i = piece.stitchLine.findIndex((edge) => edge.name === 'crotchBack');
    const thinned = (leg.stitchLine[i]?.points ?? []).filter((_, k, all) => k % 6 === 0 || k === all.length - 1);
    expect(farthestFromChords(piece.stitchLine[i]?.curves ?? [], thinned)).toBeGreaterThan(CHORD);
  });

  test.each(['stitchLine', 'cutLine'] as const)(
    '%s is closed: every edge starts exactly where the one before it ends',
    (line) => {
      const edges = leg[line];
      for (const [i, edge] of edges.entries()) expect(edge.points[0]).toEqual(edges.at(i - 1)?.points.at(-1));
    },
  );

  test('the edges have the names of the format, in order', () => {
    const names = leg.stitchLine.map((edge) => edge.edge).filter((name) => !name.endsWith('Turning'));
    expect([...new Set(names)]).toEqual([
      'waist',
      'centreFront',
      'crotchFront',
      'inseamFront',
      'hem',
      'inseamBack',
      'crotchBack',
      'centreBack',
    ]);
    expect(leg.cutLine.map((edge) => edge.edge)).toEqual(leg.stitchLine.map((edge) => edge.edge));
  });

  test('no coordinate has more than three decimals', () => {
    const all = [...leg.cutLine, ...leg.stitchLine, ...leg.lines, ...leg.folds].flatMap((line) => line.points.flat());
    expect(all.length).toBeGreaterThan(200);
    for (const value of all) expect(value).toBe(Number(value.toFixed(3)));
  });
});

describe('the rest', () => {
  test('measures, checks and sheets are the draft’s own', () => {
    for (const [key, value] of Object.entries(draft.measures))
      expect(report.measures[key as 'spread']).toBeCloseTo(value, 5);
    expect(report.checks.map((check) => [check.id, check.verdict])).toEqual(
      checksOf(draft).map((check) => [check.id, check.verdict]),
    );
    expect(report.sheets).toMatchObject({
      count: sheetsOf(draft).sheets.length,
      columns: sheetsOf(draft).columns,
      rows: sheetsOf(draft).rows,
      lowerBound: sheetsOf(draft).lowerBound,
      paper: { name: 'A4', margin: 10, overlap: 10 },
      scale: [1, 1],
    });
  });

  test('the sheets are there for a preview: every point of the laid cut lines is on one, every mark on two', () => {
    const { list, places, controls } = report.sheets;
    const parts = list.flatMap((sheet) => [sheet, ...sheet.tips]);
    expect(list.map(({ label }) => label)).toEqual(sheetsOf(draft).sheets.map(({ label }) => label));
    for (const [i, piece] of report.pieces.entries()) {
      const { turn, shift } = places[i] as (typeof places)[number];
      const [cos, sin] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
      for (const [x, y] of piece.cutLine.flatMap(({ points }) => points)) {
        const at = { x: x * cos - y * sin + shift[0], y: x * sin + y * cos + shift[1] };
        const on = parts.filter(
          ({ window }) => at.x > window.left && at.x < window.right && at.y > window.top && at.y < window.bottom,
        );
        expect(on.length).toBeGreaterThan(0);
      }
    }
    const numbers = parts.flatMap(({ marks }) => marks.map(({ number }) => number));
    for (const number of new Set(numbers)) expect(numbers.filter((other) => other === number)).toHaveLength(2);
    expect(controls.map(({ name }) => name)).toEqual(['hip line', 'front inseam, along its stitching line']);
    expect(controls[1]?.length).toBeCloseTo(report.measures.inseamFront, 2);
  });

  test('has the fields of the format', () => {
    expect(Object.keys(report)).toEqual([
      'format',
      'version',
      'measures',
      'pieces',
      'checks',
      'lay',
      'sheets',
      'cautions',
      'sewing',
    ]);
    expect(Object.keys(leg)).toEqual([
      'name',
      'cut',
      'mirrored',
      'stitchLine',
      'cutLine',
      'lines',
      'folds',
      'notches',
      'grainline',
    ]);
    expect(Object.keys(report.checks[0] ?? {})).toEqual([
      'id',
      'verdict',
      'measured',
      'wanted',
      'tolerance',
      'unit',
      'reason',
      'remedy',
    ]);
  });

  test('says what to buy in both units, what to look for, and how it is sewn', () => {
    const { lay, cautions, sewing } = report;
    expect(lay.shopping.map(({ id }) => id)).toEqual(['cloth', 'waist-elastic', 'thread', 'needle', 'loop', 'tools']);
    expect(lay.shopping[0]?.howMuch).toMatch(/ m, .*\(.* yd, /);
    expect(cautions.every(({ sentence, source }) => sentence !== '' && source !== '')).toBe(true);
    expect(sewing.steps.map(({ id }) => id)).toContain('inseams');
    expect(sewing.minutes).toBeGreaterThan(100);
    const banded = makeReport(draftWith({ hem: { finish: 'ribCuff' } })).lay.others;
    expect(banded.map(({ kind, pieces, fits }) => [kind, pieces, fits])).toEqual([['rib', ['cuff'], true]]);
  });

  test('sentences are in the project’s units', () => {
    const inch = makeReport(draftWith({ units: 'inch' }))
      .checks.map((check) => check.reason)
      .join(' ');
    expect(inch).toMatch(/ in\b/);
    expect(inch).not.toMatch(/\d (cm|mm)\b/);
  });

  test('the file is the same report, a point on a line', () => {
    const text = writeReport(draft);
    expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(report)));
    expect(text).toMatch(/^\s*\[-?[\d.]+,-?[\d.]+\],?$/m);
    expect(text.endsWith('}\n')).toBe(true);
  });
});
