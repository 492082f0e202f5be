export { FILE_KINDS, type FileKind, parseArguments } from './arguments';
export { runDraft, type Surroundings } from './run';
