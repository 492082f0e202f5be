import { ASKED_KEYS, type Measurement } from '../../body';
import { mm, number, own, type Phrase, say } from '../../words';
import type { Field, Limits } from './kinds';

/** What a field takes, as it goes on after “must be”: in the refusal of a value and in the table of all fields. */
export function wantedOf(field: Field): Phrase {
  switch (field.kind) {
    case 'number':
      return figureWanted(field);
    case 'auto':
      return say`“auto” or ${figureWanted(field)}`;
    case 'oneOf':
      return say`one of ${own(field.options.join(', '))}`;
    case 'count':
      return figureWanted({ unit: 'number', lowest: Math.min(...field.options), highest: Math.max(...field.options) });
    case 'nameOrLength':
      return say`one of ${own(field.options.join(', '))}, or { "${own(field.own.key)}": ${figureWanted({ unit: 'mm', ...field.own })} }`;
    case 'yesOrNo':
    case 'answer':
      return say`true or false`;
    case 'text':
      return say`a text of at most ${number(LONGEST_TEXT, 0)} characters`;
  }
}

/** Letters of a name that somebody gives. */
export const LONGEST_TEXT = 200;

/** What a measurement takes: a number, or for a few of them the word that asks for its estimate. */
export const measurementWanted = (one: Measurement): Phrase =>
  ASKED_KEYS.some((key) => key === one.key) ? say`“estimated” or ${figureWanted(one)}` : figureWanted(one);

/** A number between two limits, in mm, years or without a unit. */
export function figureWanted({ unit, lowest, highest }: Limits & { readonly unit: string }): Phrase {
  const value = (figure: number) => (unit === 'mm' ? mm(figure) : number(figure, 3));
  const [least, most] = [value(lowest), value(highest)];
  if (unit === 'mm') return say`a number of millimetres between ${least} and ${most}`;
  return unit === 'years'
    ? say`a number of years between ${least} and ${most}`
    : say`a number between ${least} and ${most}`;
}
