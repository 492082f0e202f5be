import { describe, expect, test } from 'vitest';
import { drawingInk, placedDrawings } from '../../src/drawing';
import { boxesMeet, boxGrown, boxInside, boxMeetsSegment, point } from '../../src/plane';
import { markBoxes, planParts, tilePieces, tipBox } from '../../src/sheets';
import { benchProjects } from '../bench/bodies';
import { draftOf } from '../files/drafts';

/** A frame is cut along: nothing of its host's is nearer to it than this, on the paper. */
const CLEAR = 2;

const bodies = benchProjects(12);
const papers = [
  { sheet: 'A4', overlap: 10 },
  { sheet: 'Letter', overlap: 0 },
] as const;

describe.each(papers)('the small pieces of other sheets, $sheet, overlap $overlap', (paper) => {
  const laid = bodies.map((project) => {
    const { printed, project: made } = draftOf({ ...project, paper: { ...project.paper, ...paper } });
    const plan = tilePieces(printed, made.paper);
    return { plan, stretches: drawingInk(placedDrawings(printed, plan.places)).stretches };
  });
  const hosts = laid.flatMap(({ plan, stretches }) =>
    plan.sheets.filter(({ tips }) => tips.length > 0).map((sheet) => ({ plan, stretches, sheet })),
  );

  test('lie off what their sheet shows of the pattern, off its marks and off each other, within its paper', () => {
    expect(hosts.length).toBeGreaterThan(bodies.length);
    for (const { plan, stretches, sheet } of hosts) {
      const marks = markBoxes(sheet, plan);
      const boxes = sheet.tips.map(tipBox);
      for (const [i, box] of boxes.entries()) {
        expect(boxInside(box, sheet.window)).toBe(true);
        const wide = boxGrown(box, CLEAR);
        for (let k = 0; k < stretches.length; k += 4) {
          const [ax = 0, ay = 0, bx = 0, by = 0] = stretches.subarray(k, k + 4);
          if (boxMeetsSegment(wide, point(ax, ay), point(bx, by)))
            expect.fail(`a line of ${sheet.label} at ${ax}, ${ay} under ${sheet.tips[i]?.label}`);
        }
        expect(marks.filter((mark) => boxesMeet(mark, box))).toEqual([]);
        expect(boxes.slice(i + 1).filter((other) => boxesMeet(other, wide))).toEqual([]);
      }
    }
  });

  test('are joined by marks of their own', () => {
    for (const { plan } of laid) {
      const parts = planParts(plan);
      for (const tip of plan.sheets.flatMap(({ tips }) => tips)) {
        const numbers = new Set(tip.marks.map(({ number }) => number));
        expect(numbers.size).toBeGreaterThan(1);
        for (const number of numbers)
          expect(parts.filter(({ marks }) => marks.some((mark) => mark.number === number))).toHaveLength(2);
      }
    }
  });
});

test('strips of a roll bear no small pieces: one is cut longer instead', () => {
  for (const project of bodies.slice(0, 3)) {
    const { printed, project: made } = draftOf({ ...project, paper: { ...project.paper, sheet: 'Roll 24 in' } });
    expect(tilePieces(printed, made.paper).sheets.flatMap(({ tips }) => tips)).toEqual([]);
  }
});
