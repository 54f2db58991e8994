import type { FastifyReply } from 'fastify';

/** Sends a page that tells of its reader, so nothing on the way may keep it. */
export const sendPage = (reply: FastifyReply, html: string): FastifyReply =>
  reply.type('text/html; charset=utf-8').header('cache-control', 'no-store').send(html);
