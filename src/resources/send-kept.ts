import type { FastifyReply } from 'fastify';
import type { Stored } from '../store/store.ts';
import { tagOf } from './expectation-of.ts';

/** Sends a kept thing as it was put, with its version as the entity tag. */
export const sendKept = (reply: FastifyReply, { version, changed, body }: Stored) =>
  reply
    .header('etag', tagOf(version))
    .header('last-modified', new Date(changed).toUTCString())
    .type('application/json; charset=utf-8')
    .send(JSON.stringify(body));
