import { expect, it } from 'vitest';
import type { Event, Keeping } from '../../../src/workbench/shelf/keeping';
import { keepingAtFirst } from '../../../src/workbench/shelf/keeping';
import { step } from '../../../src/workbench/shelf/keeping-step';
import { createBench } from '../../../src/workbench/store/bench';

const shown = { ...createBench().getState(), begun: true };
const { id } = shown;
const first = keepingAtFirst(shown);
const renamed = { ...shown, project: { ...shown.project, name: 'another' } };

/** What the keeper knows after some events, and what the last of them wants done. */
function after(events: readonly Event[], from: Keeping = first) {
  const begin: ReturnType<typeof step> = [from, []];
  return events.reduce(([now], event, i) => step(now, event, 100 * i), begin);
}

const changed: Event = { happens: 'shown', now: renamed, brought: false };
const refused: Event = { happens: 'refused', id, next: undefined };

it.each<[Keeping['stand'], readonly Event[]]>([
  ['example', [{ happens: 'shown', now: renamed, brought: true }]],
  ['waiting', [changed]],
  ['kept', [changed, { happens: 'stored', state: renamed, revision: 1, at: 7 }]],
  ['elsewhere', [refused]],
  ['full', [{ happens: 'trouble', fault: new DOMException('no room', 'QuotaExceededError') }]],
  ['off', [{ happens: 'trouble', fault: new DOMException('no', 'SecurityError') }]],
  ['fault', [{ happens: 'failed', fault: new TypeError('ours') }, { happens: 'ended' }]],
  ['kept', [{ happens: 'trouble', fault: new TypeError('ours') }, { happens: 'ended' }]],
])('stands at “%s”', (stand, events) => {
  // After a fault it is kept again only where it was kept before.
  const from = stand === 'kept' ? { ...first, bases: new Map([[id, 1]]) } : first;
  expect(after(events, from)[0].stand).toBe(stand);
});

it('changes nothing of what it was given', () => {
  const before = structuredClone({ ...first, shown: undefined });
  after([changed, refused, { happens: 'overtaken', state: renamed }, { happens: 'leave' }], Object.freeze(first));
  expect({ ...first, shown: undefined }).toEqual(before);
});

it('puts a round off while changes go on, but never longer than a while after the first', () => {
  const waits = [0, 300, 600, 900].map((_, i, all) => {
    const events = all
      .slice(0, i + 1)
      .map((n): Event => ({ ...changed, now: { ...renamed, entries: { [n]: { text: '', problem: undefined } } } }));
    let now = first;
    let deeds: ReturnType<typeof step>[1] = [];
    events.forEach((event, k) => {
      [now, deeds] = step(now, event, all[k] ?? 0);
    });
    return deeds;
  });
  expect(waits).toEqual([400, 400, 100, 0].map((ms) => [{ do: 'wake', after: ms }]));
});

it('tries again after twice as long each time, and soon once all is well', () => {
  const trouble: Event = { happens: 'trouble', fault: new DOMException('no', 'SecurityError') };
  const waits = [1, 2, 3, 4, 5, 6].map((n) => after(Array.from({ length: n }, () => trouble))[1][0]);
  expect(waits).toEqual([5, 10, 20, 40, 60, 60].map((s) => ({ do: 'wake', after: 1000 * s })));
  expect(after([trouble, trouble, { happens: 'ended' }])[0].again).toBe(5000);
});

it('writes nothing over what another tab holds: a change that is left becomes a copy first', () => {
  const [elsewhere] = after([refused, changed]);
  expect(step(elsewhere, { happens: 'leave' }, 0)[1]).toEqual([
    { do: 'goOn', event: { happens: 'copy' } },
    { do: 'goOn', event: { happens: 'left' } },
  ]);
  const [copied] = step(elsewhere, { happens: 'copy' }, 0);
  expect([...copied.unkept]).toEqual([]);
});

it('lets go of what the other tab gave back when something else is on the bench by then', () => {
  const [away] = after([refused, { happens: 'shown', now: { ...shown, id: 'other' }, brought: true }]);
  expect(step(away, { happens: 'freed', id }, 0)[1]).toEqual([{ do: 'letGo' }]);
});
