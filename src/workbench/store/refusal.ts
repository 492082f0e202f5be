import { fieldName } from '../../project';
import { number, own, type Problem, said, say, words } from '../../words';

/** Why a file could not be opened, in a sentence or two; the first problems are enough to go on with. */
export function refusal(problems: readonly Problem[], fileName: string): string {
  const [first] = problems;
  const of = (problem: Problem) => said(say`${fieldName(problem.field)}: ${problem.phrase}`);
  const name = own(fileName);
  const why =
    first?.field === 'file'
      ? [words`“${name}” ${first.phrase}`]
      : [words`“${name}” can’t be opened.`, ...problems.slice(0, 2).map(of).map(sentence)];
  const more = problems.length > 2 ? [words`And ${number(problems.length - 2, 0)} more.`] : [];
  return [...why, ...more, words`Nothing here was changed.`].join(' ');
}

/** A phrase of a problem as a sentence: a capital first, a stop last. */
export function sentence(text: string): string {
  const upper = text.charAt(0).toUpperCase() + text.slice(1);
  return /[.!?]$/.test(upper) ? upper : `${upper}.`;
}
