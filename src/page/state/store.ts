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

/** What is seen of a store; the component is drawn anew when `changed` says that it must be. */
function useSeen<State>(store: Store<State>, changed: (seen: State, now: State) => boolean): State {
  const [state, setState] = useState(store.get());
  useEffect(() => {
    const look = () => {
      const now = store.get();
      setState((seen) => (changed(seen, now) ? now : seen));
    };
    look();
    return store.watch(look);
  }, [store]);
  return state;
}

/** Members of a store; the component is drawn anew when one of these changes, and for no other. */
export const useStore = <State, Name extends keyof State>(
  store: Store<State>,
  ...names: readonly Name[]
): Pick<State, Name> => useSeen(store, (seen, now) => names.some((name) => seen[name] !== now[name]));

/** What is picked of a store; the component is drawn anew when that changes. Every use picks one thing. */
export const usePicked = <State, Part>(store: Store<State>, pick: (state: State) => Part): Part =>
  pick(useSeen(store, (seen, now) => pick(seen) !== pick(now)));
