import { Component, type ReactNode, useEffect, useState } from 'react';
import { createStore } from 'zustand';
import { BenchShown, useBench } from '../store/bench';
import type { Bench } from '../store/state';

/** Tells which bench a part was drawn from, each time that all of it was. */
export function Drawn({ onDrawn }: { readonly onDrawn: (bench: Bench) => void }) {
  const bench = useBench((state) => state);
  useEffect(() => onDrawn(bench));
  return null;
}

interface LastGoodProps {
  readonly bench: Bench;
  /** Told where not even that can be drawn any more. */
  readonly onFailed: () => void;
  readonly children: ReactNode;
}

/** A part as it was drawn last; where not even that can be drawn any more, nothing. */
export class LastGood extends Component<LastGoodProps, { readonly failed: boolean }> {
  override state = { failed: false };

  static getDerivedStateFromError() {
    return { failed: true };
  }

  override componentDidCatch(): void {
    this.props.onFailed();
  }

  override render(): ReactNode {
    return this.state.failed ? null : <Still {...this.props} />;
  }
}

function Still({ bench, children }: Pick<LastGoodProps, 'bench' | 'children'>) {
  const [still] = useState(() => createStore<Bench>()(() => bench));
  return (
    <div className="last-good">
      <BenchShown value={still}>{children}</BenchShown>
    </div>
  );
}
