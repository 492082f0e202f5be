export { draft, type StageWatch } from './draft';
export type * from './draft-types';
export { exampleProject } from './example';
export { LARGEST_FILE, openProject, saveProject, tooLarge } from './open';
export type * from './types';
