import { Component, type ContextType, type ErrorInfo, type ReactNode } from 'react';
import type { StoreApi } from 'zustand';
import { BenchShown } from '../store/bench';
import type { Bench } from '../store/state';
import { FaultCard } from './FaultCard';
import { FaultDialog } from './FaultDialog';
import { type Fault, type FaultTold, isNotLoaded } from './fault';
import { Drawn, LastGood } from './LastGood';
import { noteFault, takeBack } from './outside';

/** A part of the bench, the inside of one, a sheet over it, a bit of the drawing or of a line, or the whole page. */
export type Place = 'bar' | 'path' | 'table' | 'working' | 'finished' | 'inside' | 'dialog' | 'bit' | 'page';

/** These show the bench's state and nothing else that lasts, so that an earlier one brings back what they showed. */
const LASTING: readonly Place[] = ['path', 'table', 'working', 'finished', 'inside'];

export interface GuardedProps {
  /** What it holds, as a sentence begins with it: “The checks”. */
  readonly what: string;
  readonly place: Place;
  /** Gets what did not come before it is drawn once more. */
  readonly again?: (() => void) | undefined;
  /** Goes away from what can't be drawn. */
  readonly leave?: (() => void) | undefined;
  /** What is shown in its place, where that is more than the words. */
  readonly instead?: (told: FaultTold) => ReactNode;
  readonly children: ReactNode;
}

interface GuardedState {
  readonly fault: Fault | undefined;
}

/**
 * Catches a fault while a part is drawn. The rest of the screen stays as it is; the part says what happened and what can
 * be done, over the last that it could draw, and is tried anew as soon as the project, or what is shown of it, changes.
 * Only a class can do that in React.
 */
export class Guarded extends Component<GuardedProps, GuardedState> {
  static override contextType = BenchShown;
  declare context: ContextType<typeof BenchShown>;
  override state: GuardedState = { fault: undefined };
  /** The bench when all of the part was drawn last. */
  private good: Bench | undefined;
  private unsubscribe = () => {};

  static getDerivedStateFromError(thrown: unknown): GuardedState {
    return { fault: { what: '', thrown, at: new Date() } };
  }

  override componentDidCatch(thrown: unknown, { componentStack }: ErrorInfo): void {
    const { what, place } = this.props;
    const parts = componentStack ?? '';
    this.setState(({ fault }) => (fault ? { fault: { ...fault, what, parts } } : null));
    if (place === 'bit') noteFault(what, thrown, this.props.again && this.tryAgain);
  }

  override componentDidMount(): void {
    const store: StoreApi<Bench> = this.context;
    this.unsubscribe = store.subscribe((now, before) => {
      const { fault } = this.state;
      if (fault && !isNotLoaded(fault) && isOther(now, before)) this.setState({ fault: undefined });
    });
  }

  override componentDidUpdate(_before: GuardedProps, { fault }: GuardedState): void {
    if (fault && !this.state.fault && this.props.place === 'bit') takeBack(this.props.what);
  }

  override componentWillUnmount(): void {
    this.unsubscribe();
  }

  private readonly forgetGood = () => {
    this.good = undefined;
    this.forceUpdate();
  };

  private readonly tryAgain = () => {
    this.props.again?.();
    this.setState({ fault: undefined });
  };

  private readonly leave = () => {
    this.props.leave?.();
    this.props.again?.();
    this.setState({ fault: undefined });
  };

  override render(): ReactNode {
    const { what, place, children, leave, instead } = this.props;
    const { fault } = this.state;
    if (!fault) {
      return (
        <>
          {children}
          {LASTING.includes(place) && (
            <Drawn
              onDrawn={(bench) => {
                this.good = bench;
              }}
            />
          )}
        </>
      );
    }
    const told: FaultTold = { fault: { ...fault, what }, onAgain: this.tryAgain, onLeave: leave && this.leave };
    if (place === 'bit') return null;
    if (instead) return instead(told);
    if (place === 'dialog') return <FaultDialog {...told} />;
    // A part that did not come was never drawn.
    const good = isNotLoaded(fault) ? undefined : this.good;
    return (
      <div className="guarded" data-at={place}>
        <FaultCard {...told} lastBelow={good !== undefined} />
        {good && (
          <LastGood bench={good} onFailed={this.forgetGood}>
            {children}
          </LastGood>
        )}
      </div>
    );
  }
}

/** Whether there is something else to be drawn. */
const isOther = (now: Bench, before: Bench): boolean =>
  (['project', 'draft', 'id', 'entries', 'station', 'step', 'workingShown', 'field', 'folded'] as const).some(
    (key) => now[key] !== before[key],
  );
