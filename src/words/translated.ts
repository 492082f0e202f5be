import { IntlMessageFormat } from 'intl-messageformat';
import type { Template } from './catalogue';
import { filled } from './filled';
import type { Language } from './language';
import type { PhraseValue } from './types';

/**
 * A language other than English, from its messages in the syntax of ICU (MessageFormat 1): `{0}` is a value as it is
 * printed, `{n0}` the same as a number, for words that follow it: `{n0, plural, one {one sheet} other {{0} sheets}}`.
 *
 * @param locale as in BCP 47
 * @param messageOf its message for the English template
 * @throws where a message breaks the syntax of ICU
 */
export function translated(locale: string, messageOf: (template: Template) => string): Language {
  const formats = new Map<string, IntlMessageFormat>();
  return {
    locale,
    within: (name) => name,
    message(template, texts, values) {
      // What holds no words but its values', such as two sentences in a row, is the same in every language.
      if (!/\p{L}/u.test(template.replace(/\{\d+\}/g, ''))) return filled(template, texts);
      const format =
        formats.get(template) ??
        new IntlMessageFormat(messageOf(template as Template), locale, undefined, { ignoreTag: true });
      formats.set(template, format);
      const named = texts.flatMap((text, i) => [[`${i}`, text] as const, [`n${i}`, asNumber(values[i])] as const]);
      return String(format.format(Object.fromEntries(named)));
    },
  };
}

function asNumber(value: PhraseValue | undefined): number {
  return value && 'number' in value ? value.number : 0;
}
