import { describe, expect, test } from 'vitest';
import { reportPiece } from '../../src/files/report/report';
import { sheetsOf, withFewestSheets } from '../../src/project';
import { benchProjects } from '../bench/bodies';
import { draftOf } from '../files/drafts';
import { every, share } from './every';
import { plainCount } from './paper/plain-grid';
import { distribution } from './survey';

/** What a shifted and turned grid must save against a plain one, on the average of all bodies; of a few it may be less. */
const SAVED = every ? 0.05 : 0.03;
const SHEETS = [
  { sheet: 'A4', width: 190, height: 277 },
  { sheet: 'Letter', width: 195.9, height: 259.4 },
  { sheet: 'A3', width: 277, height: 400 },
  { sheet: 'Tabloid', width: 259.4, height: 411.8 },
  { sheet: 'Legal', width: 195.9, height: 335.6 },
] as const;
const POCKET = { width: 150, height: 165, facing: 30, part: 'back', count: 1 } as const;
const bodies = benchProjects(200);

const counts = (projects: ReturnType<typeof benchProjects>, paper: (typeof SHEETS)[number], overlap: number) =>
  projects.map((project) => {
    const drafted = draftOf({ ...project, paper: { ...project.paper, sheet: paper.sheet, overlap } });
    const { sheets, lowerBound } = sheetsOf(withFewestSheets(drafted));
    return {
      ours: sheets.length,
      plain: plainCount(drafted.pieces.map(reportPiece), { ...paper, overlap }),
      bound: lowerBound,
    };
  });

describe.each(every ? SHEETS : SHEETS.slice(0, 2))('the leg alone on $sheet', (paper) => {
  test.each(every ? [10, 0, 20] : [10])(
    'never more sheets than a plain grid, on average fewer: overlap %d',
    (overlap) => {
      const found = counts(share(bodies, 20), paper, overlap);
      expect(found.filter(({ ours, plain }) => ours > plain)).toEqual([]);
      expect(found.filter(({ ours, bound }) => ours < bound)).toEqual([]);
      const saved = found.map(({ ours, plain }) => 1 - ours / plain);
      const mean = saved.reduce((a, b) => a + b, 0) / saved.length;
      if (every) {
        const ratio = found.map(({ ours, bound }) => ours / bound);
        console.log(`${paper.sheet}, overlap ${overlap}: mean saved ${(100 * mean).toFixed(2)} %`);
        console.log(`${distribution('saved, share', saved)}\n${distribution('sheets ÷ bound by area', ratio)}`);
      }
      // How much a shift can save depends on the overlap: it is promised for the one that is set at first.
      if (overlap === 10) expect(mean).toBeGreaterThanOrEqual(SAVED);
    },
    400_000,
  );
});

test('several pieces never need more sheets than each alone on a plain grid', () => {
  const some = every ? bodies.filter((_, i) => i % 8 === 0) : share(bodies, 4);
  const rich = some.map((project) => ({
    ...project,
    pocket: POCKET,
    waist: { ...project.waist, finish: 'separateCasing' as const },
  }));
  for (const paper of every ? SHEETS : SHEETS.slice(0, 1)) {
    const found = counts(rich, paper, 10);
    if (every)
      console.log(
        `${paper.sheet}: ${distribution(
          'saved',
          found.map(({ ours, plain }) => 1 - ours / plain),
        )}`,
      );
    expect(found.filter(({ ours, plain }) => ours > plain)).toEqual([]);
  }
}, 1_200_000);
