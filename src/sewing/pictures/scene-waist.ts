import { say } from '../../words';
import type { Garment } from '../garment';
import { captioned, drawing } from './draw';
import type { Face, StepPicture } from './picture';
import type { WaistStage } from './scene';
import { closed, stitched, threaded } from './waist-casing';
import { corded, elasticOn } from './waist-elastic-cord';
import { bothCloth, centreSeam, type Stage } from './waist-parts';
import { bandUp, gathered, stripOn } from './waist-strips';
import { waistView } from './waist-view';

/** Seen from the front, right side out; the others from behind, wrong side out. */
const FRONT: readonly WaistStage[] = ['corded', 'stripOn', 'bandUp', 'gathered'];

/** The waist of the sewn pair, from behind wrong side out, or from the front right side out. */
export function waistPicture(g: Garment, stage: WaistStage): StepPicture {
  const front = FRONT.includes(stage);
  const view = waistView(g, front ? 'front' : 'back');
  const width = 2 * Math.abs(view.upper[1].x);
  const d = drawing(1.12 * width);
  const face: Face = front ? 'right' : 'wrong';
  const top = Math.min(...[...view.upper, ...(stage === 'elasticOn' ? view.raw : [])].map((p) => p.y));
  const sheet = stage === 'elasticOn' ? view.open : view.body;
  const sheetTop = Math.min(...sheet.filter(({ x }) => Math.abs(x) < 1).map(({ y }) => y));
  const up = stage === 'bandUp' || (g.waist.finish === 'separateCasing' && stage !== 'stripOn');
  const band = up ? g.finished.heights.height / 2 : 0;
  const window = {
    left: -width / 2 - 7 * d.unit,
    right: width / 2 + 7 * d.unit,
    top: top - band - 9 * d.unit,
    bottom: view.depth - 2 * d.unit,
  };
  const items = [
    ...bothCloth(d, face, sheet),
    centreSeam(d, sheetTop, view.depth),
    ...STAGES[stage](g, view, d),
    d.word({ x: 0, y: top - band - 4 * d.unit }, front ? say`centre front` : say`centre back`, 'middle'),
  ];
  const caption = front ? say`right side out, seen from the front` : say`wrong side out, seen from behind`;
  return captioned(window, items, caption, SAYS[stage], d);
}

const STAGES: Readonly<Record<WaistStage, Stage>> = {
  stitched,
  threaded,
  closed,
  elasticOn,
  corded,
  stripOn,
  bandUp,
  gathered,
  faced: stitched,
};

const SAYS: Readonly<Record<WaistStage, StepPicture['says']>> = {
  stitched: say`The waist from behind, wrong side out, the casing turned over it, its stitching lit.`,
  threaded: say`The waist from behind, wrong side out, elastic going in at the opening with a safety pin.`,
  closed: say`The waist from behind, the opening shut, the casing stitched upright at centre back and at both quarter marks.`,
  elasticOn: say`The waist from behind, wrong side out, elastic sewn to its raw edge by a zigzag.`,
  corded: say`The waist from the front, right side out, the cord’s ends coming out at both openings.`,
  stripOn: say`The waist from the front, right side out, the folded ring lying on it, raw edges together, the seam lit.`,
  bandUp: say`The waist from the front, right side out, the band standing up, the seam held down below it.`,
  gathered: say`The waist from the front, right side out, two rows of long stitches lit, their threads hanging out.`,
  faced: say`The waist from behind, wrong side out, the facing turned in, its stitching lit.`,
};
