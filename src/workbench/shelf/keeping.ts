import type { History } from '../store/history';
import type { Placed } from '../store/placed';
import type { BenchState, Notice } from '../store/state';
import type { Kept } from './kept';
import type { ReadCopy } from './read-copy';
import type { Taken } from './shelf';

/** What the keeper knows between two events: plain data, replaced and never changed. */
export interface Keeping {
  /** How it stands with what is on the bench. */
  readonly stand: Kept['state'];
  /** When that was last kept, milliseconds since 1970. */
  readonly at: number | undefined;
  readonly shown: BenchState;
  /** Which tab may write the project on the bench: nobody asked yet, this one, or another, which this one waits for. */
  readonly hold:
    | { readonly by: 'nobody' }
    | { readonly by: 'us'; readonly id: string }
    | { readonly by: 'others'; readonly id: string; readonly name: string };
  /** The revision on which this tab's state is built, for each project it had open. */
  readonly bases: ReadonlyMap<string, number>;
  /** What is not kept yet: the newest state of each project. */
  readonly unkept: ReadonlyMap<string, BenchState>;
  /** Whether a round of keeping is to come by itself. */
  readonly due: boolean;
  /** When the changes began that are to be kept, by a clock that only goes on. */
  readonly since: number;
  /** After how long it is tried again where something can't be kept, ms. */
  readonly again: number;
  /** What went wrong in this round. */
  readonly faults: readonly unknown[];
}

/** What happens to the keeper, by name. */
interface Events {
  /** What is on the bench was changed, by a person or, brought from the shelf, by the keeper. */
  readonly shown: { readonly now: BenchState; readonly brought: boolean };
  /** Somebody asks for a round of keeping, now. */
  readonly asked: unknown;
  /** The round begins: all before it has ended. */
  readonly round: unknown;
  /** In a round it is the turn of a project … */
  readonly turn: { readonly state: BenchState };
  /** … which may be written by this tab … */
  readonly save: { readonly state: BenchState };
  /** … and is kept, or can't be kept where it belongs, because another tab went on with it, or was kept as a copy. */
  readonly stored: { readonly state: BenchState; readonly revision: number; readonly at: number };
  readonly overtaken: { readonly state: BenchState };
  readonly parted: { readonly state: BenchState; readonly own: Pick<BenchState, 'id' | 'project'> };
  /** Something went wrong in a round, which goes on. */
  readonly failed: { readonly fault: unknown };
  readonly ended: unknown;
  /** Something outside of a round could not be kept, or read. */
  readonly trouble: { readonly fault: unknown };
  /** The tab holds a project, or another does; what was wanted of it goes on with an event. */
  readonly held: { readonly id: string; readonly next: Event | undefined };
  readonly refused: { readonly id: string; readonly next: Event | undefined };
  /** The other tab let go of the project that was waited for, and what it kept is shown. */
  readonly freed: { readonly id: string };
  readonly regained: { readonly id: string; readonly name: string };
  /** Another tab has put something on the shelf, and what that is was read. */
  readonly heard: { readonly id: string };
  readonly followed: { readonly id: string; readonly taken: Taken };
  /** A project was asked for: what is not kept of it yet, or what the shelf has. */
  readonly opened: { readonly id: string } & ({ readonly mine: BenchState } | { readonly taken: Taken });
  readonly placed: { readonly id: string; readonly renew: boolean };
  readonly ready: { readonly renew: boolean };
  /** What was noted when a page was left is put on the bench. */
  readonly noted: { readonly read: ReadCopy; readonly history: History };
  /** Somebody wants to look at the example. */
  readonly looked: { readonly example: Placed };
  /** A copy is wanted of what is on the bench. */
  readonly copy: unknown;
  /** The page may be gone the next moment. */
  readonly leave: unknown;
  readonly left: unknown;
}

export type Event = { [Name in keyof Events]: { readonly happens: Name } & Events[Name] }[keyof Events];
export type EventOf<Name extends Event['happens']> = Extract<Event, { readonly happens: Name }>;

/** What is to be done, by name. */
interface Deeds {
  /** Asks for a round after so many ms, and not before; `doze` gives it up. */
  readonly wake: { readonly after: number };
  readonly doze: unknown;
  /** Asks for a round now. */
  readonly flush: unknown;
  /** Lets something happen as soon as what stands before is done. */
  readonly goOn: { readonly event: Event };
  /** Does something; a fault of it is held against the round. */
  readonly attempt: { readonly deed: Deed };
  /** Asks the shelf for anything: only so it is known that there is a storage again. */
  readonly knock: unknown;
  /** Takes hold of a project for as long as it is on the bench, waits until another tab lets go of it, or gives it up. */
  readonly hold: { readonly id: string; readonly ours?: Event; readonly theirs?: Event };
  readonly wait: { readonly id: string };
  readonly letGo: unknown;
  /** Takes hold of a project that is not on the bench for as long as it is saved. */
  readonly borrow: { readonly state: BenchState };
  /** Puts a state on the shelf, on a revision or on what it turns out to build on. */
  readonly put: { readonly state: BenchState; readonly base: number | undefined };
  readonly putApart: { readonly state: BenchState };
  readonly show: { readonly part: Partial<BenchState> };
  /** Reads what is kept of a project, to show it. */
  readonly follow: { readonly id: string; readonly next?: Event };
  /** Makes what is on the bench a project of its own. */
  readonly copy: { readonly noted?: boolean };
  /** Notes a state where writing takes no time; `forget` takes the note away. */
  readonly note: { readonly state: BenchState; readonly revision: number };
  readonly forget: { readonly id: string };
  /** Remembers which project this tab has open. */
  readonly remember: { readonly id: string };
  /** Tells other tabs, and the lists in this one or them alone, that the shelf has changed. */
  readonly tellChange: { readonly id: string };
  readonly count: unknown;
  readonly say: Pick<Notice, 'tone' | 'text'> & { readonly offersCopy?: boolean };
  readonly tellFault: { readonly fault: unknown };
}

export type Deed = { [Name in keyof Deeds]: { readonly do: Name } & Deeds[Name] }[keyof Deeds];
export type DeedOf<Name extends Deed['do']> = Extract<Deed, { readonly do: Name }>;

/** What a tab remembers that shows the example: no project is kept by this name. */
export const EXAMPLE = 'example';

/** What could not be kept is tried again after this long, ms, then after twice as long, … */
export const SOON = 5000;

/** How it stands when the page is opened. */
export const keepingAtFirst = (shown: BenchState): Keeping => ({
  stand: 'example',
  at: undefined,
  shown,
  hold: { by: 'nobody' },
  bases: new Map(),
  unkept: new Map(),
  due: false,
  since: 0,
  again: SOON,
  faults: [],
});
