import type { Units } from '../../length';
import { type Caution, cautionSource } from '../../sewing';
import { said } from '../../words';
import { cautionSentences } from './rows';

/**
 * The cautions' sentences, each with the number of its source in brackets where it has one, and the sources by their
 * numbers, to stand at the end of a document.
 */
export function numberedCautions(
  cautions: readonly Caution[],
  units: Units,
): { readonly sentences: readonly string[]; readonly sources: readonly string[] } {
  const sourceOf = (caution: Caution) => (caution.source.sure === 'practice' ? '' : said(cautionSource(caution)));
  const sources = [...new Set(cautions.map(sourceOf))].filter((source) => source !== '');
  return {
    sentences: cautionSentences(cautions, units).map((sentence, i) => {
      // Behind the cautions stands a note of no source.
      const caution = cautions[i];
      const at = caution ? sources.indexOf(sourceOf(caution)) : -1;
      return at < 0 ? sentence : `${sentence} [${at + 1}]`;
    }),
    sources: sources.map((source, i) => `[${i + 1}] ${source}.`),
  };
}
