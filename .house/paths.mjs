import { fileURLToPath } from 'node:url';

/** The repository's folder, wherever it was cloned to and whatever the working directory is. */
export const root = fileURLToPath(new URL('..', import.meta.url));
