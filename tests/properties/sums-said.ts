import fc from 'fast-check';
import { measuredOf } from '../../src/body';
import { bodyRows, choiceSentences, cutRows, finishedRows } from '../../src/files/content/rows';
import { fitLines } from '../../src/files/fit/content';
import { formatLength, type Units } from '../../src/length';
import { checksOf, clothOf, type Draft, workingOf } from '../../src/project';
import { type Phrase, printPhrase, said } from '../../src/words';
import { RESULTS } from '../../src/workbench/finished/results';
import { measureRows } from '../../src/workbench/finished/rows';
import { anyBody } from './bodies';
import { anyDesign, projectOf } from './designs';

/** The figures of a source are its own. */
const withoutSource = (text: string): string => text.replace(/ ?Source: .*$/s, '');

/**
 * Everything with figures that a draft says on the screen, on its cover and on its fit sheet, as it is printed.
 *
 * @param laid whether the lay is made and told as well
 */
export function printedWords(of: Draft, laid: boolean): readonly string[] {
  const { units } = of.project;
  const print = (phrase: Phrase): string => printPhrase(phrase, units);
  const steps = [...workingOf(of), ...(laid ? clothOf(of).working : [])];
  return [
    ...steps.flatMap(({ sentence, formula }) => [print(sentence), withoutSource(print(formula))]),
    ...checksOf(of).flatMap(({ reason, remedy }) => [print(reason), print(remedy)]),
    ...of.body.remarks.map(({ phrase }) => print(phrase)),
    ...(['body', 'blocks', 'leg', 'edges', 'cloth'] as const).map((station) => print(RESULTS[station](of))),
    ...panelWords(of),
    ...fitWords(of),
    ...choiceSentences(of),
    ...[...bodyRows(of), ...finishedRows(of), ...cutRows(of)].map(({ name, value }) => `${name}: ${value}`),
  ];
}

/** A row of the panel: the measure, and what it is made of below it. */
const panelWords = (of: Draft): readonly string[] =>
  measureRows(of).map(({ name, value, note }) => {
    const { units } = of.project;
    const [first = '', ...others] = printPhrase(note, units).split('; ');
    const made = / [+−] /.test(first) ? `${first} = ${formatLength(value, units)}` : first;
    return `${said(name)}: ${[made, ...others].join('; ')}`;
  });

/** A row of the fit sheet, read across: body and room, and the line of rounding below it, are the finished measure. */
function fitWords(of: Draft): readonly string[] {
  const lines = fitLines(of);
  return lines.flatMap(({ name, part, body, finished, room }, i) => {
    if (room === '' || finished === '') return [];
    const bare = body || lines.slice(0, i).findLast((line) => line.body !== '')?.body;
    const next = lines[i + 1];
    const rounding = next?.part && next.finished === '' && next.room !== '' ? next.room : '';
    const terms = [bare, room, rounding].filter(Boolean).join(' ').replaceAll('*', '');
    const sum = terms.replaceAll(' +', ' + ').replaceAll(' −', ' − ');
    return [`${part ? 'of which ' : ''}${name}: ${sum} = ${finished}`];
  });
}

/** Projects in a unit, of bodies whose leg or whose trousers were measured. */
export const drafts = (units: Units) =>
  fc
    .record({ body: anyBody, design: anyDesign, trousers: fc.boolean(), shrinks: fc.integer({ min: 0, max: 60 }) })
    .map(({ body: given, design, trousers, shrinks }) => {
      const { insideLeg = 0, ...others } = measuredOf(given);
      const body = trousers ? { ...others, trouserInseam: insideLeg - 50 } : { ...others, insideLeg };
      const project = projectOf(body, { ...design, units });
      return { ...project, cloth: { ...project.cloth, shrinkLength: shrinks / 1000 } };
    });
