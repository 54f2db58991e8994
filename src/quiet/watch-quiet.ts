/** How long nothing was answered until it counts as quiet. */
export const quietMs = 60_000;

export interface Watch {
  /** Something was answered. */
  note(): void;
  stop(): void;
}

/**
 * Calls at once, since the start was work, and from then on each time that it has been quiet for a minute after work.
 */
export function watchQuiet(onQuiet: () => void): Watch {
  let timer: NodeJS.Timeout | undefined;
  onQuiet();
  return Object.freeze<Watch>({
    note() {
      clearTimeout(timer);
      timer = setTimeout(onQuiet, quietMs).unref();
    },
    stop: () => clearTimeout(timer),
  });
}
