export { parseArguments } from './arguments';
export type { Surroundings } from './outcome';
export { runDraft } from './run';
