export { parseArguments } from './arguments';
export { runDraft, type Surroundings } from './run';
