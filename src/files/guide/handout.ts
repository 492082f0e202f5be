import { plainWords } from '../../length';
import type { WorkingStep } from '../../plane';
import { checksOf, clothOf, clothSavingsOf, type Draft, shoppingOf, workingOf } from '../../project';
import { CAUTIONS_NOTE, cautionSource } from '../../sewing';
import { isSaid, type Phrase, printPhrase, say, words } from '../../words';
import { bodyRows, finishedRows } from '../content/rows';

const STATIONS: Readonly<Record<WorkingStep['station'], string>> = {
  body: 'Body',
  blocks: 'Blocks',
  leg: 'Leg',
  edges: 'Edges',
  check: 'Check',
  cloth: 'Cloth',
  paper: 'Paper',
  sew: 'Sew',
};

/** Lines are broken here: a typed page's width, and short enough to be read aloud from. */
const WIDTH = 88;

/**
 * The working of a draft as plain text to hand out in class: every step in the order of work, with its values in the
 * project's units. The same list as the screen's.
 *
 * @param draft the finished draft
 */
export function writeHandout(draft: Draft): string {
  const { project, cautions } = draft;
  const title = plainWords(project.name);
  const working = [...workingOf(draft), ...clothOf(draft).working];
  const stations = [...new Set(working.map((step) => step.station))];
  const table = (rows: readonly { readonly name: string; readonly value: string }[]) => {
    const wide = Math.max(...rows.map((row) => row.name.length));
    return rows.map((row) => `  ${row.name.padEnd(wide)}  ${row.value}`);
  };
  const lines = [
    title,
    '='.repeat(title.length),
    '',
    `Measurements: ${plainWords(project.body.label)}`,
    ...table(bodyRows(project)),
    '',
    ...stations.flatMap((station) => [
      STATIONS[station],
      '-'.repeat(STATIONS[station].length),
      ...working.filter((step) => step.station === station).flatMap((step, i) => stepLines(step, i + 1, project.units)),
      '',
    ]),
    'Finished',
    '--------',
    ...table(finishedRows(draft)),
    '',
    'To buy',
    '------',
    ...shoppingOf(draft).flatMap(({ name, howMuch, note }) => {
      const said = (phrase: Phrase) => printPhrase(phrase, project.units);
      // Shops of either unit: the amount once more in the other one.
      const [own, other] = [said(howMuch), printPhrase(howMuch, project.units === 'cm' ? 'inch' : 'cm')];
      return broken(`${said(name)}: ${own}${own === other ? '' : ` (${other})`}. ${said(note)}`.trim(), '  ');
    }),
    '',
    ...savingLines(draft),
    'Checks',
    '------',
    ...checksOf(draft).flatMap((check) =>
      broken(
        `${check.verdict}: ${words`${check.name}`}. ${printPhrase(check.reason, project.units)} ${printPhrase(check.remedy, project.units)}`.trim(),
        '  ',
      ),
    ),
    '',
    'Safety',
    '------',
    ...cautions.flatMap((caution) =>
      broken(printPhrase(say`${caution.title}: ${caution.sentence} (${cautionSource(caution)})`, project.units), '  '),
    ),
    ...broken(printPhrase(CAUTIONS_NOTE, project.units), '  '),
  ];
  return `${lines.join('\n')}\n`;
}

/** What would save cloth; nothing where nothing does. */
function savingLines(draft: Draft): readonly string[] {
  const { units } = draft.project;
  const savings = clothSavingsOf(draft);
  if (savings.length === 0) return [];
  const lines = savings.flatMap(({ fix, says }) => broken(printPhrase(say`${fix.label}. ${says}`, units), '  '));
  return ['Where cloth is saved', '--------------------', ...lines, ''];
}

function stepLines(step: WorkingStep, number: number, units: Draft['project']['units']): readonly string[] {
  const head = `${String(number).padStart(2)}. `;
  const sentence = broken(printPhrase(step.sentence, units), ' '.repeat(head.length));
  const formula = !isSaid(step.formula) ? [] : broken(printPhrase(step.formula, units), ' '.repeat(head.length + 2));
  return [head + sentence.join('\n').trimStart(), ...formula];
}

/** A sentence in lines of at most {@link WIDTH} letters, each set in. */
function broken(text: string, indent: string): readonly string[] {
  const lines: string[] = [];
  let line = indent;
  for (const word of text.split(' ')) {
    if (line.length + word.length + 1 > WIDTH && line.trim() !== '') {
      lines.push(line);
      line = indent;
    }
    line += line === indent ? word : ` ${word}`;
  }
  return [...lines, line];
}
