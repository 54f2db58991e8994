import { z } from 'zod';

/** The query of a route that takes none: a member that is sent is refused by name, not ignored. */
export const noQuery = z.strictObject({});
