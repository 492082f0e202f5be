// Writes the print fonts in public/fonts anew, after a change of their characters.
import { writeFileSync } from 'node:fs';
import { makePrintFont, printFontFile, widePrintCharacters, widePrintFontFile } from './print-font';

const [font, wide] = [await makePrintFont(), await makePrintFont(widePrintCharacters)];
writeFileSync(printFontFile, font);
writeFileSync(widePrintFontFile, wide);
console.log(`The print font has ${font.length} bytes, the wide one ${wide.length}.`);
