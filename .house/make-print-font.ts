// Writes public/fonts/legwork-print.ttf anew, after a change of its characters.
import { writeFileSync } from 'node:fs';
import { makePrintFont, printFontFile } from './print-font';

const font = await makePrintFont();
writeFileSync(printFontFile, font);
console.log(`The print font has ${font.length} bytes.`);
