import type { FastifyReply } from 'fastify';
import type { PlannedSet } from '../../shared/sets/show-set-plan.ts';
import { sheetsOf, zipMediaType } from './sheets-of-set.ts';

/** Sends the sheets of a planned set as a file to keep. */
export const sendSheets = (reply: FastifyReply, planned: PlannedSet) =>
  reply
    .type(zipMediaType)
    .header('content-disposition', 'attachment; filename="sheets.zip"')
    .send(sheetsOf(planned));
