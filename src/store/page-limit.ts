import { mostItemsPerPage } from './store.ts';

/** @throws {RangeError} for a limit out of range */
export function requireLimit(limit: number): void {
  if (!Number.isInteger(limit) || limit < 1 || limit > mostItemsPerPage)
    throw new RangeError(`a page has 1 to ${mostItemsPerPage} items`);
}
