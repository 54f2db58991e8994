import { UnstorableName } from './store-errors.ts';

/** UTF-16 code units; as UTF-8 still far below what a PostgreSQL index row holds (2704 bytes for all columns). */
export const mostNameLength = 200;

/**
 * Whether a database keeps the text as it is: PostgreSQL refuses NUL, and unpaired surrogates have no UTF-8.
 * Texts that only look alike, composed or decomposed, are different names: callers normalise if they want to.
 */
export const isStorable = (text: string): boolean =>
  text.length > 0 && text.length <= mostNameLength && !text.includes('\0') && text.isWellFormed();

/** @throws {UnstorableName} */
export function requireStorable(...texts: readonly string[]): void {
  if (texts.every(isStorable)) return;
  throw new UnstorableName(
    `a name has 1 to ${mostNameLength} characters, without NUL and unpaired surrogates`,
  );
}
