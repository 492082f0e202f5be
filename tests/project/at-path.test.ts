import { expect, it } from 'vitest';
import { exampleProject, valueAt, withValue } from '../../src/project';

it('puts a value in its place and leaves all else shared', () => {
  const changed = withValue(exampleProject, 'leg.spread', 40);
  expect(valueAt(changed, 'leg.spread')).toBe(40);
  expect(changed.body).toBe(exampleProject.body);
  expect(valueAt(exampleProject, 'leg.spread')).not.toBe(40);
});

it('takes a measurement away that was left empty', () => {
  const measured = withValue(exampleProject, 'body.kneeGirth', 390);
  expect('kneeGirth' in withValue(measured, 'body.kneeGirth', undefined).body).toBe(false);
});

it('turns a name into a group where a number needs one', () => {
  const named = withValue(exampleProject, 'leg.length', 'ankle');
  expect(withValue(named, 'leg.length.inseam', 640).leg.length).toEqual({ inseam: 640 });
});

it('finds nothing beyond a name', () => {
  const named = withValue(exampleProject, 'leg.length', 'ankle');
  expect(valueAt(named, 'leg.length.inseam')).toBeUndefined();
});
