import { type English, englishOf, isEnglish } from '../../words';
import { keep, kept } from './manner';

const WORDS = 'legwork.words';

/**
 * Whose words the page uses: as was chosen, and else by where the browser says that its reader lives. It is kept with the
 * person and not with the project, for a project that is handed on is read in the words of whoever opens it.
 */
export function spokenEnglish(): English {
  const chosen = kept(WORDS);
  return isEnglish(chosen) ? chosen : englishOf(navigator.language);
}

/** Keeps the choice for the next time that the page is loaded. */
export const keepEnglish = (english: English): void => keep(WORDS, english);
