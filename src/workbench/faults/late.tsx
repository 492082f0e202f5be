import { type ComponentType, lazy } from 'react';
import { type Phrase, said } from '../../words';
import { NotLoaded } from './fault';
import { Guarded, type Place } from './Guarded';
import { noteFault } from './outside';

interface LateOptions<Props> {
  /** What it is, as a sentence begins with it: “The list of projects”. */
  readonly what: Phrase;
  readonly place: Place;
  /** Goes away from it where it does not come, or can't be drawn. */
  readonly leave?: (props: Props) => void;
}

/** A part of the screen that is loaded late. */
export type Late<Props> = ComponentType<Props> & {
  /** Loads it ahead of the moment when it is wanted; if it doesn't come, that is told when it is. */
  readonly ahead: () => void;
};

/**
 * A part of the screen that is loaded when it is first drawn. What goes wrong on the way or in it is told where it would
 * have been, and it can be got anew. Put it within a `Suspense`, which says what is seen meanwhile.
 *
 * @param load a dynamic import whose default is the part
 */
export function late<Props extends object>(
  load: () => Promise<{ readonly default: ComponentType<Props> }>,
  { what, place, leave }: LateOptions<Props>,
): Late<Props> {
  // React remembers what failed for ever; so another one is asked the next time.
  let Part = lazy(() => arriving(load));
  const again = () => {
    Part = lazy(() => arriving(load));
  };
  // biome-ignore lint/correctness/noComponentHookFactories: called once for each part, as React's own `lazy` is
  function LatePart(props: Props) {
    return (
      <Guarded what={said(what)} place={place} again={again} leave={leave && (() => leave(props))}>
        <Current {...props} />
      </Guarded>
    );
  }
  // biome-ignore lint/correctness/noComponentHookFactories: the same
  const Current = (props: Props) => <Part {...props} />;
  return Object.assign(LatePart, { ahead: () => void load().catch(() => undefined) });
}

/**
 * Something late that is no part of the screen by itself: loaded, and then worked with. If it doesn't come that is told
 * above the table, with the way to get it anew.
 *
 * @param what what it is, as a sentence begins with it
 */
export function withLate<Loaded>(what: string, load: () => Promise<Loaded>, work: (loaded: Loaded) => void): void {
  void arriving(load).then(work, (thrown) => noteFault(what, thrown, () => withLate(what, load, work)));
}

const arriving = <Loaded,>(load: () => Promise<Loaded>): Promise<Loaded> =>
  load().catch((cause: unknown) => {
    throw new NotLoaded('a part of the program did not come', { cause });
  });
