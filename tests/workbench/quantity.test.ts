import { describe, expect, it } from 'vitest';
import { printPhrase } from '../../src/words';
import { length, percentage, type Reading, stepped, years } from '../../src/workbench/store/quantity';

const numberOf = (reading: Reading) => (reading.ok ? reading.value : undefined);
const sentenceOf = (reading: Reading) => (reading.ok ? '' : printPhrase(reading.phrase, 'cm'));

describe('a length in a field', () => {
  it.each([
    ['40 1/8', 'inch', 1019.175],
    ['40⅛', 'inch', 1019.175],
    ['102cm', 'inch', 1020],
    ['40in', 'cm', 1016],
    ['102,5', 'cm', 1025],
  ] as const)('reads “%s” in a project in %s', (text, units, mm) => {
    expect(numberOf(length.read(text, units))).toBeCloseTo(mm, 6);
  });

  it('says in a sentence what it can not read, and how to write it', () => {
    expect(sentenceOf(length.read('about 40', 'cm'))).toBe(
      '“about 40” isn’t a length; write it like 102 cm, 40 1/8 in or 40⅛.',
    );
  });

  it('does not repeat a whole pasted page', () => {
    expect(sentenceOf(length.read('x'.repeat(5000), 'cm')).length).toBeLessThan(120);
  });

  it('takes an empty field for no value', () => {
    expect(length.read('  ', 'cm')).toEqual({ ok: true, value: undefined });
  });
});

describe('a percentage in a field', () => {
  it.each([
    ['35', 0.35],
    ['35 %', 0.35],
    ['12,5', 0.125],
  ])('reads “%s” as a share', (text, share) => {
    expect(numberOf(percentage.read(text, 'cm'))).toBeCloseTo(share, 9);
  });

  it.each(['35 cm', '3 5', '%', 'much'])('does not read “%s”', (text) => {
    expect(percentage.read(text, 'cm').ok).toBe(false);
  });
});

it('reads an age with or without its word', () => {
  expect(numberOf(years.read('34 years', 'cm'))).toBe(34);
  expect(numberOf(years.read('6.5', 'cm'))).toBe(6.5);
});

describe('a step', () => {
  it('goes on by whole steps from a value on the grid', () => {
    expect(stepped(1020, 1, 1)).toBe(1021);
    expect(stepped(1020, 1, -10)).toBe(1010);
  });

  it('first takes a value between two steps to its neighbour', () => {
    expect(stepped(1019.175, 1, 1)).toBe(1020);
    expect(stepped(1019.175, 1, -1)).toBe(1019);
  });

  it('is an eighth of an inch in an inch project', () => {
    const step = length.step('inch');
    expect(length.print(stepped(1016, step, 1), 'inch')).toBe('40⅛');
  });
});
