import { readFileSync } from 'node:fs';

/** The print font as the app and the command line read it. */
export const printFont = (): Uint8Array =>
  readFileSync(new URL('../../public/fonts/legwork-print.ttf', import.meta.url));
