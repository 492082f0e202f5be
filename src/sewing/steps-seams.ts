import type { Mm } from '../length';
import { inTurn, mm, type Phrase, say } from '../words';
import { sewingFacts } from './facts';
import { backOnFront } from './folded-leg';
import type { Garment } from './garment';
import { makeStep } from './make-step';
import { edgesTold, fromEdge, seamPace, seamSettings, seamSewn, seamTold } from './seams';
import type { SewingStep } from './step';
import { secondRow, sergesSeams } from './stitches';
import { timeOf } from './time';

/** The two main seams: the inseams, then the crotch seam with one leg in the other. */
export const seamSteps = (g: Garment): readonly SewingStep[] => [inseamStep(g), crotchStep(g)];

function inseamStep(g: Garment): SewingStep {
  const { finished, allowances } = g;
  const { inseam, hemFlat } = sewingFacts(g);
  const notches = finished.sewn.notches.filter((notch) => notch.edge === 'inseamFront').length;
  return makeStep({
    id: 'inseams',
    part: 'seams',
    title: say`Sew the inseams`,
    tasks: [
      ...(g.sides
        ? [
            say`Sew the left leg’s inseam first, then the right one’s: each leg’s two inseams belong to each other, and to no other leg’s.`,
          ]
        : []),
      foldTold(g),
      say`Don’t crease it along the side line: lay the inseams together, and the fold finds itself.`,
      say`Above the inseam the edges don’t meet yet, and needn’t. Trim nothing there: each centre edge meets its own twin on the other leg.`,
      ...(foldsPressed(g) ? [say`Open the pressed folds out flat: the seam runs through to the raw edges.`] : []),
      inseamPinned(notches),
      ...(hemFlat ? [say`At the hem pin fold on fold: the seam goes through the hem, all layers of it.`] : []),
      ...seamTold(g, allowances.inseam),
      say`Press each seam flat as it was sewn. Then slip a towel, rolled tight, into the leg, and press the allowances of one leg to its front, those of the other to its back.`,
    ],
    why: say`Pressed to different sides they don’t pile up where the four meet in the crotch.`,
    settings: seamSettings(g),
    check: inTurn([inseamsEqual(notches), ...backTold(g)]),
    ...seamSewn(g, 'inseam'),
    time: timeOf(4, 2 * inseam, seamPace(g)),
    scene: { view: 'inseams' },
  });
}

function crotchStep(g: Garment): SewingStep {
  const { crotchSeam } = sewingFacts(g);
  return makeStep({
    id: 'crotch',
    part: 'seams',
    title: say`Sew the crotch seam, leg in leg`,
    tasks: [
      say`Turn one leg right side out. Slip it into the other, which stays wrong side out: right sides together, front on front, back on back.`,
      say`Pin inseam on inseam first, the allowances to opposite sides; then the single front notches, the double back notches, and the upper edges.`,
      ...crotchSewnTold(g),
      say`Pull the inner leg out.`,
      say`Press the seam over a ham, or over a towel rolled tight: above the notches to one side. Leave the curve below them standing up: that is how it is worn.`,
      ...(g.sides
        ? [say`Look at your chalk marks: seen from behind, the left leg lies on the left, as it is worn.`]
        : []),
    ],
    why: say`In one seam the curve runs smoothly under the body; sewn in two halves it would form a corner at the inseams.`,
    settings: [...seamSettings(g), ...(sergesSeams(g) ? [secondRow()] : [])],
    check: say`The inseams meet at the crotch; one notch meets one notch in front, two meet two at the back. Nowhere is the seam wider than drawn: that would take from the opening that goes over the hips.`,
    ...seamSewn(g, 'crotch'),
    care: say`Count the pins that you take out.`,
    time: timeOf(8, crotchSeam, seamPace(g)),
    scene: { view: 'legInLeg' },
  });
}

/**
 * The seam, its second row, the trimmed curve, and only then the finished edges: trimmed afterwards the finish would be
 * cut off. The serger finishes as it sews, so there the second row comes after.
 */
function crotchSewnTold(g: Garment): readonly Phrase[] {
  const { crotch } = g.allowances;
  if (sergesSeams(g))
    return [
      say`Overlock along the stitching line, ${fromEdge(crotch)}, in one go from the waist in front through the crotch to the waist behind; the knife trims off the rest. Take pins out before they reach it.`,
      say`Sew the curve between the notches a second time, on the plain machine, just outside the needle threads: here the seam bears the most pull.`,
    ];
  const sewn =
    g.cloth.kind === 'knit'
      ? say`Sew ${fromEdge(crotch)} with a narrow zigzag, which gives with the cloth, in one go from the waist in front through the crotch to the waist behind. Don’t pull: let the machine feed.`
      : say`Sew ${fromEdge(crotch)}, in one go from the waist in front through the crotch to the waist behind; backstitch at both ends.`;
  const second = say`Sew the curve between the notches a second time, in the allowance, ${mm(SECOND_ROW)} nearer the raw edge than the first row: here the seam bears the most pull.`;
  // What knit leaves outside its zigzag is trimmed with that, all along.
  const trimmed = g.cloth.kind === 'woven' && (crotch === 0 || crotch > TRIMMED + HARDLY);
  return [
    sewn,
    second,
    ...(trimmed
      ? [
          say`Trim the allowances between the notches to ${mm(TRIMMED)}, and let them widen gently above: a wide allowance can’t spread round the curve, and pulls.`,
        ]
      : []),
    edgesTold(g),
  ];
}

/** The second row of a crotch seam lies so far outside the first, and its allowances are trimmed to so much. @source practice */
const SECOND_ROW: Mm = 3;
const TRIMMED: Mm = 6;
/** Less than this nobody trims off. @source practice */
const HARDLY: Mm = 2;

/** Whether casing or hem were folded and pressed before, and are opened again here. */
const foldsPressed = (g: Garment): boolean =>
  g.finished.heights.kind === 'folded' || (g.finished.hemPlan.kind === 'folded' && !sewingFacts(g).hemFlat);

/** Where the leg folds: the back is wider at the crotch, so that is seldom at the side itself. */
function foldTold(g: Garment): Phrase {
  const { behindSide } = backOnFront(g);
  if (g.sides)
    return say`Fold each leg right sides together, so that its front inseam lies on its back inseam. There is no side seam: the leg folds near the side line.`;
  if (Math.abs(behindSide) < UNSEEN)
    return say`Fold each leg right sides together, so that its front inseam lies on its back inseam. There is no side seam: the leg folds at the side line.`;
  return behindSide > 0
    ? say`Fold each leg right sides together, so that its front inseam lies on its back inseam. There is no side seam: at the crotch the leg folds ${mm(behindSide)} behind the side line, because the back is wider there.`
    : say`Fold each leg right sides together, so that its front inseam lies on its back inseam. There is no side seam: at the crotch the leg folds ${mm(-behindSide)} in front of the side line, because the front is wider there.`;
}

/** How the back lies on the front above the inseam, where nothing meets yet. */
const backTold = (g: Garment): readonly Phrase[] =>
  g.sides
    ? [say`Left leg: ${cornerTold(g.sides.left)}`, say`Right leg: ${cornerTold(g)}`]
    : [say`At the top ${cornerTold(g)}`];

/** Where the back's upper corner lies. */
function cornerTold(g: Garment): Phrase {
  const { nearer, higher } = backOnFront(g);
  return say`${cornerAside(nearer)}, ${cornerAbove(higher)}.`;
}

function cornerAside(nearer: Mm): Phrase {
  if (Math.abs(nearer) < UNSEEN) return say`the back’s corner lies as far from the fold as the front’s`;
  return nearer > 0
    ? say`the back’s corner lies inside the front, ${mm(nearer)} nearer the fold than the front’s corner`
    : say`the back’s corner lies outside the front, ${mm(-nearer)} farther from the fold than the front’s corner`;
}

function cornerAbove(higher: Mm): Phrase {
  if (Math.abs(higher) < UNSEEN) return say`and as high`;
  return higher > 0 ? say`and ${mm(higher)} higher` : say`and ${mm(-higher)} lower`;
}

/** A difference that nobody sees on cloth. @source practice */
const UNSEEN: Mm = 3;

function inseamPinned(notches: number): Phrase {
  if (notches === 0) return say`Pin at the crotch and at the hem, then between.`;
  return notches === 1
    ? say`Pin at the crotch, at the hem, and at the notch, then between.`
    : say`Pin at the crotch, at the hem, and at both notches, then between.`;
}

function inseamsEqual(notches: number): Phrase {
  if (notches === 0) return say`The two inseams are equally long; nothing was stretched or eased to make it so.`;
  return notches === 1
    ? say`The two inseams are equally long and meet at the notch; nothing was stretched or eased to make it so.`
    : say`The two inseams are equally long and meet at both notches; nothing was stretched or eased to make it so.`;
}
