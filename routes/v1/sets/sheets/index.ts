import type { FastifyPluginAsync } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from 'zod';
import { setSpec } from '../../../../shared/sets/set-spec.ts';
import { noQuery } from '../../../../src/no-query.ts';
import { bodyErrorReplies } from '../../../../src/problem/error-replies.ts';
import { sendFile } from '../../../../src/replies/send-file.ts';
import { givenUp } from '../../../../src/sets/given-up.ts';
import { planSet } from '../../../../src/sets/plan-set.ts';
import { poolOf } from '../../../../src/sets/pool-of.ts';
import { setNames } from '../../../../src/sets/set-names.ts';
import { sheetsOf, zipMediaType } from '../../../../src/sets/sheets-of-set.ts';

export default (async (app) => {
  const pool = poolOf(app);
  app.withTypeProvider<ZodTypeProvider>().post(
    '/',
    {
      preValidation: setNames(app),
      schema: {
        operationId: 'drawSetSheets',
        tags: ['sets'],
        summary: 'Every sheet of a set as layered SVG, in one ZIP',
        description:
          'Holds `manifest.json` (the plan), `sheet-01.svg` and on, one for each different sheet, `contact-sheet.svg` with a picture of all, and `cautions.txt`. Lines that neighbours share are cut once. Measure a first piece before you cut a good sheet, and follow the instructions of the machine and of the material.',
        querystring: noQuery,
        body: setSpec,
        response: {
          200: {
            description: 'The sheets in the set’s convention.',
            content: {
              [zipMediaType]: {
                schema: z.string().meta({ description: 'A ZIP archive.' }),
              },
            },
          },
          ...bodyErrorReplies(401, 403, 412, 422),
        },
      },
    },
    async (request, reply) => {
      const planned = await planSet(request.body, pool, { signal: givenUp(reply) });
      return sendFile(reply, zipMediaType, 'sheets.zip', sheetsOf(planned));
    },
  );
}) satisfies FastifyPluginAsync;
