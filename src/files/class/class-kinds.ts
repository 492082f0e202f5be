import type { SingleFile, TogetherFile } from '../make/kinds';

/** The kinds of file that a class's set can hold: each learner's own, and those of all together. */
export type ClassKind = SingleFile | TogetherFile;

/** What a set holds where nothing else is asked for. */
export const CLASS_KINDS: readonly ClassKind[] = ['pdf', 'fit', 'handout', 'samples', 'nested'];
