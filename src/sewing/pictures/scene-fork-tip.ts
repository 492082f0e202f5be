import { cutCurves } from '../../edges';
import type { Mm } from '../../length';
import { between, type Point, pointsBounds } from '../../plane';
import { say } from '../../words';
import type { Garment } from '../garment';
import { captioned, drawing } from './draw';
import { runOf } from './leg-views';
import type { StepPicture } from './picture';
import { flipped, polygon, polyline } from './polygon';

/** How much of the leg is seen beyond the tip, as a share of the seam. */
const BESIDE = 0.75;

/** The fork's tip turned over on the back of its leg, right sides together, their seam lit. */
export function forkTipPicture(g: Garment): StepPicture {
  const { pieced } = g.finished;
  if (!pieced) throw new RangeError('there is no fork tip to sew on');
  const [lower, upper] = polyline(runOf(pieced.leg.stitchLine, 'piecing')) as readonly [Point, Point];
  const tall: Mm = lower.y - upper.y;
  const over = flipped(lower.x);
  const tip = polygon(cutCurves(pieced.tip)).map(over);
  const open = polygon(cutCurves(pieced.tip));
  const box = pointsBounds([...tip, ...open]);
  const window = { left: box.left, right: box.right + BESIDE * tall, top: box.top - 0.3 * tall, bottom: box.bottom };
  const d = drawing(1.35 * Math.max(window.right - window.left, window.bottom - window.top));
  const u = d.unit;
  const notch = pieced.tip.notches.find(({ edge }) => edge === 'piecing')?.at;
  const way = { x: 0, y: 1 };
  const middle = between(upper, lower, 0.6);
  return captioned(
    { left: window.left - 22 * u, right: window.right + 2 * u, top: window.top - 2 * u, bottom: window.bottom + 4 * u },
    [
      ...d.cloth('right', polygon(cutCurves(pieced.leg))),
      ...d.cloth('wrong', tip),
      d.line('hidden', ...open, open[0] as Point),
      d.line('lit', lower, upper),
      ...[between(upper, lower, 0.04), ...(notch ? [notch] : []), between(upper, lower, 0.96)].flatMap((p) =>
        d.pin(p, way),
      ),
      ...d.arrow(
        { x: lower.x + 0.3 * (lower.x - box.left), y: middle.y },
        { x: (lower.x + box.left) / 2, y: middle.y },
      ),
      ...d.note({ x: box.left - 4 * u, y: upper.y + 0.2 * tall }, say`sew`, between(upper, lower, 0.2)),
      ...(notch ? d.note({ x: box.left - 4 * u, y: notch.y + 3 * u }, say`notch on notch`, notch) : []),
      d.word({ x: (box.right + window.right) / 2, y: middle.y }, say`back`, 'middle'),
      ...d.note(
        { x: box.right + 4 * u, y: upper.y + 0.28 * tall },
        say`tip, wrong side up`,
        over({ x: lower.x - 0.6 * (lower.x - box.left), y: upper.y + 0.3 * tall }),
      ),
    ],
    say`leg, right side up; dotted: the tip opened out`,
    say`The back of a leg, right side up; the fork’s tip lies on it, wrong side up, its straight edge on the leg’s; the seam is lit, and dotted lines show the tip opened out.`,
    d,
  );
}
