import { edgeApart, pieceBounds, uprightPlaces } from '../../drawing';
import { type Box, curvesBounds } from '../../plane';
import type { Draft, Station } from '../../project';
import { draftSteps } from '../store/told-steps';
import { fieldStep } from '../working/how';

/** The place on a drawing that a field is about. */
export interface AskedPlace {
  /** Several fields may be about one place. */
  readonly key: string;
  readonly box: Box;
}

/** The step whose lines a field is about, where its own has none, or more than that: none where it is the whole leg. */
const OF_FIELDS: Readonly<Record<string, string>> = {
  'leg.spread': '',
  'leg.raiseWaist': 'leg.waist-edge',
  'leg.lowerCrotch': 'leg.straighten',
};
/** Of a field that no step uses by itself: the step that draws what all of its group is about. */
const OF_GROUPS: Readonly<Record<string, string>> = { waist: 'edges.casing', hem: 'edges.hem' };

/** Where a field's number is seen on the drawing of its station: the lines that the working draws with it. */
export function placeInWorking(draft: Draft, station: Station, path: string): AskedPlace | undefined {
  if (path.startsWith('pocket')) return pocketPlace(draft);
  const steps = draftSteps(draft);
  const id = OF_FIELDS[path] ?? fieldStep(steps, path) ?? OF_GROUPS[path.split('.')[0] ?? ''];
  const step = steps.find((one) => one.id === id);
  if (!step || step.station !== station || step.lines.length === 0) return undefined;
  const curves = step.lines.flatMap((line) => (station === 'blocks' ? edgeApart(line) : line.curves));
  return { key: step.id, box: curvesBounds(curves) };
}

function pocketPlace({ pieces }: Draft): AskedPlace | undefined {
  const at = pieces.findIndex(({ kind }) => kind === 'pocket');
  const [piece, place] = [pieces[at], uprightPlaces(pieces)[at]];
  if (!piece || !place) return undefined;
  const { left, right, top, bottom } = pieceBounds(piece);
  const { x, y } = place.shift;
  return { key: 'pocket', box: { left: left + x, right: right + x, top: top + y, bottom: bottom + y } };
}

/** Of the whole drawing, each way: so much is always seen, or one would not know where one is. */
const LEAST_SHARE = 0.4;
/** Less than this is not worth moving the drawing for. */
const LEAST_GAIN = 1.25;

/**
 * What is shown where somebody asks about a place on a drawing: the place with what lies round it.
 *
 * @returns undefined where the place is nearly the whole drawing
 */
export function boxAround(place: Box, whole: Box): Box | undefined {
  const [width, height] = [whole.right - whole.left, whole.bottom - whole.top];
  const across = wide(place.left, place.right, LEAST_SHARE * width);
  const down = wide(place.top, place.bottom, LEAST_SHARE * height);
  const box = { left: across[0], right: across[1], top: down[0], bottom: down[1] };
  const gain = Math.min(width / (box.right - box.left), height / (box.bottom - box.top));
  return gain < LEAST_GAIN ? undefined : box;
}

/** A stretch made as long as it must be, about its middle. */
function wide(from: number, to: number, least: number): readonly [number, number] {
  const more = Math.max(0, least - (to - from)) / 2;
  return [from - more, to + more];
}
