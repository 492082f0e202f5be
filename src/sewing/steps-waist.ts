import type { Mm } from '../length';
import { mm, type Phrase, say } from '../words';
import { backMark } from './back-mark';
import { allowancesHeld, BEYOND_STITCHING, channelLength, channelTold, LEFT_OPEN, tuckedUnder } from './channels';
import { elasticsCut, LAP, lapSetting, lapSewn } from './elastic';
import { sewingFacts } from './facts';
import type { Garment } from './garment';
import { makeStep } from './make-step';
import type { SewingStep } from './step';
import { elasticSewnOn } from './steps-flat';
import { facedWaistSteps, stripWaistSteps } from './steps-waist-own';
import { barStitch, edgeNamed, elasticStitch, stretchedStitch, topStitch, topStitchTold } from './stitches';
import { PER_METRE, timeOf } from './time';

/** The waist, whichever finish it has. */
export function waistSteps(g: Garment): readonly SewingStep[] {
  switch (g.waist.finish) {
    case 'elasticCasing':
      return elasticSewnOn(g) ? sewnOnSteps(g) : [foldStep(g), threadStep(g), closeStep(g)];
    case 'drawstringCasing':
      return [foldStep(g), cordStep(g)];
    case 'elasticAndDrawstring':
      return [foldStep(g), threadStep(g), closeStep(g), cordStep(g)];
    case 'separateCasing':
      return [...stripWaistSteps(g), threadStep(g), closeStep(g)];
    case 'knitBand':
      return stripWaistSteps(g);
    case 'facedCasing':
      return [...facedWaistSteps(g), threadStep(g), closeStep(g)];
  }
}

function foldStep(g: Garment): SewingStep {
  const { waist, finished } = g;
  const { heights } = finished;
  const { casingDepth } = sewingFacts(g);
  const under = waist.rawEdge === 'turnedUnder';
  const elastic = heights.channels.some((channel) => channel.holds === 'elastic');
  const beyond = under ? BEYOND_STITCHING : heights.catch;
  return makeStep({
    id: 'waist.fold',
    part: 'waist',
    title: say`Turn the casing over and stitch it`,
    tasks: [
      allowancesHeld(say`centre seams`),
      ...(under ? [say`Turn ${mm(tuckedUnder(heights.catch))} of the raw edge under, in its crease.`] : []),
      say`Turn the casing to the wrong side in its crease, ${mm(casingDepth)} deep to the stitching line. Lay centre seam on centre seam and mark on mark, and pin.`,
      ...(elastic || !g.nightwearLabel ? [] : [backMark(g, 'casing')]),
      ...topStitchTold(g, 'nearFold'),
      casingStitched(g, elastic, beyond),
      ...channelTold(g, finished.heights.channels.filter((channel) => channel.holds === 'elastic').length > 1),
    ],
    settings: topStitch(g),
    check: channelsChecked(g),
    sews: [{ piece: 'leg', edges: ['waist'], how: 'heldDown' }],
    finishes: under ? [{ piece: 'leg', edges: ['waist'], how: 'turnedUnder' }] : [],
    time: timeOf(6, channelLength(g), PER_METRE.topstitch),
    scene: { view: 'waist', stage: 'stitched' },
  });
}

/** Ends of elastic are pulled so far out of the opening to be lapped. @source practice */
const PULLED_OUT: Mm = 100;

/** Elastic through a channel, its quarters marked before. */
function threadStep(g: Garment): SewingStep {
  const { waist, notions, finished } = g;
  const length = notions.elasticLength ?? 0;
  const { rows, elasticWidth } = waist;
  const cordAbove = finished.heights.channels.some((channel) => channel.holds === 'cord');
  return makeStep({
    id: 'waist.thread',
    part: 'waist',
    title: say`Thread the elastic`,
    tasks: [
      elasticsCut(g),
      say`Mark ${mm(LAP / 2)} from both ends, where they will be lapped, then the middle, and halfway between the middle and each end mark.`,
      pinPushed(rows, cordAbove),
      say`Check that it is not twisted. Pull both ends ${mm(PULLED_OUT)} out of the opening, lap them ${mm(LAP)} and pin; try the trousers on.`,
      lapSewn(elasticWidth, rows),
      say`Let the elastic slip back into the casing.`,
    ],
    why: say`Elastics differ, so fit it on the body.`,
    settings: [lapSetting(elasticWidth), ...barStitch(g).slice(1)],
    check: say`Two fingers go under the elastic, and it feels the same when sitting. Pulled out, it goes over the fullest part.`,
    care: say`Elastic that is too tight hurts; on a child, allow for growing.`,
    time: timeOf(5 + 5 * rows, rows * length, PER_METRE.thread),
    scene: { view: 'waist', stage: 'threaded' },
  });
}

/** How wide the stitched channels are, of elastic and cord each where both are there. */
function channelsChecked(g: Garment): Phrase {
  const { channels } = g.finished.heights;
  const wide = (holds: 'elastic' | 'cord'): Mm | undefined => {
    const channel = channels.find((one) => one.holds === holds);
    return channel && channel.to - channel.from;
  };
  const [elastic, cord] = [wide('elastic'), wide('cord')];
  return elastic !== undefined && cord !== undefined
    ? say`The elastic’s channel is ${mm(elastic)} wide all round, the cord’s above it ${mm(cord)}, and the turned part has no tuck anywhere.`
    : say`The channel is ${mm(elastic ?? cord ?? sewingFacts(g).casingDepth)} wide all round, and the turned part has no tuck anywhere.`;
}

/** How far in front of the side line the waist's quarter lies; 0 where nobody sees that, less where it lies behind it. */
export function quarterBeforeSide({ casing }: Garment['finished']): Mm {
  const [back, front] = casing.waistEdge;
  const middle = (back.x + front.x) / 2;
  return Math.abs(middle) < 2 ? 0 : middle;
}

/** Where the quarter marks lie, as the waist of this pattern is parted. */
function quarterPlace({ finished }: Garment): Phrase {
  const middle = quarterBeforeSide(finished);
  if (middle === 0) return say`at the side marks here, because front and back are equally wide`;
  return middle < 0
    ? say`behind the side marks, because at the waist the back is wider than the front`
    : say`in front of the side marks, because at the waist the front is wider than the back`;
}

/** The opening shut, then the gathers spread by quarters. */
function closeStep(g: Garment): SewingStep {
  const { finish, rows } = g.waist;
  return makeStep({
    id: 'waist.close',
    part: 'waist',
    title: say`Close the casing and spread the gathers`,
    tasks: [
      ...(finish === 'separateCasing'
        ? [say`Sew the gap in the end seam shut by hand.`]
        : [
            backMark(g, finish === 'facedCasing' ? 'facing' : 'casing'),
            rows === 1
              ? say`Stretch the casing flat at centre back and stitch the opening shut.`
              : say`Stretch the casing flat at centre back and stitch all its openings shut.`,
          ]),
      say`Spread the gathers evenly, by quarters: the middle of the elastic at centre front, its lap at centre back, its quarters at the quarter marks. These lie ${quarterPlace(g)}.`,
      finish === 'elasticAndDrawstring'
        ? say`Stitch straight down across the elastic’s channel, not the cord’s, in both centre seams and at both quarter marks, so that the elastic can’t roll.`
        : ACROSS,
    ],
    settings: barStitch(g),
    check: say`The gathers are even, every quarter equally full, and the opening is shut.`,
    time: timeOf(12),
    scene: { view: 'waist', stage: 'closed' },
  });
}

function cordStep(g: Garment): SewingStep {
  const { waist, notions } = g;
  return makeStep({
    id: 'waist.cord',
    part: 'waist',
    title: say`Draw the cord in`,
    tasks: [
      waist.cord === 'ofCloth'
        ? say`Take the cord that you sewed; its seam goes to centre back.`
        : say`Cut the cord ${mm(notions.cordLength ?? 0)} long, ${mm(waist.cordWidth)} wide, and keep its ends from fraying: stitch across them, or touch them with fabric glue.`,
      say`Put a safety pin into one end. Draw it in at one opening in front, all round, and out at the other.`,
      say`Try the trousers on. Then lay the waist flat at its widest, even out the ends, and stitch across cord and casing at centre back.`,
    ],
    why: say`Sewn down behind, the cord can’t be pulled out in the wash, nor by a child.`,
    settings: barStitch(g),
    check: say`With the waist at its widest both ends are equally long, and the trousers go over the fullest part.`,
    care: say`Cords catch on doors and toys. On a child’s clothes elastic is the better choice; leave no long ends, no knots and no toggles there.`,
    time: timeOf(8, notions.cordLength ?? 0, PER_METRE.thread),
    scene: { view: 'waist', stage: 'corded' },
  });
}

/** Elastic sewn to the raw edge, then turned in with it. More rows are threaded above it. */
function sewnOnSteps(g: Garment): readonly SewingStep[] {
  const { waist } = g;
  const { waistRound } = sewingFacts(g);
  const more = waist.rows - 1;
  return [
    makeStep({
      id: 'waist.quarters',
      part: 'waist',
      title: say`Join and quarter the elastic`,
      tasks: [
        elasticsCut(g),
        more === 0
          ? say`Lap its ends ${mm(LAP)} and pin them.`
          : say`Lap the ends of the lowest one ${mm(LAP)} and pin them; the others are threaded later.`,
        lapSewn(waist.elasticWidth, 1),
        say`Mark its quarters: the lap, the middle, and halfway between.`,
        say`Pin it to the wrong side of the waist’s raw edge: the lap at centre back, the middle at centre front, the quarters at the quarter marks.`,
      ],
      why:
        quarterBeforeSide(g.finished) === 0
          ? say`The quarter marks lie ${quarterPlace(g)}.`
          : say`The quarter marks lie ${quarterPlace(g)}. Pinned to the side marks, the gathers would not be even.`,
      settings: [lapSetting(waist.elasticWidth), ...barStitch(g).slice(1)],
      check: say`Two fingers go under the elastic. Between any two pins the cloth is equally full.`,
      care: say`Elastic that is too tight hurts; on a child, allow for growing.`,
      time: timeOf(15),
      scene: { view: 'quarters', holds: 'elastic' },
    }),
    makeStep({
      id: 'waist.elastic',
      part: 'waist',
      title: say`Sew the elastic to the edge`,
      tasks: [
        say`Lay the edge of the elastic along the raw edge of the cloth, on its wrong side.`,
        g.machine === 'serger'
          ? say`Overlock them together along the raw edge, and stretch the elastic from pin to pin until the cloth lies flat. Keep the knife off the elastic.`
          : say`Zigzag them together along the raw edge, and stretch the elastic from pin to pin until the cloth lies flat. Let the needle swing over the raw edge.`,
      ],
      settings: elasticStitch(g),
      check: say`Released, the waist draws in evenly, and no raw edge shows.`,
      finishes: [{ piece: 'leg', edges: ['waist'], how: 'underElastic' }],
      care: say`Hold the work in front of and behind the foot; let the machine feed it. A pulled needle bends and breaks.`,
      time: timeOf(5, waistRound, PER_METRE.elastic),
      scene: { view: 'waist', stage: 'elasticOn' },
    }),
    makeStep({
      id: 'waist.fold',
      part: 'waist',
      title: say`Turn the casing over and stitch it`,
      tasks: [
        ...(more > 0 ? [allowancesHeld(say`centre seams`)] : []),
        more > 0
          ? say`Turn the waist to the wrong side round the elastic, in its crease. The elastic lies snug in the fold of the lowest row.`
          : say`Turn the waist to the wrong side round the elastic, in its crease. The elastic lies snug in the fold.`,
        backMark(g, 'casing'),
        g.machine === 'serger'
          ? say`Stretch it flat and stitch from the wrong side, through the elastic, ${mm(3)} above its lower edge, the overlocked one.`
          : say`Stretch it flat and stitch from the wrong side, through the elastic, ${mm(3)} above its lower edge, the zigzagged one.`,
        ...channelTold(g, true),
        ...(more > 0
          ? [
              more === 1
                ? say`Thread the other elastic with a safety pin, lap the ends ${mm(LAP)} and sew them as before, then stitch the opening shut.`
                : say`Thread the other elastics with a safety pin, lap the ends ${mm(LAP)} and sew them as before, then stitch the openings shut.`,
            ]
          : []),
        ACROSS,
      ],
      settings: stretchedStitch(g),
      check: say`Stretched, no thread breaks, and the waist goes over the fullest part.`,
      sews: [{ piece: 'leg', edges: ['waist'], how: 'heldDown' }],
      time: timeOf(8, channelLength(g), PER_METRE.elastic),
      scene: { view: 'waist', stage: 'stitched' },
    }),
  ];
}

/** Short rows that keep elastic from rolling, whatever holds it. */
const ACROSS = say`Stitch straight down across the casing in both centre seams and at both quarter marks, so that the elastic can’t roll.`;

/** How the turned casing is stitched: open at the back for an elastic. */
function casingStitched(g: Garment, elastic: boolean, beyond: Mm): Phrase {
  const edge = edgeNamed(g, g.waist.rawEdge === 'turnedUnder');
  return elastic
    ? say`Stitch all round on the stitching line, from ${mm(LEFT_OPEN / 2)} on one side of centre back to ${mm(LEFT_OPEN / 2)} on the other, and backstitch at both ends: ${mm(LEFT_OPEN)} stay open. The ${edge} edge lies ${mm(beyond)} beyond the stitching.`
    : say`Stitch all round on the stitching line; the ${edge} edge lies ${mm(beyond)} beyond it.`;
}

/** Through which channels the elastic's pin goes. */
function pinPushed(rows: number, cordAbove: boolean): Phrase {
  if (rows !== 1)
    return say`Put a safety pin into one end and pin the other end down beside the opening, so that it can’t slip in. Push the pin through the lowest channel, then the next ones.`;
  return cordAbove
    ? say`Put a safety pin into one end and pin the other end down beside the opening, so that it can’t slip in. Push the pin through the lower channel.`
    : say`Put a safety pin into one end and pin the other end down beside the opening, so that it can’t slip in. Push the pin through the channel.`;
}
