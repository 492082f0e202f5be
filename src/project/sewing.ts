import type { Garment } from '../sewing';
import type { Draft } from './draft-types';
import { hemOf } from './hem-of';

/** What the order of work depends on, of a finished draft. */
export function garmentOf({ project, leg, finished, pieces, notions, cautions }: Draft): Garment {
  const { waist, allowances, pocket, cloth, sewing } = project;
  return {
    leg,
    finished,
    pieces,
    notions,
    waist,
    hem: hemOf(project),
    allowances,
    pocket,
    cloth,
    machine: sewing.machine,
    childsNightwear: cautions.some((caution) => caution.id === 'childrens-sleepwear'),
  };
}
