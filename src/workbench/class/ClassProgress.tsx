import { TakeProgress } from '../take/TakeProgress';
import { useTaking } from '../take/taking';

/** How far a class has come. */
export function ClassProgress() {
  const busy = useTaking((state) => state.busy);
  return busy?.kind === 'class' && <TakeProgress {...busy} onStop={() => useTaking.getState().stop()} />;
}
