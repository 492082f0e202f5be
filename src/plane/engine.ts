import './paper-env'; // first, and bare: sorters move named imports
import paper from 'paper/dist/paper-core.js';
import { restore } from './paper-env';
import type { Curve, Point } from './types';

restore();

// One scope for all: items belong to the active scope, whoever made them.
const scope = new paper.PaperScope();
scope.setup(new paper.Size(1, 1));
scope.settings.insertItems = false;
scope.view.autoUpdate = false; // its 60 Hz timer would keep a Node process alive for ever

/** A run of curves as a path of the vector engine; it never leaves this room. */
export function enginePath(curves: readonly Curve[], closed: boolean): paper.Path {
  const segments = curves.map(
    ([a, b], i) =>
      new paper.Segment(
        new paper.Point(a.x, a.y),
        handle(i > 0 ? curves[i - 1] : closed ? curves.at(-1) : undefined, 2, a),
        new paper.Point(b.x - a.x, b.y - a.y),
      ),
  );
  const last = curves.at(-1);
  if (last && !closed)
    segments.push(new paper.Segment(new paper.Point(last[3].x, last[3].y), handle(last, 2, last[3])));
  return new paper.Path({ segments, closed, insert: false });
}

function handle(curve: Curve | undefined, index: 1 | 2, at: Point): paper.Point {
  return curve ? new paper.Point(curve[index].x - at.x, curve[index].y - at.y) : new paper.Point(0, 0);
}
