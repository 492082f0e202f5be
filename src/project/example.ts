import { VERSION } from './migrate';
import { checkedProject } from './schema';
import type { Project } from './types';

/**
 * The finished example on which the workbench opens: a body of our own invention whose waist must be straightened to
 * pull on.
 */
export const exampleProject: Project = checkedProject({
  format: 'legwork-project',
  version: VERSION,
  name: 'Flannel bottoms, first pair',
  units: 'cm',
  body: {
    label: 'Body 1',
    waistGirth: 742,
    hipGirth: 1020,
    hipDepth: 208,
    bodyRise: 272,
    insideLeg: 758,
    crotchLength: 715,
  },
  use: { forSleeping: true },
  block: { hipEase: 55 },
  leg: { spread: 12.7 },
}).project;
