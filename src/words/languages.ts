import { ENGLISH, type Language, speak } from './language';

/** The languages, each loaded when somebody wants it. */
const LANGUAGES: Readonly<Record<string, () => Promise<Language>>> = {
  british: () => Promise.resolve(ENGLISH),
  american: () => import('./american').then(({ americanEnglish }) => americanEnglish()),
  canadian: () => import('./american').then(({ canadianEnglish }) => canadianEnglish()),
  'made-up': () => import('./made-up').then(({ madeUpLanguage }) => madeUpLanguage()),
};

/** The three Englishes that people choose between. */
export const ENGLISHES = ['british', 'american', 'canadian'] as const;
export type English = (typeof ENGLISHES)[number];

/** @param text as it was kept or typed */
export const isEnglish = (text: unknown): text is English => (ENGLISHES as readonly unknown[]).includes(text);

/**
 * The English of a place: of what people sew and say there, whatever the language they read in.
 *
 * @param locale as in BCP 47 or POSIX: `en-CA`, `en_US.UTF-8`; whatever is none of those is British
 */
export function englishOf(locale: string): English {
  try {
    const { region } = new Intl.Locale(locale.replace(/[.@].*$/, '').replaceAll('_', '-')).maximize();
    return region === 'US' || region === 'PH' ? 'american' : region === 'CA' ? 'canadian' : 'british';
  } catch {
    return 'british';
  }
}

/**
 * From now on everything is printed in the language of this name; before anything is said, for what was said stays.
 *
 * @param name one of {@link ENGLISHES} or `made-up`; whatever else changes nothing
 */
export async function speakNamed(name: string): Promise<void> {
  const load = Object.hasOwn(LANGUAGES, name) ? LANGUAGES[name] : undefined;
  if (load) speak({ ...(await load()), name });
}
