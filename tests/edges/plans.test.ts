import { describe, expect, it } from 'vitest';
import { type HemChoices, type HemPlan, hemPlan, hemTurning } from '../../src/edges/hem';
import {
  type Curve,
  curveMap,
  distance,
  pathEnd,
  pathLength,
  pathStart,
  pathThrough,
  point,
  pointsBounds,
  turned,
} from '../../src/plane';
import { exampleProject, hemOf, type Project } from '../../src/project';
import { pieceName } from '../names';
import { drafted, lineOf, near, pieceOf, ring } from './drafted';

const withHem = (hem: Partial<HemChoices>) => ({ ...hemOf(exampleProject), ...hem });
const withWaist = (waist: Partial<Project['waist']>) => ({ ...exampleProject.waist, ...waist });

describe('what a hem finish does to the leg', () => {
  const hem = withHem({ depth: 25, turnUnder: 8, elasticWidth: 12, cordWidth: 5, bandHeight: 40 });
  it.each([
    ['turned', 'folded', 25, 8, true, 0, undefined, 'depth', 25],
    ['facedHem', 'faced', 25, 8, true, 0, undefined, 'depth', 25],
    // Elastic and 1.6 mm; a cord and a quarter of an inch.
    ['elasticCasing', 'folded', 13.6, 8, true, 0, { holds: 'elastic', width: 12 }, 'elasticWidth', 12],
    ['drawstringCasing', 'folded', 11.35, 8, true, 0, { holds: 'cord', width: 5 }, 'cordWidth', 5],
    ['contrastBand', 'seamed', 0, 0, false, 40, undefined, 'bandHeight', 40],
    ['ribCuff', 'seamed', 0, 0, false, 40, undefined, 'bandHeight', 40],
  ] as const)('%s', (finish, kind, depth, beyond, turnedUnder, added, channel, key, value) => {
    const plan = hemPlan({ ...hem, finish });
    expect(plan).toEqual({
      kind,
      depth: expect.closeTo(depth, 9),
      beyond,
      turnedUnder,
      added,
      channel,
      chosen: { key, value },
    });
  });

  it('overlocked, a hem has nothing turned under, and a casing 6 mm beyond its stitching', () => {
    expect(hemPlan({ ...hem, turnUnder: 0, finish: 'turned' })).toMatchObject({ beyond: 0, turnedUnder: false });
    expect(hemPlan({ ...hem, turnUnder: 0, finish: 'elasticCasing' })).toMatchObject({ beyond: 6, turnedUnder: false });
  });
});

describe('a hem turning', () => {
  const front = pathThrough(point(200, 0), point(190, 300), point(180, 600));
  const back = pathThrough(point(-250, 0), point(-220, 600));
  const plan = hemPlan(withHem({ depth: 30, turnUnder: 10 }));

  it('lies the same on a hem that slants', () => {
    const slant = (p: { x: number; y: number }) => turned(p, point(20, 10), 0.12);
    const slanted = (run: readonly Curve[]) => run.map((curve) => curveMap(curve, slant));
    const [level, found] = [hemTurning(front, back, plan), hemTurning(slanted(front), slanted(back), plan)];
    for (const name of ['raw', 'turnUnder', 'stitching'] as const)
      expect(found[name], name).toEqual(level[name].map((p) => near(slant(p))));
    for (const side of ['front', 'back'] as const)
      expect(pathLength(found.above[side])).toBeCloseTo(pathLength(level.above[side]), 6);
  });

  it('is as deep as the hem and what is turned under, in its stitching, its fold and its raw edge', () => {
    const { stitching, turnUnder, raw } = hemTurning(front, back, plan);
    expect([stitching[0].y, turnUnder[0].y, raw[0].y]).toEqual([570, 630, 640].map((y) => expect.closeTo(y, 9)));
    expect([stitching[1].y, turnUnder[1].y, raw[1].y]).toEqual([570, 630, 640].map((y) => expect.closeTo(y, 9)));
  });

  it('is none where nothing is turned: every line is the hem itself', () => {
    const bare: HemPlan = hemPlan(withHem({ finish: 'contrastBand' }));
    const hem = [pathEnd(front), pathEnd(back)];
    expect(hemTurning(front, back, bare)).toEqual({
      front: [],
      back: [],
      raw: hem,
      turnUnder: hem,
      stitching: hem,
      above: { front: [], back: [] },
    });
  });

  it('reaches over a joint of the inseam', () => {
    const deep = hemTurning(front, back, hemPlan(withHem({ depth: 100, turnUnder: 0 })));
    expect(deep.above.front).toHaveLength(1);
    const jointed = hemTurning(
      pathThrough(point(200, 0), point(182, 560), point(180, 600)),
      back,
      hemPlan(withHem({ depth: 100, turnUnder: 0 })),
    );
    expect(jointed.above.front).toHaveLength(2);
    expect(pathStart(jointed.above.front).y).toBeCloseTo(500, 9);
    expect(pathEnd(jointed.above.front)).toEqual(point(180, 600));
  });
});

describe('lines and folds of each finish', () => {
  const folds = (change: Partial<Project>) => pieceOf(drafted(change), 'leg').folds.map(({ name }) => name);
  it('are those that are folded', () => {
    expect(folds({})).toEqual(['waistFold', 'hemFold', 'turnUnderFold']);
    expect(folds({ hem: withHem({ turnUnder: 0 }) })).toEqual(['waistFold', 'hemFold']);
    expect(folds({ waist: withWaist({ finish: 'facedCasing' }) })).toEqual(['hemFold', 'turnUnderFold']);
    expect(
      folds({ waist: withWaist({ finish: 'knitBand' }), hem: withHem({ finish: 'facedHem', turnUnder: 8 }) }),
    ).toEqual([]);
  });

  it('have a stitching where a casing or a turning is stitched down, and none where something is seamed on', () => {
    const stitched = (change: Partial<Project>) =>
      pieceOf(drafted(change), 'leg')
        .lines.filter(({ kind }) => kind === 'stitching')
        .map(({ name }) => name);
    expect(stitched({})).toEqual(['casingStitching', 'hemStitching']);
    expect(stitched({ waist: withWaist({ finish: 'facedCasing' }) })).toEqual(['casingStitching', 'hemStitching']);
    expect(stitched({ waist: withWaist({ finish: 'separateCasing' }), hem: withHem({ finish: 'ribCuff' }) })).toEqual(
      [],
    );
  });

  it('a quarter is marked down from the raw edge and up from the waist edge', () => {
    const [raw, edge] = pieceOf(drafted(), 'leg').lines.filter(({ kind }) => kind === 'quarter');
    const down = (curves: readonly Curve[] = []) => pathEnd(curves).y - pathStart(curves).y;
    expect(down(raw?.curves)).toBeGreaterThan(11);
    expect(down(edge?.curves)).toBeLessThan(-11);
  });

  it('the rise is made longer halfway between waist and hip', () => {
    const { leg, finished } = drafted();
    const rise = lineOf(finished.sewn, 'lengthenRise');
    const waist = Math.max(leg.front.waistPoint.y, leg.back.waistPoint.y);
    expect(pathStart(rise).y).toBeCloseTo((waist + leg.hipLevel) / 2, 9);
  });
});

describe('what holds the leg', () => {
  it('is as long for a cuff as for an elastic that ends at the same height', () => {
    for (const length of ['ankle', 'midCalf', 'knee'] as const) {
      const at = (hem: Partial<HemChoices>) => drafted({ leg: { ...exampleProject.leg, length }, hem: withHem(hem) });
      const cuff = pieceOf(at({ finish: 'ribCuff', ribStretch: 2 }), 'cuff');
      const elastic = at({ finish: 'elasticCasing' }).notions.hemElasticLength ?? 0;
      const { left, right, top, bottom } = pointsBounds(ring(cuff));
      // Beside its 25 mm of lap.
      expect(Math.max(right - left, bottom - top), length).toBeCloseTo(elastic - 25, 6);
    }
  });
});

describe('cords sewn of the cloth', () => {
  it('are cut only where a cord is drawn through, and say how they are joined', () => {
    const names = (change: Partial<Project>) => drafted(change).pieces.map(pieceName);
    expect(names({ waist: withWaist({ cord: 'ofCloth' }), hem: withHem({ cord: 'ofCloth' }) })).toEqual(['leg']);
    const both = {
      waist: withWaist({ finish: 'drawstringCasing', cord: 'ofCloth' }),
      hem: withHem({ finish: 'drawstringCasing', cord: 'ofCloth' }),
    } as const;
    const d = drafted(both);
    expect(['waist cord', 'hem cord'].map((name) => pieceOf(d, name).texts.map(({ text }) => text))).toEqual([
      ['waist cord · cut 2', 'joined at centre back'],
      ['hem cord · cut 2', 'one for each hem'],
    ]);
  });
});

// What is cut of the leg's cloth shrinks with it; what is cut of another cloth doesn't.
describe('cloth that shrinks in its first wash', () => {
  const cloth = { ...exampleProject.cloth, washFirst: false, shrinkLength: 0.1, shrinkWidth: 0.05 };
  const sizeOf = (change: Partial<Project>, name: string, edge: 'width' | 'height') => {
    const { left, right, top, bottom } = pointsBounds(ring(pieceOf(drafted(change), name)));
    return edge === 'width' ? right - left : bottom - top;
  };
  it('has a larger pocket and a higher casing, and the same knit band', () => {
    const pocket = { width: 150, height: 165, facing: 30, part: 'back', count: 1 } as const;
    expect(sizeOf({ cloth, pocket }, 'pocket', 'width')).toBeCloseTo(150 / 0.95, 6);
    expect(sizeOf({ cloth, pocket }, 'pocket', 'height')).toBeCloseTo(195 / 0.9, 6);
    // A long strip stands upright: its height lies across the cloth.
    const waist = withWaist({ finish: 'separateCasing' });
    expect(sizeOf({ cloth, waist }, 'casing', 'width')).toBeCloseTo(54 / 0.95, 6);
    const hem = withHem({ finish: 'contrastBand' });
    expect(sizeOf({ cloth, hem }, 'hem band', 'width')).toBeCloseTo(120 / 0.95, 6);
    const knit = withWaist({ finish: 'knitBand' });
    expect(sizeOf({ cloth, waist: knit }, 'waist band', 'width')).toBeCloseTo(120, 6);
  });

  it('has its cord’s opening in the middle of the channel as it is cut', () => {
    const waist = withWaist({ finish: 'elasticAndDrawstring' });
    const { finished } = drafted({ cloth, waist });
    const high = (lines: typeof finished.piece) => {
      const [hole, edge] = [lineOf(lines, 'cordOpening'), pathEnd(lineOf(lines, 'waistEdge'))];
      return edge.y - (pathStart(hole).y + pathEnd(hole).y) / 2;
    };
    expect(high(finished.piece) / high(finished.sewn)).toBeCloseTo(1 / 0.9, 2);
  });

  it('says so below the words of the front, clear of them', () => {
    const { texts } = drafted({ cloth }).finished.piece;
    const note = texts.find(({ says }) => says === 'note');
    const front = texts.find(({ text }) => text === 'front');
    expect(note?.text).toBe('cut 11.1 % longer and 5.3 % wider: not washed first');
    expect(note?.at.x).toBeCloseTo(front?.at.x ?? 0, 6);
    expect((note?.at.y ?? 0) - (note?.size ?? 0)).toBeGreaterThan(front?.at.y ?? 0);
    expect(distance(note?.at ?? point(0, 0), front?.at ?? point(0, 0))).toBeLessThan(2 * (front?.size ?? 0));
  });
});
