import { describe, expect, it } from 'vitest';
import { NO_CORRECTIONS } from '../../src/block';
import { writeGuideHtml } from '../../src/files/guide/html';
import { writeReport } from '../../src/files/report/report';
import { distance, edgeLength, outlineEdge, pathEnd, pathLength, pathStart } from '../../src/plane';
import {
  checksOf,
  clothOf,
  clothSavingsOf,
  type Draft,
  draft,
  exampleProject,
  type Project,
  sewingOf,
  sheetsOf,
  withFewestSheets,
  workingOf,
} from '../../src/project';
import { printPhrase } from '../../src/words';

const drafted = (change: Partial<Project> = {}): Draft => {
  const result = draft({ ...exampleProject, ...change });
  if (!result.ok) throw new Error(result.problems.map((p) => p.field).join());
  return result.value;
};
const plain = drafted();
const ALIKE = { fullerHip: 0, fullerSeat: 0, higherHip: 0, longerLeg: 0 };
const legWith = (leg: Partial<Project['leg']>) => drafted({ leg: { ...exampleProject.leg, ...leg } });
const words = (d: Draft) => workingOf(d).map(({ sentence }) => printPhrase(sentence, 'cm'));

describe('the finished measures', () => {
  it('are those of the lines that are drawn', () => {
    const { measures: m, leg } = plain;
    const piece = plain.finished.sewn;
    const line = (name: string) => pathLength(piece.lines.find((one) => one.name === name)?.curves ?? []);
    expect(m.hipGirthFinished).toBeCloseTo(2 * line('hip'), 6);
    expect(m.thighGirthFinished).toBeCloseTo(leg.front.crotchPoint.x - leg.back.crotchPoint.x, 9);
    expect(m.hemGirthFinished).toBeCloseTo(distance(pathStart(leg.hem), pathEnd(leg.hem)), 9);
    expect(m.inseamFront).toBeCloseTo(edgeLength(outlineEdge(piece.stitchLine, 'inseamFront')), 9);
    expect(m.inseamBack).toBeCloseTo(edgeLength(outlineEdge(piece.stitchLine, 'inseamBack')), 9);
    expect(m.gapAtHem - m.gapAtWaist).toBeCloseTo(leg.gapAtHem - leg.gapAtWaist, 9);
    expect([m.spread, m.straighten, m.leanFront, m.leanBack]).toEqual([
      12.7,
      leg.straighten,
      leg.front.lean,
      leg.back.lean,
    ]);
    // Down from the waist edge, where the side crosses it, to the level of the crotch.
    const side = piece.lines.find((one) => one.name === 'side')?.curves ?? [];
    const edge = leg.waistEdge[0];
    const t = edge ? (0 - edge[0].x) / (edge[3].x - edge[0].x) : 0;
    const level = edge ? edge[0].y + t * (edge[3].y - edge[0].y) : 0;
    expect(pathStart(side).x).toBe(0);
    expect(m.crotchDepthFinished).toBeCloseTo(leg.crotchLevel - level, 6);
  });

  it('say how far the crotch length is off what was measured, and nothing where none was', () => {
    // 715 mm were measured; the ease in the crotch is added to that.
    expect(plain.measures.crotchFit).toBeCloseTo(
      plain.measures.crotchLengthFinished - (plain.blocks.crotchWanted ?? 0),
      9,
    );
    const { crotchLength: _gone, ...body } = exampleProject.body;
    const unmeasured = drafted({ body });
    expect(unmeasured.measures.crotchFit === 0 || unmeasured.blocks.crotchWanted !== undefined).toBe(true);
  });

  it('count no elastic where there is none', () => {
    const waist = { ...exampleProject.waist, finish: 'drawstringCasing' } as const;
    expect(drafted({ waist }).measures.elasticLength).toBe(0);
    expect(plain.measures.elasticLength).toBeCloseTo(0.92 * 742 + 25, 9);
  });
});

describe('the working', () => {
  it.each([
    ['pyjama', 'The pyjama leg narrows in one hollow line each side to 0.45 × foot 31.7 cm + 0.5 ×'],
    ['block', 'The leg keeps the inseams of the blocks.'],
    ['straight', 'The leg falls straight from the knee.'],
    [{ hemGirth: 500 }, 'The leg runs evenly to the hem that was chosen.'],
  ] as const)('says of the shape %o what it does', (shape, sentence) => {
    expect(words(legWith({ shape })).join(' ')).toContain(sentence);
  });

  it('names the length, or says that it was chosen', () => {
    const told = (length: Project['leg']['length']) => words(legWith({ length })).join(' ');
    expect(told('belowKnee')).not.toBe(told('knee'));
    expect(told({ inseam: 640 })).toContain('as chosen');
    expect(told('ankle')).not.toContain('as chosen');
  });

  it('tells of corrections only where some were made', () => {
    const corrections = (d: Draft) => workingOf(d).filter(({ id }) => id.startsWith('check.worn.')).length;
    const fit = { ...NO_CORRECTIONS, flatSeat: 10 };
    expect([corrections(plain), corrections(drafted({ fit }))]).toEqual([0, 1]);
  });
});

describe('the draft', () => {
  it('is told stage by stage', () => {
    const stages: string[] = [];
    draft(exampleProject, (stage) => stages.push(stage));
    expect(stages).toEqual(['project', 'leg', 'edges']);
  });

  it('finds its checks, sheets and working once, when they are asked for', () => {
    const d = drafted();
    for (const asked of [checksOf, sheetsOf, workingOf, clothOf, sewingOf]) expect(asked(d)).toBe(asked(d));
    expect(sheetsOf(d).sheets.length).toBeGreaterThan(4);
    expect(sheetsOf(withFewestSheets(d)).sheets.length).toBeLessThanOrEqual(sheetsOf(d).sheets.length);
  });

  it('is plain data: what is asked of a copy of it is answered the same', () => {
    const pair = drafted({ sides: { left: { ...ALIKE, longerLeg: 12 }, right: ALIKE } });
    for (const d of [plain, pair, withFewestSheets(plain)]) {
      const copy = structuredClone(d);
      expect(copy).toEqual(d);
      for (const asked of [
        checksOf,
        sheetsOf,
        workingOf,
        clothOf,
        sewingOf,
        clothSavingsOf,
        writeReport,
        writeGuideHtml,
      ])
        expect(asked(copy)).toEqual(asked(d));
    }
  });

  it('refuses paper that can’t be at once, and not only when the sheets are laid', () => {
    const paper = { ...exampleProject.paper, sheet: 'own', ownWidth: 150, ownHeight: 150, margin: 40, overlap: 40 };
    const result = draft({ ...exampleProject, paper });
    expect(result.ok ? [] : result.problems.map(({ field }) => field.split('.')[0])).toEqual(['paper']);
  });

  it('of a small sample keeps its allowances full on the paper, where that is chosen', () => {
    const small = (allowances: 'scaled' | 'full') =>
      drafted({ paper: { ...exampleProject.paper, scale: 0.25, allowances } });
    const wide = (d: Draft) => d.printed.map(({ cutLine }) => cutLine.map(({ allowance }) => allowance));
    const [scaled, full] = [small('scaled'), small('full')];
    expect(wide(scaled)).toEqual(wide(plain));
    expect(wide(full)).toEqual(wide(plain).map((edges) => edges.map((allowance) => 4 * allowance)));
    expect(full.printed.map(({ stitchLine }) => stitchLine)).toEqual(plain.pieces.map(({ stitchLine }) => stitchLine));
    expect(full.pieces).toEqual(plain.pieces);
    const [true1, ofFull] = [drafted(), drafted({ paper: { ...exampleProject.paper, allowances: 'full' } })];
    expect(ofFull.printed).toEqual(true1.printed);
  });

  it('full allowances are each edge’s own', () => {
    const allowances = { inseam: 4, crotch: 6, waist: 8, hem: 10 };
    const d = drafted({
      allowances,
      waist: { ...exampleProject.waist, finish: 'separateCasing' },
      hem: { ...exampleProject.hem, finish: 'contrastBand' },
      paper: { ...exampleProject.paper, scale: 0.5, allowances: 'full' },
    });
    const edge = (name: string) => d.printed[0]?.cutLine.find((one) => one.name === name)?.allowance;
    expect(['inseamFront', 'crotchBack', 'waist', 'hem'].map(edge)).toEqual([8, 12, 16, 20]);
  });
});
