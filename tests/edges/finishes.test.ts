import { describe, expect, it } from 'vitest';
import { cordLength, type EdgeName, type LineName } from '../../src/edges';
import { hemElasticLength, ribCuffGirth } from '../../src/edges/hem';
import {
  distance,
  edgeLength,
  outlineCrossings,
  outlineCurves,
  outlineEdge,
  pathEnd,
  pathLength,
  pathStart,
} from '../../src/plane';
import { checksOf, type Draft, draft, exampleProject, type Project } from '../../src/project';
import { pieceName } from '../names';

type Waist = Partial<Project['waist']>;
type Hem = Partial<Project['hem']>;

const drafted = (waist: Waist = {}, hem: Hem = {}, rest: Partial<Project> = {}): Draft => {
  const result = draft({
    ...exampleProject,
    waist: { ...exampleProject.waist, ...waist },
    hem: { ...exampleProject.hem, ...hem },
    ...rest,
  });
  if (!result.ok) throw new Error(result.problems.map((p) => p.field).join());
  return result.value;
};
const pieceOf = (d: Draft, name: string) => {
  const found = d.pieces.find((piece) => pieceName(piece) === name);
  if (!found) throw new Error(`there is no ${name}, only ${d.pieces.map(pieceName).join()}`);
  return found;
};
const lengthOf = (d: Draft, name: string, edge: EdgeName) => edgeLength(outlineEdge(pieceOf(d, name).stitchLine, edge));
const linesOf = (d: Draft, name: LineName) => pieceOf(d, 'leg').lines.filter((line) => line.name === name);
const plain = drafted();

describe('waist finishes', () => {
  // Practice: 2nw + (n − 1)·3 + t; every channel ≥ w + 1.5.
  it.each([1, 2, 3, 4] as const)('%i rows of elastic get a channel each, wide enough, parted by stitching', (rows) => {
    const d = drafted({ rows, elasticWidth: 10 });
    expect(d.measures.casingHeight).toBeCloseTo(2 * rows * 10 + (rows - 1) * 3 + 3.2, 9);
    expect(linesOf(d, 'channelStitching')).toHaveLength(rows - 1);
    expect(d.measures.casingHeight / 2 / rows).toBeGreaterThanOrEqual(11.5);
  });

  it('a drawstring has its channel, its buttonhole beside centre front in the outer layer, and its length', () => {
    const d = drafted({ finish: 'drawstringCasing', cordWidth: 10 });
    expect(d.measures.casingHeight).toBeCloseTo(2 * (10 + 6.35) + 3.2, 9);
    const [hole] = linesOf(d, 'cordOpening');
    const middle = hole ? pathStart(hole.curves) : { x: 0, y: 0 };
    const edge = pathEnd(d.leg.waistEdge);
    expect(edge.x - middle.x).toBeGreaterThan(15);
    expect(edge.x - middle.x).toBeLessThan(25);
    expect(edge.y - middle.y).toBeGreaterThan(0);
    expect(edge.y - middle.y).toBeLessThan(d.measures.casingHeight / 2);
    expect(d.notions.cordLength).toBe(cordLength(d.measures.waistOpening));
    expect(d.notions.elasticLength).toBeUndefined();
  });

  it('elastic and drawstring lie in channels of their own, the cord above', () => {
    const d = drafted({ finish: 'elasticAndDrawstring' });
    expect(d.measures.casingHeight).toBeCloseTo(plain.measures.casingHeight + 2 * 16.35, 9);
    expect(linesOf(d, 'channelStitching')).toHaveLength(1);
    expect([d.notions.elasticLength, d.notions.cordLength].every((one) => one !== undefined)).toBe(true);
  });

  it('a casing of its own is as long as the waist edge all round and is sewn to it', () => {
    const d = drafted({ finish: 'separateCasing' });
    expect(lengthOf(d, 'casing', 'lower')).toBeCloseTo(2 * pathLength(d.leg.waistEdge), 6);
    expect(lengthOf(d, 'casing', 'leftEnd')).toBeCloseTo(54, 9);
    expect(pieceOf(d, 'casing').folds).toHaveLength(1);
    expect(pieceOf(d, 'casing').notches.filter((n) => n.edge === 'lower')).toHaveLength(3);
    expect(pieceOf(d, 'leg').cutLine.find((edge) => edge.name === 'waist')?.allowance).toBe(15);
    expect(
      pieceOf(d, 'leg').stitchLine.some((edge) => edge.name.startsWith('centre') && edge.name.endsWith('Turning')),
    ).toBe(false);
  });

  it('a knit band is 0.85 of the waist, doubled', () => {
    const d = drafted({ finish: 'knitBand', bandHeight: 50 });
    expect(lengthOf(d, 'waist band', 'upper')).toBeCloseTo(0.85 * 742, 9);
    expect(lengthOf(d, 'waist band', 'leftEnd')).toBeCloseTo(100, 9);
  });

  it('a knit band that stretches little is as long as the fullest part needs, and never longer than the waist edge', () => {
    const band = (bandStretch: number) => drafted({ finish: 'knitBand', bandStretch });
    // Practice: 0.7 of the measured stretch is left in a sewn edge.
    expect(lengthOf(band(0.5), 'waist band', 'upper')).toBeCloseTo(1020 / 1.35, 9);
    const stiff = band(0);
    expect(lengthOf(stiff, 'waist band', 'upper')).toBeCloseTo(1020, 9);
    expect(stiff.notions.bandLength).toBe(1020);
    const reaches = (d: Draft) => checksOf(d).find((check) => check.id === 'elastic-reaches')?.verdict;
    expect([band(1), band(0.5), stiff].map(reaches)).toEqual(['good', 'doubtful', 'doubtful']);
  });

  it('an elastic is as long as was chosen, but never longer than the opening', () => {
    expect(drafted({ elasticLength: 700 }).notions.elasticLength).toBe(700);
    expect(drafted({ elasticLength: 2000 }).notions.elasticLength).toBeCloseTo(plain.measures.waistOpening, 6);
  });

  it.each([
    ['waist cord', { finish: 'drawstringCasing', cord: 'ofCloth', cordWidth: 10 }, {}, 10],
    ['hem cord', {}, { finish: 'drawstringCasing', cord: 'ofCloth', cordWidth: 5 }, 5],
  ] as const)('a %s sewn of the cloth is a strip of its own, folded and turned', (name, waist, hem, width) => {
    const d = drafted(waist, hem);
    const cord = pieceOf(d, name);
    const { cordLength: whole = 0, hemCordLength = 0 } = d.notions;
    expect(lengthOf(d, name, 'upper')).toBeCloseTo(name === 'hem cord' ? hemCordLength : whole / 2, 9);
    expect(lengthOf(d, name, 'leftEnd')).toBeCloseTo(2 * width, 9);
    expect(cord.cut).toBe(2);
    expect(cord.folds).toHaveLength(1);
    // Two seams turned into a tube must fit within it.
    expect(Math.max(...cord.cutLine.filter((e) => e.name === 'upper').map((e) => e.allowance))).toBeLessThanOrEqual(
      Math.min(6, width),
    );
    const way = Math.abs(cord.grainline[0].y - cord.grainline[1].y);
    expect(way).toBeGreaterThan(0.3 * lengthOf(d, name, 'upper'));
  });

  it('a cord that is bought, or a finish without one, is no piece', () => {
    expect(drafted({ finish: 'drawstringCasing' }).pieces).toHaveLength(1);
    expect(drafted({ cord: 'ofCloth' }).pieces).toHaveLength(1);
  });

  it('a facing has the shape of the leg under it, edge for edge', () => {
    const d = drafted({ finish: 'facedCasing' });
    expect(lengthOf(d, 'waist facing', 'waist')).toBeCloseTo(lengthOf(d, 'leg', 'waist'), 9);
    const facing = pieceOf(d, 'waist facing');
    const [edge, low] = [pathEnd(d.leg.waistEdge), pathEnd(outlineEdge(facing.stitchLine, 'centreFront').curves)];
    // 6 mm of catch below the waist edge, along the same centre line.
    expect(distance(edge, low)).toBeGreaterThan(5.9);
    expect(distance(edge, low)).toBeLessThan(6.2);
  });
});

describe('hem finishes', () => {
  it.each(['contrastBand', 'ribCuff'] as const)('a %s counts in the finished length', (finish) => {
    const d = drafted({}, { finish, bandHeight: 50 });
    expect(d.measures.inseamFront).toBeCloseTo(plain.measures.inseamFront - 50, 3);
    expect(pieceOf(d, 'leg').cutLine.find((edge) => edge.name === 'hem')?.allowance).toBe(15);
  });

  it('a contrast band is as long as the hem, a cuff holds the ankle and lets the foot pass', () => {
    const band = drafted({}, { finish: 'contrastBand' });
    expect(lengthOf(band, 'hem band', 'upper')).toBeCloseTo(band.measures.hemGirthFinished, 6);
    // Practice: the larger of ankle + 10 and foot ÷ (1 + usable stretch).
    expect(ribCuffGirth(225, 334, 0.5)).toBeCloseTo(334 / 1.35, 9);
    expect(ribCuffGirth(260, 300, 1)).toBe(270);
    expect(hemElasticLength(225, 540)).toBe(260);
    expect(hemElasticLength(225, 200)).toBe(200);
  });

  it('hem casings are deep enough for what they hold, and a cord comes out at the side', () => {
    expect(
      linesOf(drafted({}, { finish: 'drawstringCasing' }), 'hemCordOpening').map((l) =>
        Math.round(pathStart(l.curves).x),
      ),
    ).toEqual([0]);
    const depth = (hem: Hem) => {
      const d = drafted({}, hem);
      const [line] = linesOf(d, 'hemStitching');
      return line ? Math.abs(pathStart(d.leg.hem).y - pathStart(line.curves).y) : 0;
    };
    expect(depth({ finish: 'elasticCasing', elasticWidth: 12 })).toBeGreaterThanOrEqual(13.5);
    expect(depth({ finish: 'drawstringCasing', cordWidth: 6 })).toBeCloseTo(12.35, 1);
  });

  it('an overlocked hem casing has cloth beyond its stitching, as a turned one has', () => {
    for (const finish of ['elasticCasing', 'drawstringCasing'] as const)
      for (const turnUnder of [0, 8]) {
        const { finished } = drafted({}, { finish, turnUnder });
        const fold = finished.hem.front[0]?.[0].y ?? 0;
        const raw = Math.abs(finished.hem.raw[0].y - fold);
        const stitching = Math.abs(finished.hem.stitching[0].y - fold);
        expect(raw - stitching, `${finish} ${turnUnder}`).toBeCloseTo(turnUnder === 0 ? 6 : 8, 0);
      }
  });

  it('holds the leg where it ends, not the ankle', () => {
    const lengths = ['ankle', 'belowKnee', 'short'] as const;
    const of = (finish: 'elasticCasing' | 'ribCuff') =>
      lengths.map((length) => {
        const d = drafted({}, { finish }, { leg: { ...exampleProject.leg, length } });
        return finish === 'elasticCasing' ? (d.notions.hemElasticLength ?? 0) : lengthOf(d, 'cuff', 'upper');
      });
    const { ankleGirth, thighGirth, calfGirth } = plain.body;
    const [ankle = 0, below = 0, short = 0] = of('elasticCasing');
    expect(ankle).toBeGreaterThanOrEqual(ankleGirth + 35);
    expect(ankle).toBeLessThan(ankleGirth + 50);
    expect(below).toBeGreaterThan(calfGirth - 20);
    expect(short).toBeGreaterThan(calfGirth + 60);
    expect(short).toBeLessThan(thighGirth + 36);
    const cuffs = of('ribCuff');
    expect([...cuffs].sort((a, b) => a - b)).toEqual(cuffs);
  });

  it('a hem facing has the inseams of the leg above the hem', () => {
    for (const length of ['ankle', 'belowKnee', 'short'] as const) {
      const d = drafted({}, { finish: 'facedHem' }, { leg: { ...exampleProject.leg, length } });
      const facing = pieceOf(d, 'hem facing');
      expect(lengthOf(d, 'hem facing', 'hem')).toBeCloseTo(lengthOf(d, 'leg', 'hem'), 6);
      expect(outlineCrossings(outlineCurves(facing.cutLine))).toEqual([]);
      expect(facing.cut).toBe(2);
      expect(facing.mirrored).toBe(true);
    }
  });

  it('a band that leaves no leg is refused', () => {
    const result = draft({
      ...exampleProject,
      leg: { ...exampleProject.leg, length: { inseam: 60 } },
      hem: { ...exampleProject.hem, finish: 'contrastBand', bandHeight: 60 },
    });
    expect(result.ok || result.problems.map((p) => p.field)).toEqual(['hem.bandHeight']);
  });
});

describe('a pocket', () => {
  it('is a piece of its own, and its place stands on the leg', () => {
    const d = drafted({}, {}, { pocket: { width: 150, height: 165, facing: 30, part: 'back', count: 2 } });
    expect(pieceOf(d, 'pocket').cut).toBe(2);
    expect(lengthOf(d, 'pocket', 'leftSide')).toBeCloseTo(195, 9);
    const [place] = linesOf(d, 'pocketPlace');
    expect(place?.curves.every((curve) => curve.every((p) => p.x < 0))).toBe(true);
  });
});

describe('marks for sewing', () => {
  it('sets the quarter of the waist halfway between the centre seams, whatever the side', () => {
    const [mark] = linesOf(plain, 'quarter');
    const waist = outlineEdge(pieceOf(plain, 'leg').stitchLine, 'waist').curves;
    const middle = mark ? pathStart(mark.curves) : { x: 0, y: 0 };
    expect(distance(pathStart(waist), middle)).toBeCloseTo(distance(middle, pathEnd(waist)), 9);
  });

  it('shows where to lengthen or shorten, clear of notches and hem', () => {
    const names = (d: Draft) =>
      pieceOf(d, 'leg')
        .lines.filter((l) => l.kind === 'lengthen')
        .map((l) => l.name);
    expect(names(plain)).toHaveLength(3);
    expect(names(drafted({}, {}, { leg: { ...exampleProject.leg, length: 'short' } }))).toHaveLength(1);
  });
});
