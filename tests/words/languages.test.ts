import { afterEach, describe, expect, it } from 'vitest';
import {
  all,
  ENGLISH,
  either,
  inside,
  inTurn,
  mm,
  number,
  own,
  printPhrase,
  say,
  speak,
  UNSAID,
  words,
} from '../../src/words';
import { madeUpLanguage } from '../../src/words/made-up';
import { translated } from '../../src/words/translated';

afterEach(() => speak(ENGLISH));

describe('a phrase', () => {
  it('keeps its template and its values, and is printed in the reader’s unit', () => {
    const phrase = say`The hip line is ${mm(254)} wide.`;
    expect(phrase.template).toBe('The hip line is {0} wide.');
    expect(printPhrase(phrase, 'cm')).toBe('The hip line is 25.4 cm wide.');
    expect(printPhrase(phrase, 'inch')).toBe('The hip line is 10 in wide.');
    expect(printPhrase(UNSAID, 'cm')).toBe('');
  });

  it('writes a name small within a sentence, where English does', () => {
    const name = say`Body rise`;
    expect(words`${name}`).toBe('Body rise');
    expect(words`Measure the ${inside(name)}.`).toBe('Measure the body rise.');
    speak(translated('de', (template: string) => (template === 'Body rise' ? 'Sitzhöhe' : template)));
    expect(words`${inside(name)}`).toBe('Sitzhöhe');
  });

  it('joins lists as the language does, and sentences in turn, leaving out what is unsaid', () => {
    const three = [say`waist`, say`hip`, say`thigh`];
    expect(words`Measure ${all(three)}.`).toBe('Measure waist, hip and thigh.');
    expect(words`Measure ${either(three)}.`).toBe('Measure waist, hip or thigh.');
    expect(printPhrase(inTurn([say`One.`, UNSAID, say`Two.`]), 'cm')).toBe('One. Two.');
    expect(printPhrase(inTurn([]), 'cm')).toBe('');
  });
});

describe('another language', () => {
  it('puts the values where it wants them, and chooses words by a number', () => {
    const messages: Readonly<Record<string, string>> = {
      'Print {0} sheets on {1}.': 'Auf {1} {n0, plural, one {ein Blatt} other {{0} Blätter}} drucken.',
    };
    speak(translated('de', (template) => messages[template] ?? template));
    expect(words`Print ${number(1)} sheets on ${own('A4')}.`).toBe('Auf A4 ein Blatt drucken.');
    expect(words`Print ${number(20)} sheets on ${own('A4')}.`).toBe('Auf A4 20 Blätter drucken.');
    expect(words`Measure ${all([say`a`, say`b`])}.`).toContain('a und b');
  });

  it('that is made up shows what was said through the catalogue, and what was not', () => {
    speak(madeUpLanguage());
    const said = words`The ${say`waist`} isn't ${own('own')} yet.`;
    expect(said).toMatch(/^«Thé «wåîst~+» îsn’t own ÿét\.~+»$/);
    expect(words`${number(3)} × ${number(4)}`).toBe('3 × 4');
  });
});
