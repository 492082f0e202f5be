import type { Mm, Units } from '../../length';
import type { Phrase } from '../../words';

/** The least and the greatest value that a project takes, in the units of the project file. */
export interface Limits {
  readonly lowest: number;
  readonly highest: number;
}

/** A default is one value, or one for each unit in which people measure. */
type Usual<Value> = Value | Readonly<Record<Units, Value>>;

interface Named<Value> {
  /** What people call the field, wherever it is said. */
  readonly name: Phrase;
  /** What holds where the field is left out. */
  readonly usual: Usual<Value>;
}

/** Millimetres, or a number without a unit. */
interface Figure extends Limits {
  readonly unit: 'mm' | 'number';
}

export interface NumberField extends Named<number>, Figure {
  readonly kind: 'number';
}

/** A number that the drafting finds by itself until someone takes it in hand. */
export interface AutoField extends Named<'auto'>, Figure {
  readonly kind: 'auto';
}

export interface ChoiceField<Name extends string> extends Named<Name> {
  readonly kind: 'oneOf';
  readonly options: readonly Name[];
}

/** One of a few whole numbers, which follow on each other. */
export interface CountField<Count extends number> extends Named<Count> {
  readonly kind: 'count';
  readonly options: readonly Count[];
}

/** One of several names, or a length of one's own, which stands in an object: `{ "inseam": 640 }`. */
export interface NameOrLengthField<Name extends string, Key extends string> extends Named<Name> {
  readonly kind: 'nameOrLength';
  readonly options: readonly Name[];
  readonly own: { readonly key: Key; readonly name: Phrase } & Limits;
}

export interface SwitchField extends Named<boolean> {
  readonly kind: 'yesOrNo';
}

/** Yes, no, or not answered yet: what is a caution is given unless the answer is no. */
export interface AnswerField extends Named<undefined> {
  readonly kind: 'answer';
}

export interface TextField extends Named<string> {
  readonly kind: 'text';
}

/** A field of the project file. */
export type Field =
  | NumberField
  | AutoField
  | ChoiceField<string>
  | CountField<number>
  | NameOrLengthField<string, string>
  | SwitchField
  | AnswerField
  | TextField;

/** What a field holds. */
export type ValueOf<F> = F extends NumberField
  ? number
  : F extends AutoField
    ? number | 'auto'
    : F extends ChoiceField<infer Name>
      ? Name
      : F extends CountField<infer Count>
        ? Count
        : F extends NameOrLengthField<infer Name, infer Key>
          ? Name | { readonly [K in Key]: Mm }
          : F extends SwitchField
            ? boolean
            : F extends AnswerField
              ? boolean | undefined
              : F extends TextField
                ? string
                : never;

/** What a group of fields holds, every default filled in. */
export type ValuesOf<Group> = { readonly [Key in keyof Group]: ValueOf<Group[Key]> };

/** @param usual where it is left out, in mm; for each unit where they differ */
export const length = (name: Phrase, lowest: Mm, highest: Mm, usual: Usual<Mm>): NumberField => ({
  kind: 'number',
  name,
  unit: 'mm',
  lowest,
  highest,
  usual,
});

/** A share or another number without a unit. */
export const figure = (name: Phrase, lowest: number, highest: number, usual: number): NumberField => ({
  kind: 'number',
  name,
  unit: 'number',
  lowest,
  highest,
  usual,
});

export const autoLength = (name: Phrase, lowest: Mm, highest: Mm): AutoField => ({
  kind: 'auto',
  name,
  unit: 'mm',
  lowest,
  highest,
  usual: 'auto',
});

export const autoFigure = (name: Phrase, lowest: number, highest: number): AutoField => ({
  ...autoLength(name, lowest, highest),
  unit: 'number',
});

export const oneOf = <const Name extends string>(
  name: Phrase,
  options: readonly Name[],
  usual: NoInfer<Name>,
): ChoiceField<Name> => ({ kind: 'oneOf', name, options, usual });

export const count = <const Count extends number>(
  name: Phrase,
  options: readonly Count[],
  usual: NoInfer<Count>,
): CountField<Count> => ({ kind: 'count', name, options, usual });

export const nameOrLength = <const Name extends string, const Key extends string>(
  name: Phrase,
  options: readonly Name[],
  usual: NoInfer<Name>,
  own: NameOrLengthField<Name, Key>['own'],
): NameOrLengthField<Name, Key> => ({ kind: 'nameOrLength', name, options, usual, own });

export const yesOrNo = (name: Phrase, usual: boolean): SwitchField => ({ kind: 'yesOrNo', name, usual });

export const answer = (name: Phrase): AnswerField => ({ kind: 'answer', name, usual: undefined });

export const text = (name: Phrase, usual: string): TextField => ({ kind: 'text', name, usual });

/** What holds where a field is left out, in a project of these units; undefined where it then has no answer. */
export const usualValue = ({ usual }: Field, units: Units): number | string | boolean | undefined =>
  typeof usual === 'object' ? usual[units] : usual;
