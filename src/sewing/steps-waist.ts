import type { Mm } from '../length';
import { mm, number, type Phrase, say } from '../words';
import { allowancesTacked, BEYOND_STITCHING, channelLength, channelTold, LEFT_OPEN, tuckedUnder } from './channels';
import { sewingFacts } from './facts';
import type { Garment } from './garment';
import { makeStep } from './make-step';
import type { SewingStep } from './step';
import { elasticSewnOn } from './steps-flat';
import { facedWaistSteps, stripWaistSteps } from './steps-waist-own';
import { elasticStitch, topStitch } from './stitches';
import { PER_METRE, timeOf } from './time';

const LAP = 25;

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
      allowancesTacked(say`centre seams`),
      ...(under ? [say`Turn ${mm(tuckedUnder(heights.catch))} of the raw edge under, in its crease.`] : []),
      say`Turn the casing to the wrong side in its crease, ${mm(casingDepth)} deep to the stitching line. Lay centre seam on centre seam and mark on mark, and pin.`,
      casingStitched(elastic, under, beyond),
      ...channelTold(g, finished.heights.channels.filter((channel) => channel.holds === 'elastic').length > 1),
    ],
    settings: topStitch(g),
    check: say`The channel is ${mm(heights.channels[0]?.to ?? casingDepth)} wide all round, and the turned part has no tuck anywhere.`,
    sews: [{ piece: 'leg', edges: ['waist'], how: 'heldDown' }],
    finishes: under ? [{ piece: 'leg', edges: ['waist'], how: 'turnedUnder' }] : [],
    time: timeOf(6, channelLength(g), PER_METRE.topstitch),
    scene: { view: 'waist', stage: 'stitched' },
  });
}

/** Elastic through a channel, its quarters marked before. */
function threadStep(g: Garment): SewingStep {
  const { waist, notions, finished } = g;
  const length = notions.elasticLength ?? 0;
  const rows = waist.rows;
  const cordAbove = finished.heights.channels.some((channel) => channel.holds === 'cord');
  return makeStep({
    id: 'waist.thread',
    part: 'waist',
    title: say`Thread the elastic`,
    tasks: [
      rows === 1
        ? say`Cut the elastic ${mm(length)} long, ${mm(waist.elasticWidth)} wide. Close it with a pin round the waist, ${mm(LAP)} lapped, and shorten it until it holds without digging in.`
        : say`Cut ${number(rows, 0)} elastics ${mm(length)} long, ${mm(waist.elasticWidth)} wide. Close one with a pin round the waist, ${mm(LAP)} lapped, and shorten it until it holds without digging in.`,
      say`Mark ${mm(LAP / 2)} from both ends, where they will be lapped, then the middle and both quarters between.`,
      pinPushed(rows, cordAbove),
      say`See that it is not twisted. Lap the ends ${mm(LAP)} and close them with a pin; try the trousers on.`,
      say`Sew the lap: a square round its edge, and a cross in it from corner to corner.`,
    ],
    why: say`Only the body knows how tight is right: cloth, elastic and habit differ.`,
    settings: elasticStitch(g),
    check: say`Two fingers go under the elastic, and it feels the same when sitting. Pulled out, it goes over the fullest part.`,
    care: say`Elastic that is too tight hurts; on a child, allow for growing.`,
    time: timeOf(5 + 5 * rows, rows * length, PER_METRE.thread),
    scene: { view: 'waist', stage: 'threaded' },
  });
}

/** Where the quarter marks lie, as the waist of this pattern is parted. */
function quarterPlace({ finished }: Garment): Phrase {
  const [back, front] = finished.casing.waistEdge;
  const middle = (back.x + front.x) / 2;
  if (Math.abs(middle) < 2) return say`at the side marks here, because front and back are equally wide`;
  return middle < 0
    ? say`behind the side marks, because the back is wider than the front`
    : say`before the side marks, because the front is wider than the back`;
}

/** The fullness shared out by quarters, the opening shut. */
function closeStep(g: Garment): SewingStep {
  const strip = g.waist.finish === 'separateCasing';
  return makeStep({
    id: 'waist.close',
    part: 'waist',
    title: say`Share out the fullness and close the casing`,
    tasks: [
      say`Pull the elastic smooth and share the fullness out by quarters: its middle at centre front, its lap at centre back, its quarters at the quarter marks. These lie ${quarterPlace(g)}.`,
      g.waist.rows > 1
        ? say`Stitch through all layers, upright, in the centre seams and at both quarters: the elastic can’t roll then.`
        : say`Stitch through all layers, upright, in the centre seams and at both quarter marks: the elastic can’t roll then.`,
      strip
        ? say`Sew the gap in the end seam shut by hand.`
        : say`Stretch the casing flat at centre back and stitch the opening shut.`,
      say`Sew a loop of tape into the casing at centre back, so that back can be told from front.`,
    ],
    settings: topStitch(g),
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
        : say`Cut the cord ${mm(notions.cordLength ?? 0)} long, ${mm(waist.cordWidth)} wide, and keep its ends from fraying: dip, knot or stitch them.`,
      say`Put a safety pin into one end. Draw it in at one opening in front, all round, and out at the other.`,
      say`Lay the waist flat at its widest, even out the ends, and stitch across cord and casing at centre back.`,
    ],
    why: say`Sewn down behind, the cord can’t be pulled out in the wash, nor by a child.`,
    settings: topStitch(g),
    check: say`With the waist at its widest both ends are equally long, and the trousers go over the fullest part.`,
    care: say`Cords catch on doors and toys. On a child’s clothes elastic is the better choice; leave no long ends, no knots and no toggles there.`,
    time: timeOf(8, notions.cordLength ?? 0, PER_METRE.thread),
    scene: { view: 'waist', stage: 'corded' },
  });
}

/** Elastic sewn to the raw edge, then turned in with it. More rows are threaded above it. */
function sewnOnSteps(g: Garment): readonly SewingStep[] {
  const { waist, notions } = g;
  const { waistRound } = sewingFacts(g);
  const length = notions.elasticLength ?? 0;
  const more = waist.rows - 1;
  return [
    makeStep({
      id: 'waist.quarters',
      part: 'waist',
      title: say`Join and quarter the elastic`,
      tasks: [
        more === 0
          ? say`Cut the elastic ${mm(length)} long, ${mm(waist.elasticWidth)} wide. Close one with a pin and try it round the waist; shorten it until it holds without digging in.`
          : say`Cut ${number(waist.rows, 0)} elastics ${mm(length)} long, ${mm(waist.elasticWidth)} wide. Close one with a pin and try it round the waist; shorten it until it holds without digging in.`,
        say`Lap its ends ${mm(LAP)} and sew a square with a cross in it.`,
        say`Mark its quarters: the lap, the middle, and halfway between.`,
        say`Pin it to the wrong side of the waist’s raw edge: the lap at centre back, the middle at centre front, the quarters at the quarter marks.`,
      ],
      why: say`The quarter marks lie ${quarterPlace(g)}. Pinned to the side marks, the fullness would not be even.`,
      settings: elasticStitch(g),
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
      care: say`Pull evenly in front of the foot and behind it: a needle that is bent breaks.`,
      time: timeOf(5, waistRound, PER_METRE.elastic),
      scene: { view: 'waist', stage: 'elasticOn' },
    }),
    makeStep({
      id: 'waist.fold',
      part: 'waist',
      title: say`Turn the casing over and stitch it`,
      tasks: [
        ...(more > 0 ? [allowancesTacked(say`centre seams`)] : []),
        more > 0
          ? say`Turn the waist to the wrong side round the elastic, in its crease. The elastic lies snug in the fold of the lowest row.`
          : say`Turn the waist to the wrong side round the elastic, in its crease. The elastic lies snug in the fold.`,
        say`Stretch it flat and stitch from the wrong side, ${mm(3)} above the lower edge of the elastic.`,
        ...channelTold(g, true),
        ...(more > 0
          ? [
              more === 1
                ? say`Thread the other elastic with a safety pin, lap the ends ${mm(LAP)}, sew them, and stitch the openings shut.`
                : say`Thread the other elastics with a safety pin, lap the ends ${mm(LAP)}, sew them, and stitch the openings shut.`,
            ]
          : []),
        say`Stitch upright through all layers at both centre seams and both quarter marks.`,
        say`Sew a loop of tape in at centre back, so that back can be told from front.`,
      ],
      settings: topStitch(g),
      check: say`Stretched, no thread breaks, and the waist goes over the fullest part.`,
      sews: [{ piece: 'leg', edges: ['waist'], how: 'heldDown' }],
      time: timeOf(8, channelLength(g), PER_METRE.elastic),
      scene: { view: 'waist', stage: 'stitched' },
    }),
  ];
}

/** How the turned casing is stitched: open at the back for an elastic, its raw edge folded under or overlocked. */
function casingStitched(elastic: boolean, under: boolean, beyond: Mm): Phrase {
  if (elastic)
    return under
      ? say`Stitch all round on the stitching line; begin and end at centre back and leave ${mm(LEFT_OPEN)} open there. The folded edge lies ${mm(beyond)} beyond the stitching.`
      : say`Stitch all round on the stitching line; begin and end at centre back and leave ${mm(LEFT_OPEN)} open there. The overlocked edge lies ${mm(beyond)} beyond the stitching.`;
  return under
    ? say`Stitch all round on the stitching line; the folded edge lies ${mm(beyond)} beyond it.`
    : say`Stitch all round on the stitching line; the overlocked edge lies ${mm(beyond)} beyond it.`;
}

/** Through which channels the elastic's pin goes. */
function pinPushed(rows: number, cordAbove: boolean): Phrase {
  if (rows !== 1)
    return say`Put a safety pin into one end and pin the other end down beside the opening, so that it can’t slip in. Push the pin through the lowest channel, then the next ones.`;
  return cordAbove
    ? say`Put a safety pin into one end and pin the other end down beside the opening, so that it can’t slip in. Push the pin through the lower channel.`
    : say`Put a safety pin into one end and pin the other end down beside the opening, so that it can’t slip in. Push the pin through the channel.`;
}
