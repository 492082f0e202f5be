// Writes src/body/estimate-lines.ts anew from the open surveys: node --import tsx .house/make-estimate-lines.ts
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { estimateLines } from './estimate-lines';
import { surveysAreHere } from './surveys';

if (!surveysAreHere) {
  console.error('The surveys do not lie beside this checkout: nothing was written.');
  process.exit(1);
}
const { adults, children } = estimateLines();
type Lines = (typeof adults)['bodyRise'];
const table = (lines: Readonly<Record<string, Lines>>) =>
  Object.entries(lines)
    .map(([key, all]) => {
      const rows = all.map(({ intercept, by, spread, people }) => {
        const terms = Object.entries(by).map(([of, coefficient]) => `${of}: ${coefficient}`);
        return `    { intercept: ${intercept}, by: { ${terms.join(', ')} }, spread: ${spread}, people: ${people} },\n`;
      });
      return `  ${key}: [\n${rows.join('')}  ],\n`;
    })
    .join('');
const text = `// Computed from the open surveys by .house/make-estimate-lines.ts; a test computes it again. Don't edit by hand.
import type { SurveyLines } from './survey-line';

/** Least squares, women and men counted alike, the waist at the navel. @source ANSUR II (NATICK/TR-15/007, 2014) */
export const ADULTS: SurveyLines['adults'] = {
${table(adults)}};

/**
 * Least squares, sexes together, under eighteen. Nobody's crotch height was taken: inside leg = gluteal furrow + 0.018 ×
 * stature, an inference.
 *
 * @source UM-HSRI-77-17, 1977
 */
export const CHILDREN: SurveyLines['children'] = {
${table(children)}};
`;
writeFileSync(fileURLToPath(new URL('../src/body/estimate-lines.ts', import.meta.url)), text);
console.log('The lines of the estimates are written.');
