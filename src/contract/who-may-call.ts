import type { Scope } from '../members/caller.ts';
import { errorReplies } from '../problem/error-replies.ts';

/** How a caller is known, for `components.securitySchemes`. */
export const securitySchemes = {
  bearer: {
    type: 'http',
    scheme: 'bearer',
    description:
      'A member’s token, as in `Authorization: Bearer hemfold_…`. Needed in a group alone: a service for one user answers only the machine that it runs on, and asks for none.',
  },
  browser: {
    type: 'apiKey',
    in: 'cookie',
    name: 'hemfold-session',
    description:
      'A browser that was signed in at /sign-in; over https the cookie is called `__Host-hemfold-session`. Whatever changes something must come from a page of this service.',
  },
} as const;

const { 401: notKnown, 403: notAllowed } = errorReplies(401, 403);

/**
 * What the schema of a route says of who may call it, by what the route needs. An empty choice stands for a service
 * without members.
 */
export const whoMayCall = (needs: Scope | 'nothing' = 'read') =>
  needs === 'nothing'
    ? { security: [], replies: {} }
    : {
        security: [{ bearer: [] }, { browser: [] }, {}],
        replies: { 401: notKnown, 403: notAllowed },
      };
