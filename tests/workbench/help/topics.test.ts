import { describe, expect, it } from 'vitest';
import { measurements } from '../../../src/body';
import { checksOf, draft, exampleProject, STATIONS, sewingOf } from '../../../src/project';
import { printPhrase } from '../../../src/words';
import { found } from '../../../src/workbench/help/search';
import { helpTopics, type Topic } from '../../../src/workbench/help/topics';

const result = draft(exampleProject);
if (!result.ok) throw new Error('the example can not be drafted');
const example = result.value;
const topics = helpTopics(example);
const textOf = ({ title, sentences }: Topic) =>
  [printPhrase(title, 'cm'), sentences.map((one) => printPhrase(one, 'cm')).join(' ')] as const;
const foundIds = (sought: string) => found(topics, textOf, sought).map(({ id }) => id);

describe('the help', () => {
  it('tells of every station, measurement, check and step of the sewing, in their own sentences', () => {
    const ids = topics.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids).toEqual(
      expect.arrayContaining([
        ...STATIONS.map((station) => `station-${station}`),
        ...measurements.map(({ key }) => `measurement-${key}`),
        ...checksOf(example).map(({ id }) => `check-${id}`),
        ...sewingOf(example).map(({ id }) => `sewing-${id}`),
      ]),
    );
    const hip = topics.find(({ id }) => id === 'measurement-hipGirth');
    expect(hip?.sentences).toContain(measurements.find(({ key }) => key === 'hipGirth')?.where);
    for (const { id, sentences, subject } of topics)
      if (subject.kind !== 'working') expect(sentences, id).not.toEqual([]);
  });

  it('tells of a fault what the screen tells, for it is asked of the same draft', () => {
    const loose = draft({ ...exampleProject, leg: { ...exampleProject.leg, straighten: 0 } });
    if (!loose.ok) throw new Error('refused');
    const check = checksOf(loose.value).find(({ id }) => id === 'pull-on');
    const topic = helpTopics(loose.value).find(({ id }) => id === 'check-pull-on');
    expect(topic?.sentences).toEqual([check?.reason, check?.remedy]);
  });
});

describe('its search', () => {
  it('finds what has all words, by their beginnings, first by the title', () => {
    expect(foundIds('body rise')[0]).toBe('measurement-bodyRise');
    expect(foundIds('HIP dep')[0]).toBe('measurement-hipDepth');
    expect(foundIds('hip depth notch xyz')).toEqual([]);
    expect(foundIds('ip')).toEqual([]);
  });

  it('minds no accents and finds everything by nothing', () => {
    expect(found(['Säume', 'Bund'], (one) => [one, one], 'saume')).toEqual(['Säume']);
    expect(found([1, 2], () => ['', ''], ' ')).toEqual([1, 2]);
  });
});
