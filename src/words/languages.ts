import { type Language, speak } from './language';

/** The languages beside English, each loaded when somebody wants it. */
const LANGUAGES: Readonly<Record<string, () => Promise<Language>>> = {
  'made-up': () => import('./made-up').then(({ madeUpLanguage }) => madeUpLanguage()),
};

/**
 * From now on everything is printed in the language of this name; before anything is said, for what was said stays.
 *
 * @param name `made-up`; whatever else leaves the English
 */
export async function speakNamed(name: string): Promise<void> {
  const load = Object.hasOwn(LANGUAGES, name) ? LANGUAGES[name] : undefined;
  if (load) speak({ ...(await load()), name });
}
