import type { Reply } from '../api/client.ts';
import type { Say } from '../words/say.ts';

/** Why nothing was kept under a name; empty where it was, or where the page says elsewhere why not. */
export function keepTrouble(reply: Reply, name: string, say: Say): string {
  if (reply.kind !== 'refused') return '';
  return reply.status === 412
    ? say('keep.changedMeanwhile', { name })
    : say('keep.refused', { reason: reply.detail });
}
