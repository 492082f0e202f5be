import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { gatheredWords, wordsByRoom } from '../../.house/gather-words';
import { labelsText } from '../../.house/labels';
import { originOf } from '../../.house/origins';
import { english } from '../../src/words/english';

describe('the catalogue of words', () => {
  const gathered = gatheredWords();

  it('holds every message of the source and no other: `npm run words` writes it anew', () => {
    const templates = new Set(gathered.map(({ template }) => template));
    expect(templates.size).toBeGreaterThan(800);
    expect(Object.keys(english).sort()).toEqual([...templates].sort());
  });

  it('says of each where it comes from, and of none that it is plain English where a word in it is not', () => {
    for (const [template, origin] of Object.entries(english)) {
      expect(origin).toMatch(/^(plain|source|(trade|ours)(: .+)?|standard: .+)$/);
      expect(`${template}: ${origin}`).toBe(`${template}: ${originOf(template, origin)}`);
    }
    expect(originOf('Hold {0} with a pin.', 'plain')).toBe('trade');
    expect(originOf('Go on from this station.', undefined)).toMatch(/^ours: a station/);
    expect(originOf('Save it as a file.', undefined)).toBe('plain');
  });

  it('is listed whole in docs/labels.md, as `npm run words` writes it', () => {
    const rooms = wordsByRoom(gathered);
    const text = readFileSync(new URL('../../docs/labels.md', import.meta.url), 'utf8');
    const missing = labelsText(text, rooms, english)
      .split('\n')
      .filter((row) => !text.includes(`${row}\n`));
    expect(missing).toEqual([]);
    expect(labelsText(text, rooms, english)).toBe(text);
    expect(labelsText(text, rooms, { ...english, Hip: 'plain' })).not.toBe(text);
    expect(() => labelsText('# Words', rooms, english)).toThrow('lost');
  });

  it('has no words that hide in a value, where no other language would find them', () => {
    const hiding = gathered.filter(({ hidden }) => hidden.length > 0);
    expect(hiding.map(({ file, hidden }) => `${file}: ${hidden.join(' | ')}`)).toEqual([]);
  });
});
