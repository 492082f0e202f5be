import { describe, expect, it } from 'vitest';
import { gatheredWords } from '../../.house/gather-words';
import { english } from '../../src/words/english';

describe('the catalogue of words', () => {
  const gathered = gatheredWords();

  it('holds every message of the source and no other: `npm run words` writes it anew', () => {
    const templates = new Set(gathered.map(({ template }) => template));
    expect(templates.size).toBeGreaterThan(800);
    expect(Object.keys(english).sort()).toEqual([...templates].sort());
  });

  it('says of each where it comes from', () => {
    for (const origin of Object.values(english)) expect(origin).toMatch(/^(plain|trade|standard: .+|ours(: .+)?)$/);
  });

  it('has no words that hide in a value, where no other language would find them', () => {
    const hiding = gathered.filter(({ hidden }) => hidden.length > 0);
    expect(hiding.map(({ file, hidden }) => `${file}: ${hidden.join(' | ')}`)).toEqual([]);
  });
});
