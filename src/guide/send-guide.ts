import type { FastifyReply } from 'fastify';
import type { WrittenGuide } from './guide-of-folder.ts';
import { guideContentPolicy } from './write-html.ts';

/** Sends a maker's sheet; as a page it may use its own style and nothing else. */
export const sendGuide = (reply: FastifyReply, { mediaType, bytes }: WrittenGuide) =>
  reply.header('content-security-policy', guideContentPolicy).type(mediaType).send(bytes);
