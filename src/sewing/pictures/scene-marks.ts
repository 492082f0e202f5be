import { cutCurves, type EdgeName, type LineName } from '../../edges';
import { type Box, between, type Point, pointsBounds } from '../../plane';
import { type Phrase, say } from '../../words';
import type { Garment } from '../garment';
import { type Draw, drawing, onePanel } from './draw';
import type { PictureItem, StepPicture } from './picture';
import { flipped, polygon, polyline } from './polygon';

type Outline = Garment['finished']['sewn'];

/** Lines of the paper that are marked on the cloth. */
const MARKED = ['stitching', 'quarter', 'opening', 'side', 'place'];

/** The right leg, wrong side up, so that its front lies at the left, with everything that is marked on it. */
export function marksPicture(g: Garment): StepPicture {
  const sewn = g.finished.pieced?.leg ?? g.finished.sewn;
  const over = flipped(0);
  const points = polygon(cutCurves(sewn)).map(over);
  const box = pointsBounds(points);
  const d = drawing(Math.max((box.bottom - box.top) / 0.86, (box.right - box.left) / 0.5));
  const u = d.unit;
  const notch = (edge: EdgeName): Point | undefined => {
    const at = sewn.notches.find((one) => one.edge === edge)?.at;
    return at && over(at);
  };
  const line = (name: LineName): Point | undefined => {
    const curves = sewn.lines.find((one) => one.name === name)?.curves;
    return curves && over(polyline(curves)[0] as Point);
  };
  const aside = (text: Phrase, at: Point | undefined, side: 1 | -1): readonly PictureItem[] =>
    at ? d.note({ x: side > 0 ? box.right + 5 * u : box.left - 5 * u, y: at.y }, text, at) : [];
  const [quarter, hemQuarter] = [line('quarter'), line('hemQuarter')];
  const level = g.leg.crotchLevel + 5 * u;
  return onePanel(
    { left: box.left - 8 * u, top: box.top - 8 * u, right: box.right + 8 * u, bottom: box.bottom + 9 * u },
    [
      ...d.cloth('wrong', points),
      ...sewn.lines
        .filter((one) => MARKED.includes(one.kind))
        .map((one) => d.line(one.kind === 'side' ? 'side' : 'mark', ...polyline(one.curves).map(over))),
      ...sewn.folds.map((fold) => d.line('fold', ...polyline(fold.curves).map(over))),
      ...notchTicks(sewn, d).map((tick) => d.line('notch', ...tick.map(over))),
      ...aside(say`1 notch`, notch('centreFront'), -1),
      ...aside(say`2 notches`, notch('centreBack'), 1),
      ...aside(say`notch`, notch('inseamFront'), -1),
      ...aside(say`notch`, notch('inseamBack'), 1),
      ...(quarter ? quarterNamed(d, quarter, { x: quarter.x, y: box.top - 3 * u }) : []),
      ...(hemQuarter ? quarterNamed(d, hemQuarter, { x: hemQuarter.x, y: box.bottom + 6 * u }) : []),
      ...pocketNamed(g, d, box),
      d.word({ x: 1.2 * u, y: 0.55 * (box.top + g.leg.crotchLevel) }, say`side`),
      d.word({ x: 0.5 * box.left, y: level }, say`front`, 'middle'),
      d.word({ x: 0.5 * box.right, y: level }, say`back`, 'middle'),
    ],
    say`The right leg, wrong side up, its front at the left, with its notches, folds, stitching lines, side and quarter marks.`,
  );
}

/** Each notch as its clips: one tick, or two side by side. */
const notchTicks = ({ notches }: Outline, { unit: u }: Draw): readonly (readonly [Point, Point])[] =>
  notches.flatMap(({ at, outward, count, length }) =>
    (count === 1 ? [0] : [-0.7 * u, 0.7 * u]).map((shift): readonly [Point, Point] => {
      const from = { x: at.x - outward.y * shift, y: at.y + outward.x * shift };
      const reach = Math.max(length, 2 * u);
      return [from, { x: from.x + outward.x * reach, y: from.y + outward.y * reach }];
    }),
  );

/** A quarter mark's name above or below the leg, and a thin line to the mark. */
const quarterNamed = (d: Draw, mark: Point, at: Point): readonly PictureItem[] => [
  d.line('thin', mark, { x: at.x, y: at.y + (at.y < mark.y ? 0.6 : -2.8) * d.unit }),
  d.word(at, say`quarter`, 'middle'),
];

/** On which leg the pocket is marked, on the picture's side where it lies, above the centre's notch. */
function pocketNamed(g: Garment, d: Draw, { left, right }: Box): readonly PictureItem[] {
  const place = g.finished.sewn.lines.find(({ kind }) => kind === 'place');
  if (!place || !g.pocket) return [];
  const [a, b, c, e] = polyline(place.curves).map(flipped(0)) as [Point, Point, Point, Point];
  const front = g.pocket.part === 'front';
  const at = front ? between(c, e, 0.5) : between(a, b, 0.5);
  const notch = g.finished.sewn.notches.find(({ edge }) => edge === (front ? 'centreFront' : 'centreBack'));
  const y = Math.min(at.y, (notch?.at.y ?? at.y) - 4 * d.unit);
  const text = g.pocket.count === 2 ? say`pocket, both legs` : say`pocket, this leg only`;
  return d.note({ x: front ? left - 5 * d.unit : right + 5 * d.unit, y }, text, at);
}
