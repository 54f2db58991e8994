import type { FastifyReply } from 'fastify';

const entities: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** Text as it may stand between tags and in quoted attributes. */
export const escaped = (text: string): string => text.replace(/[&<>"]/g, (sign) => entities[sign] ?? sign);

/** Sends a page that tells of its reader, so nothing on the way may keep it. */
export const sendPage = (reply: FastifyReply, html: string): FastifyReply =>
  reply.type('text/html; charset=utf-8').header('cache-control', 'no-store').send(html);
