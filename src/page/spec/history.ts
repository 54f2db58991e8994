/** States that can be gone back to and forward to again. */
export interface History<State> {
  readonly past: readonly State[];
  readonly now: State;
  readonly future: readonly State[];
  /** What the last change was about: further changes to the same are one with it. */
  readonly about: string | undefined;
}

const most = 200;

export const historyOf = <State>(now: State): History<State> => ({
  past: [],
  now,
  future: [],
  about: undefined,
});

/**
 * A new state. What is typed into one field, letter by letter, is undone at once.
 * @param about what is changed; without it, every change stands alone
 */
export function changed<State>(history: History<State>, now: State, about?: string): History<State> {
  const joins = about !== undefined && about === history.about && history.future.length === 0;
  return {
    past: joins ? history.past : [...history.past, history.now].slice(-most),
    now,
    future: [],
    about,
  };
}

export function undone<State>(history: History<State>): History<State> {
  const before = history.past.at(-1);
  if (before === undefined) return history;
  return {
    past: history.past.slice(0, -1),
    now: before,
    future: [history.now, ...history.future],
    about: undefined,
  };
}

export function redone<State>(history: History<State>): History<State> {
  const [next, ...rest] = history.future;
  if (next === undefined) return history;
  return { past: [...history.past, history.now], now: next, future: rest, about: undefined };
}
