import { TakeProgress } from './TakeProgress';
import { useTaking } from './taking';

/** How far a class has come. */
export function ClassProgress() {
  const busy = useTaking((state) => state.busy);
  return busy?.kind === 'class' && <TakeProgress {...busy} onStop={() => useTaking.getState().stop()} />;
}
