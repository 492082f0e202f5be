import { afterEach, describe, expect, it } from 'vitest';
import { gatheredWords } from '../../.house/gather-words';
import { dated, ENGLISH, englishOf, printPhrase, say, speak, speakNamed, words } from '../../src/words';
import { americanEnglish, canadianEnglish } from '../../src/words/american';
import { SENTENCES, SPELLINGS, WORDS } from '../../src/words/american-words';

afterEach(() => speak(ENGLISH));

/** Written by hand and not from the table: what nobody writes in the United States. */
const BRITISH =
  /\b(trousers?|napp(y|ies)|overlock\w*|tack(s|ed|ing)?|pyjamas?|\w*centred?s?|\w*metres?|\w*colour\w*|grey|licences?|neighbours?|selvedges?|towards|nightwear|tick(ed|s)?|reels?|fibres?|labelled|cancelled|travell\w+|favou?rite|honour|behaviour|mould|fulfil|programme|catalogued|organis\w+|recognis\w+|analys(e|ed|ing)|practis\w+|whilst|learnt|spelt|burnt|round|rub(bed)? out|haberdashery|calico|wadding|press studs?|zip fastener)\b/i;
/** What only Americans say: pants are underwear in Britain. */
const AMERICAN =
  /\b(pants|diapers?|serge[rsd]?s?|serging|bast(e|ed|es|ing)|pajamas?|\w*cente(r|rs|red)|\w*meters?(?<!diameter|perimeter)|colors?|gray|selvages?|spools?|fibers?|neighbors?|toward|muslin|notions)\b/i;

const templates = [...new Set(gatheredWords().map(({ template }) => template))];
/** Where both are named side by side, for people to choose between. */
const ofBoth = (template: string) => SENTENCES[template as keyof typeof SENTENCES] === template;

describe('American English', () => {
  it.each([
    ['in the United States', americanEnglish(), BRITISH],
    [
      'in Canada, spelled as in Britain',
      canadianEnglish(),
      /\b(trousers?|napp(y|ies)|overlock\w*|tick(ed|s)?|round)\b/i,
    ],
  ])('%s holds no word that is said in Britain alone', (_, language, foreign) => {
    const left = templates
      .filter((template) => !ofBoth(template))
      .map((template) => language.message(template, [...'ABCDEFGHIJ'], []) ?? template)
      .filter((message) => foreign.test(message));
    expect(left).toEqual([]);
  });

  it('has the article that its own words ask for', () => {
    const said = templates.map((template) => americanEnglish().message(template, [...'ABCDEFGHIJ'], []) ?? template);
    expect(said.filter((message) => /\ban (serge|spool|diaper|bast)/i.test(message))).toEqual([]);
    expect(said.some((message) => message.includes('with a serger'))).toBe(true);
  });

  it('stands in the source nowhere but where both are named', () => {
    expect(templates.filter((template) => AMERICAN.test(template) && !ofBoth(template))).toEqual([]);
  });

  it('is spoken by everything from one table, with capitals and values where they were', async () => {
    const told = say`Trousers with a centre seam, ${say`overlocked`}, laid flat on the selvedge.`;
    expect(printPhrase(told, 'cm')).toBe('Trousers with a centre seam, overlocked, laid flat on the selvedge.');
    await speakNamed('american');
    expect(printPhrase(told, 'cm')).toBe('Pants with a center seam, serged, laid flat on the selvage.');
    expect(words`rub out`).toBe('erase');
    expect(dated(new Date(2026, 2, 3))).toBe('March 3, 2026');
    await speakNamed('canadian');
    expect(printPhrase(told, 'cm')).toBe('Pants with a centre seam, serged, laid flat on the selvedge.');
    await speakNamed('british');
    expect(printPhrase(told, 'cm')).toBe('Trousers with a centre seam, overlocked, laid flat on the selvedge.');
  });

  it('turns nothing that it wrote into something else', () => {
    for (const table of [WORDS, SPELLINGS])
      for (const other of Object.values(table)) expect(Object.keys({ ...WORDS, ...SPELLINGS })).not.toContain(other);
  });

  it.each([
    ['en-US', 'american'],
    ['en', 'american'],
    ['es-US', 'american'],
    ['en_US.UTF-8', 'american'],
    ['en-CA', 'canadian'],
    ['fr_CA@euro', 'canadian'],
    ['en-GB', 'british'],
    ['en-AU', 'british'],
    ['de-DE', 'british'],
    ['C.UTF-8', 'british'],
    ['POSIX', 'british'],
    ['', 'british'],
  ])('is the English of %s: %s', (locale, english) => {
    expect(englishOf(locale)).toBe(english);
  });
});
