import { VERDICT_NAMES } from '../../check';
import { plainWords } from '../../length';
import type { WorkingStep } from '../../plane';
import { checksOf, clothOf, clothSavingsOf, type Draft, STATION_NAMES, shoppingOf, workingOf } from '../../project';
import { CAUTIONS_NOTE, cautionSource } from '../../sewing';
import { inTurn, isSaid, own, type Phrase, printPhrase, said, say, words } from '../../words';
import { bodyRows, finishedRows } from '../content/rows';

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
    words`Measurements: ${own(plainWords(project.body.label))}`,
    ...table(bodyRows(draft)),
    '',
    ...stations.flatMap((station) => [
      ...underlined(STATION_NAMES[station]),
      ...working.filter((step) => step.station === station).flatMap((step, i) => stepLines(step, i + 1, project.units)),
      '',
    ]),
    ...underlined(say`Finished`),
    ...table(finishedRows(draft)),
    '',
    ...underlined(say`To buy`),
    ...shoppingOf(draft).flatMap(({ name, howMuch, note }) => {
      const said = (phrase: Phrase) => printPhrase(phrase, project.units);
      // Shops of either unit: the amount once more in the other one.
      const [here, other] = [said(howMuch), printPhrase(howMuch, project.units === 'cm' ? 'inch' : 'cm')];
      return broken(`${said(name)}: ${here}${here === other ? '' : ` (${other})`}. ${said(note)}`.trim(), '  ');
    }),
    '',
    ...savingLines(draft),
    ...underlined(say`Checks`),
    ...checksOf(draft).flatMap((check) =>
      broken(
        printPhrase(
          say`${VERDICT_NAMES[check.verdict]}: ${check.name}. ${inTurn([check.reason, check.remedy])}`,
          project.units,
        ),
        '  ',
      ),
    ),
    '',
    ...underlined(say`Safety`),
    ...cautions.flatMap((caution) =>
      broken(
        printPhrase(
          caution.source.sure === 'practice'
            ? say`${caution.title}: ${caution.sentence}`
            : say`${caution.title}: ${caution.sentence} (${cautionSource(caution)})`,
          project.units,
        ),
        '  ',
      ),
    ),
    ...broken(printPhrase(CAUTIONS_NOTE, project.units), '  '),
  ];
  return `${lines.join('\n')}\n`;
}

function underlined(head: Phrase): readonly string[] {
  const text = said(head);
  return [text, '-'.repeat(text.length)];
}

/** What would save cloth; nothing where nothing does. */
function savingLines(draft: Draft): readonly string[] {
  const { units } = draft.project;
  const savings = clothSavingsOf(draft);
  if (savings.length === 0) return [];
  const lines = savings.flatMap(({ fix, says }) => broken(printPhrase(say`${fix.label}. ${says}`, units), '  '));
  return [...underlined(say`Where cloth is saved`), ...lines, ''];
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
