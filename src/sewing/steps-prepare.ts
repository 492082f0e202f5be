import { cutCurves, type Piece, pieceName, pieceRef } from '../edges';
import type { Mm } from '../length';
import { pathLength } from '../plane';
import { inTurn, mm, number, type Phrase, say, share, UNSAID } from '../words';
import { cutPieces, type Garment } from './garment';
import { makeStep } from './make-step';
import { fromEdge } from './seams';
import type { SewingStep } from './step';
import { edgeStitch, seamStitch, sergesSeams } from './stitches';
import { PER_METRE, timeOf } from './time';

/** Before anything is sewn: cloth, cutting, marking, and the stitch tried on a scrap. */
export const preparingSteps = (g: Garment): readonly SewingStep[] => [
  clothStep(g),
  cutStep(g),
  markStep(g),
  tryStep(g),
];

function clothStep({ cloth }: Garment): SewingStep {
  const straightened =
    cloth.kind === 'knit'
      ? say`Straighten both ends: cut along one row of stitches.`
      : say`Straighten both ends: cut along one crosswise thread; pull one out and its gap shows the way.`;
  const folded =
    cloth.kind === 'knit'
      ? say`Fold it lengthwise, selvedge on selvedge. Where it twists, let the selvedges go until it hangs straight: in a knit the lengthwise ribs show the grain better than the edges.`
      : say`Fold it lengthwise, selvedge on selvedge. Where it twists or the ends don’t meet, pull the cloth on the slant, from its short corners, until they do.`;
  const tasks: readonly Phrase[] = cloth.washFirst
    ? [
        cloth.kind === 'woven'
          ? say`Zigzag the cut ends, which would fray, and wash and dry the cloth as the trousers will be washed and dried. It is expected to lose ${share(cloth.shrinkLength)} in length and ${share(cloth.shrinkWidth)} in width.`
          : say`Wash and dry the cloth as the trousers will be washed and dried. It is expected to lose ${share(cloth.shrinkLength)} in length and ${share(cloth.shrinkWidth)} in width.`,
        say`Press it flat, along the grain, with the heat that its label allows.`,
        straightened,
        folded,
      ]
    : [
        say`Don’t wash the cloth: the pieces are cut larger by what it will shrink, ${share(cloth.shrinkLength)} in length and ${share(cloth.shrinkWidth)} in width.`,
        say`Press it flat, along the grain, without steam: steam shrinks it.`,
        straightened,
        folded,
      ];
  return makeStep({
    id: 'cloth',
    part: 'prepare',
    title: cloth.washFirst ? say`Wash and press the cloth` : say`Press the cloth`,
    tasks,
    why: cloth.washFirst ? say`Cloth that shrinks after it was sewn takes the ease and the length with it.` : UNSAID,
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
      say`Lay the cloth and the paper as the lay shows, which stands before these steps. Each grainline runs along the cloth: measure from both its arrowheads to the selvedge, and turn the paper until both distances are what the lay says. Then pin.`,
      ...(cloth.oneWay
        ? [say`This cloth has a nap or a one-way print: lay the waists of all pieces towards the same end.`]
        : []),
      say`Weigh or pin the paper down all round and cut on the cut lines: ${inTurn(pieces.map(cutWords), '; ')}.`,
      ...bare.map(
        ({ seam }) =>
          say`No allowance is drawn at the ${seam}: cut that much outside the line as you mean to sew inside it.`,
      ),
      ...(sides
        ? [
            say`The left and the right leg differ. The cloth lies in a single layer, right side up, and every paper printed side up: a leg that was turned over would be one for the other side.`,
          ]
        : []),
      say`Leave the paper on the pieces until they are marked.`,
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

/** Which side will be seen, and what to do where nobody can tell. */
const sideChosen = ({ kind }: Garment['cloth']): Phrase =>
  kind === 'knit'
    ? say`Choose the side of the cloth that will be seen: that is the right side, the other one the wrong side. Jersey shows small plaits on its right side, and its cut edge curls to that side when it is pulled. Where both sides look alike, take either, and chalk a cross on the wrong side of every piece as you cut it.`
    : say`Choose the side of the cloth that will be seen: that is the right side, the other one the wrong side. The print is clearer on it, or the nap softer. Where both sides look alike, take either, and chalk a cross on the wrong side of every piece as you cut it.`;

const cutWords = (piece: Piece): Phrase =>
  piece.mirrored
    ? say`${pieceName(piece)}, ${number(piece.cut / 2)} and ${number(piece.cut / 2)} mirrored`
    : say`${pieceName(piece)}, ${number(piece.cut)}`;

function markStep(g: Garment): SewingStep {
  const { pieces, cloth, sides } = g;
  const [leg] = pieces;
  const tip = pieces.find(({ kind }) => kind === 'forkTip');
  const notchesOf = (piece: Piece | undefined): number =>
    piece?.notches.reduce((sum, notch) => sum + notch.count, 0) ?? 0;
  const notches = notchesOf(leg) + notchesOf(tip);
  const opening = leg?.lines.some((line) => line.kind === 'opening') ?? false;
  const place = leg?.lines.some((line) => line.kind === 'place') ?? false;
  return makeStep({
    id: 'mark',
    part: 'prepare',
    title: say`Mark the pieces`,
    tasks: [
      notchesTold(notches, tip !== undefined, g.allowances.inseam > 0),
      say`Mark on the wrong side, with chalk or a washable pen: the folds (on the paper they bear small triangles), the stitching lines, the side, and the quarters of the waist. The quarter lies halfway between the centre seams, whatever the side does.`,
      ...(opening ? [say`Mark the opening for the cord on the right side, with a washable pen.`] : []),
      ...(place ? [say`Mark the pocket’s corners with a stitch of thread each, so that both sides show them.`] : []),
      sides
        ? say`Stick a bit of tape on the wrong side of each leg, on the back of it, and write “left, back” or “right, back”: left and right as they are worn.`
        : say`Stick a bit of tape on the wrong side of each leg and write “back” on the back of it.`,
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
      say`Lay two scraps right sides together and sew ${fromEdge(allowances.inseam)}, as the inseams will be sewn.`,
      g.machine === 'serger'
        ? say`Overlock the edge as the seam will be finished, and press the scrap.`
        : say`Zigzag the edge as the seam will be finished, and press the scrap. A zigzag that swings just over the edge does what an overlocker would.`,
      cloth.kind === 'knit'
        ? say`Pull the seam lengthwise as far as the cloth gives. If the thread breaks, widen the zigzag or loosen the upper thread; if the seam waves, lighten the foot’s pressure or raise the differential feed.`
        : say`Pull the seam apart. If the thread shows between the halves, tighten the upper thread; if the seam puckers, loosen it or change the needle.`,
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

/** How the notches are clipped, and where they stand; a tip without an allowance has none where it is sewn on. */
function notchesTold(notches: number, tip: boolean, onTip: boolean): Phrase {
  if (!tip)
    return say`Clip the ${number(notches, 0)} notches of each leg, no deeper than ${mm(3)}: one on the front centre seam, two on the back one, single ones on the inseams.`;
  return onTip
    ? say`Clip the ${number(notches, 0)} notches of each leg and its tip, no deeper than ${mm(3)}: one on the front centre seam, two on the back one, single ones on the inseams and where the tip is sewn on.`
    : say`Clip the ${number(notches, 0)} notches of each leg and its tip, no deeper than ${mm(3)}: one on the front centre seam, two on the back one, single ones on the inseams.`;
}
