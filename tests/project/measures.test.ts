import { describe, expect, it } from 'vitest';
import type { EdgeName } from '../../src/edges';
import { curveMeetsLine, curvePoint, edgeLength, outlineEdge, pathEnd, pathStart } from '../../src/plane';
import { type Draft, draft, exampleProject, withValue } from '../../src/project';

const drafted = (changes: Readonly<Record<string, unknown>> = {}): Draft => {
  const project = Object.entries(changes).reduce((kept, [path, value]) => withValue(kept, path, value), exampleProject);
  const result = draft(project);
  if (!result.ok) throw new Error(result.problems.map(({ field }) => field).join());
  return result.value;
};

// What is told of the finished garment is what a tape finds on the printed lines.
describe('the finished measures', () => {
  const d = drafted({ 'leg.lowerCrotch': 12, 'leg.raiseWaist': 8, 'leg.straighten': 0.3 });
  const { sewn } = d.finished;
  const edge = (name: EdgeName) => outlineEdge(sewn.stitchLine, name).curves;
  const crotchFront = pathEnd(edge('crotchFront'));
  const crotchBack = pathStart(edge('crotchBack'));

  it('hip: twice the hip line of one leg', () => {
    const line = sewn.lines.find(({ name }) => name === 'hip');
    expect(d.measures.hipGirthFinished).toBeCloseTo(2 * edgeLength(line ?? { name: '', curves: [] }), 9);
    expect(d.measures.hipGirthFinished).toBeGreaterThan(exampleProject.body.hipGirth ?? 0);
  });

  it('thigh: from crotch point to crotch point', () => {
    expect(d.measures.thighGirthFinished).toBeCloseTo(crotchFront.x - crotchBack.x, 6);
  });

  it('crotch depth: from the waist edge at the side down to the crotch line', () => {
    const [waist] = d.leg.waistEdge;
    if (!waist) throw new Error('no waist edge');
    const [t = 0] = curveMeetsLine(waist, { x: 0, y: 0 }, { x: 0, y: 1 });
    expect(d.measures.crotchDepthFinished).toBeCloseTo(crotchFront.y - curvePoint(waist, t).y, 6);
  });

  it('crotch length against what was wanted, where that was measured; else nothing is missed', () => {
    expect(d.measures.crotchFit).toBeCloseTo(d.measures.crotchLengthFinished - (d.blocks.crotchWanted ?? 0), 9);
    expect(drafted({ 'body.crotchLength': undefined }).measures.crotchFit).toBe(0);
  });

  it('elastic: as it is cut; none where there is a band', () => {
    expect(d.measures.elasticLength).toBe(d.notions.elasticLength);
    expect(drafted({ 'waist.finish': 'drawstringCasing' }).measures.elasticLength).toBe(0);
  });
});
