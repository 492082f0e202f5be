import { type StoreApi, type UseBoundStore, useStore } from 'zustand';

/**
 * A store of this page, made when it is first asked for anything: nothing is drafted, read or listened to on import.
 *
 * @param make called once
 * @returns what a component shows of it, and, as `getState` and so on, the store itself
 */
export function pageStore<State>(make: () => StoreApi<State>): UseBoundStore<StoreApi<State>> {
  let made: StoreApi<State> | undefined;
  const store = (): StoreApi<State> => {
    made ??= make();
    return made;
  };
  const use = <Shown>(selector?: (state: State) => Shown) => useStore(store(), selector as (state: State) => Shown);
  const api: StoreApi<State> = {
    getState: () => store().getState(),
    getInitialState: () => store().getInitialState(),
    setState: ((...change: Parameters<StoreApi<State>['setState']>) =>
      store().setState(...change)) as StoreApi<State>['setState'],
    subscribe: (listener) => store().subscribe(listener),
  };
  return Object.assign(use, api) as UseBoundStore<StoreApi<State>>;
}
