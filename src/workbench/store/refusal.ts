import { fieldName } from '../../project';
import { type Problem, printPhrase, said, say } from '../../words';

/** Why a file could not be opened, in a sentence or two; the first problems are enough to go on with. */
export function refusal(problems: readonly Problem[], fileName: string): string {
  const [first] = problems;
  const of = (problem: Problem) => said(say`${fieldName(problem.field)}: ${problem.phrase}`);
  const what =
    first?.field === 'file'
      ? printPhrase(first.phrase, 'cm')
      : `can’t be opened. ${problems.slice(0, 2).map(of).map(sentence).join(' ')}`;
  const more = problems.length > 2 ? ` And ${problems.length - 2} more.` : '';
  return `“${fileName}” ${what}${more} Nothing here was changed.`;
}

/** A phrase of a problem as a sentence: a capital first, a stop last. */
export function sentence(text: string): string {
  const upper = text.charAt(0).toUpperCase() + text.slice(1);
  return /[.!?]$/.test(upper) ? upper : `${upper}.`;
}
