import { KIND_NAMES } from '../edges';
import { inTurn, mm, say } from '../words';
import { backMark } from './back-mark';
import { channelLength, channelTold, LEFT_OPEN, pressedAllowancesHeld, tuckedUnder } from './channels';
import { lengthOf, sewingFacts } from './facts';
import { type Garment, pieceOfKind } from './garment';
import { gatherSteps, threadsOut } from './gathers';
import { knitTurnedOnce } from './hem-turning';
import { makeStep } from './make-step';
import { fromEdge, seamPace, seamPressed, seamSettings, seamSewn, seamTold, trimTold } from './seams';
import type { SewingStep } from './step';
import { seamStitch, stretchedStitch, topStitch, topStitchTold } from './stitches';
import { PER_METRE, timeOf } from './time';

/** A waist with a straight piece of its own: joined to a ring, folded, sewn on. */
export function stripWaistSteps(g: Garment): readonly SewingStep[] {
  const band = g.waist.finish === 'knitBand';
  const kind = band ? 'waistBand' : 'casing';
  const name = KIND_NAMES[kind];
  const piece = pieceOfKind(g, kind);
  const { waistRound } = sewingFacts(g);
  const { waist, allowances, finished } = g;
  return [
    makeStep({
      id: 'waist.ring',
      part: 'waist',
      title: band ? say`Join the waist band` : say`Join the casing`,
      tasks: [
        say`Fold the ${name} right sides together, end on end.`,
        ...(band
          ? [
              say`Sew the ends together, ${fromEdge(allowances.crotch)}.`,
              say`Draw the ring over the hips and up to the waist. It holds by its own stretch: where it is too wide, take the seam in now, before it is sewn on.`,
            ]
          : [
              say`Sew the ends together, ${fromEdge(allowances.crotch)}, but in the half that will lie inside leave ${mm(Math.max(waist.elasticWidth + 5, finished.heights.height / 2 - 10))} open: the elastic goes in there.`,
            ]),
        band ? seamPressed(g) : say`Press the seam open.`,
        ...(band ? [] : [pressedAllowancesHeld(say`end seam`)]),
        inTurn([say`Fold the ring lengthwise, wrong sides together, and press the fold.`]),
        say`Mark its quarters: the seam is centre back.`,
      ],
      // A gap in a seam is left with the plain machine: the serger can't stop in the middle.
      settings: seamStitch(band ? g : { ...g, machine: 'plain' }),
      check: say`Folded, the ring is ${mm(finished.heights.height / 2)} high and ${mm(lengthOf(piece, ['upper']))} round.`,
      ...seamSewn(g, 'waistRing', 'enclosed'),
      time: timeOf(12, finished.heights.height, seamPace(g)),
      scene: { view: 'strip', piece: kind, stage: 'ends' },
    }),
    ...gatherSteps(g, 'waist'),
    makeStep({
      id: 'waist.on',
      part: 'waist',
      title: band ? say`Sew the band to the waist` : say`Sew the casing to the waist`,
      tasks: [
        say`Slip the folded ring over the waist, on the right side: raw edges together, seam at centre back, middle at centre front, quarter marks on quarter marks.`,
        ...(band
          ? [
              say`The band is shorter than the waist: pin the quarters, and stretch the band, not the leg, to it while you sew.`,
            ]
          : [
              say`The half with the gap lies on top, away from the leg: when the casing is turned up, it comes to lie inside.`,
            ]),
        backMark(g, 'seam'),
        ...seamTold(g, allowances.waist),
        ...threadsOut(g, 'waist'),
        say`Press the allowances down to the legs.`,
        ...channelTold(g, false),
      ],
      why: say`Pinned quarter by quarter, the fullness spreads evenly all round.`,
      settings: seamSettings(g),
      check: say`All three layers are caught all round, and the ${name} stands equally high everywhere.`,
      ...seamSewn(g, 'waist'),
      time: timeOf(8, channelLength(g), band ? PER_METRE.elastic : seamPace(g)),
      scene: band ? { view: 'quarters', holds: 'band' } : { view: 'waist', stage: 'stripOn' },
    }),
    ...(band
      ? [
          makeStep({
            id: 'waist.topstitch',
            part: 'waist',
            title: say`Hold the band’s seam down`,
            tasks: [say`Stitch the allowances down, ${mm(3)} below the seam, with the waist stretched.`],
            settings: stretchedStitch(g),
            check: say`Two fingers go under the band, and it goes over the fullest part without a thread breaking.`,
            time: timeOf(6, waistRound, PER_METRE.elastic),
            scene: { view: 'waist', stage: 'bandUp' },
          }),
        ]
      : []),
  ];
}

/** A casing with a facing of the leg's own shape. */
export function facedWaistSteps(g: Garment): readonly SewingStep[] {
  const kind = 'waistFacing';
  const piece = pieceOfKind(g, kind);
  const { allowances, waist, finished } = g;
  const { waistRound } = sewingFacts(g);
  const under = waist.rawEdge === 'turnedUnder';
  return [
    makeStep({
      id: 'waist.ring',
      part: 'waist',
      title: say`Join the waist facings`,
      tasks: [
        say`Lay the two facings right sides together and sew both centre seams, ${fromEdge(allowances.crotch)}. The ends that are chalked BACK meet at centre back.`,
        seamPressed(g, 2),
      ],
      settings: seamStitch(g),
      check: say`The ring is as long as the waist of the legs, and its seams meet theirs.`,
      ...seamSewn(g, 'waistRing', 'enclosed'),
      time: timeOf(6, lengthOf(piece, ['centreFront', 'centreBack']), seamPace(g)),
      scene: { view: 'facing', piece: kind, stage: 'ring' },
    }),
    makeStep({
      id: 'waist.on',
      part: 'waist',
      title: say`Sew the facing to the waist`,
      tasks: [
        say`Slip the facing over the waist, right sides together, upper edges and seams meeting; pin.`,
        inTurn([say`Sew all round, ${fromEdge(allowances.waist)}.`, trimTold(g)]),
        say`Press the allowances towards the facing and stitch them to it, close beside the seam: the edge rolls inside by itself then.`,
      ],
      why: say`A facing cut as the leg is lies flat at any slant; a turning of the leg itself would not.`,
      settings: seamStitch(g),
      check: say`From the right side no facing shows at the upper edge.`,
      ...seamSewn(g, 'waist', 'enclosed'),
      time: timeOf(6, 2 * waistRound, seamPace(g)),
      scene: { view: 'facing', piece: kind, stage: 'on' },
    }),
    makeStep({
      id: 'waist.fold',
      part: 'waist',
      title: say`Stitch the facing down`,
      tasks: [
        pressedAllowancesHeld(say`centre seams of legs and facing`),
        say`Turn the facing to the wrong side and press the upper edge.`,
        ...(under
          ? [
              say`Turn ${mm(tuckedUnder(finished.heights.catch))} of its lower edge under.`,
              ...knitTurnedOnce(g, tuckedUnder(finished.heights.catch)),
            ]
          : []),
        ...topStitchTold(g, 'nearFold'),
        say`Stitch all round on the stitching line, ${mm(finished.heights.fold)} below the upper edge, from ${mm(LEFT_OPEN / 2)} on one side of centre back to ${mm(LEFT_OPEN / 2)} on the other, and backstitch at both ends: ${mm(LEFT_OPEN)} stay open.`,
        ...channelTold(g, true),
      ],
      settings: topStitch(g),
      check: say`The channel is ${mm(finished.heights.channels[0]?.to ?? finished.heights.fold)} wide all round, and the facing has no tuck anywhere.`,
      sews: [{ piece: kind, edges: ['lower'], how: 'heldDown' }],
      finishes: under ? [{ piece: kind, edges: ['lower'], how: 'turnedUnder' }] : [],
      time: timeOf(6, channelLength(g), PER_METRE.topstitch),
      scene: { view: 'waist', stage: 'faced' },
    }),
  ];
}
