import type { Mm } from '../../length';
import { type Point, pointsBounds, subtract, unit } from '../../plane';
import { type Phrase, say } from '../../words';
import { sewingFacts } from '../facts';
import type { Garment } from '../garment';
import { captioned, type Draw, drawing } from './draw';
import { cutLeg, foldedLeg, hemmedLeg, runOf, type Tube, tubeOf } from './leg-views';
import type { PictureItem, StepPicture } from './picture';
import { flipped, type Move, polyline, shifted } from './polygon';

/** A leg folded right sides together, its inseam lit. */
export function inseamsPicture(g: Garment): StepPicture {
  const { sewn } = g.finished;
  const hemmed = sewingFacts(g).hemFlat;
  const { front, back, fold } = foldedLeg(g, hemmed ? hemmedLeg(g) : cutLeg(g));
  const seam = polyline(hemmed ? g.leg.front.inseam : runOf(sewn.stitchLine, 'inseamFront'));
  const box = pointsBounds([...front, ...back]);
  const d = drawing(1.05 * (box.bottom - box.top));
  const u = d.unit;
  const notches = sewn.notches.filter((notch) => notch.edge === 'inseamFront');
  const pins = notches.flatMap((notch) => d.pin(notch.at, { x: -notch.outward.y, y: notch.outward.x }));
  const ends = [seam[0] as Point, seam.at(-1) as Point].flatMap((p) => d.pin(p, { x: 0, y: 1 }));
  const halfway = seam[Math.floor(seam.length / 2)] as Point;
  // On a short leg the notch lies halfway down: there the seam is named further down.
  const notch = notches[0];
  const middle =
    notch && Math.abs(halfway.y - notch.at.y) < 5 * u ? (seam[Math.floor(0.8 * seam.length)] as Point) : halfway;
  const foldWay = unit(subtract(fold[1], fold[0]));
  const onFold = (share: number): Point => {
    const y = box.top + share * (box.bottom - box.top);
    return { x: fold[0].x + ((y - fold[0].y) * foldWay.x) / foldWay.y, y };
  };
  const middleOfFront =
    (onFold(0.26).x + front.reduce((x, p) => Math.max(x, p.y < onFold(0.26).y ? p.x : x), onFold(0.26).x)) / 2;
  return captioned(
    { left: box.left - 20 * u, top: box.top - 3 * u, right: box.right + 30 * u, bottom: box.bottom + 3 * u },
    [
      ...d.cloth('right', back),
      ...d.cloth('wrong', front),
      d.line('lit', ...seam),
      ...pins,
      ...ends,
      ...d.note({ x: box.right + 5 * u, y: middle.y }, say`sew the inseam`, middle),
      ...(notch ? d.note({ x: box.right + 5 * u, y: notch.at.y }, say`notch on notch`, notch.at) : []),
      ...d.note({ x: Math.min(box.left, onFold(0.62).x) - 4 * u, y: onFold(0.62).y }, say`fold, no seam`, onFold(0.62)),
      d.word({ x: middleOfFront, y: onFold(0.26).y }, say`front`, 'middle'),
      ...d.note({ x: box.right + 5 * u, y: box.top + 4 * u }, say`back, underneath`, backShown(front, back)),
    ],
    say`right sides together, wrong side up`,
    say`A leg folded right sides together: the front lies wrong side up on the wider back, front inseam on back inseam; the inseam is lit.`,
    d,
  );
}

/** A point where the back looks out from under the front: near its highest corner. */
function backShown(front: readonly Point[], back: readonly Point[]): Point {
  const upper = pointsBounds(front).top;
  const corner = back.reduce((a, b) => (b.x - b.y > a.x - a.y ? b : a));
  const centre = pointsBounds(back);
  return {
    x: corner.x - 0.06 * (centre.right - centre.left),
    y: Math.max(corner.y, centre.top) + 0.15 * Math.abs(upper - centre.top) + 12,
  };
}

/** A tube laid flat, inseam up: `out` is the face that looks out. */
function tubeItems(tube: Tube, out: 'right' | 'wrong', move: Move, d: Draw): readonly PictureItem[] {
  return [...d.cloth(out === 'right' ? 'wrong' : 'right', tube.far.map(move)), ...layerItems(tube, out, move, d)];
}

/** The upper layer of a tube. */
function layerItems(tube: Tube, out: 'right' | 'wrong', move: Move, d: Draw): readonly PictureItem[] {
  return [
    ...tube.near.map((part) => d.area(out, part.map(move))),
    ...[...tube.waists, ...tube.folds, tube.crotch].map((run) => d.line('edge', ...run.map(move))),
    d.line('stitch', ...tube.inseam.map(move)),
  ];
}

/** One leg, right side out, slipped into the other, and the crotch seam lit. */
export function legInLegPicture(g: Garment): StepPicture {
  const tube = tubeOf(g);
  const outer = g.sides ? tubeOf(g.sides.left) : tube;
  const all = [...tube.far, ...tube.near.flat()];
  const box = pointsBounds(all);
  const depth = Math.min(tube.inseam[1].y, g.leg.crotchLevel + 0.45 * (g.leg.crotchLevel - box.top));
  const width = box.right - box.left;
  const d = drawing(2.7 * width);
  const u = d.unit;
  const gap = 0.5 * width;
  // Turning a leg changes its front and its back over, and so does going to the other leg: both show the same way round.
  const turned: Move = flipped((box.left + box.right) / 2);
  const aside: Move = (p) => shifted(width + gap, 0)(turned(p));
  const peep = 2.2 * u;
  const crotchLit = outer.crotch.map(aside);
  const crotchPoint = aside(outer.inseam[0]);
  const above = (p: Point): Point => ({ x: p.x, y: p.y - peep });
  return captioned(
    { left: box.left - 2 * u, top: box.top - 13 * u, right: box.right + width + gap + 2 * u, bottom: depth + 1 * u },
    [
      ...tubeItems(tube, 'right', turned, d),
      ...d.arrow(
        { x: box.right + 0.08 * gap, y: g.leg.crotchLevel },
        { x: box.right + 0.85 * gap, y: g.leg.crotchLevel },
      ),
      d.word({ x: box.right + 0.47 * gap, y: g.leg.crotchLevel - 2 * u }, say`slip in`, 'middle'),
      ...d.cloth('wrong', outer.far.map(aside)),
      // The inner leg's right side looks out by a little above the outer one's edge.
      ...tube.near.map((part) => d.area('right', part.map(aside).map(above))),
      d.line('edge', ...crotchLit.map(above)),
      ...layerItems(outer, 'wrong', aside, d),
      d.line('lit', ...crotchLit),
      ...d.pin(crotchPoint, { x: 1, y: 0 }),
      ...g.finished.sewn.notches
        .filter(({ edge }) => edge === 'centreFront' || edge === 'centreBack')
        .flatMap((notch) =>
          d.pin(aside((notch.edge === 'centreFront' ? outer.front : outer.back)(notch.at)), { x: 0, y: 1 }),
        ),
      ...outNamed(d, (box.left + box.right) / 2, box.top - 3 * u, say`right leg`, say`right side out`),
      ...outNamed(d, (box.left + box.right) / 2 + width + gap, box.top - 5 * u, say`left leg`, say`wrong side out`),
      ...halvesNamed(d, tube, turned),
      ...halvesNamed(d, outer, aside),
    ],
    say`pin inseam on inseam first`,
    say`The right leg, turned right side out, is slipped into the left one, which is wrong side out: front on front, back on back; the crotch seam, a U from waist to waist, is lit.`,
    d,
  );
}

/** Which leg it is, and below that how it is turned. */
const outNamed = (d: Draw, x: Mm, y: Mm, leg: Phrase, turned: Phrase): readonly PictureItem[] => [
  d.word({ x, y: y - 4.4 * d.unit }, leg, 'middle'),
  d.word({ x, y }, turned, 'middle'),
];

/** Front and back, on either side of the inseam below the crotch, however short it is. */
function halvesNamed(d: Draw, { inseam, folds }: Tube, move: Move): readonly PictureItem[] {
  const y = inseam[0].y + Math.min(7 * d.unit, 0.6 * (inseam[1].y - inseam[0].y));
  return folds.map(([, fold], i) => {
    const at = move({ x: (inseam[0].x + fold.x) / 2, y });
    return d.word(at, i === 0 ? say`front` : say`back`, 'middle');
  });
}
