import { between, distance, type Point, pointsBounds } from '../../plane';
import { say } from '../../words';
import type { Garment } from '../garment';
import { captioned, drawing } from './draw';
import { cutLeg } from './leg-views';
import type { StepPicture } from './picture';
import { polyline } from './polygon';

/** Where the cord comes out, before anything is folded: the opening lit, the patch behind it. */
export function openingsPicture(g: Garment, at: 'waist' | 'hem'): StepPicture {
  const { sewn } = g.finished;
  const name = at === 'waist' ? 'cordOpening' : 'hemCordOpening';
  const opening = polyline(sewn.lines.find((line) => line.name === name)?.curves ?? []);
  const [a, b] = opening as readonly [Point, Point];
  const middle = between(a, b, 0.5);
  const d = drawing(210);
  const u = d.unit;
  const reach = 15;
  const tall = Math.max(15, distance(a, b) / 2 + 9);
  const patch = [
    { x: middle.x - reach, y: middle.y - tall },
    { x: middle.x + reach, y: middle.y - tall },
    { x: middle.x + reach, y: middle.y + tall },
    { x: middle.x - reach, y: middle.y + tall },
  ];
  const leg = cutLeg(g);
  const around = pointsBounds(leg);
  const left = at === 'waist' ? middle.x - 95 : middle.x - 105;
  // As much of the raw edge as is seen, and no empty cloth or table beyond.
  const edgeSeen = pointsBounds(leg.filter((p) => p.x > left && p.y < middle.y)).top;
  const top = at === 'waist' ? Math.max(Math.min(edgeSeen, middle.y - tall) - 8 * u, middle.y - 110) : middle.y - 80;
  const bottom = at === 'waist' ? middle.y + tall + 22 * u : Math.min(middle.y + 70, around.bottom + 6 * u);
  const centre = pointsBounds(leg.filter((p) => p.y < middle.y)).right;
  const label = (y: number) => ({ x: left + 30 * u, y });
  const fold = sewn.folds.find((one) => one.name === (at === 'waist' ? 'waistFold' : 'hemFold'));
  const seam = sewn.lines.find((line) => line.name === (at === 'waist' ? 'casingStitching' : 'hemStitching'));
  // A straight line's upper side, where its label stands over it.
  const levelAt = (curves: Parameters<typeof polyline>[0] | undefined): number => {
    const run = polyline(curves ?? []);
    const [from, to] = [run[0] ?? middle, run.at(-1) ?? middle];
    const on = (x: number) => from.y + ((x - from.x) / (to.x - from.x)) * (to.y - from.y);
    return Math.min(on(left + 8 * u), on(left + 30 * u));
  };
  // The waist's are named beyond centre front, the hem's below the patch, where no line of the paper runs.
  const beside = (row: number): Point =>
    at === 'waist'
      ? { x: centre + 4 * u, y: middle.y + (8 * row - 3) * u }
      : { x: middle.x + reach + 5 * u, y: middle.y + tall + (6 + 6 * row) * u };
  // On the leg's edge at a level, right of the opening.
  const centreAt = (y: number): Point => ({
    x: leg.reduce((x, p) => (Math.abs(p.y - y) < 40 && p.x > middle.x ? Math.min(x, p.x) : x), centre),
    y,
  });
  return captioned(
    { left, top, right: at === 'waist' ? centre + 4 * u : left + 210, bottom },
    [
      ...d.cloth('right', leg),
      ...sewn.folds.map((one) => d.line('fold', ...polyline(one.curves))),
      ...sewn.lines.filter((line) => line.kind === 'stitching').map((line) => d.line('mark', ...polyline(line.curves))),
      ...sewn.lines.filter((line) => line.kind === 'side').map((line) => d.line('side', ...polyline(line.curves))),
      d.line('hidden', ...patch, patch[0] as Point),
      d.line('lit', a, b),
      d.line('mark', { x: a.x - 1.4, y: a.y }, { x: a.x + 1.4, y: a.y }),
      d.line('mark', { x: b.x - 1.4, y: b.y }, { x: b.x + 1.4, y: b.y }),
      d.word({ ...label(levelAt(fold?.curves) - u) }, say`fold`, 'right'),
      d.word({ ...label(levelAt(seam?.curves) - u) }, say`stitching line`, 'right'),
      ...d.note(beside(0), say`opening`, at === 'waist' ? middle : b),
      ...d.note(
        beside(1),
        say`patch behind it`,
        at === 'waist'
          ? { x: middle.x + reach, y: middle.y + tall / 2 }
          : { x: middle.x + reach / 2, y: middle.y + tall },
      ),
      ...(at === 'waist' ? d.note(beside(2), say`centre front`, centreAt(middle.y + (8 * 2 - 3) * u)) : []),
    ],
    at === 'waist' ? say`leg, right side up` : say`right side up, hem below`,
    say`The opening for the cord on the right side of the leg, with a patch behind it, between fold and stitching line.`,
    d,
  );
}
