import { clothOfPiece } from '../cloth';
import { cutCurves, isAlong, type Piece, pieceName, pieceRef } from '../edges';
import type { Mm } from '../length';
import { pathLength } from '../plane';
import { inTurn, mm, number, type Phrase, say, share, UNSAID } from '../words';
import { sewingFacts } from './facts';
import { cutPieces, type Garment } from './garment';
import { makeStep } from './make-step';
import { seamTold } from './seams';
import type { SewingStep } from './step';
import { quarterBeforeSide } from './steps-waist';
import { edgeStitch, seamStitch, sergesSeams } from './stitches';
import { PER_METRE, timeOf } from './time';

/** Before anything is sewn: cloth, cutting, marking, and the stitch tried on a scrap. */
export const preparingSteps = (g: Garment): readonly SewingStep[] => [
  clothStep(g),
  cutStep(g),
  markStep(g),
  tryStep(g),
];

function clothStep(g: Garment): SewingStep {
  const { cloth } = g;
  const straightened =
    cloth.kind === 'knit'
      ? say`Straighten both ends: cut along one row of stitches.`
      : say`Straighten both ends: cut along one crosswise thread; pull one out and its gap shows the way.`;
  const folded =
    cloth.kind === 'knit'
      ? say`Fold it lengthwise, selvedge on selvedge. If it twists, shift one selvedge along the other until the fold hangs straight: in a knit the columns of stitches show the grain better than the edges.`
      : say`Fold it lengthwise, selvedge on selvedge. If it twists or the ends don’t meet, pull it diagonally, by the two corners that fall short, until they do.`;
  const tasks: readonly Phrase[] = cloth.washFirst
    ? [
        cloth.kind === 'woven'
          ? say`Zigzag the cut ends, which would fray, and wash and dry the cloth as the trousers will be washed and dried. It is expected to lose ${share(cloth.shrinkLength)} in length and ${share(cloth.shrinkWidth)} in width.`
          : say`Wash and dry the cloth as the trousers will be washed and dried. It is expected to lose ${share(cloth.shrinkLength)} in length and ${share(cloth.shrinkWidth)} in width.`,
        ...(ofOtherCloth(g).length > 0
          ? [say`Wash and dry the other cloth with it, so that it shrinks now, too.`]
          : []),
        say`Press it flat, along the grain, with the heat that its label allows.`,
        straightened,
        folded,
        say`Then lay it as the lay shows: unfolded, right side up, or folded, right sides together.`,
      ]
    : [
        say`Don’t wash the cloth: the pieces are cut larger by what it will shrink, ${share(cloth.shrinkLength)} in length and ${share(cloth.shrinkWidth)} in width.`,
        say`Press it flat, along the grain, without steam: steam shrinks it.`,
        straightened,
        folded,
        say`Then lay it as the lay shows: unfolded, right side up, or folded, right sides together.`,
      ];
  return makeStep({
    id: 'cloth',
    part: 'prepare',
    title: cloth.washFirst ? say`Wash and press the cloth` : say`Press the cloth`,
    tasks,
    why: cloth.washFirst ? say`If cloth shrinks after sewing, the trousers become too tight and too short.` : UNSAID,
    check: say`The selvedges lie on each other without a pull, and the ends are square to them.`,
    care: say`The iron stays hot when you look away: stand it up, and switch it off when you leave.`,
    time: timeOf(30),
    scene: { view: 'cloth' },
  });
}

const around = (pieces: readonly Piece[]): Mm =>
  pieces.reduce((sum, piece) => sum + piece.cut * pathLength(cutCurves(piece)), 0);

function cutStep(g: Garment): SewingStep {
  const { cloth, allowances, sides } = g;
  const pieces = cutPieces(g);
  const { heights, hemPlan } = g.finished;
  const bare = [
    { seam: say`inseam`, allowance: allowances.inseam },
    { seam: say`crotch`, allowance: allowances.crotch },
    ...(heights.kind === 'folded' ? [] : [{ seam: say`waist`, allowance: allowances.waist }]),
    ...(hemPlan.kind === 'folded' ? [] : [{ seam: say`hem`, allowance: allowances.hem }]),
  ].filter(({ allowance }) => allowance === 0);
  return makeStep({
    id: 'cut',
    part: 'prepare',
    title: say`Cut the pieces`,
    tasks: [
      sideChosen(cloth),
      say`Lay the cloth and the paper as the lay shows, which stands before these steps. Each grainline runs along the cloth: measure from both its arrowheads to the selvedge, and turn the paper until both distances are what the lay says.`,
      ...(cloth.oneWay
        ? [
            say`This cloth has a nap or a one-way print: lay the waists of all pieces towards the same end, the upper one of a print; of a nap, that from which it is smooth to stroke down the leg.`,
          ]
        : [
            say`A piece may lie upside down only on cloth without nap or direction. Stroke yours along the selvedge, and look at it from both ends: if it feels or looks otherwise from one of them, choose one-way cloth, and the lay is made anew; how much that takes stands beside this one.`,
          ]),
      ...repeatTold(cloth),
      ...(ofOtherCloth(g).length > 0
        ? [
            say`Not on that lay, but on a cloth of their own: ${inTurn(ofOtherCloth(g).map(pieceName), '; ')}. Lay them on it side by side, their grainlines along its selvedge.`,
          ]
        : []),
      ...(mayLieOnFold(g)
        ? [
            say`Where the lay shows a piece’s middle on the fold, fold the paper in half, lay its crease on the fold of the cloth, and do not cut the fold.`,
          ]
        : []),
      say`Hold the paper down with weights or pins and cut on the cut lines: ${inTurn(pieces.map(cutWords), '; ')}.`,
      ...bare.map(
        ({ seam }) =>
          say`No allowance is drawn at the ${seam}: cut that much outside the line as you mean to sew inside it.`,
      ),
      ...(sides
        ? [
            say`The left and the right leg differ. The cloth lies in a single layer, right side up, and every paper printed side up: a leg that was turned over would be one for the other side.`,
          ]
        : []),
      say`Leave the paper on each piece until it is marked. A piece that is cut twice from a single layer is cut and marked once, then once more with the paper turned over.`,
    ],
    check: sides
      ? say`Laid right sides together, the two legs meet along the whole crotch seam, front and back; elsewhere they differ, as they should.`
      : say`The two legs are mirror images: laid right sides together, their edges meet all round.`,
    cuts: pieces.map(pieceRef),
    care: say`Cut away from your hands. Close a rotary cutter every time you put it down.`,
    time: timeOf(15, around(pieces), PER_METRE.cut),
    scene: { view: 'pieces' },
  });
}

/** What is cut from another cloth than the legs. */
const ofOtherCloth = (g: Garment): readonly Piece[] =>
  cutPieces(g).filter((piece) => clothOfPiece(piece, g.cloth.kind) !== 'own');

/** Whether a lay of this cloth can have a piece's middle on its fold: a piece that is cut once, on cloth folded lengthwise. */
const mayLieOnFold = (g: Garment): boolean =>
  !g.sides &&
  (g.cloth.layout === 'best' || g.cloth.layout === 'foldedLengthwise') &&
  cutPieces(g).some((piece) => piece.cut === 1 && clothOfPiece(piece, g.cloth.kind) === 'own');

/** Where a repeat has to lie on both legs. */
function repeatTold({ repeat, repeatAcross }: Garment['cloth']): readonly Phrase[] {
  return [
    ...(repeat > 0
      ? [
          say`The cloth repeats every ${mm(repeat)} along its length: lay the hem fold of both legs on the same line of it, so that it meets at the inseams and the centres.`,
        ]
      : []),
    ...(repeatAcross > 0
      ? [
          say`The cloth repeats every ${mm(repeatAcross)} across: lay the side lines of both legs on the same stripe, so that one leg mirrors the other.`,
        ]
      : []),
  ];
}

/** Which side will be seen, and what to do where nobody can tell. */
const sideChosen = ({ kind }: Garment['cloth']): Phrase =>
  kind === 'knit'
    ? say`Choose the side of the cloth that will be seen: that is the right side, the other one the wrong side. The right side shows small V’s. Pull an edge that was cut across the cloth: it curls to the right side. Where both sides look alike, take either, and chalk a cross on the wrong side of every piece as you cut it.`
    : say`Choose the side of the cloth that will be seen: that is the right side, the other one the wrong side. The print is clearer on it, or the nap softer. Where both sides look alike, take either, and chalk a cross on the wrong side of every piece as you cut it.`;

const cutWords = (piece: Piece): Phrase =>
  piece.mirrored
    ? say`${pieceName(piece)}, ${number(piece.cut / 2)} and ${number(piece.cut / 2)} mirrored`
    : say`${pieceName(piece)}, ${number(piece.cut)}`;

function markStep(g: Garment): SewingStep {
  const { pieces, cloth, sides } = g;
  const [leg] = pieces;
  const tip = pieces.find(({ kind }) => kind === 'forkTip');
  const openings = leg?.lines.filter((line) => line.kind === 'opening').length ?? 0;
  const place = leg?.lines.some((line) => line.kind === 'place') ?? false;
  return makeStep({
    id: 'mark',
    part: 'prepare',
    title: say`Mark the pieces`,
    tasks: [
      notchesTold(leg, tip, g.allowances.inseam > 0),
      hemQuarters(g)
        ? say`Mark on the wrong side, with chalk or a washable pen: the folds (on the paper they bear small triangles), the stitching lines, the side, and the quarters of waist and hem.`
        : say`Mark on the wrong side, with chalk or a washable pen: the folds (on the paper they bear small triangles), the stitching lines, the side, and the quarters of the waist.`,
      quarterBeforeSide(g.finished) === 0
        ? say`The quarter mark is halfway along the waist edge, here at the side line.`
        : say`The quarter mark is halfway along the waist edge, which is not where the side line is.`,
      ...(openings === 1 ? [say`Mark the opening for the cord on the right side, with a washable pen.`] : []),
      ...(openings > 1 ? [say`Mark the openings for the cords on the right side, with a washable pen.`] : []),
      ...(place ? [say`Mark the pocket’s corners with a stitch of thread each, so that both sides show them.`] : []),
      sides
        ? say`Chalk LEFT BACK or RIGHT BACK on the wrong side of the back half of each leg: left and right as they are worn.`
        : say`Chalk BACK on the wrong side of the back half of each leg.`,
      ...(pieces.some(({ kind }) => kind === 'waistFacing' || kind === 'hemFacing')
        ? [
            say`Chalk BACK on the wrong side of each facing, too, at its back end: the left one where the paper’s words are read upright, seen from the printed side.`,
          ]
        : []),
    ],
    why:
      cloth.kind === 'knit'
        ? say`Both sides of a knit look alike, and so do front and back until one has been sewn the wrong way round.`
        : say`Both sides of many cloths look alike, and so do front and back until one has been sewn the wrong way round.`,
    check: say`Each leg has one front notch, two back notches, and its quarter mark at the waist.`,
    time: timeOf(10, (leg ? around([leg]) : 0) / 2, PER_METRE.mark),
    scene: { view: 'marks' },
  });
}

function tryStep(g: Garment): SewingStep {
  const { cloth, allowances } = g;
  return makeStep({
    id: 'try',
    part: 'prepare',
    title: say`Try the stitches on a scrap`,
    tasks: [
      say`Lay two scraps right sides together, and sew them as you will sew the inseams.`,
      ...seamTold(g, allowances.inseam),
      say`Press the scrap.`,
      pulled(g),
      ...(sergesSeams(g)
        ? [
            say`No overlocker? Sew each seam with a narrow zigzag on the stitching line, sew a second zigzag beside it in the allowance, and trim what is left outside.`,
          ]
        : []),
    ],
    settings: sergesSeams(g) ? seamStitch(g) : [...seamStitch(g), ...edgeStitch(g)],
    check:
      cloth.kind === 'knit'
        ? say`Stretched and let go, the seam lies flat again and no thread has broken.`
        : say`The seam lies flat, and the stitch looks the same from both sides.`,
    care: say`Keep your fingers beside the foot, never in front of the needle.`,
    time: timeOf(10),
    scene: { view: 'sample' },
  });
}

/** What is seen when the trial seam is pulled, and what helps. */
function pulled(g: Garment): Phrase {
  if (g.cloth.kind === 'woven')
    return say`Pull the seam apart. If the thread shows between the halves, rethread the machine first, then tighten the upper thread; if the seam puckers, loosen it or change the needle.`;
  return sergesSeams(g)
    ? say`Pull the seam lengthwise as far as the cloth gives. If a thread breaks, rethread the overlocker first, then loosen its needle threads; if the seam waves, raise the differential feed; if it puckers, lower it.`
    : say`Pull the seam lengthwise as far as the cloth gives. If the thread breaks, rethread the machine first, then widen the zigzag or loosen the upper thread; if the seam waves, lighten the foot’s pressure.`;
}

/** Whether what is sewn to the hem is shared out by quarters. */
const hemQuarters = (g: Garment): boolean =>
  (g.hem.finish === 'elasticCasing' && !sewingFacts(g).hemFlat) ||
  g.hem.finish === 'contrastBand' ||
  g.hem.finish === 'ribCuff';

/** How the notches are clipped, and where they stand; a tip without an allowance has none where it is sewn on. */
function notchesTold(leg: Piece | undefined, tip: Piece | undefined, onTip: boolean): Phrase {
  const notches = [...(leg?.notches ?? []), ...(tip?.notches ?? [])];
  const clipped = number(
    notches.reduce((sum, { count }) => sum + count, 0),
    0,
  );
  const inseams = notches.some(({ edge }) => isAlong(edge, ['inseamFront', 'inseamBack']));
  const places = inTurn(
    [
      say`one on the front centre seam`,
      say`two on the back one`,
      ...(inseams ? [say`single ones on the inseams`] : []),
      ...(tip && onTip ? [say`single ones where the tip is sewn on`] : []),
    ],
    ', ',
  );
  return tip
    ? say`Clip the ${clipped} notches of each leg and its tip, no deeper than ${mm(3)}: ${places}.`
    : say`Clip the ${clipped} notches of each leg, no deeper than ${mm(3)}: ${places}.`;
}
