import type { Channel } from '../edges';
import type { Mm } from '../length';
import { leftOf, type Point, pathEnd, pathStart, subtract, unit } from '../plane';
import { mm, say, UNSAID } from '../words';
import type { Check, Subject } from './check';
import { fixTurnOfCloth, withFix } from './fixes';
import { drawnCurves } from './measuring';

/** What is drawn through slides where its channel is this much wider: an elastic by 1.5 mm, a cord by ¼ in. @source practice; a guild guideline, 12.150, as read */
const ROOM = { elastic: 1.5, cord: 6.35 } as const;
/** With this turn of the cloth every row has exactly its room. */
const ENOUGH_TURN = 3;
const ROUNDING = 1e-6;

interface Found {
  readonly channel: Channel;
  readonly room: Mm;
}

/** Every elastic and cord has a channel in which it slides; left out where elastic is sewn on, or nothing is drawn through. */
export function checkChannels(subject: Subject): Check | undefined {
  const { waist, finished } = subject;
  if (waist.finish === 'elasticCasing' && waist.elastic === 'sewnOn') return undefined;
  const spare = ({ channel, room }: Found) => room - channel.width - ROOM[channel.holds];
  const [first, ...others] = channelsFound(subject);
  if (!first) return undefined;
  const { channel, room } = others.reduce((a, b) => (spare(b) < spare(a) ? b : a), first);
  const needed = channel.width + ROOM[channel.holds];
  const good = room >= needed - ROUNDING;
  const turned =
    channel.holds === 'elastic' && waist.turnOfCloth < ENOUGH_TURN && finished.heights.channels.includes(channel);
  return {
    id: 'channels',
    name: say`Channels have room`,
    verdict: good ? 'good' : 'wrong',
    measured: room,
    wanted: needed,
    tolerance: 0,
    unit: 'mm',
    reason:
      channel.holds === 'elastic'
        ? say`The narrowest channel is ${mm(room)} high for an elastic of ${mm(channel.width)}, which needs at least ${mm(needed)} to slide.`
        : say`The narrowest channel is ${mm(room)} high for a cord of ${mm(channel.width)}, which needs at least ${mm(needed)} to slide.`,
    remedy: good ? UNSAID : say`Allow more for the turn of the cloth, ${mm(ENOUGH_TURN)} at least.`,
    ...withFix(good || !turned ? undefined : fixTurnOfCloth(ENOUGH_TURN)),
  };
}

/** The channels at the waist and the hem with their printed heights: between one line of stitching and the next, or the fold. */
function channelsFound({ finished }: Subject): readonly Found[] {
  const { sewn, heights, hemPlan } = finished;
  const stitching = drawnCurves(sewn, 'casingStitching');
  const hem: readonly Found[] = hemPlan.channel
    ? [{ channel: { ...hemPlan.channel, from: 0, to: hemPlan.depth }, room: hemPlan.depth }]
    : [];
  const top = drawnCurves(sewn, 'waistFold') ?? drawnCurves(sewn, 'waist');
  if (!stitching || !top)
    return [...heights.channels.map((channel) => ({ channel, room: channel.to - channel.from })), ...hem];
  const start = pathStart(stitching);
  const up = leftOf(unit(subtract(pathEnd(stitching), start)));
  const above = (p: Point): Mm => (p.x - start.x) * up.x + (p.y - start.y) * up.y;
  const partings = sewn.lines
    .filter((line) => line.name === 'channelStitching')
    .map((line) => above(pathStart(line.curves)));
  const levels = [0, ...partings.sort((a, b) => a - b), Math.min(above(pathStart(top)), above(pathEnd(top)))];
  return [
    ...heights.channels.map((channel, i) => ({ channel, room: (levels[i + 1] ?? 0) - (levels[i] ?? 0) })),
    ...hem,
  ];
}
