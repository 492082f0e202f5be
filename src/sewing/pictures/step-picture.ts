import type { Garment } from '../garment';
import type { StepPicture } from './picture';
import type { Scene } from './scene';
import { facingPicture } from './scene-facing';
import { finishedPicture } from './scene-finished';
import { forkTipPicture } from './scene-fork-tip';
import { hemPicture } from './scene-hem';
import { marksPicture } from './scene-marks';
import { openingsPicture } from './scene-openings';
import { pocketPicture } from './scene-pocket';
import { clothPicture, piecesPicture } from './scene-prepare';
import { foldsPicture, rawEdgesPicture } from './scene-press';
import { quartersPicture } from './scene-quarters';
import { samplePicture } from './scene-sample';
import { inseamsPicture, legInLegPicture } from './scene-seams';
import { stripPicture } from './scene-strip';
import { waistPicture } from './scene-waist';

/**
 * The picture of a step, drawn from this pattern's own outlines.
 *
 * @param garment the finished pattern
 * @param scene what the step shows
 */
export function stepPicture(garment: Garment, scene: Scene): StepPicture {
  switch (scene.view) {
    case 'cloth':
      return clothPicture(garment);
    case 'pieces':
      return piecesPicture(garment);
    case 'marks':
      return marksPicture(garment);
    case 'sample':
      return samplePicture(garment);
    case 'forkTip':
      return forkTipPicture(garment);
    case 'pocket':
      return pocketPicture(garment, scene.stage);
    case 'openings':
      return openingsPicture(garment, scene.at);
    case 'rawEdges':
      return rawEdgesPicture(garment);
    case 'folds':
      return foldsPicture(garment);
    case 'strip':
      return stripPicture(garment, scene.piece, scene.stage);
    case 'facing':
      return facingPicture(garment, scene.piece, scene.stage);
    case 'inseams':
      return inseamsPicture(garment);
    case 'legInLeg':
      return legInLegPicture(garment);
    case 'quarters':
      return quartersPicture(garment, scene.holds);
    case 'waist':
      return waistPicture(garment, scene.stage);
    case 'hem':
      return hemPicture(garment, scene.stage);
    case 'finished':
      return finishedPicture(garment);
  }
}
