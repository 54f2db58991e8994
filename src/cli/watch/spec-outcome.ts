/** What became of a spec. Each text is one line without the file's name. */
export type Outcome =
  | { readonly is: 'drawn'; readonly line: string }
  /** The drawing there is of this very spec. */
  | { readonly is: 'current' }
  /** There is no drawing; the problem text says why. */
  | { readonly is: 'refused'; readonly line: string; readonly retry: Retry }
  /** What should be beside the spec could not be put there. */
  | { readonly is: 'failed'; readonly line: string; readonly retry: Retry }
  /** It is changing, or has gone. */
  | { readonly is: 'moving' }
  /** It would be refused, but may still be half written. */
  | { readonly is: 'unripe' };

/** Whether to try once more although the spec stays as it is: never, after a while, or once its drawing's name is free. */
export type Retry = 'never' | 'later' | 'when-name-is-free';
