import { describe, expect, it } from 'vitest';
import { HEM_FINISHES, type Seam, seamParts, seamsOf, WAIST_FINISHES } from '../../src/edges';
import { type Draft, exampleProject } from '../../src/project';
import { drafted } from './drafted';

/** What is sewn to each other differs by no more, but for knits, which are stretched to the leg. */
const EQUAL = 1;
const STRETCHED = ['waistBand', 'cuff'];
const isStretched = ({ kind, b }: Seam): boolean =>
  (kind === 'waist' || kind === 'hem') && b.some(({ piece }) => STRETCHED.includes(piece));

const combinations: readonly (readonly [string, Draft])[] = WAIST_FINISHES.flatMap((waist, i) =>
  [0, 3].map((further) => {
    const hem = HEM_FINISHES[(i + further) % HEM_FINISHES.length] ?? 'turned';
    const cord = { cord: 'ofCloth' } as const;
    const of = drafted({
      cloth: { ...exampleProject.cloth, piecedTip: further === 0 ? 40 : 0 },
      waist: { ...exampleProject.waist, finish: waist, ...cord },
      hem: { ...exampleProject.hem, finish: hem, ...cord },
    });
    return [`${waist}, ${hem}`, of] as const;
  }),
);

describe('the seams of a pattern', () => {
  it.each(combinations)('%s: both sides are equally long, unless one is stretched', (_, { pieces }) => {
    for (const seam of seamsOf(pieces)) {
      const off = Math.abs(seam.lengthA - seam.lengthB);
      if (isStretched(seam)) expect(off, seam.kind).toBeGreaterThan(EQUAL);
      else expect(off, seam.kind).toBeLessThan(EQUAL);
    }
  });

  it.each(combinations)('%s: both sides bear the same allowance', (_, { pieces }) => {
    const allowance = (piece: string, edge: string) =>
      pieces.find(({ kind }) => kind === piece)?.cutLine.find(({ name }) => name === edge)?.allowance;
    for (const { kind, a, b } of seamsOf(pieces)) {
      const borne = [...a, ...b].flatMap(({ piece, edges }) => edges.map((edge) => allowance(piece, edge)));
      expect(new Set(borne).size, kind).toBe(1);
    }
  });

  it('join the tip first, then the inseam on both pieces', () => {
    const { pieces } = drafted({ cloth: { ...exampleProject.cloth, piecedTip: 40 } });
    expect(seamParts(pieces, 'piecing')).toEqual([
      { piece: 'leg', edges: ['piecing'] },
      { piece: 'forkTip', edges: ['piecing'] },
    ]);
    expect(seamParts(pieces, 'inseam')).toEqual([
      { piece: 'leg', edges: ['inseamFront', 'inseamFrontTurning', 'inseamBackTurning', 'inseamBack'] },
      { piece: 'forkTip', edges: ['inseamBack'] },
    ]);
  });

  it('compare one leg with the other', () => {
    const of = drafted({ sides: { right: { longerLeg: 12 } } });
    const [left, right] = of.legs;
    const crotch = seamsOf(left.pieces, right?.pieces).filter(({ kind }) => kind === 'crotch');
    expect(crotch).toHaveLength(2);
    for (const { lengthA, lengthB } of crotch) expect(Math.abs(lengthA - lengthB)).toBeLessThan(EQUAL);
  });
});
