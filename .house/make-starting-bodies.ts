// Writes src/body/starting-rows.ts anew from the open surveys: node --import tsx .house/make-starting-bodies.ts
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { startingRows } from './starting-bodies';
import { surveysAreHere } from './surveys';

if (!surveysAreHere) {
  console.error('The surveys do not lie beside this checkout: nothing was written.');
  process.exit(1);
}
const tables = startingRows();
const text = `// Computed from the open surveys by .house/make-starting-bodies.ts; a test computes it again. Don't edit by hand.

/**
 * Hip girth (children: age in years), people behind the row, then waist, hip, body rise, hip depth, inside leg, height;
 * millimetres.
 */
export type StartingRow = readonly [
  by: number,
  people: number,
  waist: number,
  hip: number,
  rise: number,
  depth: number,
  insideLeg: number,
  height: number,
];
${(['women', 'men', 'children'] as const)
  .map(
    (who) =>
      `\n/** @source ${who === 'children' ? 'UM-HSRI-77-17, 1977' : 'ANSUR II, 2014'} */\nexport const ${who.toUpperCase()}: readonly StartingRow[] = [\n${tables[who].map((row) => `  [${row.join(', ')}],`).join('\n')}\n];\n`,
  )
  .join('')}`;
const file = fileURLToPath(new URL('../src/body/starting-rows.ts', import.meta.url));
writeFileSync(file, text);
console.log(`${tables.women.length} women, ${tables.men.length} men, ${tables.children.length} ages.`);
