import { KIND_NAMES } from '../edges';
import { inTurn, mm, say } from '../words';
import { allowancesHeld } from './channels';
import { LAP, lapSetting, lapSewn } from './elastic';
import { lengthOf, sewingFacts } from './facts';
import { type Garment, pieceOfKind } from './garment';
import { gatherSteps, threadsOut } from './gathers';
import { hemStitchingAt, knitTurnedOnce, turningTold } from './hem-turning';
import { makeStep } from './make-step';
import { fromEdge, seamPace, seamPressed, seamSettings, seamSewn, seamTold, trimTold } from './seams';
import type { EdgeWork, FinishedHow, SewingStep } from './step';
import { barStitch, seamStitch, topStitch, topStitchTold } from './stitches';
import { PER_METRE, timeOf } from './time';

const HEM_GAP = 30;

/** Before the inseam, where the leg is too narrow for a free arm; else nothing. */
export function flatHemSteps(g: Garment): readonly SewingStep[] {
  const { hemFlat, hemRound } = sewingFacts(g);
  if (!hemFlat) return [];
  const elastic = g.hem.finish === 'elasticCasing';
  return [
    makeStep({
      id: 'hem.flat',
      part: 'flat',
      title: elastic ? say`Sew the hem casings flat` : say`Hem the legs flat`,
      tasks: [
        ...turningTold(g),
        say`Stitch from one inseam to the other, ${mm(hemStitchingAt(g))} from the fold.`,
        ...(elastic
          ? [
              say`Cut each elastic ${mm(g.notions.hemElasticLength ?? 0)} long, ${mm(g.hem.elasticWidth)} wide. Draw it through with a safety pin, let it reach ${mm(LAP / 2)} beyond both inseam stitching lines, and sew across both its ends inside the allowance.`,
            ]
          : []),
      ],
      why: say`This hem is ${mm(hemRound)} round; a machine’s free arm is about that, so the leg could not be drawn over it. Flat it is easy, and the inseam holds the ends.`,
      settings: topStitch(g),
      check: say`Both hems are equally deep, and front and back inseam are still equally long.`,
      ...hemEdges(g),
      time: timeOf(elastic ? 12 : 5, 2 * hemRound, PER_METRE.topstitch),
      scene: { view: 'hem', stage: 'flat' },
    }),
  ];
}

function hemEdges(g: Garment): Pick<SewingStep, 'sews' | 'finishes'> {
  const finishes: readonly EdgeWork<FinishedHow>[] =
    g.hem.turnUnder > 0 ? [{ piece: 'leg', edges: ['hem'], how: 'turnedUnder' }] : [];
  return { sews: [{ piece: 'leg', edges: ['hem'], how: 'heldDown' }], finishes };
}

/** The hems in the round, last of all: their length can be tried on first. */
export function hemSteps(g: Garment): readonly SewingStep[] {
  if (sewingFacts(g).hemFlat) return [];
  switch (g.hem.finish) {
    case 'turned':
      return [turnedStep(g)];
    case 'elasticCasing':
      return [turnedStep(g), elasticStep(g)];
    case 'drawstringCasing':
      return [turnedStep(g), cordStep(g)];
    case 'contrastBand':
    case 'ribCuff':
      return stripHemSteps(g);
    case 'facedHem':
      return facedHemSteps(g);
  }
}

function turnedStep(g: Garment): SewingStep {
  const { hem } = g;
  const { hemRound } = sewingFacts(g);
  const plain = hem.finish === 'turned';
  const gap = hem.finish === 'elasticCasing';
  return makeStep({
    id: 'hem.turned',
    part: 'hems',
    title: plain ? say`Sew the hems` : say`Stitch the hem casings`,
    tasks: [
      ...(plain ? [say`Try the trousers on and see whether the creases hang level and long enough.`] : []),
      ...(plain ? [] : [allowancesHeld(say`inseams`)]),
      ...turningTold(g),
      ...topStitchTold(g, plain ? 'upper' : 'nearFold'),
      gap
        ? say`Stitch all round, ${mm(hemStitchingAt(g))} from the fold; begin and end ${mm(HEM_GAP / 2)} to each side of the inseam and backstitch: ${mm(HEM_GAP)} stay open.`
        : say`Stitch all round, ${mm(hemStitchingAt(g))} from the fold; begin at the inseam.`,
      plain ? say`Press the hems from the wrong side.` : say`Press the casings from the wrong side.`,
    ],
    settings: topStitch(g),
    check: say`Both legs are equally long, the hems equally deep all round, without a twist.`,
    ...hemEdges(g),
    time: timeOf(6, 2 * hemRound, PER_METRE.topstitch),
    scene: { view: 'hem', stage: 'stitched' },
  });
}

function elasticStep(g: Garment): SewingStep {
  const length = g.notions.hemElasticLength ?? 0;
  return makeStep({
    id: 'hem.elastic',
    part: 'hems',
    title: say`Thread the hem elastics`,
    tasks: [
      say`Cut two elastics ${mm(length)} long, ${mm(g.hem.elasticWidth)} wide. Try one round the leg where the hem will sit, closed with a pin.`,
      say`Thread each with a safety pin, pull both ends well out of the opening, and lap them ${mm(LAP)}, not twisted.`,
      lapSewn(g.hem.elasticWidth, 2),
      say`Let them slip back, stretch the hem flat, and stitch the openings shut.`,
      say`Spread the gathers evenly, by quarters: the lap at the inseam, the elastic’s quarters at the quarter marks.`,
    ],
    settings: [lapSetting(g.hem.elasticWidth), ...barStitch(g)],
    check: say`The foot goes through, and the elastic leaves no mark on the leg.`,
    care: say`Elastic that is too tight hurts.`,
    time: timeOf(15, 2 * length, PER_METRE.thread),
    scene: { view: 'hem', stage: 'threaded' },
  });
}

function cordStep(g: Garment): SewingStep {
  const length = g.notions.hemCordLength ?? 0;
  return makeStep({
    id: 'hem.cord',
    part: 'hems',
    title: say`Draw the hem cords in`,
    tasks: [
      g.hem.cord === 'ofCloth'
        ? say`Take the two cords that you sewed.`
        : say`Cut two cords ${mm(length)} long, ${mm(g.hem.cordWidth)} wide, and keep their ends from fraying.`,
      say`Draw each in at the opening at the side with a safety pin, once round, and out at the same opening.`,
      say`Stitch across cord and hem at the inseam, so that it can’t be pulled out.`,
    ],
    settings: barStitch(g),
    check: say`Both ends are equally long. Tied, no loop hangs below the foot.`,
    care: say`Cords at hems catch in bicycles and doors; on children’s clothes leave them out, or wholly inside.`,
    time: timeOf(8, 2 * length, PER_METRE.thread),
    scene: { view: 'hem', stage: 'corded' },
  });
}

function stripHemSteps(g: Garment): readonly SewingStep[] {
  const rib = g.hem.finish === 'ribCuff';
  const kind = rib ? 'cuff' : 'hemBand';
  const name = KIND_NAMES[kind];
  const piece = pieceOfKind(g, kind);
  const { hemRound } = sewingFacts(g);
  const { hem, allowances } = g;
  return [
    makeStep({
      id: 'hem.ring',
      part: 'hems',
      title: rib ? say`Join the cuffs` : say`Join the hem bands`,
      tasks: [
        say`Fold each ${name} right sides together, end on end, and sew the ends, ${fromEdge(allowances.inseam)}.`,
        ...(rib ? [say`Draw one over the foot and up to where it will sit: it holds there and doesn’t pinch.`] : []),
        inTurn([seamPressed(g), say`Fold the ring lengthwise, wrong sides together, and press the fold.`]),
        say`Mark its quarters: the seam comes to the inseam.`,
      ],
      settings: seamStitch(g),
      check: say`Folded, each ring is ${mm(hem.bandHeight)} high and ${mm(lengthOf(piece, ['upper']))} round.`,
      ...seamSewn(g, 'hemRing', 'enclosed'),
      time: timeOf(10, 4 * hem.bandHeight, seamPace(g)),
      scene: { view: 'strip', piece: kind, stage: 'ends' },
    }),
    ...gatherSteps(g, 'hem'),
    makeStep({
      id: 'hem.on',
      part: 'hems',
      title: rib ? say`Sew the cuffs on` : say`Sew the hem bands on`,
      tasks: [
        say`Slip each ring over the hem, on the right side: raw edges together, seam at the inseam, quarters on quarters; pin.`,
        ...(rib
          ? [say`Sew inside the ring and stretch the cuff, not the leg, from pin to pin.`]
          : [say`Sew inside the ring: the foot stands in the tube, the leg lies round it.`]),
        ...seamTold(g, allowances.hem),
        ...threadsOut(g, 'hem'),
        say`Turn the ${name} down and press the allowances up to the leg.`,
      ],
      settings: seamSettings(g),
      check: rib
        ? say`All three layers are caught all round. The foot goes through without a thread breaking.`
        : say`All three layers are caught all round. The band lies flat, without a tuck.`,
      ...seamSewn(g, 'hem'),
      time: timeOf(8, 2 * hemRound, rib ? PER_METRE.elastic : seamPace(g)),
      scene: { view: 'hem', stage: 'stripOn' },
    }),
  ];
}

function facedHemSteps(g: Garment): readonly SewingStep[] {
  const kind = 'hemFacing';
  const piece = pieceOfKind(g, kind);
  const { hemRound } = sewingFacts(g);
  const { hem, allowances } = g;
  const under = hem.turnUnder > 0;
  return [
    makeStep({
      id: 'hem.ring',
      part: 'hems',
      title: say`Join the hem facings`,
      tasks: [
        inTurn([
          say`Fold each facing right sides together and sew its inseam, ${fromEdge(allowances.inseam)}.`,
          seamPressed(g),
        ]),
      ],
      settings: seamStitch(g),
      check: say`Each ring is as long round as the hem of its leg.`,
      ...seamSewn(g, 'hemRing', 'enclosed'),
      time: timeOf(6, lengthOf(piece, ['inseamFront', 'inseamBack']), seamPace(g)),
      scene: { view: 'facing', piece: kind, stage: 'ring' },
    }),
    makeStep({
      id: 'hem.on',
      part: 'hems',
      title: say`Sew the facings to the hems`,
      tasks: [
        say`Slip each facing over the hem, right sides together, inseam on inseam; pin.`,
        inTurn([say`Sew all round, ${fromEdge(allowances.hem)}.`, trimTold(g)]),
        say`Press the allowances towards the facing and stitch them to it, close beside the seam.`,
      ],
      settings: seamStitch(g),
      check: say`From the right side no facing shows at the lower edge.`,
      ...seamSewn(g, 'hem', 'enclosed'),
      time: timeOf(6, 4 * hemRound, seamPace(g)),
      scene: { view: 'facing', piece: kind, stage: 'on' },
    }),
    makeStep({
      id: 'hem.turned',
      part: 'hems',
      title: say`Stitch the hem facings down`,
      tasks: [
        say`Turn each facing to the wrong side and press the lower edge.`,
        ...(under
          ? [say`Turn ${mm(hem.turnUnder)} of its upper edge under.`, ...knitTurnedOnce(g, hem.turnUnder)]
          : []),
        ...topStitchTold(g, 'upper'),
        say`Stitch all round, ${mm(hemStitchingAt(g))} above the hem.`,
      ],
      settings: topStitch(g),
      check: say`Both legs are equally long, the stitching equally high all round, without a twist.`,
      sews: [{ piece: kind, edges: ['upper'], how: 'heldDown' }],
      finishes: under ? [{ piece: kind, edges: ['upper'], how: 'turnedUnder' }] : [],
      time: timeOf(6, 2 * hemRound, PER_METRE.topstitch),
      scene: { view: 'hem', stage: 'faced' },
    }),
  ];
}
