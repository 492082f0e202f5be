import type { Mm } from '../../length';
import type { Point } from '../../plane';
import { mm, say } from '../../words';
import type { Garment } from '../garment';
import { drawing, onePanel } from './draw';
import type { StepPicture } from './picture';
import { rectangle, shifted } from './polygon';

/** The scrap's sides: no piece of a leg, so that nobody looks for one. */
const [WIDE, TALL]: readonly [Mm, Mm] = [110, 80];

/** Two layers of a scrap as an inseam is sewn: its stitching line, its allowance, and the finished edge. */
export function samplePicture(g: Garment): StepPicture {
  const { inseam } = g.allowances;
  const d = drawing(1.36 * WIDE);
  const u = d.unit;
  const scrap = rectangle(0, 0, WIDE, TALL);
  const stitched = WIDE - inseam;
  const swing = Math.min(2.4 * u, Math.max(inseam, u));
  const upright = (x: Mm): readonly [Point, Point] => [
    { x, y: 0 },
    { x, y: TALL },
  ];
  const half = TALL / 2;
  return onePanel(
    { left: -2 * u, right: WIDE + 16 * u, top: -2 * u, bottom: TALL + 8 * u },
    [
      ...d.cloth('right', scrap.map(shifted(1.4 * u, 1.4 * u))),
      ...d.cloth('wrong', scrap),
      d.line('lit', ...upright(stitched)),
      // Every other stitch of the zigzag falls at the edge, none beyond it.
      d.zigzag('overlock', upright(WIDE - swing / 2), swing),
      ...d.note({ x: stitched - 12 * u, y: half - 12 * u }, say`stitching line`, { x: stitched, y: half - 10 * u }),
      ...(inseam > 0
        ? [
            ...d.arrow({ x: stitched, y: half }, { x: WIDE, y: half }),
            d.word({ x: WIDE + 3 * u, y: half + u }, say`${mm(inseam)}`),
          ]
        : []),
      d.word({ x: 0, y: TALL + 6 * u }, say`right sides together, wrong side up`),
    ],
    say`Two layers, right sides together, sewn ${mm(inseam)} from the edge, the edge overlocked.`,
  );
}
