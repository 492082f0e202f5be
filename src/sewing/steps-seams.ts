import { type SeamKind, seamParts } from '../edges';
import { mm, type Phrase, say, UNSAID } from '../words';
import { sewingFacts } from './facts';
import type { Garment } from './garment';
import { makeStep } from './make-step';
import type { FinishedHow, SewingStep } from './step';
import { edgeStitch, seamStitch, sergesSeams } from './stitches';
import { PER_METRE, timeOf } from './time';

/** The two main seams: the inseams, then the crotch seam with one leg in the other. */
export const seamSteps = (g: Garment): readonly SewingStep[] => [inseamStep(g), crotchStep(g)];

/**
 * What a seam is sewn of, and how its raw edges are finished: if nothing else is said, both layers in one go by the serger,
 * or sewn and then overlocked as one.
 */
export function seamSewn(
  g: Garment,
  kind: SeamKind,
  finished: FinishedHow = sergesSeams(g) ? 'serged' : 'together',
): Pick<SewingStep, 'sews' | 'finishes'> {
  const parts = seamParts(g.pieces, kind);
  return {
    sews: parts.map((one) => ({ ...one, how: 'seamed' })),
    finishes: parts.map((one) => ({ ...one, how: finished })),
  };
}

/** How a seam is sewn and finished, in one or two sentences. */
export function seamTold(g: Garment, allowance: number): readonly Phrase[] {
  if (sergesSeams(g))
    return [
      say`Overlock along the stitching line, ${mm(allowance)} from the edge; the knife trims off the rest. Take pins out before they reach it.`,
    ];
  const serger = g.machine === 'serger';
  if (g.cloth.kind === 'knit')
    return [
      say`Sew ${mm(allowance)} from the edge with a narrow zigzag, which gives with the cloth. Don’t pull: let the machine feed.`,
      serger
        ? say`Overlock both edges together beside the seam, and trim off what is left outside it.`
        : say`Zigzag both edges together beside the seam, and trim off what is left outside it.`,
    ];
  return [
    say`Sew ${mm(allowance)} from the edge; backstitch at both ends.`,
    serger ? say`Overlock both edges together.` : say`Zigzag both edges together.`,
  ];
}

/** How seams that lie inside are pressed: open, or to one side where the serger joined both edges. */
export function seamPressed(g: Garment, seams: 1 | 2 = 1): Phrase {
  if (seams === 1) return sergesSeams(g) ? say`Press the seam to one side.` : say`Press the seam open.`;
  return sergesSeams(g) ? say`Press both seams to one side each.` : say`Press both seams open.`;
}

/** What is done to the allowances of a seam at an edge that is turned: nothing where the serger's knife did it. */
export const trimTold = (g: Garment): Phrase =>
  sergesSeams(g) ? UNSAID : say`Trim the allowances to half and clip them where the edge curves.`;

/** The settings of a seam and its edges. */
export const seamSettings = (g: Garment) => (sergesSeams(g) ? seamStitch(g) : [...seamStitch(g), ...edgeStitch(g)]);

/** Minutes a metre of such a seam. */
export const seamPace = (g: Garment): number => (sergesSeams(g) ? PER_METRE.serged : PER_METRE.seam);

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
      say`Fold each leg right sides together, so that its front inseam lies on its back inseam. There is no side seam: the leg folds near the side line.`,
      say`The back is wider and higher than the front, and shows beside and above it, as it should.`,
      inseamPinned(notches),
      ...(hemFlat ? [say`At the hem pin fold on fold: the seam goes through the hem, all layers of it.`] : []),
      ...seamTold(g, allowances.inseam),
      say`Press the allowances of one leg to its front, those of the other to its back.`,
    ],
    why: say`Pressed to different sides they don’t pile up where the four meet in the crotch.`,
    settings: seamSettings(g),
    check: inseamsEqual(notches),
    ...seamSewn(g, 'inseam'),
    time: timeOf(4, 2 * inseam, seamPace(g)),
    scene: { view: 'inseams' },
  });
}

function crotchStep(g: Garment): SewingStep {
  const { allowances } = g;
  const { crotchSeam } = sewingFacts(g);
  return makeStep({
    id: 'crotch',
    part: 'seams',
    title: say`Sew the crotch seam, leg in leg`,
    tasks: [
      say`Turn one leg right side out. Slip it into the other, which stays wrong side out: right sides together, front on front, back on back.`,
      say`Pin inseam on inseam first, the allowances to opposite sides; then the single front notches, the double back notches, and the upper edges.`,
      say`Sew from the waist in front through the crotch to the waist behind, in one go.`,
      ...seamTold(g, allowances.crotch),
      ...(sergesSeams(g)
        ? []
        : [say`Sew the curve between the notches a second time on the same line: it bears the most pull.`]),
      say`Pull the inner leg out.`,
      ...(g.sides ? [say`Look at your tapes: seen from behind, the left leg lies on the left, as it is worn.`] : []),
    ],
    why: say`In one seam the curve runs smoothly under the body; sewn in two halves it would corner at the inseams.`,
    settings: seamSettings(g),
    check: say`The inseams meet at the crotch; one notch meets one notch in front, two meet two behind.`,
    ...seamSewn(g, 'crotch'),
    care: say`Count the pins that you take out.`,
    time: timeOf(8, crotchSeam, seamPace(g)),
    scene: { view: 'legInLeg' },
  });
}

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
