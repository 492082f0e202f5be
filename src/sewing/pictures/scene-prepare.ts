import { cutCurves, type EdgeName, isLeg, type Piece, pieceName } from '../../edges';
import type { Mm } from '../../length';
import { leftOf, moved, type Point, pathAt, pathLength, pointsBounds } from '../../plane';
import { inTurn, mm, number, own, type Phrase, say } from '../../words';
import { cutPieces, type Garment } from '../garment';
import { drawing, onePanel, textWidth } from './draw';
import { cutLeg } from './leg-views';
import type { PictureItem, StepPicture } from './picture';
import { flipped, type Move, polygon, polyline, shifted } from './polygon';

/** The cloth off the bolt, what washing leaves of it, and the leg along its grain. */
export function clothPicture(g: Garment): StepPicture {
  const { cloth } = g;
  const leg = pointsBounds(cutLeg(g));
  const [width, length] = [cloth.width, 1.25 * (leg.bottom - leg.top)];
  const shrunk = { width: width * (1 - cloth.shrinkWidth), length: length * (1 - cloth.shrinkLength) };
  const d = drawing(1.12 * Math.max(width, length));
  const u = d.unit;
  const rectangle = (w: Mm, h: Mm): readonly Point[] => [
    { x: 0, y: 0 },
    { x: w, y: 0 },
    { x: w, y: h },
    { x: 0, y: h },
  ];
  const put = shifted(0.12 * width - leg.left, (shrunk.length - leg.bottom - leg.top) / 2);
  const [top, bottom] = g.finished.sewn.grainline.map(put) as [Point, Point];
  const whole = rectangle(width, length);
  const washed = cloth.washFirst ? rectangle(shrunk.width, shrunk.length) : whole;
  const right = washed[1] as Point;
  return onePanel(
    { left: -4 * u, top: -7 * u, right: width + 4 * u, bottom: length + 8 * u },
    [
      ...(cloth.washFirst ? [d.line('hidden', ...whole, whole[0] as Point)] : []),
      ...d.cloth('right', washed),
      d.line('fold', { x: 0.6 * u, y: 0 }, { x: 0.6 * u, y: washed[2]?.y ?? length }),
      d.line('fold', { x: right.x - 0.6 * u, y: 0 }, { x: right.x - 0.6 * u, y: washed[2]?.y ?? length }),
      d.line('thin', ...cutLeg(g).map(put), put(cutLeg(g)[0] as Point)),
      ...d.arrow(bottom, top),
      ...d.arrow(top, bottom),
      d.word({ x: 0, y: -2 * u }, say`selvedge`),
      d.word({ x: right.x, y: -2 * u }, say`selvedge`, 'right'),
      d.word({ x: 0, y: length + 4.5 * u }, say`grain along the selvedge`),
      ...(cloth.washFirst ? [d.word({ x: width, y: length + 4.5 * u }, say`dotted: before washing`, 'right')] : []),
    ],
    cloth.washFirst
      ? say`The cloth, ${mm(width)} wide, before and after washing, with a leg on it, its grainline along the selvedge.`
      : say`The cloth, ${mm(width)} wide, with a leg on it, its grainline along the selvedge.`,
  );
}

/** Every piece as often as it is cut, right side up, legs mirrored. */
export function piecesPicture(g: Garment): StepPicture {
  const pieces = cutPieces(g);
  const others = pieces.filter((piece) => !isLeg(piece));
  const gap = 70;
  const placed: { piece: Piece; points: readonly Point[]; move: Move }[] = [];
  const put = (piece: Piece, mirroredOne: boolean, x: Mm, y: Mm): { right: Mm; bottom: Mm } => {
    const own = polygon(cutCurves(piece));
    const turn: Move = mirroredOne ? flipped(0) : (p) => p;
    const box = pointsBounds(own.map(turn));
    const move: Move = (p) => {
      const { x: px, y: py } = turn(p);
      return { x: px - box.left + x, y: py - box.top + y };
    };
    placed.push({ piece, points: own.map(move), move });
    return { right: x + box.right - box.left, bottom: y + box.bottom - box.top };
  };
  let x = 0;
  let legBottom = 0;
  for (const { piece, mirroredOne } of legsDrawn(g)) {
    const end = put(piece, mirroredOne, x, 0);
    x = end.right + gap;
    legBottom = Math.max(legBottom, end.bottom);
  }
  let [columnLeft, y, widest] = [x, 0, x];
  for (const piece of others) {
    for (const mirroredOne of copies(piece)) {
      const box = pointsBounds(polygon(cutCurves(piece)));
      if (y > 0 && y + box.bottom - box.top > legBottom) [columnLeft, y] = [widest + gap, 0];
      const end = put(piece, mirroredOne, columnLeft, y);
      y = end.bottom + gap;
      widest = Math.max(widest, end.right);
    }
  }
  const box = pointsBounds(placed.flatMap(({ points }) => points));
  const d = drawing(1.1 * Math.max(box.right, box.bottom));
  const u = d.unit;
  // A piece too narrow for its name bears a letter, which a line below the picture explains.
  const letters = new Map<Piece, string>();
  const letterOf = (piece: Piece): string => {
    const letter = letters.get(piece) ?? String.fromCharCode(65 + letters.size);
    letters.set(piece, letter);
    return letter;
  };
  const items = placed.flatMap(({ piece, points, move }): readonly PictureItem[] => {
    const around = pointsBounds(points);
    const [a, b] = piece.grainline.map(move) as [Point, Point];
    const middle = (around.left + around.right) / 2;
    const tall = around.bottom - around.top > 24 * u;
    const fits = around.right - around.left >= textWidth(pieceName(piece)) * u;
    const place = {
      x: middle,
      y: tall ? around.top + 0.16 * (around.bottom - around.top) : (around.top + around.bottom) / 2,
    };
    const name = fits ? pieceName(piece) : say`${own(letterOf(piece))}`;
    const short = fits ? place : { x: middle, y: around.top - 0.8 * u };
    return [...d.cloth('right', points), ...d.arrow(b, a), ...d.arrow(a, b), d.word(short, name, 'middle')];
  });
  const lettered = [...letters].map(([piece, letter]) => say`${own(letter)} ${pieceName(piece)}`);
  return onePanel(
    { left: -3 * d.unit, top: -3 * d.unit, right: box.right + 3 * d.unit, bottom: box.bottom + 7 * d.unit },
    [
      ...items,
      ...(lettered.length > 0
        ? [d.word({ x: box.right, y: box.bottom + 4.5 * d.unit }, inTurn(lettered, ' · '), 'right')]
        : []),
    ],
    inTurn([
      say`All pieces as they are cut, right side up: ${inTurn(
        pieces.map((piece) => say`${pieceName(piece)}, ${number(piece.cut, 0)}`),
        '; ',
      )}.`,
      g.sides ? say`The left leg and the right one differ.` : say`The second leg is the mirror image of the first.`,
    ]),
  );
}

/** Both legs in worn sizes, each drawn as it lies right side up. */
function legsDrawn(g: Garment): readonly { readonly piece: Piece; readonly mirroredOne: boolean }[] {
  const own = sewnAsCut(g);
  if (!g.sides) return copies(own).map((mirroredOne) => ({ piece: own, mirroredOne }));
  return [
    { piece: { ...sewnAsCut(g.sides.left), side: 'left' }, mirroredOne: true },
    { piece: { ...own, side: 'right' }, mirroredOne: false },
  ];
}

/** The leg in worn sizes, its fork's tip cut off where that is pieced. */
const sewnAsCut = ({ finished }: Garment): Piece => finished.pieced?.leg ?? finished.sewn;

/** One entry for each copy: whether it is mirrored. */
const copies = ({ cut, mirrored }: Piece): readonly boolean[] =>
  Array.from({ length: cut }, (_, i) => mirrored && i >= cut / 2);

/** The leg with everything that is marked on it, lit. */
export function marksPicture(g: Garment): StepPicture {
  const sewn = g.finished.pieced?.leg ?? g.finished.sewn;
  const points = polygon(cutCurves(sewn));
  const box = pointsBounds(points);
  const d = drawing(Math.max((box.bottom - box.top) / 0.89, (box.right - box.left) / 0.52));
  const u = d.unit;
  const kinds = ['stitching', 'quarter', 'opening', 'side', 'place'];
  const ticks = sewn.notches.flatMap((notch) => {
    const along = { x: -notch.outward.y, y: notch.outward.x };
    const shifts = notch.count === 1 ? [0] : [-0.7 * u, 0.7 * u];
    return shifts.map((shift) => {
      const at = { x: notch.at.x + along.x * shift, y: notch.at.y + along.y * shift };
      const reach = Math.max(notch.length, 2 * u);
      return d.line('lit', at, { x: at.x + notch.outward.x * reach, y: at.y + notch.outward.y * reach });
    });
  });
  const notch = (edge: EdgeName) => sewn.notches.find((one) => one.edge === edge)?.at;
  const quarter = sewn.lines.filter((line) => line.kind === 'quarter').map((line) => polyline(line.curves)[0] as Point);
  const aside = (text: Phrase, at: Point | undefined, side: 1 | -1, drop = 0): readonly PictureItem[] =>
    at ? d.note({ x: side > 0 ? box.right + 5 * u : box.left - 5 * u, y: at.y + drop * u }, text, at) : [];
  return onePanel(
    { left: box.left - 8 * u, top: box.top - 8 * u, right: box.right + 8 * u, bottom: box.bottom + 3 * u },
    [
      ...d.cloth('wrong', points),
      ...sewn.lines
        .filter((line) => kinds.includes(line.kind))
        .map((line) => d.line(line.kind === 'side' ? 'fold' : 'mark', ...polyline(line.curves))),
      ...sewn.folds.map((fold) => d.line('fold', ...polyline(fold.curves))),
      ...ticks,
      ...aside(say`1 notch in front`, notch('centreFront'), 1),
      ...aside(say`2 notches at the back`, notch('centreBack'), -1),
      ...aside(say`notch, both inseams`, notch('inseamFront'), 1),
      ...(quarter[0] ? [d.word({ x: quarter[0].x, y: box.top - 2 * u }, say`quarter`, 'middle')] : []),
      d.word({ x: 1.2 * u, y: 0.5 * (box.top + g.leg.crotchLevel) }, say`side`),
      d.word({ x: 0.4 * box.right, y: g.leg.crotchLevel + 5 * u }, say`front`, 'middle'),
      d.word({ x: 0.5 * box.left, y: g.leg.crotchLevel + 5 * u }, say`back`, 'middle'),
    ],
    say`A leg, wrong side up, with its notches, folds, stitching lines, side and quarter marks.`,
  );
}

/** A stretch of the inseam as it is sewn on a scrap: stitching line, allowance, overlocked edge. */
export function samplePicture(g: Garment): StepPicture {
  const { sewn } = g.finished;
  const { allowances } = g;
  const path = sewn.stitchLine.find((one) => one.name === 'inseamFront')?.curves ?? [];
  const whole = pathLength(path);
  const size = Math.min(SCRAP, 0.9 * whole);
  const from = Math.min(BELOW_CROTCH, (whole - size) / 2);
  const places = Array.from({ length: 25 }, (_, i) => pathAt(path, from + (i / 24) * size));
  const stitched = places.map((place) => place.at);
  const raw = places.map(({ at, way }) => moved(at, leftOf(way), allowances.inseam));
  const d = drawing(1.25 * size);
  const u = d.unit;
  const box = pointsBounds([...stitched, ...raw]);
  const left = box.right - 1.1 * size;
  const scrap = [...raw, { x: left, y: box.bottom }, { x: left, y: box.top }];
  const at = stitched[12] as Point;
  const half = box.top + 0.5 * (box.bottom - box.top);
  return onePanel(
    { left: left - 2 * u, right: box.right + 16 * u, top: box.top - 2 * u, bottom: box.bottom + 8 * u },
    [
      ...d.cloth('right', scrap.map(shifted(1.4 * u, 0))),
      ...d.cloth('wrong', scrap),
      d.line('lit', ...stitched),
      d.zigzag('overlock', raw.map(shifted(-1.2 * u, 0)), 2.4 * u),
      ...d.note({ x: at.x - 12 * u, y: half - 12 * u }, say`stitching line`, stitched[9] as Point),
      ...(allowances.inseam > 0
        ? [
            ...d.arrow(at, raw[12] as Point),
            d.word({ x: (raw[12] as Point).x + 3 * u, y: (raw[12] as Point).y + u }, say`${mm(allowances.inseam)}`),
          ]
        : []),
      d.word({ x: left, y: box.bottom + 5 * u }, say`right sides together, wrong side up`),
    ],
    say`Two layers, right sides together, sewn ${mm(allowances.inseam)} from the edge, the edge overlocked.`,
  );
}

/** The scrap's length, and where on the inseam it is taken from. */
const SCRAP: Mm = 120;
const BELOW_CROTCH: Mm = 150;
