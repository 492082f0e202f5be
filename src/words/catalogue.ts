import type { english } from './english';

/** The template of a message that is said anywhere; each has an entry in the catalogue, and in that of every language. */
export type Template = keyof typeof english;
