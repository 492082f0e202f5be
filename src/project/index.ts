export { valueAt, withValue } from './at-path';
export { clothOf, clothWidthsOf } from './cloth';
export { draft, type StageWatch, withFewestSheets } from './draft';
export type * from './draft-types';
export { exampleProject } from './example';
export { LARGEST_FILE, openProject, saveProject, tooLarge } from './open';
export { applyRemedy } from './remedy';
export { garmentOf } from './sewing';
export type * from './types';
