import { said } from '../../words';
import { withNotes } from '../store/changes';
import { placed } from '../store/placed';
import type { BenchState } from '../store/state';
import { type Deed, type Event, type EventOf, EXAMPLE, type Keeping, SOON } from './keeping';
import * as words from './keeping-words';
import type { ReadCopy } from './read-copy';
import { restored } from './restored';
import type { Taken } from './shelf';
import { TROUBLE_WORDS, troubleOf } from './trouble';

/** A change is kept when nothing follows it for this long, ms … */
const PAUSE = 400;
/** … and while changes go on, no later than this, ms: with the time that saving takes, within the last second. */
const LONGEST = 700;
/** What can't be kept is tried again and again, never later than after this, ms. */
const LATE = 60_000;

/** What an event changes of what the keeper knows, and what is to be done, in this order. */
type Stepped = readonly [change: Partial<Keeping>, ...deeds: readonly Deed[]];

/**
 * What becomes of what the keeper knows when something happens, and what is to be done then. One tab at a time holds a
 * project; another that shows it follows what is kept, and its first change goes into a copy of its own.
 *
 * @param clock milliseconds that only ever go on
 */
export function step(was: Keeping, event: Event, clock: number): readonly [now: Keeping, deeds: readonly Deed[]] {
  const [change, ...deeds] = STEPS[event.happens](was, event as never, clock);
  return [{ ...was, ...change }, deeds];
}

const STEPS: {
  readonly [Name in Event['happens']]: (was: Keeping, event: EventOf<Name>, clock: number) => Stepped;
} = {
  shown(was, { now, brought }, clock) {
    const { shown: before } = was;
    // What comes from the shelf is no change of this tab's, and before the first project there is none to keep.
    if (brought || !now.begun) return [{ shown: now }];
    if (now.id !== before.id)
      return changed({ ...was, shown: now, ...(inTrouble(was) ? {} : { stand: 'waiting', at: undefined }) }, clock);
    const wandered = now.station !== before.station && was.bases.has(now.id) && isOurs(was, now.id);
    if (now.project !== before.project || now.entries !== before.entries || wandered)
      return changed({ ...was, shown: now }, clock);
    return [{ shown: now }];
  },

  asked: () => [{ due: false }, { do: 'doze' }],
  round(was) {
    // Where nothing waits and nothing could be kept, it has to be found out whether something can again.
    const knock: readonly Deed[] = was.unkept.size === 0 && inTrouble(was) ? [{ do: 'knock' }] : [];
    const turns = [...was.unkept.values()].map((state): Deed => goOn({ happens: 'turn', state }));
    const attempts = [...knock, ...turns].map((deed): Deed => ({ do: 'attempt', deed }));
    return [{ faults: [] }, ...attempts, goOn({ happens: 'ended' })];
  },
  turn(was, { state }) {
    const save: Event = { happens: 'save', state };
    if (isShown(was, state.id)) return take(was, state.id, save, { happens: 'overtaken', state });
    return [{}, isOurs(was, state.id) ? goOn(save) : { do: 'borrow', state }];
  },
  save: ({ bases }, { state }) => [{}, { do: 'put', state, base: bases.get(state.id) }],
  stored(was, { state, revision, at }) {
    const { id } = state;
    const kept = { bases: withOne(was.bases, id, revision), unkept: withoutSame(was.unkept, state) };
    const told: readonly Deed[] = [
      { do: 'forget', id },
      { do: 'tellChange', id },
    ];
    if (!isShown(was, id)) return [kept, ...told];
    // In trouble it is told when all of it is over.
    return [{ ...kept, at, ...unlessInTrouble(was, 'kept') }, ...told, { do: 'remember', id }];
  },
  overtaken(was, { state }) {
    const { id } = state;
    if (!isShown(was, id)) return [{}, { do: 'putApart', state }];
    const left = { unkept: without(was.unkept, id), bases: without(was.bases, id) };
    return [left, { do: 'copy', noted: true }, { do: 'forget', id }];
  },
  parted: (was, { state, own }) => [
    { unkept: withoutSame(was.unkept, state) },
    { do: 'forget', id: state.id },
    { do: 'tellChange', id: own.id },
    { do: 'say', tone: 'refused', text: words.parted(state.project.name, own.project.name) },
  ],
  failed: ({ faults }, { fault }) => [{ faults: [...faults, fault] }],
  ended: (was) => (was.faults.length > 0 ? troubled(was, was.faults[0]) : well(was)),
  trouble: (was, { fault }) => troubled(was, fault),

  held: (_, { id, next }) => [{ hold: { by: 'us', id } }, ...after(next)],
  refused(was, { id, next }) {
    const { name } = was.shown.project;
    return [
      { hold: { by: 'others', id, name }, stand: 'elsewhere' },
      { do: 'say', tone: 'refused', text: words.elsewhere(name), offersCopy: true },
      { do: 'wait', id },
      ...after(next),
    ];
  },
  freed({ hold, shown }, { id }) {
    if (hold.by !== 'others' || shown.id !== id) return [{ hold: { by: 'nobody' } }, { do: 'letGo' }];
    return [{ hold: { by: 'us', id } }, { do: 'follow', id, next: { happens: 'regained', id, name: hold.name } }];
  },
  regained: (was, { id, name }) => [
    isOurs(was, id) ? unlessInTrouble(was, 'kept') : {},
    { do: 'say', tone: 'told', text: words.regained(name) },
  ],

  heard: (was, { id }) => [{}, { do: 'count' }, ...(isElsewhere(was) && isShown(was, id) ? [follow(id)] : [])],
  // A change here goes into a copy instead.
  followed: (was, { id, taken }) => (isShown(was, id) && !was.unkept.has(id) ? shownFrom(was, taken) : [{}]),
  opened(was, { id, ...found }) {
    const [change, ...deeds]: Stepped =
      'mine' in found ? [{}, { do: 'show', part: placed(found.mine) }] : shownFrom(was, found.taken);
    // Kept as it is now, it is not told of again.
    const renew = 'taken' in found && found.taken.read.notes.length > 0;
    return [change, ...deeds, { do: 'remember', id }, goOn({ happens: 'placed', id, renew })];
  },
  placed: (was, { id, renew }) => take(was, id, { happens: 'ready', renew }),
  ready(was, { renew }, clock) {
    const now = { ...was, ...unlessInTrouble(was, 'kept') };
    return renew ? changed(now, clock) : [now];
  },
  noted(was, { read, history }) {
    const { id, revision } = read;
    const part = restored(read, history, was.shown.draft);
    return [
      { bases: withOne(was.bases, id, revision - 1), unkept: withOne(was.unkept, id, { ...was.shown, ...part }) },
      { do: 'show', part },
      ...notesOf(read),
    ];
  },

  // Kept as soon as it is changed, and no sooner: who looks at it twice has no two of it.
  looked: (was, { example }) => [
    { hold: { by: 'nobody' }, at: undefined, ...unlessInTrouble(was, 'example') },
    { do: 'letGo' },
    { do: 'show', part: example },
    { do: 'remember', id: EXAMPLE },
  ],

  // What another tab holds is changed by that tab alone.
  copy: (was) => [isElsewhere(was) ? { unkept: without(was.unkept, was.shown.id) } : {}, { do: 'copy' }],
  leave: (was) => [
    {},
    ...(isElsewhere(was) && was.unkept.has(was.shown.id) ? [goOn({ happens: 'copy' })] : []),
    goOn({ happens: 'left' }),
  ],
  // The page may be gone before the shelf has answered.
  left({ bases, unkept, shown: { id } }) {
    const notes = [...unkept.values()].map(
      (state): Deed => ({ do: 'note', state, revision: (bases.get(state.id) ?? 0) + 1 }),
    );
    const own: readonly Deed[] = unkept.has(id) || bases.has(id) ? [{ do: 'remember', id }] : [];
    return [{}, ...notes, ...own, { do: 'flush' }];
  },
};

const goOn = (event: Event): Deed => ({ do: 'goOn', event });
const after = (next: Event | undefined): readonly Deed[] => (next ? [goOn(next)] : []);
const follow = (id: string): Deed => ({ do: 'follow', id });

const isShown = ({ shown }: Keeping, id: string): boolean => shown.id === id;
const isOurs = ({ hold }: Keeping, id: string): boolean => hold.by === 'us' && hold.id === id;
const isElsewhere = ({ hold, shown }: Keeping): boolean => hold.by === 'others' && hold.id === shown.id;
const inTrouble = ({ stand }: Keeping): boolean => stand === 'full' || stand === 'off' || stand === 'fault';
const unlessInTrouble = (was: Keeping, stand: Keeping['stand']): Partial<Keeping> => (inTrouble(was) ? {} : { stand });

function withOne<T>(all: ReadonlyMap<string, T>, id: string, one: T): ReadonlyMap<string, T> {
  return new Map([...all, [id, one]]);
}

function without<T>(all: ReadonlyMap<string, T>, id: string): ReadonlyMap<string, T> {
  return new Map([...all].filter(([key]) => key !== id));
}

/** A state that is kept waits no longer, unless a newer one has taken its place. */
const withoutSame = (unkept: Keeping['unkept'], state: BenchState): Keeping['unkept'] =>
  unkept.get(state.id) === state ? without(unkept, state.id) : unkept;

/** What is on the bench is to be kept, soon. */
function changed(was: Keeping, clock: number): Stepped {
  const since = was.due && !inTrouble(was) ? was.since : clock;
  const unkept = withOne(was.unkept, was.shown.id, was.shown);
  const stand = was.stand === 'example' ? 'waiting' : was.stand;
  const wait = Math.max(0, Math.min(PAUSE, since + LONGEST - clock));
  return [
    { ...was, unkept, since, due: true, stand },
    { do: 'wake', after: wait },
  ];
}

/** Takes hold of the project on the bench, in the place of the one that was there before. */
function take(was: Keeping, id: string, ours: Event, theirs?: Event): Stepped {
  if (isOurs(was, id)) return [{}, goOn(ours)];
  return [{ hold: { by: 'nobody' } }, { do: 'letGo' }, { do: 'hold', id, ours, ...(theirs && { theirs }) }];
}

/** Shows what the shelf has of a project. */
function shownFrom(was: Keeping, { read, history, setAside }: Taken): Stepped {
  const aside = setAside.length > 0 && withNotes(words.setAside(setAside), read.notes);
  return [
    { bases: withOne(was.bases, read.id, read.revision), at: read.savedAt },
    { do: 'show', part: restored(read, history, was.shown.draft) },
    ...(aside ? [{ do: 'say', tone: 'refused', text: aside } as const] : notesOf(read)),
  ];
}

const notesOf = ({ project, notes }: ReadCopy): readonly Deed[] =>
  notes.length > 0 ? [{ do: 'say', tone: 'told', text: withNotes(words.open(project.name), notes) }] : [];

function troubled({ stand: before, again }: Keeping, fault: unknown): Stepped {
  const stand = troubleOf(fault);
  const told: readonly Deed[] =
    stand === 'fault'
      ? [{ do: 'tellFault', fault }]
      : stand === before
        ? []
        : [{ do: 'say', tone: 'refused', text: said(TROUBLE_WORDS[stand]) }];
  return [{ stand, due: true, again: Math.min(2 * again, LATE) }, { do: 'wake', after: again }, ...told];
}

function well(was: Keeping): Stepped {
  if (!inTrouble(was)) return [{ again: SOON }];
  const stand = isElsewhere(was) ? 'elsewhere' : was.bases.has(was.shown.id) ? 'kept' : 'example';
  return [
    { again: SOON, stand },
    { do: 'say', tone: 'told', text: words.well() },
  ];
}
