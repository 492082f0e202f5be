import { SELVEDGE } from '../../check';
import { grainPlace, LAYER_WORDS, LAYOUT_WORDS, type Lay, laidName, type Placement, placedPoint } from '../../cloth';
import { cutCurves, isDrawnLeft, isLeg, isSamePiece, type Piece, pieceName } from '../../edges';
import { type Box, between, type Point, pointsBounds } from '../../plane';
import { amount, inTurn, isSaid, mm, type Phrase, say, UNSAID } from '../../words';
import { type Draw, drawing, onePanel, textWidth } from './draw';
import type { PictureItem, StepPicture } from './picture';
import { cutOff, polygon, polyline, rectangle } from './polygon';

/** A lay is printed as large as the page, so that its words need less of it. */
const LETTER = 2.5;

/**
 * The lay as a picture: the cloth on the table, every piece where it is cut.
 *
 * @param lay where the pieces lie
 * @param pieces all pieces of the pattern
 * @param oneWay whether the cloth has a nap or an upper end
 */
export function layPicture(lay: Lay, pieces: readonly Piece[], oneWay: boolean): StepPicture {
  const { width, length } = lay.table;
  const d = drawing(1.16 * Math.max(width, length), LETTER);
  const u = d.unit;
  const folded = lay.layout !== 'single';
  const lengthwise = lay.layout === 'foldedLengthwise';
  const cloth = rectangle(0, 0, width, length);
  const down = lay.placements.some(({ mirrored }) => mirrored);
  return onePanel(
    { left: -2 * u, right: width + (oneWay ? 9 : 2) * u, top: -9 * u, bottom: length + (down ? 10 : 6.5) * u },
    [
      ...d.cloth(folded ? 'wrong' : 'right', cloth),
      ...lay.placements.flatMap((placement) => laidPiece(d, placement, pieces, lay)),
      ...(lengthwise ? [] : [selvedge(d, 0, length, -1)]).flat(),
      ...selvedge(d, width, length, 1, lengthwise ? say`both selvedges` : say`selvedge`),
      ...(folded ? foldItems(d, lengthwise, width, length, oneWay) : []),
      ...(oneWay ? napItems(d, width, length) : []),
      d.word(
        { x: 0, y: -5.2 * u },
        folded ? say`${LAYOUT_WORDS[lay.layout]}, right sides together` : say`in a single layer, right side up`,
      ),
      ...(down ? [d.word({ x: 0, y: length + 8 * u }, say`dots: lies printed side down`)] : []),
      d.word({ x: 0, y: length + 4 * u }, say`${mm(length)} as it lies, cloth ${mm(lay.clothWidth)} wide`),
    ],
    say`The lay, ${LAYOUT_WORDS[lay.layout]}: ${inTurn(
      lay.placements.map((one) => pieceName(one.piece)),
      ', ',
    )}. To buy: ${amount(lay.toBuy)}.`,
  );
}

/** A piece where it is cut, its grain, and its name beside that; what lies printed side down is hatched. */
function laidPiece(d: Draw, placement: Placement, pieces: readonly Piece[], lay: Lay): readonly PictureItem[] {
  const { layout, table } = lay;
  const piece = pieces.find((one) => isSamePiece(one, placement.piece));
  if (!piece) return [];
  const put = (p: Point) => placedPoint(p, placement);
  const whole = polygon(cutCurves(piece)).map(put);
  // A piece whose middle lies on the fold is seen as far as the fold.
  const way = layout === 'foldedLengthwise' ? { x: 0, y: -1 } : { x: 1, y: 0 };
  const points = layout === 'single' ? whole : cutOff(whole, { x: 0, y: 0 }, way);
  const [upper, lower] = piece.grainline.map(put) as [Point, Point];
  // “Both legs” say by themselves that both layers are cut.
  const words = isLeg(piece) ? UNSAID : LAYER_WORDS[placement.layer];
  const says = [laidName(placement, piece), words].filter(isSaid);
  return [
    ...d.cloth(placement.mirrored ? 'printedDown' : 'paper', points),
    ...(layout === 'foldedLengthwise' && placement.layer === 'fold'
      ? []
      : [...d.arrow(upper, lower), ...d.arrow(lower, upper)]),
    ...nameItems(
      d,
      says,
      pointsBounds(points),
      between(upper, lower, isLeg(piece) ? 0.68 : 0.5),
      table.width,
      placement.layer === 'fold',
    ),
    ...distanceItems(d, lay, placement, piece),
    ...halfItems(d, piece, put),
  ];
}

/** From each arrowhead to the selvedge, with the figure to measure there. */
function distanceItems(d: Draw, lay: Lay, placement: Placement, piece: Piece): readonly PictureItem[] {
  const place = grainPlace(lay, placement, piece);
  if (!place) return [];
  const u = d.unit;
  const edge = place.selvedge === 'left' ? 0 : lay.table.width;
  const [upper, lower] = place.ends;
  if (lower.y - upper.y < DISTANCES_FROM * u) return [];
  return place.ends.flatMap((end, i) => {
    const text = say`${mm(place.distances[i] ?? 0)}`;
    const way = place.selvedge === 'left' ? -1 : 1;
    return [
      d.line('thin', end, { x: edge, y: end.y }),
      ...(Math.abs(end.x - edge) > (textWidth(text, LETTER) + 1) * u
        ? [
            d.word(
              { x: end.x + 1.4 * way * u, y: end.y + (i === 0 ? -0.8 : 2.6) * u },
              text,
              way < 0 ? 'right' : 'left',
            ),
          ]
        : []),
    ];
  });
}

/** A grainline shorter than this, in hundredths of the picture, is told in the table beside it only. */
const DISTANCES_FROM = 16;

/** Which half of a leg is its front, and which its back, below the crotch. */
function halfItems(d: Draw, piece: Piece, put: (p: Point) => Point): readonly PictureItem[] {
  const crotch = polyline(piece.lines.find(({ name }) => name === 'crotchLine')?.curves ?? []);
  if (!isLeg(piece) || crotch.length < 2) return [];
  const { left, right } = pointsBounds(crotch);
  const y = (crotch[0] as Point).y + 3.5 * d.unit;
  const names = isDrawnLeft(piece) ? [say`front`, say`back`] : [say`back`, say`front`];
  return [left, right].map((x, i) => {
    const at = put({ x: 0.68 * x, y });
    return d.word({ x: at.x, y: at.y + 0.7 * d.unit }, names[i] as Phrase, 'middle');
  });
}

/** Beside the grainline where there is room, else in the middle; only the name where even that is narrow. */
function nameItems(
  d: Draw,
  says: readonly Phrase[],
  { left, right, top, bottom }: Box,
  grain: Point,
  width: number,
  onFold: boolean,
): readonly PictureItem[] {
  const u = d.unit;
  const reach = (Math.max(...says.map((text) => textWidth(text, LETTER))) + 2.5) * u;
  const tall = bottom - top > 4 * says.length * u;
  const at = (x: number, align: 'left' | 'right') =>
    says.map((text, row) => d.word({ x, y: grain.y + 3.6 * row * u }, text, align));
  if (tall && right - grain.x > reach) return at(grain.x + 1.6 * u, 'left');
  if (tall && grain.x - left > reach) return at(grain.x - 1.6 * u, 'right');
  const [name = UNSAID] = says;
  const y = (top + bottom) / 2 + u;
  if (onFold && tall && right - left > textWidth(name, LETTER) * u)
    return [name, say`half`].map((text, row) =>
      d.word({ x: (left + right) / 2, y: y + 3.6 * (row - 1) * u }, text, 'middle'),
    );
  // A strip too narrow for its name has it beside it, on the side with more cloth.
  if (right - left < textWidth(name, LETTER) * u)
    return [left < width / 2 ? d.word({ x: right + u, y }, name) : d.word({ x: left - u, y }, name, 'right')];
  return [d.word({ x: (left + right) / 2, y }, name, 'middle')];
}

/** A selvedge: a line beside the cloth's edge, and its name above that. */
function selvedge(d: Draw, x: number, length: number, side: 1 | -1, name = say`selvedge`): readonly PictureItem[] {
  const inner = x - side * SELVEDGE;
  return [
    d.line('mark', { x: inner, y: 0 }, { x: inner, y: length }),
    d.word({ x, y: -1.2 * d.unit }, name, side > 0 ? 'right' : 'left'),
  ];
}

function foldItems(
  d: Draw,
  lengthwise: boolean,
  width: number,
  length: number,
  oneWay: boolean,
): readonly PictureItem[] {
  const u = d.unit;
  const end = lengthwise ? { x: 0, y: length } : { x: width, y: 0 };
  return [
    d.line('fold', { x: 0, y: 0 }, end),
    lengthwise
      ? d.word({ x: 0, y: -1.2 * u }, say`fold`)
      : d.word(
          { x: width / 2, y: -1.2 * u },
          oneWay ? say`fold: cut it open and turn the upper layer round` : say`fold`,
          'middle',
        ),
  ];
}

/** Which way the nap lies: an arrow beside the cloth. */
function napItems(d: Draw, width: number, length: number): readonly PictureItem[] {
  const x = width + 5 * d.unit;
  return [
    ...d.arrow({ x, y: 0.1 * length }, { x, y: 0.3 * length }),
    d.word({ x, y: 0.3 * length + 4 * d.unit }, say`nap`, 'middle'),
  ];
}
