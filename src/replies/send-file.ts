import type { FastifyReply } from 'fastify';

/** Sends bytes as a file to keep. */
export const sendFile = (reply: FastifyReply, mediaType: string, name: string, bytes: Buffer) =>
  reply.type(mediaType).header('content-disposition', `attachment; filename="${name}"`).send(bytes);
