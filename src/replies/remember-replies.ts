import { createHash } from 'node:crypto';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { LRUCache } from 'lru-cache';

interface Remembered {
  readonly text: string;
  readonly entityTag: string;
}

/** Replies are kept until they and their requests fill this much; a drawing has about 4 kB. */
const mostCharacters = 4 * 1024 * 1024;

/**
 * Keeps the text replies of a route that depend on the request's body and query alone, so that a repeated
 * request is neither read nor solved again. A refused request is never kept.
 * @param mediaType of the replies
 */
export function rememberReplies(mediaType: string) {
  const replies = new LRUCache<string, Remembered>({
    maxSize: mostCharacters,
    sizeCalculation: ({ text }, key) => text.length + key.length,
  });
  const keyOf = ({ query, body }: FastifyRequest): string => JSON.stringify([query, body]);
  const send = (reply: FastifyReply, { text, entityTag }: Remembered) =>
    reply.type(mediaType).header('etag', entityTag).send(text);
  return {
    /** A `preValidation` hook: answers what was asked before. */
    recall: async (request: FastifyRequest, reply: FastifyReply) => {
      const key = keyOf(request);
      const known = replies.get(key);
      if (known) return send(reply, known);
      request.replyKey = key;
      return undefined;
    },
    /** Sends a new reply with its strong entity tag and keeps it. */
    reply: (request: FastifyRequest, reply: FastifyReply, text: string) => {
      const entityTag = `"${createHash('sha256').update(text).digest('base64url')}"`;
      const made = { text, entityTag };
      if (request.replyKey !== undefined) replies.set(request.replyKey, made);
      return send(reply, made);
    },
  };
}

declare module 'fastify' {
  interface FastifyRequest {
    /** The body and query as they came in, while a reply to them is being made. */
    replyKey?: string;
  }
}
