import { useEffect, useState } from 'preact/hooks';

/** A value that can be read, replaced and watched. */
export interface Store<State> {
  readonly get: () => State;
  readonly set: (change: Partial<State>) => void;
  readonly watch: (listener: () => void) => () => void;
}

export function storeOf<State extends object>(initial: State): Store<State> {
  let state = initial;
  const listeners = new Set<() => void>();
  return {
    get: () => state,
    set: (change) => {
      state = { ...state, ...change };
      for (const listener of listeners) listener();
    },
    watch: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}

/** The value of a store; the component is drawn anew when it changes. */
export function useStore<State>(store: Store<State>): State {
  const [state, setState] = useState(store.get());
  useEffect(() => {
    const look = () => setState(store.get());
    look();
    return store.watch(look);
  }, [store]);
  return state;
}
