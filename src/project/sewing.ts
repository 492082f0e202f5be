import type { Garment } from '../sewing';
import type { Draft, DraftLeg } from './draft-types';
import { hemOf } from './hem-of';

/** What the order of work depends on, of a finished draft. */
export function garmentOf({ project, legs, pieces, notions, cautions }: Draft): Garment {
  const { waist, allowances, pocket, cloth, sewing } = project;
  const ofBoth = {
    notions,
    waist,
    hem: hemOf(project),
    allowances,
    pocket,
    cloth,
    machine: sewing.machine,
    childsNightwear: cautions.some((caution) => caution.id === 'childrens-sleepwear'),
  };
  const [one, other] = legs;
  const garment = (of: DraftLeg): Garment => ({ ...ofBoth, leg: of.leg, finished: of.finished, pieces: of.pieces });
  return other ? { ...garment(other), sides: { left: garment(one), pieces } } : garment(one);
}
