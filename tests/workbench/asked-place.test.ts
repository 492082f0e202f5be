import { beforeAll, describe, expect, it } from 'vitest';
import { plateBodies } from '../../.house/plate-bodies';
import { draft, exampleProject, groupAnew, type Project } from '../../src/project';
import { tellDraftSteps } from '../../src/workbench/store/working-told';
import { boxAround } from '../../src/workbench/table/asked-place';
import { FIGURE } from '../../src/workbench/table/drawings/figure';
import { STATION_DRAWINGS } from '../../src/workbench/table/station-drawings';
import { share } from '../outside/every';

beforeAll(tellDraftSteps);

const DRAWINGS = { ...STATION_DRAWINGS, body: FIGURE };

/** Fields that are about a part of the drawing, by the station where they are typed. */
const FIELDS = {
  body: ['body.waistGirth', 'body.hipGirth', 'body.kneeGirth', 'body.insideLeg'],
  blocks: ['block.riseEase', 'block.waistEase'],
  leg: ['leg.raiseWaist'],
  edges: ['waist.elasticWidth', 'waist.finish', 'hem.depth', 'hem.finish', 'pocket.width'],
} as const;

const projects = share(plateBodies.flat(), 6).map(
  ({ name, body, rest }): Project => ({
    ...exampleProject,
    ...rest,
    body: { label: name, ...body } as Project['body'],
    pocket: groupAnew('pocket', 'cm'),
  }),
);

describe.each(Object.entries(FIELDS))('at %s', (station, paths) => {
  it.each(paths)('the drawing comes closer to what %s is about, and shows where that is', (path) => {
    for (const project of projects) {
      const result = draft(project);
      if (!result.ok) throw new Error(`${project.body.label} can not be drafted`);
      const { box, asked } = DRAWINGS[station as keyof typeof FIELDS];
      const whole = box(result.value);
      const place = asked?.(result.value, path);
      if (!place) throw new Error(`no place for ${path}`);
      const near = boxAround(place.box, whole);
      // A knee is as wide as a narrow drawing of it: then all of that is shown.
      if (!near) continue;
      const [width, height] = [near.right - near.left, near.bottom - near.top];
      for (const [from, to, a, b] of [
        [near.left, near.right, place.box.left, place.box.right],
        [near.top, near.bottom, place.box.top, place.box.bottom],
      ] as const) {
        expect(from, path).toBeLessThanOrEqual(a);
        expect(to, path).toBeGreaterThanOrEqual(b);
      }
      expect(width).toBeGreaterThanOrEqual(0.4 * (whole.right - whole.left) - 1e-6);
      expect(height).toBeGreaterThanOrEqual(0.4 * (whole.bottom - whole.top) - 1e-6);
    }
  });
});

it('comes closer to a hem, and not for a spread, which is about the whole leg', () => {
  const result = draft(exampleProject);
  if (!result.ok) throw new Error('the example can not be drafted');
  const nearOf = (station: 'leg' | 'edges', path: string) => {
    const { box, asked } = STATION_DRAWINGS[station];
    const place = asked?.(result.value, path);
    return place && boxAround(place.box, box(result.value));
  };
  expect(nearOf('edges', 'hem.depth')).toBeDefined();
  expect(nearOf('leg', 'leg.spread')).toBeUndefined();
  expect(nearOf('edges', 'paper.margin')).toBeUndefined();
});
