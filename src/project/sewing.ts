import { type Garment, type SewingStep, type StepPicture, sewingSteps, stepPicture } from '../sewing';
import type { Draft, DraftLeg } from './draft-types';
import { hemOf } from './hem-of';
import { remembered } from './remembered';

/** What the order of work depends on, of a finished draft. */
export const garmentOf = remembered(({ project, legs, pieces, notions, cautions }: Draft): Garment => {
  const { waist, allowances, pocket, cloth, sewing } = project;
  const ofBoth = {
    notions,
    waist,
    hem: hemOf(project),
    allowances,
    pocket,
    cloth,
    machine: sewing.machine,
    nightwearLabel: cautions.some((caution) => caution.id === 'nightwear-label'),
  };
  const [one, other] = legs;
  const garment = (of: DraftLeg): Garment => ({ ...ofBoth, leg: of.leg, finished: of.finished, pieces: of.pieces });
  return other ? { ...garment(other), sides: { left: garment(one), pieces } } : garment(one);
});

/** A draft's order of work. */
export const sewingOf: (draft: Draft) => readonly SewingStep[] = remembered((draft) => sewingSteps(garmentOf(draft)));

const picturesOf = remembered((draft: Draft) =>
  remembered(({ scene }: SewingStep): StepPicture => stepPicture(garmentOf(draft), scene)),
);

/** The picture of one of its steps. */
export const pictureOf = (draft: Draft, step: SewingStep): StepPicture => picturesOf(draft)(step);
