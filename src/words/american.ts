import { SENTENCES, SPELLINGS, WORDS } from './american-words';
import type { Template } from './catalogue';
import { filled } from './filled';
import { ENGLISH, type Language } from './language';

/** As people sew and spell in the United States. */
export const americanEnglish = (): Language => englishBy('en-US', SPELLINGS);

/** As people sew in Canada, who spell as in Britain. */
export const canadianEnglish = (): Language => englishBy('en-CA', {});

/**
 * English of another country: a whole sentence where one is written for it, and else the British one, word by word.
 *
 * @param locale as in BCP 47
 * @param spelling what is spelled otherwise there, in small letters
 */
function englishBy(locale: string, spelling: Readonly<Record<string, string>>): Language {
  const table = { ...WORDS, ...spelling };
  const known = new Map<string, string>();
  return {
    ...ENGLISH,
    locale,
    message(template, texts) {
      const sentence = SENTENCES[template as Template];
      const said = known.get(template) ?? (sentence ? worded(sentence, spelling) : worded(template, table));
      known.set(template, said);
      return filled(said, texts);
    },
  };
}

/** Each word in its other form, capital where it was; an article before it goes with its new first letter. */
const worded = (text: string, table: Readonly<Record<string, string>>): string =>
  text.replace(/(\b[Aa]n )?(\p{L}+)/gu, (whole: string, article: string | undefined, word: string) => {
    const other = Object.hasOwn(table, word.toLowerCase()) ? table[word.toLowerCase()] : undefined;
    if (other === undefined) return whole;
    const said =
      word.charAt(0) === word.charAt(0).toLowerCase() ? other : other.charAt(0).toUpperCase() + other.slice(1);
    if (article === undefined) return said;
    return `${/^[aeiou]/i.test(said) ? article : article.replace('n', '')}${said}`;
  });
