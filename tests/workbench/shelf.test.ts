import 'fake-indexeddb/auto';
import { beforeEach, describe, expect, it } from 'vitest';
import { exampleProject } from '../../src/project';
import { said, UNSAID } from '../../src/words';
import { type Copy, copyOf } from '../../src/workbench/shelf/copy';
import { found, openDatabase } from '../../src/workbench/shelf/database';
import { newestOf, readCopy } from '../../src/workbench/shelf/read-copy';
import { readHistory } from '../../src/workbench/shelf/read-history';
import { restored } from '../../src/workbench/shelf/restored';
import { openShelf, type Shelf } from '../../src/workbench/shelf/shelf';
import { useBench } from '../../src/workbench/store/bench';
import { type History, momentOf, noHistory, placeOf } from '../../src/workbench/store/history';
import { length } from '../../src/workbench/store/quantity';
import { atExample } from './at-example';

let count = 0;
let name = '';
let shelf: Shelf;

beforeEach(() => {
  count += 1;
  name = `shelf ${count}`;
  shelf = openShelf(openDatabase(name));
  useBench.setState(atExample, true);
});

const copyNamed = (title: string, revision: number, id = 'one'): Copy =>
  copyOf({ ...useBench.getState(), id, project: { ...exampleProject, name: title } }, revision, 1000 + revision);
const raw = <T>(key: string) => openDatabase(name)('readonly', (store) => found<T>(store.get(key)));
const damage = (key: string, value: unknown) =>
  openDatabase(name)('readwrite', async (store) => {
    store.put(value, key);
  });
const titleOf = async (id = 'one') => (await shelf.take(id))?.read.project.name;

describe('the shelf', () => {
  it('keeps the two newest copies of a project, and gives the newest', async () => {
    for (const [title, revision] of [
      ['a', 1],
      ['b', 2],
      ['c', 3],
    ] as const)
      expect(await shelf.put(copyNamed(title, revision), noHistory, revision - 1)).toEqual({ ok: true });
    expect(await titleOf()).toBe('c');
    const slots = [await raw<Copy>('project/one/a'), await raw<Copy>('project/one/b')];
    expect(slots.map((slot) => slot?.revision).sort()).toEqual([2, 3]);
    expect(await shelf.last()).toBe('one');
  });

  it('gives the copy before where the newest is damaged, and never writes over the damaged one', async () => {
    await shelf.put(copyNamed('a', 1), noHistory, 0);
    await shelf.put(copyNamed('b', 2), noHistory, 1);
    const broken = { ...(await raw<Copy>('project/one/b')), text: '{"format":"legwork-pro' };
    await damage('project/one/b', broken);
    expect(await titleOf()).toBe('a');
    expect(await shelf.put(copyNamed('c', 2), noHistory, 1)).toEqual({ ok: true });
    expect(await titleOf()).toBe('c');
    // However often it was met on the way.
    expect((await shelf.asides()).map((one) => one.raw)).toEqual([broken]);
  });

  it('writes nothing where another tab has put something newer there', async () => {
    await shelf.put(copyNamed('a', 1), noHistory, 0);
    await shelf.put(copyNamed('theirs', 2), noHistory, 1);
    const put = await shelf.put(copyNamed('mine', 2), noHistory, 1);
    expect(put.ok ? '' : put.newer.project.name).toBe('theirs');
    expect(await titleOf()).toBe('theirs');
  });

  it('lists what it can’t read, and leaves it as it is', async () => {
    const newer = { ...copyNamed('later', 1, 'two'), text: '{"format":"legwork-project","version":99,"body":{}}' };
    await damage('project/two/a', newer);
    await shelf.put(copyNamed('a', 1), noHistory, 0);
    const list = await shelf.list();
    expect(list.map(({ id, readable }) => [id, readable])).toEqual([
      ['one', true],
      ['two', false],
    ]);
    expect(await raw('project/two/a')).toEqual(newer);
    expect(await shelf.take('two')).toBeUndefined();
  });

  it('puts back what was removed, history and all', async () => {
    const history = { past: [momentOf('Hip', placeOf({ project: exampleProject, id: 'one' }))], future: [] };
    await shelf.put(copyNamed('a', 1), history, 0);
    const putBack = await shelf.remove('one');
    expect(await shelf.take('one')).toBeUndefined();
    await putBack();
    expect(await titleOf()).toBe('a');
    expect((await shelf.take('one'))?.history).toEqual(history);
  });

  it('writes nothing at all where a part of it can’t be kept', async () => {
    await shelf.put(copyNamed('a', 1), noHistory, 0);
    // As the functions that once came into the history with an undo.
    const unfit = { ...noHistory, undo: () => undefined } as History;
    await expect(shelf.put(copyNamed('b', 2), unfit, 1)).rejects.toThrow(/clone/);
    expect(await titleOf()).toBe('a');
    expect(await shelf.put(copyNamed('b', 2), noHistory, 1)).toEqual({ ok: true });
    expect(await titleOf()).toBe('b');
  });

  it('keeps bodies apart', async () => {
    const { label: _name, ...figures } = exampleProject.body;
    const body = { id: 'me', label: 'Me', figures, savedAt: 1 };
    await shelf.putBody(body);
    expect(await shelf.bodies()).toEqual([{ readable: true, body }]);
    await shelf.removeBody('me');
    expect(await shelf.bodies()).toEqual([]);
  });
});

describe('a copy', () => {
  const back = (found: unknown, history: unknown) => {
    const read = readCopy(found, useBench.getState().id);
    return read && restored(read, readHistory(history).history, atExample.draft);
  };

  it('is not whole with one letter changed', () => {
    const copy = copyNamed('a', 1);
    expect(readCopy(copy, 'one')?.whole).toBe(true);
    expect(readCopy({ ...copy, text: copy.text.replace('"a"', '"b"') }, 'one')).toBeUndefined();
    expect(readCopy(copy, 'two')).toBeUndefined();
    expect(newestOf([undefined, 7, { ...copy, check: 0 }, copy], 'one')?.copy).toBe(copy);
  });

  it.each([[{ template: 'must be {0}.', values: ['a length'] }], [['must be ', 'a length', '.']]])(
    'of before, with bare strings in a sentence, still says it: %j',
    (problem) => {
      const entries = { 'hem.depth': { text: 'three', problem } };
      const now = back({ ...copyNamed('a', 1, useBench.getState().id), entries }, undefined);
      expect(said(now?.entries['hem.depth']?.problem ?? UNSAID)).toBe('must be a length.');
    },
  );

  it('brings back what can’t be read and what can’t be drawn, over the last good drawing', () => {
    const { type } = useBench.getState();
    type({ path: 'hem.depth', quantity: length }, 'three');
    type({ path: 'body.hipGirth', quantity: length }, '5');
    const before = useBench.getState();
    const now = back(copyOf(before, 1, 1), before.history);
    expect(now?.entries['hem.depth']?.text).toBe('three');
    expect(now?.project.body.hipGirth).toBe(50);
    expect(now?.problems.map(({ field }) => field)).toEqual(['body.hipGirth']);
    expect(now?.draft.measures).toEqual(before.draft.measures);
    expect(now?.history).toEqual(before.history);
  });
});
