import './paper-env'; // first, and bare: sorters move named imports
import paper from 'paper/dist/paper-core.js';
import { curveIsStraight } from './curve';
import { restore } from './paper-env';
import type { Curve } from './types';

restore();

// One scope for all: items belong to the active scope, whoever made them.
const scope = new paper.PaperScope();
scope.setup(new paper.Size(1, 1));
scope.settings.insertItems = false;
scope.view.autoUpdate = false; // its 60 Hz timer would keep a Node process alive for ever

/**
 * A run of curves as a path of the vector engine; it never leaves this room. Straight curves lose their handles: with
 * handles on the chord the engine may see a loop in the rounding.
 */
export function enginePath(curves: readonly Curve[], closed: boolean): paper.Path {
  const arms = curves.map((curve) => (curveIsStraight(curve) ? NO_ARMS : armsOf(curve)));
  const segments = curves.map(
    ([a], i) =>
      new paper.Segment(
        new paper.Point(a.x, a.y),
        (arms[i - 1] ?? (closed ? arms.at(-1) : undefined) ?? NO_ARMS).into,
        (arms[i] ?? NO_ARMS).out,
      ),
  );
  const end = closed ? undefined : curves.at(-1)?.[3];
  if (end) segments.push(new paper.Segment(new paper.Point(end.x, end.y), (arms.at(-1) ?? NO_ARMS).into, NO_ARMS.out));
  return new paper.Path({ segments, closed, insert: false });
}

const NO_ARMS = { out: new paper.Point(0, 0), into: new paper.Point(0, 0) };

const armsOf = ([a, b, c, d]: Curve) => ({
  out: new paper.Point(b.x - a.x, b.y - a.y),
  into: new paper.Point(c.x - d.x, c.y - d.y),
});
