import type { FastifyReply } from 'fastify';

/** Sends labels as a file to keep. */
export const sendLabels = (reply: FastifyReply, bytes: Buffer) =>
  reply
    .type('application/pdf')
    .header('content-disposition', 'attachment; filename="labels.pdf"')
    .send(bytes);
